package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the tool point can be in a posture, head frame: one point, or an outline over a height interval. The outline may
 * be non-convex; it then says what can be treated, while clearance uses its convex hull, since the straight way between
 * two of its points may leave it.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Reach {

    private final Point point;
    private final @Nullable Outline outline;
    private final Interval height;

    private Reach(Point point, @Nullable Outline outline, Interval height) {
        this.point = point;
        this.outline = outline;
        this.height = height;
    }

    /**
     * A reach of one point.
     *
     * @param toolPoint the only place of the tool point
     * @return the reach
     */
    public static Reach at(Point3 toolPoint) {
        return new Reach(toolPoint.plan(), null, Interval.at(toolPoint.z()));
    }

    /**
     * A reach over an area.
     *
     * @param outline where the tool point can be, seen from above
     * @param height the tool point's height interval; it may be a single height
     * @return the reach
     */
    public static Reach over(Outline outline, Interval height) {
        return new Reach(outline.vertices().get(0), Objects.requireNonNull(outline), Objects.requireNonNull(height));
    }

    /** {@return the outline, or empty if the reach is one point seen from above} */
    public Optional<Outline> outline() {
        return Optional.ofNullable(outline);
    }

    /** {@return the height interval of the tool point} */
    public Interval height() {
        return height;
    }

    /** {@return the corners seen from above: the only point, or the outline's vertices} */
    public List<Point> corners() {
        return outline == null ? List.of(point) : outline.vertices();
    }

    /** {@return every corner of the outline at both ends of the height interval, without repeats} */
    public List<Point3> corners3() {
        List<Point3> result = new ArrayList<>();
        for (Point p : corners()) {
            result.add(new Point3(p.x(), p.y(), height.least()));
            if (height.length() > 0) {
                result.add(new Point3(p.x(), p.y(), height.most()));
            }
        }
        return result;
    }

    /**
     * Says whether a tool point lies in the reach, boundary included; exact.
     *
     * @param toolPoint the point, head frame
     * @return true if it does
     */
    public boolean contains(Point3 toolPoint) {
        boolean inPlan = outline == null ? point.equals(toolPoint.plan()) : outline.contains(toolPoint.plan());
        return inPlan && height.contains(toolPoint.z());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Reach that
                && point.equals(that.point)
                && Objects.equals(outline, that.outline)
                && height.equals(that.height);
    }

    @Override
    public int hashCode() {
        return Objects.hash(point, outline, height);
    }

    /** {@return the point or outline, and the height} */
    @Override
    public String toString() {
        return "reach " + (outline == null ? point : outline) + " over z " + height;
    }
}
