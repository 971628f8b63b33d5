package headgate.verifier.rules.rows;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.remedy.NarrowBand;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.ServiceStrips;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** {@code rows.strip-covers-lane}: what the arms on a lane reach covers the lane from edge to edge. */
public final class StripCoversLane implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "rows.strip-covers-lane",
            "The service strips of the arms on a lane cover the lane",
            "What lies beside the strip stays untreated in every pass, however slowly the carriage drives.",
            "An arm's service strip is what its head reaches across travel at its set-point. The strips of the arms that"
                    + " serve a lane together must cover it from its right-hand edge to its left-hand one; the lane holds the"
                    + " band to be treated, the rows' wander and the guess-row error.",
            "first principles",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    /** A lane with how much of it no strip covers. */
    private record Covered(Lane lane, List<Station> stations, Interval widestGap, long missing) {

        long width() {
            return lane.ground().length();
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        if (!Setup.of(subject).servesEveryLane()) {
            return List.of(Finding.notApplicable(INFO, "all lanes", "Not every lane has an arm."));
        }
        List<Covered> lanes = covered(subject);
        List<Covered> failing = lanes.stream().filter(c -> c.missing() > 0).toList();
        if (failing.isEmpty()) {
            Covered tightest = lanes.stream()
                    .min(Comparator.comparingLong(StripCoversLane::spare))
                    .orElseThrow();
            return List.of(Finding.of(INFO, label(tightest))
                    .examined(lanes.size())
                    .comparison(Comparison.atLeast(
                            Micrometres.toMetres(tightest.width() + 2 * spare(tightest)),
                            Micrometres.toMetres(tightest.width()),
                            Dimension.LENGTH))
                    .term(
                            "least way from a lane's edge to the strip's end",
                            Micrometres.toMetres(spare(tightest)),
                            Dimension.LENGTH)
                    .decide("The strips cover each of the " + lanes.size() + " lanes; on lane "
                            + tightest.lane().number() + " the strip ends "
                            + text(spare(tightest)) + " beyond the lane's edge."));
        }
        Covered worst =
                failing.stream().max(Comparator.comparingLong(Covered::missing)).orElseThrow();
        long x = worst.stations().get(0).mount().x();
        Finding.Builder finding = Finding.of(INFO, label(worst))
                .examined(lanes.size())
                .comparison(Comparison.atLeast(
                        Micrometres.toMetres(worst.width() - worst.missing()),
                        Micrometres.toMetres(worst.width()),
                        Dimension.LENGTH))
                .term("width of the lane", Micrometres.toMetres(worst.width()), Dimension.LENGTH)
                .term("not covered", Micrometres.toMetres(worst.missing()), Dimension.LENGTH)
                .witness(new Witness(
                        new Point3(x, worst.widestGap().least(), 0),
                        new Point3(x, worst.widestGap().most(), 0),
                        text(worst.widestGap().length())))
                .field("crop-plan:rows.spacing");
        remedies(subject, worst).forEach(finding::propose);
        return List.of(finding.decide("Of " + text(worst.width()) + " of lane "
                + worst.lane().number() + " (" + worst.lane().kind().label() + ") the strip of "
                + worst.stations().stream().map(s -> "arm " + s.arm().id()).collect(Collectors.joining(" and "))
                + " leaves " + text(worst.missing()) + " out; "
                + (failing.size() == 1
                        ? "the other lanes are covered."
                        : failing.size() + " of " + lanes.size() + " lanes are not covered.")));
    }

    private static List<Covered> covered(Case subject) {
        Setup setup = Setup.of(subject);
        return setup.lanes().stream()
                .map(lane -> {
                    List<Station> own = setup.stations().stream()
                            .filter(s -> s.lanes().contains(lane))
                            .toList();
                    List<Interval> gaps = ServiceStrips.uncovered(lane, own);
                    return new Covered(
                            lane,
                            own,
                            gaps.stream()
                                    .max(Comparator.comparingLong(Interval::length))
                                    .orElse(lane.ground()),
                            gaps.stream().mapToLong(Interval::length).sum());
                })
                .toList();
    }

    /** How far the strips reach beyond the nearer edge of a lane that they cover. */
    private static long spare(Covered covered) {
        long right = covered.stations().stream()
                .mapToLong(s -> ServiceStrips.of(s).least())
                .min()
                .orElseThrow();
        long left = covered.stations().stream()
                .mapToLong(s -> ServiceStrips.of(s).most())
                .max()
                .orElseThrow();
        return Math.min(
                covered.lane().ground().least() - right,
                left - covered.lane().ground().most());
    }

    private static String label(Covered covered) {
        return "lane " + covered.lane().number();
    }

    private static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }

    private static List<Edit> remedies(Case subject, Covered worst) {
        Predicate<Case> holds =
                c -> Setup.of(c).servesEveryLane() && covered(c).stream().allMatch(lane -> lane.missing() == 0);
        Optional<Edit> narrower = subject.plan()
                .value()
                .weeds()
                .map(CropPlan.Weeds::bandWidth)
                .map(band -> band - Micrometres.toMetres(worst.missing()))
                .filter(band -> worst.lane().kind() == Lane.Kind.ON_ROW && band > 0)
                .map(NarrowBand::new);
        Optional<Edit> spacing =
                worst.lane().kind() == Lane.Kind.ON_ROW ? Optional.empty() : Changes.otherSpacing(subject, holds);
        return List.of(narrower, spacing).stream()
                .flatMap(Optional::stream)
                .filter(edit -> holds.test(edit.apply(subject)))
                .toList();
    }
}
