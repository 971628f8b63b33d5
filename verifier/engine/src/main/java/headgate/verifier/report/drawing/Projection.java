package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import java.util.List;

/** From where the scene is seen. All are parallel projections, so that lengths in the picture's plane keep their scale. */
enum Projection {
    /** From above, travel upwards in the picture: left of the carriage is left. */
    ABOVE("above", "from above", "y", "x") {
        @Override
        Flat of(Point3 p) {
            return new Flat(-p.y(), p.x());
        }

        @Override
        List<Flat> ring(Prism prism) {
            return prism.outline().vertices().stream()
                    .map(v -> new Flat(-v.y(), v.x()))
                    .toList();
        }
    },
    /** From behind, travel away from the viewer: left of the carriage is left. */
    BEHIND("behind", "from behind", "y", "z") {
        @Override
        Flat of(Point3 p) {
            return new Flat(-p.y(), p.z());
        }

        @Override
        List<Flat> ring(Prism prism) {
            Interval y = prism.outline().yExtent();
            return rectangle(new Interval(-y.most(), -y.least()), prism.height());
        }
    },
    /** From the right-hand side, travel to the right in the picture. */
    SIDE("side", "from the right-hand side", "x", "z") {
        @Override
        Flat of(Point3 p) {
            return new Flat(p.x(), p.z());
        }

        @Override
        List<Flat> ring(Prism prism) {
            return rectangle(prism.outline().xExtent(), prism.height());
        }
    };

    private final String id;
    private final String words;
    private final String across;
    private final String upwards;

    Projection(String id, String words, String across, String upwards) {
        this.id = id;
        this.words = words;
        this.across = across;
        this.upwards = upwards;
    }

    /** Where a point is seen. */
    abstract Flat of(Point3 p);

    /** The outline in which a prism is seen, exact: always in the same sense of turning. */
    abstract List<Flat> ring(Prism prism);

    /** The outline in which a flat region over a height interval is seen. */
    List<Flat> ring(List<Point> corners, Interval height) {
        if (this == ABOVE) {
            return corners.stream().map(c -> of(new Point3(c.x(), c.y(), 0))).toList();
        }
        Interval across = corners.stream()
                .map(c -> Interval.at(of(new Point3(c.x(), c.y(), 0)).right()))
                .reduce(Interval::hull)
                .orElseThrow();
        return rectangle(across, height);
    }

    /** A word for ids in the page. */
    String id() {
        return id;
    }

    /** From where it is seen, in words. */
    String words() {
        return words;
    }

    /** The carriage's axis that runs across the picture. */
    String across() {
        return across;
    }

    /** The carriage's axis that runs up the picture. */
    String upwards() {
        return upwards;
    }

    /** Coordinate of the carriage's axis at a place across the picture: left is positive for y. */
    long carriageAcross(long right) {
        return this == SIDE ? right : -right;
    }

    private static List<Flat> rectangle(Interval right, Interval up) {
        return List.of(
                new Flat(right.least(), up.least()),
                new Flat(right.most(), up.least()),
                new Flat(right.most(), up.most()),
                new Flat(right.least(), up.most()));
    }
}
