package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Transition;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.geometry.Occupied;

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
        return placed(station, headAtWork(station.sheet()), station.workHeights());
    }

    /**
     * What is filled from work to lifted, at every height between.
     *
     * @param station the station
     * @return the space
     */
    public static Occupied lifting(Station station) {
        Posture ready = station.sheet().posture(PostureName.READY).orElseThrow();
        return placed(station, Occupied.of(ready), station.heights());
    }

    private static Occupied placed(Station station, Occupied head, Interval heights) {
        Occupied turned = station.turned() ? head.turned() : head;
        return turned.and(Occupied.of(station.arm().body()))
                .shifted(new Point3(station.mount().x(), station.mount().y(), 0))
                .overLift(heights);
    }
}
