package headgate.verifier.rules.plan;

import headgate.api.sheet.Range;
import headgate.api.sheet.WorkRange;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.Term;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.setup.Working;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** {@code plan.work-range}: every task that the plan sets lies in the range that the head is made for. */
public final class WorkRangeHolds implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "plan.work-range",
            "Speed, plants, soil and depth of the crop plan lie in the range that the head is made for",
            "Outside its range a head need not answer, and what it does there nobody has measured.",
            "Speed, soil and moisture of the plan; for weeds their classes, stems and heights; for plugs the class plug,"
                    + " diameter, height and depth: each lies within the range on the sheet, its ends included. One finding for"
                    + " each that does not.",
            "The work range that the head declares",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "plan.operation"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(
                subject,
                INFO,
                fitted -> Working.includes(subject, fitted)
                        ? new Look(fitted, subject.plan().value()).findings()
                        : List.of(Finding.notApplicable(
                                INFO, fitted.label(), "It waits lifted while the plan's operation is done.")));
    }

    /** One head and what has been found about it so far. */
    private static final class Look {

        private final FittedHead fitted;
        private final WorkRange range;
        private final CropPlan plan;
        private final List<Finding> outside = new ArrayList<>();
        private final List<String> within = new ArrayList<>();

        Look(FittedHead fitted, CropPlan plan) {
            this.fitted = fitted;
            this.range = fitted.sheet().workRange();
            this.plan = plan;
        }

        List<Finding> findings() {
            quantity("speed", plan.wanted().speed(), range.groundSpeed(), Dimension.SPEED, "wanted.speed");
            terms("soil", List.of(plan.soil().texture()), range.soils(), "soil.texture");
            quantity("soil moisture", plan.soil().moisture(), range.moisture(), Dimension.SHARE, "soil.moisture");
            plan.weeds().ifPresent(this::weeds);
            plan.plugs().ifPresent(this::plugs);
            if (!outside.isEmpty()) {
                return outside;
            }
            Operation operation = plan.wanted().operation();
            if (operation.equals(Operation.PULL_WEEDS) && plan.weeds().isEmpty()) {
                return missing("weeds", "kinds, stems and heights of the weeds");
            }
            if (operation.equals(Operation.SET_PLUGS) && plan.plugs().isEmpty()) {
                return missing("plugs", "diameter, height and depth of the plugs");
            }
            return List.of(Finding.of(INFO, fitted.label())
                    .examined(within.size())
                    .end(Outcome.PASS, "In range are: " + String.join(", ", within) + "."));
        }

        private List<Finding> missing(String field, String what) {
            return List.of(Finding.undecided(
                    INFO, fitted.label(), "The crop plan does not say " + what + ": add \"" + field + "\" to it."));
        }

        private void weeds(CropPlan.Weeds weeds) {
            terms("weeds", weeds.classes(), range.plantClasses(), "weeds.classes");
            quantity("thinnest stem", weeds.stemLeast(), range.stemDiameter(), Dimension.LENGTH, "weeds.stemLeast");
            quantity("thickest stem", weeds.stemMost(), range.stemDiameter(), Dimension.LENGTH, "weeds.stemMost");
            quantity("lowest weed", weeds.heightLeast(), range.plantHeight(), Dimension.LENGTH, "weeds.heightLeast");
            quantity("highest weed", weeds.heightMost(), range.plantHeight(), Dimension.LENGTH, "weeds.heightMost");
        }

        private void plugs(CropPlan.Plugs plugs) {
            terms("plants", List.of(PlantClass.PLUG), range.plantClasses(), "plugs");
            quantity("plug diameter", plugs.diameter(), range.stemDiameter(), Dimension.LENGTH, "plugs.diameter");
            quantity("plant height", plugs.height(), range.plantHeight(), Dimension.LENGTH, "plugs.height");
            quantity("planting depth", plugs.depth(), range.depth(), Dimension.LENGTH, "plugs.depth");
        }

        private void quantity(String name, double value, Range allowed, Dimension dimension, String field) {
            if (allowed.contains(value)) {
                within.add(name + " " + dimension.text(value));
                return;
            }
            boolean above = value > allowed.most();
            double end = above ? allowed.most() : allowed.least();
            Finding.Builder finding = Finding.of(INFO, fitted.label() + ", " + name)
                    .comparison(
                            above
                                    ? Comparison.atMost(value, end, dimension)
                                    : Comparison.atLeast(value, end, dimension))
                    .field("crop-plan:" + field)
                    .examined(1);
            if (above && dimension == Dimension.SPEED && allowed.most() > 0) {
                finding.propose(new SetSpeed(allowed.most()));
            }
            outside.add(finding.end(
                    Outcome.FAIL,
                    "The plan's " + name + " is " + dimension.text(value) + ", but the head is made for "
                            + dimension.text(allowed.least()) + " to " + dimension.text(allowed.most()) + "."));
        }

        private <T extends Term> void terms(String name, Collection<T> wanted, Set<T> allowed, String field) {
            List<T> strange =
                    wanted.stream().filter(t -> !allowed.contains(t)).sorted().toList();
            if (strange.isEmpty()) {
                within.add(name + " " + names(wanted));
                return;
            }
            outside.add(Finding.of(INFO, fitted.label() + ", " + name)
                    .field("crop-plan:" + field)
                    .examined(wanted.size())
                    .end(
                            Outcome.FAIL,
                            "The plan has " + name + " of class " + names(strange) + ", but the head is made for "
                                    + (allowed.isEmpty() ? "none" : names(allowed)) + "."));
        }

        private static String names(Collection<? extends Term> terms) {
            return terms.stream().map(Term::name).sorted().collect(Collectors.joining(" and "));
        }
    }
}
