package headgate.verifier.rules.mount;

import headgate.api.shape.Point3;
import headgate.api.sheet.Forces;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Carriage;
import java.util.function.ToLongFunction;

/**
 * What the plate of a head transmits at the worst, each component bounded by the sum of its largest parts.
 *
 * @param bending moment about the diameter of the plate, N m
 * @param torque moment about the plate's normal, N m
 * @param pullOff force along the normal that pulls the plate off the arm, N
 * @param inPlane force in the plane of the plate, N
 */
record PlateLoad(double bending, double torque, double pullOff, double inPlane) {

    /**
     * Works out the load of the soiled head at work.
     *
     * @param sheet the head's sheet
     * @param breakaway force at which the tool gives way, N; 0 if it does not
     * @param ground how far the frame tilts
     * @return the load
     */
    static PlateLoad of(HeadSheet sheet, double breakaway, Carriage.GroundMotion ground) {
        MassState soiled = new MassState("soiled", sheet.soiled());
        Point3 centre = soiled.point().centre();
        double weight = soiled.weight();
        double roll = StrictMath.sin(ground.roll());
        double pitch = StrictMath.sin(ground.pitch());
        Forces forces = sheet.forces();
        double along = Math.max(forces.draft().value(), breakaway);
        double side = forces.side().value();
        double upright = Math.max(forces.pull().value(), forces.press().value());
        double x = farthest(sheet, Point3::x);
        double y = farthest(sheet, Point3::y);
        double z = farthest(sheet, Point3::z);
        double aboutX =
                weight * (Math.abs(centre.yMetres()) + Math.abs(centre.zMetres()) * roll) + y * upright + z * side;
        double aboutY =
                weight * (Math.abs(centre.xMetres()) + Math.abs(centre.zMetres()) * pitch) + x * upright + z * along;
        double aboutZ = weight * (Math.abs(centre.xMetres()) * roll + Math.abs(centre.yMetres()) * pitch)
                + x * side
                + y * along;
        return new PlateLoad(
                Math.hypot(aboutX, aboutY),
                aboutZ,
                weight + forces.pull().value(),
                Math.hypot(along + weight * pitch, side + weight * roll));
    }

    private static double farthest(HeadSheet sheet, ToLongFunction<Point3> coordinate) {
        long most = sheet.reach().corners3().stream()
                .mapToLong(p -> Math.abs(coordinate.applyAsLong(p)))
                .max()
                .orElseThrow();
        return Micrometres.toMetres(most);
    }
}
