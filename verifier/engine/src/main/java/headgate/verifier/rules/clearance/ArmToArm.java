package headgate.verifier.rules.clearance;

import headgate.api.shape.Point;
import headgate.api.unit.Micrometres;
import headgate.runtime.policy.Policy;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.Gap;
import headgate.verifier.remedy.LeaveArmsEmpty;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.remedy.Side;
import headgate.verifier.remedy.TrimHead;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code clearance.arm-to-arm}: no head, with its arm, comes nearer to another than the required gap. */
public final class ArmToArm implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.arm-to-arm",
            "Neighbouring heads keep the required gap, at work and while one is lifted",
            "Two heads that touch break each other in the first row, and stop the carriage in the field.",
            "Every pair of arms is looked at: both at work, one at work while the other is anywhere between work and"
                    + " lifted, and either while the other waits lifted. A head fills its fixed material and what moves with its tool point, placed at every point of"
                    + " the convex hull of its reach, in every posture but stowed. The gap of two upright prisms is the"
                    + " hypotenuse of their distance seen from above and the gap of their heights, exact on a grid of 1"
                    + " micrometre. Required is the policy's gap plus, for each arm, backlash, tracking, k sigma, angular"
                    + " play times the farthest occupied point, and deflection under the largest horizontal force.",
            "first principles; least gap from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    /** What a trim is rounded up to, micrometres: nobody trims a head finer than a millimetre. */
    private static final long TRIM_STEP = 1000;

    /** A pair with its gap, as it was measured. */
    private record Measured(ArmPair pair, Gap gap) {

        double margin() {
            return gap.metres() - pair.required();
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        Policy policy = subject.policy().value();
        List<List<ArmStance>> arms =
                ArmStance.all(Setup.of(subject), policy.coverageFactor().value());
        if (arms.size() < 2) {
            return List.of(Finding.notApplicable(INFO, "all arms", "There is only one arm: it has no neighbour."));
        }
        List<ArmPair> pairs = pairs(arms, policy);
        List<Measured> failing = new ArrayList<>();
        Measured tightest = null;
        for (ArmPair pair : pairs) {
            // Sound: a pair whose boxes alone leave more margin than the tightest so far can be neither tighter nor
            // fail.
            if (tightest != null && pair.leastMargin() > Math.max(0, tightest.margin())) {
                continue;
            }
            Measured measured = pair.gap().map(g -> new Measured(pair, g)).orElse(null);
            if (measured == null) {
                continue;
            }
            if (tightest == null || measured.margin() < tightest.margin()) {
                tightest = measured;
            }
            if (measured.margin() < 0) {
                failing.add(measured);
            }
        }
        if (tightest == null) {
            return List.of(Finding.notApplicable(INFO, "all arms", "No head holds any material."));
        }
        return List.of(finding(tightest, failing, pairs.size()));
    }

    private static List<ArmPair> pairs(List<List<ArmStance>> arms, Policy policy) {
        double gap = policy.armGap().value();
        List<ArmPair> pairs = new ArrayList<>();
        // Neighbours first: they are the tightest, and prune the rest.
        for (int apart = 1; apart < arms.size(); apart++) {
            for (int i = 0; i + apart < arms.size(); i++) {
                List<ArmStance> right = arms.get(i);
                List<ArmStance> left = arms.get(i + apart);
                for (int r = 0; r < right.size(); r++) {
                    for (int l = 0; l < left.size(); l++) {
                        // Both lifting needs no look of its own: ready is one of the postures at work, and each
                        // difference of height that two lifting arms can have is one that a lifting and a working arm
                        // can have.
                        if (r + l < 2) {
                            pairs.add(new ArmPair(right.get(r), left.get(l), gap));
                        }
                    }
                }
            }
        }
        return pairs;
    }

    private static Finding finding(Measured tightest, List<Measured> failing, int examined) {
        ArmPair pair = tightest.pair();
        double gap = tightest.gap().metres();
        String pairLabel = pair.right().label() + " and " + pair.left().label();
        Finding.Builder finding = Finding.of(INFO, pairLabel)
                .examined(examined)
                .comparison(Comparison.atLeast(gap, pair.required(), Dimension.LENGTH))
                .terms(pair.terms())
                .field("policy:armGap")
                .witness(new Witness(tightest.gap().first(), tightest.gap().second(), Dimension.LENGTH.text(gap)));
        if (failing.isEmpty()) {
            return finding.decide("The tightest of " + examined + " pairs of stances, " + pairLabel + ", keeps "
                    + Dimension.LENGTH.text(gap) + " where " + Dimension.LENGTH.text(pair.required())
                    + " is required.");
        }
        proposeEmpty(finding, failing);
        proposeTrim(finding, failing);
        proposeSpacing(finding, failing);
        return finding.decide("Between " + pairLabel + " there are only " + Dimension.LENGTH.text(gap) + " where "
                + Dimension.LENGTH.text(pair.required()) + " is required; " + failing.size() + " of " + examined
                + " pairs of stances are too near.");
    }

    /** Trims the head that stands out further towards the other, by the largest shortfall of all failing pairs. */
    private static void proposeTrim(Finding.Builder finding, List<Measured> failing) {
        ArmStance right = failing.get(0).pair().right();
        ArmStance left = failing.get(0).pair().left();
        long rightStandsOut =
                right.space().bounds().orElseThrow().y().most() - right.mount().y();
        long leftStandsOut =
                left.mount().y() - left.space().bounds().orElseThrow().y().least();
        boolean trimRight = rightStandsOut >= leftStandsOut;
        Optional<Station> trimmed = (trimRight ? right : left).station();
        if (trimmed.isEmpty()) {
            return;
        }
        Station station = trimmed.get();
        Side side = trimRight ? Side.LEFT : Side.RIGHT;
        long shortfall =
                failing.stream().mapToLong(m -> m.pair().shortfall()).max().orElseThrow();
        long amount = -Math.floorDiv(-shortfall, TRIM_STEP) * TRIM_STEP;
        finding.propose(new TrimHead(station.head().id(), station.turned() ? side.turned() : side, amount));
    }

    /** Takes the heads off the arms that wait where they are in the way. */
    private static void proposeEmpty(Finding.Builder finding, List<Measured> failing) {
        List<String> inTheWay = failing.stream()
                .flatMap(m -> Stream.of(m.pair().right(), m.pair().left()))
                .flatMap(s -> s.station().stream())
                .filter(s -> !s.isAtWork())
                .map(s -> s.arm().id())
                .distinct()
                .sorted()
                .toList();
        if (!inTheWay.isEmpty()) {
            finding.propose(new LeaveArmsEmpty(inTheWay));
        }
    }

    /** Rows further apart, so that the mounts of every failing pair on one beam stand far enough apart. */
    private static void proposeSpacing(Finding.Builder finding, List<Measured> failing) {
        double spacing = 0;
        double pitch = 0;
        for (Measured m : failing) {
            Optional<Station> right = m.pair().right().station().filter(Station::isAtWork);
            Optional<Station> left = m.pair().left().station().filter(Station::isAtWork);
            if (right.isEmpty() || left.isEmpty() || !m.pair().onOneBeam()) {
                continue;
            }
            int lanes = left.get().lane().number() - right.get().lane().number();
            Point apart = left.get().mount().minus(right.get().mount());
            long shortfall = m.pair().shortfall();
            // Mounts may stand beside their rows: what is missing is added to the rows, and the mounts keep their
            // offset.
            long rows = left.get().lane().y() - right.get().lane().y() + shortfall;
            if (lanes > 0 && Micrometres.toMetres(rows) / lanes > spacing) {
                spacing = Micrometres.toMetres(rows) / lanes;
                pitch = Micrometres.toMetres(apart.y() + shortfall);
            }
        }
        if (spacing > 0) {
            finding.propose(new SetRowSpacing(spacing, pitch));
        }
    }
}
