package headgate.verifier.rules.clearance;

import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.remedy.RaiseLifts;
import headgate.verifier.setup.ArmAllowance;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.EmptyArm;
import headgate.verifier.setup.FreeStrips;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import headgate.verifier.setup.WorkHeight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** {@code clearance.lifted}: what is lifted clears plants and ground. */
public final class LiftedClears implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.lifted",
            "Lifted arms and heads clear the plants, or hang between the rows, and clear the ground",
            "On the headland and on every way between two actions a lifted head passes over plants that nobody watches.",
            "Each arm is looked at lifted to the top of its lift, with its head ready, stowed, or on the way between the two."
                    + " With G the ground's motion under the arm, every body whose lowest point is at z over level ground"
                    + " must keep z - G >= tallest plant + gap. The plant is the tallest of canopy, weeds and plugs. A body"
                    + " that lies wholly in a free strip between rows need only keep z - G >= gap to the ground: a strip"
                    + " leaves out half a plant's width, the row's wander, the gap to the canopy and the arm's own"
                    + " tolerances to either side of a row, and the guess-row error where a row's place is a guess.",
            "first principles; least gaps from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    /** What a raised lift is rounded up to, micrometres. */
    private static final long STEP = 1000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    /**
     * A body that is lifted.
     *
     * @param arm its arm
     * @param label how reports name the arm
     * @param box the box about it, carriage frame, with the mount at the top of the lift
     * @param groundMotion G, micrometres
     * @param needed how far over the ground it must stay, micrometres
     * @param inStrip true if it lies in a free strip
     */
    private record Lifted(Arm arm, String label, Box box, long groundMotion, long needed, boolean inStrip) {

        long clear() {
            return box.z().least() - groundMotion;
        }

        long margin() {
            return clear() - needed;
        }
    }

    @Override
    public List<Finding> check(Case subject) {
        Setup setup = Setup.of(subject);
        List<Lifted> all = new ArrayList<>();
        for (Station s : Stream.concat(setup.stations().stream(), setup.waiting().stream())
                .toList()) {
            String label = "arm " + s.arm().id() + " with " + s.head().label();
            double k = subject.policy().value().coverageFactor().value();
            add(all, subject, s.arm(), label, s.mount(), StationSpace.parked(s), ArmAllowance.of(s, k));
        }
        for (EmptyArm e : setup.empty()) {
            ArmStance stance =
                    ArmStance.of(e, subject.policy().value().coverageFactor().value());
            add(all, subject, e.arm(), stance.label(), e.mount(), stance.space(), stance.allowance());
        }
        Optional<Lifted> lowest = all.stream().min(Comparator.comparingLong(Lifted::margin));
        if (lowest.isEmpty()) {
            return List.of(Finding.notApplicable(INFO, "all arms", "Neither an arm nor a head holds any material."));
        }
        return List.of(finding(lowest.get(), all));
    }

    private static void add(
            List<Lifted> all,
            Case subject,
            Arm arm,
            String label,
            Point mount,
            Occupied lifted,
            ArmAllowance allowance) {
        FreeStrips strips = FreeStrips.of(subject, allowance);
        long motion = WorkHeight.groundMotion(subject, arm, mount);
        long overPlants = WorkHeight.plants(subject);
        long overGround = Rounding.up(subject.policy().value().groundGap().value());
        for (Box box : lifted.boxes()) {
            boolean inStrip = strips.hold(box.y());
            long needed = inStrip ? overGround : Math.max(overPlants, overGround);
            all.add(new Lifted(arm, label, box, motion, needed, inStrip));
        }
    }

    private static Finding finding(Lifted lowest, List<Lifted> all) {
        double clear = Micrometres.toMetres(lowest.clear());
        double needed = Micrometres.toMetres(lowest.needed());
        Box box = lowest.box();
        long x = middle(box.x().least(), box.x().most());
        long y = middle(box.y().least(), box.y().most());
        Finding.Builder finding = Finding.of(INFO, lowest.label())
                .examined(all.size())
                .comparison(Comparison.atLeast(clear, needed, Dimension.LENGTH))
                .term(
                        "top of the lift",
                        Micrometres.toMetres(lowest.arm().lift().most()),
                        Dimension.LENGTH)
                .term(
                        "lowest point over level ground",
                        Micrometres.toMetres(box.z().least()),
                        Dimension.LENGTH)
                .term("ground motion G", Micrometres.toMetres(lowest.groundMotion()), Dimension.LENGTH)
                .term(
                        lowest.inStrip() ? "gap to the ground" : "tallest plant with the gap over it",
                        needed,
                        Dimension.LENGTH)
                .field(lowest.inStrip() ? "policy:groundGap" : "policy:canopyGap")
                .witness(new Witness(
                        new Point3(x, y, box.z().least()),
                        new Point3(x, y, Math.min(box.z().least(), lowest.groundMotion())),
                        Dimension.LENGTH.text(clear)));
        String where = lowest.inStrip() ? "between the rows" : "over the plants";
        String what = lowest.label() + ", " + where;
        if (lowest.margin() >= 0) {
            return finding.decide("The lowest that hangs lifted, " + what + ", stays " + Dimension.LENGTH.text(clear)
                    + " over a crest where " + Dimension.LENGTH.text(needed) + " is required.");
        }
        SortedMap<String, Long> tops = new TreeMap<>();
        all.stream()
                .filter(l -> l.margin() < 0)
                .forEach(l -> tops.merge(
                        l.arm().id(), -Math.floorDiv(l.margin() - l.arm().lift().most(), STEP) * STEP, Math::max));
        return finding.propose(new RaiseLifts(tops))
                .decide("Lifted, " + what + " stays only " + Dimension.LENGTH.text(clear) + " over a crest where "
                        + Dimension.LENGTH.text(needed) + " is required; " + tops.size()
                        + (tops.size() == 1 ? " arm hangs" : " arms hang") + " too low.");
    }

    private static long middle(long least, long most) {
        return Math.floorDiv(least + most, 2L);
    }
}
