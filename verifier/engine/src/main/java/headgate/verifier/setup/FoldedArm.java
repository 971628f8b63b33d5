package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Occupied;
import java.util.List;
import java.util.Optional;

/**
 * An arm, with its head if it carries one, in one shape between work and the road.
 *
 * @param arm the arm
 * @param station the arm with its head; empty if it carries none
 * @param pose where it is; empty if it is still at its work place, lifted
 * @param mount where its mount is, carriage frame, z over level ground
 * @param space what it fills, carriage frame. A head that is latched fills its stowed posture; one that is not fills
 *     whatever it can fill in any posture, since nothing holds what moves; at its work place, while the carriage stands, it
 *     is held ready or stowed. A pose that turns about x or y makes each convex prism the box about it first, an outer bound.
 *     A column goes along with its mount over the ground, unturned
 * @param head what of that its head fills, its arm's own material left out
 * @param allowance how far it may be from there
 */
public record FoldedArm(
        Arm arm,
        Optional<Station> station,
        Optional<Stance.Pose> pose,
        Point3 mount,
        Occupied space,
        Occupied head,
        ArmAllowance allowance) {

    static FoldedArm of(
            Case subject, Arm arm, Optional<Station> station, Point work, Stance.Step step, boolean onTheRoad) {
        Optional<Stance.Pose> pose = step.pose(arm.id());
        double k = subject.policy().value().coverageFactor().value();
        ArmAllowance allowance = ArmAllowance.of(arm, station.map(Station::sheet), k);
        Occupied head = head(station, pose, onTheRoad);
        if (pose.isEmpty()) {
            Interval top = StationSpace.topHeights(arm);
            Occupied space = StationSpace.placed(arm, head, false, work, top);
            Occupied alone = LiftSweep.over(arm, head.shifted(new Point3(work.x(), work.y(), 0)), top);
            Point3 mount = new Point3(work.x(), work.y(), top.least());
            return new FoldedArm(arm, station, pose, mount, space, alone, allowance);
        }
        Point3 mount = pose.get().mount();
        List<Stance.Turn> turns = pose.get().turns();
        long beam = subject.carriage().value().beam(arm.beam()).orElseThrow().x();
        Occupied column = Occupied.of(arm.column()).shifted(new Point3(mount.x() - beam, mount.y(), 0));
        Occupied alone = turned(head, turns).shifted(mount);
        Occupied space =
                alone.and(turned(Occupied.of(arm.body()), turns).shifted(mount)).and(column);
        return new FoldedArm(arm, station, pose, mount, space, alone, allowance);
    }

    /** What the head fills, as it is fitted: what its mount's pose turns and moves comes after. */
    static Occupied head(Optional<Station> station, Optional<Stance.Pose> pose, boolean onTheRoad) {
        if (station.isEmpty()) {
            return Occupied.NOTHING;
        }
        HeadSheet sheet = station.get().sheet();
        boolean latched = pose.map(Stance.Pose::latched).orElse(false);
        boolean held = pose.isEmpty() && !onTheRoad;
        Occupied head = latched
                ? Occupied.of(sheet.posture(PostureName.STOWED).orElseThrow())
                : held
                        ? StationSpace.headAtRest(sheet)
                        : StationSpace.headAtWork(sheet).and(StationSpace.headAtRest(sheet));
        return station.get().turned() ? head.turned() : head;
    }

    /** Turns about the mount's origin, one after the other. */
    static Occupied turned(Occupied space, List<Stance.Turn> turns) {
        Occupied turned = space;
        for (Stance.Turn turn : turns) {
            turned = switch (turn.axis()) {
                case X -> turned.tippedAboutX(turn.quarters());
                case Y -> turned.tippedAboutY(turn.quarters());
                case Z -> turned.quarterTurned(turn.quarters());
            };
        }
        return turned;
    }

    /** {@return true if a head on it has moving parts that nothing holds} */
    public boolean isLoose() {
        return station.isPresent() && pose.isPresent() && !pose.get().latched();
    }

    /** {@return how reports name it} */
    public String label() {
        return "arm " + arm.id() + station.map(s -> " with " + s.head().label()).orElse(" without a head");
    }
}
