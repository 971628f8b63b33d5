package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.api.sheet.Forces;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Term;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import java.util.List;

/**
 * How far a head may really be from where its station says: backlash, tracking error, k standard deviations of the
 * position, angular play over the farthest occupied point, and the deflection of arm and beam under the head's largest
 * horizontal force. Bounded errors add.
 *
 * @param backlash m
 * @param tracking m
 * @param random k times the standard deviation, m
 * @param angular angular play times the distance of the farthest occupied point from the mount's centre, m
 * @param deflection largest horizontal force over stiffness, m
 */
record ArmAllowance(double backlash, double tracking, double random, double angular, double deflection) {

    static ArmAllowance of(Station station, double coverageFactor) {
        Arm.Tolerance t = station.arm().tolerance();
        Forces forces = station.sheet().forces();
        double horizontal = Math.hypot(forces.side().value(), forces.draft().value());
        return new ArmAllowance(
                t.backlash(),
                t.tracking(),
                coverageFactor * t.sigma(),
                t.angularPlay() * farthest(station),
                horizontal / t.stiffness());
    }

    /** Outer bound of the farthest point: the farthest corner of the box about all that the head fills at work. */
    private static double farthest(Station station) {
        Occupied head = StationSpace.headAtWork(station.sheet());
        return head.bounds()
                .map(box -> Math.sqrt(square(box.x()) + square(box.y()) + square(box.z())))
                .orElse(0.0);
    }

    private static double square(Interval extent) {
        double most = Micrometres.toMetres(Math.max(Math.abs(extent.least()), Math.abs(extent.most())));
        return most * most;
    }

    double total() {
        return backlash + tracking + random + angular + deflection;
    }

    List<Term> terms(String of) {
        return List.of(
                Term.of("backlash of " + of, backlash, Dimension.LENGTH),
                Term.of("tracking of " + of, tracking, Dimension.LENGTH),
                Term.of("k sigma of " + of, random, Dimension.LENGTH),
                Term.of("angular play of " + of + " at its farthest point", angular, Dimension.LENGTH),
                Term.of("deflection of " + of + " under its largest horizontal force", deflection, Dimension.LENGTH));
    }
}
