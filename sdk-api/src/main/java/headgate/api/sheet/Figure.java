package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import java.util.Objects;

/** A number that a head says of itself, in SI, with how it is known. The field that takes it says the unit. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Figure {

    private final double value;
    private final Basis basis;

    private Figure(double value, Basis basis) {
        this.value = value;
        this.basis = basis;
    }

    /**
     * A figure that was measured on a head of this revision.
     *
     * @param value the figure, SI
     * @return the marked figure
     */
    public static Figure measured(double value) {
        return new Figure(value, Basis.MEASURED);
    }

    /**
     * A figure that was calculated from drawings or data sheets.
     *
     * @param value the figure, SI
     * @return the marked figure
     */
    public static Figure calculated(double value) {
        return new Figure(value, Basis.CALCULATED);
    }

    /**
     * A figure that is only assumed so far.
     *
     * @param value the figure, SI
     * @return the marked figure
     */
    public static Figure assumed(double value) {
        return new Figure(value, Basis.ASSUMED);
    }

    /**
     * A figure with a basis given.
     *
     * @param value the figure, SI
     * @param basis how it is known
     * @return the marked figure
     */
    public static Figure of(double value, Basis basis) {
        return new Figure(value, Objects.requireNonNull(basis, "basis"));
    }

    /** {@return the figure, SI} */
    public double value() {
        return value;
    }

    /** {@return how it is known} */
    public Basis basis() {
        return basis;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Figure that && Double.compare(value, that.value) == 0 && basis.equals(that.basis);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, basis);
    }

    /** {@return the figure and how it is known} */
    @Override
    public String toString() {
        return value + " (" + basis + ")";
    }
}
