package headgate.runtime.wire;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.task.Velocity;

/** Shapes as bytes: coordinates in whole micrometres. */
final class ShapeCodec {

    private ShapeCodec() {}

    static void point(WireWriter out, Point p) {
        out.number(p.x());
        out.number(p.y());
    }

    static Point point(WireReader in) {
        return new Point(in.longNumber(), in.longNumber());
    }

    static void point3(WireWriter out, Point3 p) {
        out.number(p.x());
        out.number(p.y());
        out.number(p.z());
    }

    static Point3 point3(WireReader in) {
        return new Point3(in.longNumber(), in.longNumber(), in.longNumber());
    }

    static void velocity(WireWriter out, Velocity v) {
        out.number(v.x());
        out.number(v.y());
    }

    static Velocity velocity(WireReader in) {
        return new Velocity(in.longNumber(), in.longNumber());
    }

    static void interval(WireWriter out, Interval i) {
        out.number(i.least());
        out.number(i.most());
    }

    static Interval interval(WireReader in) {
        return new Interval(in.longNumber(), in.longNumber());
    }

    static void outline(WireWriter out, Outline o) {
        // A hull may have more corners than an outline that is made anew may have: whoever gives it learns so here.
        if (o.vertices().size() > Outline.MOST_VERTICES) {
            throw new WireFormatException("an outline must have at most " + Outline.MOST_VERTICES + " corners, but has "
                    + o.vertices().size());
        }
        out.list(o.vertices(), ShapeCodec::point);
    }

    static Outline outline(WireReader in) {
        return Outline.of(in.list(ShapeCodec::point));
    }

    static void body(WireWriter out, Body b) {
        out.list(b.prisms(), ShapeCodec::prism);
    }

    static Body body(WireReader in) {
        return Body.of(in.list(ShapeCodec::prism));
    }

    private static void prism(WireWriter out, Prism p) {
        outline(out, p.outline());
        interval(out, p.height());
    }

    private static Prism prism(WireReader in) {
        Outline outline = outline(in);
        return Prism.of(outline, interval(in));
    }
}
