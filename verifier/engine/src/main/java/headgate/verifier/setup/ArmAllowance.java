package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Term;
import headgate.verifier.geometry.Occupied;
import java.util.List;
import java.util.Optional;

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
public record ArmAllowance(double backlash, double tracking, double random, double angular, double deflection) {

    /**
     * The allowance of an arm at work.
     *
     * @param station the arm with its head
     * @param coverageFactor the factor k that turns a standard deviation into a bound
     * @return the allowance
     */
    public static ArmAllowance of(Station station, double coverageFactor) {
        return of(station.arm(), Optional.of(station.sheet()), coverageFactor);
    }

    /**
     * The allowance of an arm, with a head or without.
     *
     * @param arm the arm
     * @param sheet the sheet of its head; empty if it carries none, and then only its own play counts
     * @param coverageFactor the factor k that turns a standard deviation into a bound
     * @return the allowance
     */
    public static ArmAllowance of(Arm arm, Optional<HeadSheet> sheet, double coverageFactor) {
        Arm.Tolerance t = arm.tolerance();
        double horizontal = sheet.map(HeadSheet::forces)
                .map(f -> Math.hypot(f.side().value(), f.draft().value()))
                .orElse(0.0);
        Occupied filled = sheet.map(StationSpace::headAtWork).orElseGet(() -> Occupied.of(arm.body()));
        return new ArmAllowance(
                t.backlash(),
                t.tracking(),
                coverageFactor * t.sigma(),
                t.angularPlay() * farthest(filled),
                horizontal / t.stiffness());
    }

    /** Outer bound of the farthest point: the farthest corner of the box about all that is filled. */
    private static double farthest(Occupied filled) {
        return filled.bounds()
                .map(box -> Math.sqrt(square(box.x()) + square(box.y()) + square(box.z())))
                .orElse(0.0);
    }

    private static double square(Interval extent) {
        double most = Micrometres.toMetres(Math.max(Math.abs(extent.least()), Math.abs(extent.most())));
        return most * most;
    }

    /** {@return the sum of all, m} */
    public double total() {
        return backlash + tracking + random + angular + deflection;
    }

    /**
     * The terms, as a finding shows them.
     *
     * @param of the arm, in words
     * @return the terms
     */
    public List<Term> terms(String of) {
        return List.of(
                Term.of("backlash of " + of, backlash, Dimension.LENGTH),
                Term.of("tracking of " + of, tracking, Dimension.LENGTH),
                Term.of("k sigma of " + of, random, Dimension.LENGTH),
                Term.of("angular play of " + of + " at its farthest point", angular, Dimension.LENGTH),
                Term.of("deflection of " + of + " under its largest horizontal force", deflection, Dimension.LENGTH));
    }
}
