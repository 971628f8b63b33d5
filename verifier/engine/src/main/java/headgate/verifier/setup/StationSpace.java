package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Transition;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.verifier.geometry.Occupied;
import java.util.Optional;

/**
 * The space that a station's head and arm fill, carriage frame, z over level ground. At work a head may be in any
 * posture but stowed and in any of its transitions; lifted it is ready.
 */
public final class StationSpace {

    private StationSpace() {}

    /**
     * What the head fills at work, head frame: every posture but stowed, over the whole of its region, and every
     * transition.
     *
     * @param sheet the head's sheet
     * @return the space
     */
    public static Occupied headAtWork(HeadSheet sheet) {
        Occupied head = Occupied.NOTHING;
        for (Posture posture : sheet.postures()) {
            if (!posture.name().equals(PostureName.STOWED)) {
                head = head.and(Occupied.of(posture));
            }
        }
        for (Transition transition : sheet.transitions()) {
            head = head.and(Occupied.of(transition.swept()));
        }
        return head;
    }

    /**
     * What is filled at work, at every height at which the arm works.
     *
     * @param station the station
     * @return the space
     */
    public static Occupied atWork(Station station) {
        return atWork(station.arm(), station.sheet(), station.turned(), station.mount(), station.workHeights());
    }

    /**
     * What is filled from work to lifted, at every height between.
     *
     * @param station the station
     * @return the space
     */
    public static Occupied lifting(Station station) {
        return lifting(station.arm(), station.sheet(), station.turned(), station.mount(), station.heights());
    }

    /**
     * What is filled while the arm is parked: lifted, ready or stowed.
     *
     * @param station the station
     * @return the space
     */
    public static Occupied parked(Station station) {
        return waiting(station.arm(), Optional.of(station.sheet()), station.turned(), station.mount());
    }

    /**
     * What the head alone fills, without its arm, in every posture at every height at which it takes it.
     *
     * @param station the station
     * @return the space
     */
    public static Occupied head(Station station) {
        Arm arm = station.arm();
        Point3 mount = new Point3(station.mount().x(), station.mount().y(), 0);
        Occupied lifted =
                LiftSweep.over(arm, turned(station, headAtRest(station.sheet())).shifted(mount), topHeights(arm));
        if (!station.isAtWork()) {
            return lifted;
        }
        Posture ready = station.sheet().posture(PostureName.READY).orElseThrow();
        return lifted.and(
                        LiftSweep.over(arm, turned(station, Occupied.of(ready)).shifted(mount), station.heights()))
                .and(LiftSweep.over(
                        arm, turned(station, headAtWork(station.sheet())).shifted(mount), station.workHeights()));
    }

    private static Occupied turned(Station station, Occupied head) {
        return station.turned() ? head.turned() : head;
    }

    /**
     * What moves with the arm's side shift alone.
     *
     * @param station the station
     * @return the space of its column
     */
    public static Occupied column(Station station) {
        return column(station.arm(), station.mount());
    }

    private static Occupied column(Arm arm, Point mount) {
        return Occupied.of(arm.column()).shifted(new Point3(0, mount.y(), 0));
    }

    /**
     * What an arm fills while it waits at the top of its lift: with a head, that is ready or stowed or on the way between
     * the two; without one, it is its own material alone.
     *
     * @param arm the arm
     * @param sheet the sheet of its head; empty if it carries none
     * @param turned true if the head is turned by 180 degrees
     * @param mount where the mount is set
     * @return the space
     */
    public static Occupied waiting(Arm arm, Optional<HeadSheet> sheet, boolean turned, Point mount) {
        Occupied head = sheet.map(StationSpace::headAtRest).orElse(Occupied.NOTHING);
        return placed(arm, head, turned, mount, topHeights(arm));
    }

    static Interval topHeights(Arm arm) {
        return new Interval(arm.lift().most(), Station.top(arm));
    }

    /**
     * What a head fills at rest, head frame: ready, stowed, or on the way between the two.
     *
     * @param sheet the head's sheet
     * @return the space
     */
    public static Occupied headAtRest(HeadSheet sheet) {
        Occupied head = Occupied.NOTHING;
        for (Posture posture : sheet.postures()) {
            if (rests(posture.name())) {
                head = head.and(Occupied.of(posture));
            }
        }
        for (Transition transition : sheet.transitions()) {
            if (rests(transition.from()) && rests(transition.to())) {
                head = head.and(Occupied.of(transition.swept()));
            }
        }
        return head;
    }

    private static boolean rests(PostureName name) {
        return name.equals(PostureName.READY) || name.equals(PostureName.STOWED);
    }

    static Occupied atWork(Arm arm, HeadSheet sheet, boolean turned, Point mount, Interval heights) {
        return placed(arm, headAtWork(sheet), turned, mount, heights);
    }

    /** What stands still while a head acts: fixed material of every posture but stowed, and every transition. */
    static Occupied fixedAtWork(Arm arm, HeadSheet sheet, boolean turned, Point mount, Interval heights) {
        Occupied head = Occupied.NOTHING;
        for (Posture posture : sheet.postures()) {
            if (!posture.name().equals(PostureName.STOWED)) {
                head = head.and(Occupied.of(posture.fixed()));
            }
        }
        for (Transition transition : sheet.transitions()) {
            head = head.and(Occupied.of(transition.swept()));
        }
        return placed(arm, head, turned, mount, heights);
    }

    static Occupied lifting(Arm arm, HeadSheet sheet, boolean turned, Point mount, Interval heights) {
        Posture ready = sheet.posture(PostureName.READY).orElseThrow();
        return placed(arm, Occupied.of(ready), turned, mount, heights);
    }

    static Occupied placed(Arm arm, Occupied head, boolean turned, Point mount, Interval heights) {
        Occupied lifted = (turned ? head.turned() : head).and(Occupied.of(arm.body()));
        return LiftSweep.over(arm, lifted.shifted(new Point3(mount.x(), mount.y(), 0)), heights)
                .and(column(arm, mount));
    }
}
