package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.shape.Outline;
import java.util.List;
import java.util.Objects;

/**
 * Where a head lets something fall, such as a pulled weed. What has fallen lies on the ground, and the carriage leaves it
 * behind.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Drop {

    /** The highest that anything may lie, m. */
    private static final double HIGHEST = 1.0;

    private final Outline outline;
    private final Figure height;

    private Drop(Outline outline, Figure height) {
        this.outline = outline;
        this.height = height;
    }

    /**
     * Makes a drop.
     *
     * @param outline holds all that falls, on its way down and where it comes to lie, seen from above, head frame
     * @param height how high it lies on the ground, m; 0 to 1
     * @return the drop
     * @throws headgate.api.problem.InvalidValueException if the height is out of bounds
     */
    public static Drop over(Outline outline, Figure height) {
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(height, "height");
        ProblemCollector problems = new ProblemCollector("drop");
        problems.within("height", height.value(), 0.0, HIGHEST, "m");
        problems.throwIfAny();
        return new Drop(outline, height);
    }

    /** {@return what holds all that falls, seen from above, head frame} */
    public Outline outline() {
        return outline;
    }

    /** {@return how high it lies on the ground, m} */
    public Figure height() {
        return height;
    }

    private List<Object> parts() {
        return List.of(outline, height);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Drop that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return where it falls and how high it lies} */
    @Override
    public String toString() {
        return "drop " + height + " m high over " + outline;
    }
}
