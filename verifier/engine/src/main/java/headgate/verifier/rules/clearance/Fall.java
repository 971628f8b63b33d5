package headgate.verifier.rules.clearance;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.api.sheet.Drop;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.remedy.DropChange;
import headgate.verifier.remedy.Side;
import headgate.verifier.setup.ArmAllowance;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that a head at work lets fall, at its place.
 *
 * @param station the arm with the head
 * @param number which of the head's drops, from 0
 * @param drop the drop
 * @param outline what holds all that falls, seen from above, carriage frame
 * @param allowance how far the arm may be from where it is set
 */
record Fall(Station station, int number, Drop drop, Outline outline, ArmAllowance allowance) {

    /** What the head of a station lets fall; none if it drops nothing, or does not say. */
    static List<Fall> of(Station station, double coverageFactor) {
        ArmAllowance allowance = ArmAllowance.of(station, coverageFactor);
        List<Drop> drops = station.sheet().drops().orElse(List.of());
        List<Fall> falls = new ArrayList<>();
        for (int i = 0; i < drops.size(); i++) {
            Outline own = drops.get(i).outline();
            Outline placed = (station.turned() ? own.turned() : own).shifted(station.mount());
            falls.add(new Fall(station, i, drops.get(i), placed, allowance));
        }
        return falls;
    }

    /**
     * What it takes up on its way: the column in which it falls, from the highest that the head can hold it, and the strip in
     * which it goes back with the ground.
     *
     * @param rear how far back it is followed, micrometres, carriage frame
     * @return the volume, carriage frame, z over level ground
     */
    Occupied space(long rear) {
        long lies = Math.max(
                1, Rounding.up(drop.height().value()) + station.height().groundMotion());
        Interval column = new Interval(0, Math.max(lies, held()));
        long back = Math.min(0, rear - outline.xExtent().most());
        Occupied strip =
                Occupied.of(List.of(Prism.of(outline, new Interval(0, lies)))).along(Point.ORIGIN, new Point(back, 0));
        return Occupied.of(List.of(Prism.of(outline, column))).and(strip);
    }

    /** The highest point of anything that the head holds, over level ground. */
    private long held() {
        HeadSheet sheet = station.sheet();
        long overTool = sheet.postures().stream()
                .map(Posture::carried)
                .map(Body::prisms)
                .flatMap(List::stream)
                .mapToLong(p -> p.height().most())
                .max()
                .orElse(0);
        return station.workHeights().most() + sheet.reach().height().most() + Math.max(0, overTool);
    }

    /** The change that takes it away from a side of the carriage, or takes off of it there. */
    DropChange change(Side side, long amount) {
        return new DropChange(station.head().id(), number, station.turned() ? side.turned() : side, amount);
    }

    /** {@return how reports name it} */
    String label() {
        boolean several = station.sheet().drops().orElseThrow().size() > 1;
        return (several ? "drop " + (number + 1) + " of " : "what ")
                + station.head().label() + (several ? "" : " drops") + " on arm "
                + station.arm().id();
    }
}
