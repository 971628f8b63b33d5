package headgate.verifier.rules.clearance;

import headgate.api.shape.Point;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.remedy.LeaveArmsEmpty;
import headgate.verifier.remedy.RaiseLifts;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.remedy.Side;
import headgate.verifier.remedy.TrimHead;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Nearness;
import headgate.verifier.setup.Nearness.Measured;
import headgate.verifier.setup.StancePair;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** {@code clearance.arm-to-arm}: no head, with its arm, comes nearer to another than the required gap. */
public final class ArmToArm implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.arm-to-arm",
            "Neighbouring heads keep the required gap, at work, lifting and parked",
            "Two heads that touch break each other in the first row, and stop the carriage in the field.",
            "Every pair of arms is looked at in every pair of stances: at work, which is also where a faulty arm may be"
                    + " stuck; anywhere between work and lifted; parked lifted, ready or stowed; waiting lifted; without a"
                    + " head. A head fills its fixed material and what moves with its tool point, placed at every point of"
                    + " the convex hull of its reach, in every posture but stowed. The gap of two upright prisms is the"
                    + " hypotenuse of their distance seen from above and the gap of their heights, exact on a grid of 1"
                    + " micrometre. Required is the policy's gap plus, for each arm, backlash, tracking, k sigma, angular"
                    + " play times the farthest occupied point, and deflection under the largest horizontal force. Side"
                    + " shifts are locked; a lift that moves may run past its set-point by its overshoot and v t_r + v² / 2b,"
                    + " and sweeps those heights too. Two arms with spot heads that are too near only where at least one acts,"
                    + " and whose material that stays is not too near, are kept apart by an interlock: a caution, and a limit"
                    + " of the verdict. Whether the pace holds with it is for the family throughput.",
            "first principles; least gap from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    /** What a trim or a raised lift is rounded up to, micrometres: nobody works finer than a millimetre. */
    private static final long STEP = 1000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        Nearness all = Nearness.of(subject);
        if (all.arms() < 2) {
            return List.of(Finding.notApplicable(INFO, "all arms", "There is only one arm: it has no neighbour."));
        }
        Interlocks interlocks = Interlocks.of(subject);
        Nearness open = interlocks.all().isEmpty() ? all : Nearness.of(subject, pair -> !keptApart(interlocks, pair));
        if (open.tightest().isEmpty()) {
            return List.of(Finding.notApplicable(INFO, "all arms", "No head holds any material."));
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(finding(open.tightest().get(), open.tooNear(), all.examined()));
        for (Interlock interlock : interlocks.all()) {
            findings.add(inTime(interlock, all));
        }
        return findings;
    }

    private static boolean keptApart(Interlocks interlocks, StancePair pair) {
        return pair.someWorks()
                && interlocks
                        .between(pair.right().arm().id(), pair.left().arm().id())
                        .isPresent();
    }

    /** Two arms that an interlock keeps apart: the tightest place that they would have without it. */
    private static Finding inTime(Interlock interlock, Nearness all) {
        List<Measured> own = all.tooNear().stream()
                .filter(m -> m.pair().right().arm().id().equals(interlock.first())
                        && m.pair().left().arm().id().equals(interlock.second()))
                .toList();
        Measured worst = own.stream()
                .min((a, b) -> Double.compare(a.margin(), b.margin()))
                .orElseThrow();
        double gap = worst.gap().metres();
        return described(worst)
                .examined(own.size())
                .end(
                        Outcome.CAUTION,
                        "Between " + worst.pair().label() + " there would be only " + Dimension.LENGTH.text(gap)
                                + " where " + Dimension.LENGTH.text(worst.pair().required())
                                + " is required. An interlock keeps the two apart: "
                                + (interlock.neverTogether()
                                        ? "only one of them acts at a time."
                                        : interlock.zones() == 1
                                                ? "one zone that their tool points stay out of."
                                                : interlock.zones() + " zones that their tool points stay out of."));
    }

    private static Finding.Builder described(Measured measured) {
        double gap = measured.gap().metres();
        StancePair pair = measured.pair();
        return Finding.of(INFO, pair.label())
                .comparison(Comparison.atLeast(gap, pair.required(), Dimension.LENGTH))
                .terms(pair.terms())
                .field("policy:armGap")
                .witness(new Witness(measured.gap().first(), measured.gap().second(), Dimension.LENGTH.text(gap)));
    }

    private static Finding finding(Measured tightest, List<Measured> failing, int examined) {
        StancePair pair = tightest.pair();
        double gap = tightest.gap().metres();
        String pairLabel = pair.label();
        Finding.Builder finding = described(tightest).examined(examined);
        if (failing.isEmpty()) {
            return finding.decide("The tightest of " + examined + " pairs of stances, " + pairLabel + ", keeps "
                    + Dimension.LENGTH.text(gap) + " where " + Dimension.LENGTH.text(pair.required())
                    + " is required.");
        }
        proposeEmpty(finding, failing);
        proposeLifts(finding, failing);
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
        long amount = up(shortfall);
        finding.propose(new TrimHead(station.head().id(), station.turned() ? side.turned() : side, amount));
    }

    /** Lifts what rests higher, if nothing else is in the way. */
    private static void proposeLifts(Finding.Builder finding, List<Measured> failing) {
        SortedMap<String, Long> tops = new TreeMap<>();
        for (Measured m : failing) {
            boolean raiseRight = rests(m.pair().right());
            if (raiseRight == rests(m.pair().left())) {
                return;
            }
            ArmStance raised = raiseRight ? m.pair().right() : m.pair().left();
            long top = raised.arm().lift().most() + up(m.pair().shortfallUpward(raiseRight));
            tops.merge(raised.arm().id(), top, Math::max);
        }
        finding.propose(new RaiseLifts(tops));
    }

    private static boolean rests(ArmStance stance) {
        return switch (stance.kind()) {
            case PARKED, WAITING, EMPTY -> true;
            case WORK, LIFTING -> false;
        };
    }

    private static long up(long micrometres) {
        return -Math.floorDiv(-micrometres, STEP) * STEP;
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
