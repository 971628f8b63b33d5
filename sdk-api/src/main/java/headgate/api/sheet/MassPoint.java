package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.shape.Point3;
import java.util.List;
import java.util.Objects;

/**
 * A mass and its centre in one state of a head.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class MassPoint {

    private final Figure mass;
    private final Point3 centre;

    private MassPoint(Figure mass, Point3 centre) {
        this.mass = mass;
        this.centre = centre;
    }

    /**
     * Makes a mass point.
     *
     * @param mass the mass, kg; more than 0, at most 1000
     * @param centre the centre of mass, head frame
     * @return the mass point
     * @throws headgate.api.problem.InvalidValueException if the mass is out of bounds
     */
    public static MassPoint of(Figure mass, Point3 centre) {
        ProblemCollector problems = new ProblemCollector("mass");
        problems.within("mass", mass.value(), 1e-3, 1000.0, "kg");
        problems.throwIfAny();
        return new MassPoint(mass, Objects.requireNonNull(centre, "centre"));
    }

    /** {@return the mass, kg; more than 0, at most 1000} */
    public Figure mass() {
        return mass;
    }

    /** {@return the centre of mass, head frame} */
    public Point3 centre() {
        return centre;
    }

    private List<Object> parts() {
        return List.of(mass, centre);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MassPoint that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return mass and centre} */
    @Override
    public String toString() {
        return mass + " kg at " + centre;
    }
}
