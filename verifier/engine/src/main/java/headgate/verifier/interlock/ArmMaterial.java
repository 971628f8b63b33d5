package headgate.verifier.interlock;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.sheet.Transition;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.LiftSweep;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import java.util.ArrayList;
import java.util.List;

/**
 * An arm's material by how it moves, carriage frame. Over all postures of work together, which is an outer bound where one
 * posture fills less than another.
 *
 * @param resting what it fills while it does not act: ready at any height from work to lifted, and parked
 * @param fixed what stands still while it acts, at any height of work
 * @param moving what moves with the tool point, for a tool point at the mount's origin, at any height of work
 * @param reach where the tool point can be, seen from the mount, on its ways between postures too: the hull of all regions
 * @param ready the ready tool point, seen from the mount
 */
record ArmMaterial(Occupied resting, Occupied fixed, Occupied moving, Occupied reach, Point3 ready) {

    /** Most convex prisms of a moving body that are looked at one by one. */
    private static final int MOST_MOVING = 48;

    static ArmMaterial of(ArmStance stance) {
        return stance.station()
                .filter(Station::isAtWork)
                .map(ArmMaterial::working)
                .orElseGet(() -> new ArmMaterial(
                        stance.space(), Occupied.NOTHING, Occupied.NOTHING, Occupied.NOTHING, Point3.ORIGIN));
    }

    private static ArmMaterial working(Station station) {
        Occupied fixed = Occupied.of(station.arm().body());
        Occupied moving = Occupied.NOTHING;
        List<Reach> regions = new ArrayList<>();
        for (Posture posture : station.sheet().postures()) {
            if (!posture.name().equals(PostureName.STOWED)) {
                fixed = fixed.and(turned(station, posture.fixed()));
                moving = moving.and(turned(station, posture.moving())).and(turned(station, posture.carried()));
                regions.add(posture.region());
            }
        }
        for (Transition transition : station.sheet().transitions()) {
            fixed = fixed.and(turned(station, transition.swept()));
        }
        Point3 mount = new Point3(station.mount().x(), station.mount().y(), 0);
        Interval heights = station.workHeights();
        Point3 ready = station.sheet().readyToolPoint();
        return new ArmMaterial(
                StationSpace.lifting(station).and(StationSpace.parked(station)),
                LiftSweep.over(station.arm(), fixed.shifted(mount), heights).and(StationSpace.column(station)),
                LiftSweep.over(station.arm(), coarse(moving).shifted(mount), heights),
                turned(station, Occupied.hullOf(regions)),
                station.turned() ? ready.turned() : ready);
    }

    /** A moving body of very many prisms counts as the box around it: sums of all with all would take too long. */
    private static Occupied coarse(Occupied moving) {
        return moving.prisms().size() <= MOST_MOVING ? moving : moving.boxed();
    }

    private static Occupied turned(Station station, Body body) {
        return turned(station, Occupied.of(body));
    }

    private static Occupied turned(Station station, Occupied space) {
        return station.turned() ? space.turned() : space;
    }
}
