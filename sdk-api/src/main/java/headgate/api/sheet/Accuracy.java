package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import java.util.List;

/**
 * How well a head puts its tool point where it was asked to.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Accuracy {

    private final Figure standardUncertainty;
    private final Figure aimTolerance;

    private Accuracy(Figure standardUncertainty, Figure aimTolerance) {
        this.standardUncertainty = standardUncertainty;
        this.aimTolerance = aimTolerance;
    }

    /**
     * Makes an accuracy.
     *
     * @param standardUncertainty standard uncertainty per horizontal axis, m; 0 to 1
     * @param aimTolerance how far off the tool point may be and still succeed, m; more than 0, at most 1
     * @return the accuracy
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds
     */
    public static Accuracy of(Figure standardUncertainty, Figure aimTolerance) {
        ProblemCollector problems = new ProblemCollector("accuracy");
        problems.within("standardUncertainty", standardUncertainty.value(), 0.0, 1.0, "m");
        problems.within("aimTolerance", aimTolerance.value(), 1e-6, 1.0, "m");
        problems.throwIfAny();
        return new Accuracy(standardUncertainty, aimTolerance);
    }

    /** {@return the standard uncertainty of the tool point in each horizontal axis, m} */
    public Figure standardUncertainty() {
        return standardUncertainty;
    }

    /** {@return how far from the plant the tool point may be and still succeed, m} */
    public Figure aimTolerance() {
        return aimTolerance;
    }

    private List<Object> parts() {
        return List.of(standardUncertainty, aimTolerance);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Accuracy that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return uncertainty and tolerance} */
    @Override
    public String toString() {
        return standardUncertainty + " m, aims within " + aimTolerance + " m";
    }
}
