package headgate.verifier.remedy;

import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.verifier.geometry.Clip;
import java.util.List;

/** A side of a head, in the head frame. */
public enum Side {
    /** Towards the front. */
    FRONT("+x"),
    /** Towards the rear. */
    REAR("-x"),
    /** Towards the left. */
    LEFT("+y"),
    /** Towards the right. */
    RIGHT("-y");

    private final String axis;

    Side(String axis) {
        this.axis = axis;
    }

    /** {@return the axis and its direction, as {@code +y}} */
    public String axis() {
        return axis;
    }

    /** {@return the side as seen from a head that is turned by 180 degrees} */
    public Side turned() {
        return switch (this) {
            case FRONT -> REAR;
            case REAR -> FRONT;
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
        };
    }

    /** The way to this side, 1 micrometre long. */
    Point unit() {
        return switch (this) {
            case FRONT -> new Point(1, 0);
            case REAR -> new Point(-1, 0);
            case LEFT -> new Point(0, 1);
            case RIGHT -> new Point(0, -1);
        };
    }

    /** How far a point stands out on this side of the origin, micrometres. */
    long extent(Point p) {
        return switch (this) {
            case FRONT -> p.x();
            case REAR -> -p.x();
            case LEFT -> p.y();
            case RIGHT -> -p.y();
        };
    }

    /** How far some points stand out on this side of the origin at most, micrometres. */
    long extent(List<Point> points) {
        return points.stream().mapToLong(this::extent).max().orElseThrow();
    }

    /** What a prism keeps if nothing may stand out further than so far on this side. */
    List<Prism> keep(Prism prism, long extent) {
        return switch (this) {
            case FRONT -> Clip.keepUpTo(prism, Clip.Axis.X, extent);
            case REAR -> Clip.keepFrom(prism, Clip.Axis.X, -extent);
            case LEFT -> Clip.keepUpTo(prism, Clip.Axis.Y, extent);
            case RIGHT -> Clip.keepFrom(prism, Clip.Axis.Y, -extent);
        };
    }
}
