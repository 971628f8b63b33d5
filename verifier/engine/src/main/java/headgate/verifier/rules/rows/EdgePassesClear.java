package headgate.verifier.rules.rows;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.setup.EdgePass;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code rows.edge-pass}: in the last pass, where fewer rows are left, the arms beyond the field stay lifted. */
public final class EdgePassesClear implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "rows.edge-pass",
            "In a narrower last pass no arm works across the field's edge",
            "A field rarely has a whole number of passes. What works beyond its edge works the neighbour's ground, or a row"
                    + " that is done already.",
            "The rows of the field are its width over the spacing, rounded down. What is left after whole passes is worked"
                    + " with the set-points of a whole pass and the arms beyond the edge lifted: that they are clear of the"
                    + " others then is for the rule clearance.arm-to-arm, which looks at parked arms too. An arm that serves"
                    + " lanes on both sides of the edge cannot do one without the other. Both sides are tried.",
            "common practice, no source",
            Severity.CAUTION,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        CropPlan plan = subject.plan().value();
        int rows = EdgePass.rowsOfField(plan);
        Finding.Builder finding = Finding.of(INFO, "crop plan " + plan.name())
                .field("crop-plan:field.width")
                .term("rows of the field", rows, Dimension.COUNT)
                .term("rows per pass", plan.rows().perPass(), Dimension.COUNT);
        if (!Setup.of(subject).servesEveryLane()) {
            return List.of(finding.end(Outcome.NOT_APPLICABLE, "Not every lane has an arm."));
        }
        finding.examined(Math.max(1, rows));
        List<EdgePass> passes = EdgePass.of(subject);
        if (passes.isEmpty()) {
            return List.of(finding.end(
                    Outcome.PASS,
                    "The " + rows + " rows of the field make "
                            + rows / plan.rows().perPass() + " whole passes."));
        }
        String left = "Of the " + rows + " rows of the field "
                + passes.get(0).rows() + (passes.get(0).rows() == 1 ? " is" : " are") + " left for pass "
                + passes.get(0).passes();
        Optional<EdgePass> clear =
                passes.stream().filter(p -> p.across().isEmpty()).findFirst();
        if (clear.isPresent()) {
            return List.of(finding.end(
                    Outcome.PASS,
                    left + ": with " + (clear.get().rows() == 1 ? "it" : "them") + " to the "
                            + clear.get().side().label() + ", "
                            + (clear.get().lifted().isEmpty()
                                    ? "no arm"
                                    : arms(clear.get().lifted()))
                            + (clear.get().lifted().size() > 1 ? " stay lifted." : " stays lifted.")));
        }
        return List.of(finding.end(
                Outcome.FAIL,
                left + ", and " + arms(passes.get(0).across())
                        + (passes.get(0).across().size() == 1 ? " works" : " work")
                        + " on both sides of the field's edge; with those rows on the other side "
                        + arms(passes.get(1).across())
                        + (passes.get(1).across().size() == 1 ? " does." : " do.")));
    }

    private static String arms(List<Station> stations) {
        return (stations.size() == 1 ? "arm " : "arms ")
                + stations.stream().map(s -> s.arm().id()).collect(Collectors.joining(", "));
    }
}
