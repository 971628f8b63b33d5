package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.runtime.carriage.Stance;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Swing;
import java.util.List;

/**
 * The way of one arm from one shape to the next. It goes as its pose says, move after move; what no move names happens last, at
 * once: then the mount goes straight, and at every place of that way it may have any part of the turn behind it.
 */
final class ArmWay {

    private final FoldedArm from;
    private final FoldedArm to;
    private final Occupied own;
    private final Occupied column;
    private final List<Stance.Turn> turnsBefore;
    private final List<Stance.Turn> turnsAfter;
    private final Interval spread;

    private Place at;
    private Occupied carried;
    private boolean turned;
    private Occupied filled;

    /** Where a mount is; at the top of a lift it may be at several heights. */
    private record Place(Point plan, Interval height) {}

    ArmWay(FoldedArm from, boolean fromRoad, FoldedArm to, boolean toRoad, long beam) {
        this.from = from;
        this.to = to;
        this.own = FoldedArm.head(from.station(), from.pose(), fromRoad)
                .and(FoldedArm.head(to.station(), to.pose(), toRoad))
                .and(Occupied.of(to.arm().body()));
        this.column = Occupied.of(to.arm().column()).shifted(new Point3(-beam, 0, 0));
        this.turnsBefore = from.pose().map(Stance.Pose::turns).orElse(List.of());
        this.turnsAfter = to.pose().map(Stance.Pose::turns).orElse(List.of());
        // A lift that swings is not quite over its work place when it is lifted.
        this.spread =
                LiftSweep.forward(to.arm(), StationSpace.topHeights(to.arm())).hull(Interval.at(0));
        this.at = place(from);
        this.carried = FoldedArm.turned(own, turnsBefore);
        this.turned = turnsBefore.equals(turnsAfter);
        this.filled = from.space().and(to.space());
    }

    private static Place place(FoldedArm arm) {
        Interval height = arm.pose().isPresent() ? Interval.at(arm.mount().z()) : StationSpace.topHeights(arm.arm());
        return new Place(arm.mount().plan(), height);
    }

    /** The arm, with all that it fills. */
    FoldedArm arm() {
        if (!(from.pose().isEmpty() && to.pose().isEmpty())) {
            run();
        }
        Point3 a = from.mount();
        Point3 b = to.mount();
        Point3 farthest = new Point3(farther(a.x(), b.x()), farther(a.y(), b.y()), Math.min(a.z(), b.z()));
        return new FoldedArm(to.arm(), to.station(), to.pose(), farthest, filled, to.head(), to.allowance());
    }

    private static long farther(long a, long b) {
        return Math.abs(a) > Math.abs(b) ? a : b;
    }

    private void run() {
        Place goal = place(to);
        for (Stance.Move move : to.pose().map(Stance.Pose::way).orElse(List.of())) {
            switch (move) {
                case X -> go(new Place(new Point(goal.plan().x(), at.plan().y()), at.height()));
                case Y -> go(new Place(new Point(at.plan().x(), goal.plan().y()), at.height()));
                case Z -> go(new Place(at.plan(), goal.height()));
                case TURN -> {
                    fill(swung(), at);
                    carried = FoldedArm.turned(own, turnsAfter);
                    turned = true;
                }
            }
        }
        if (!turned) {
            carried = swung();
        }
        go(goal);
    }

    private void go(Place next) {
        fill(carried, next);
        at = next;
    }

    private void fill(Occupied what, Place next) {
        filled = filled.and(swept(what, next).overLift(at.height().hull(next.height())))
                .and(swept(column, next));
    }

    private Occupied swept(Occupied what, Place next) {
        return what.along(at.plan(), next.plan()).along(new Point(spread.least(), 0), new Point(spread.most(), 0));
    }

    /**
     * What is swept by turning: the turns that the two poses begin with stay; the rest of the first is taken back and the rest of
     * the second is done. If both rests are one turn about one axis, it only turns by the difference.
     */
    private Occupied swung() {
        int same = 0;
        while (same < Math.min(turnsBefore.size(), turnsAfter.size())
                && turnsBefore.get(same).equals(turnsAfter.get(same))) {
            same++;
        }
        Occupied base = FoldedArm.turned(own, turnsBefore.subList(0, same));
        List<Stance.Turn> back = turnsBefore.subList(same, turnsBefore.size());
        List<Stance.Turn> on = turnsAfter.subList(same, turnsAfter.size());
        if (back.size() == 1
                && on.size() == 1
                && back.get(0).axis() == on.get(0).axis()) {
            return swing(
                    FoldedArm.turned(base, back),
                    back.get(0).axis(),
                    on.get(0).quarters() - back.get(0).quarters());
        }
        return swings(base, back).and(swings(base, on));
    }

    private static Occupied swings(Occupied base, List<Stance.Turn> turns) {
        Occupied all = base;
        for (int i = 0; i < turns.size(); i++) {
            Stance.Turn turn = turns.get(i);
            all = all.and(swing(FoldedArm.turned(base, turns.subList(0, i)), turn.axis(), turn.quarters()));
        }
        return all;
    }

    private static Occupied swing(Occupied space, Stance.Axis axis, int quarters) {
        return switch (axis) {
            case X -> Swing.aboutX(space, quarters);
            case Y -> Swing.aboutY(space, quarters);
            case Z -> Swing.aboutZ(space, quarters);
        };
    }
}
