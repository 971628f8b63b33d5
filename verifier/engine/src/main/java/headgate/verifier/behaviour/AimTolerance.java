package headgate.verifier.behaviour;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import java.util.List;
import java.util.OptionalDouble;

/** How far the tool point may be from the plant: the aim tolerance, or the treated radius if that is less. */
final class AimTolerance {

    /** A tool point lies on the grid, at most half a micrometre in each axis from where the head meant it: m. */
    private static final double GRID = 1e-6;

    private AimTolerance() {}

    /** {@return the tolerance while an action treats or is in the soil, m} */
    static double of(Asked asked) {
        double aim = asked.sheet().accuracy().aimTolerance().value();
        OptionalDouble treated = asked.steps().stream()
                .flatMap(s -> s.phase().treated().stream())
                .mapToDouble(AimTolerance::radius)
                .min();
        return Math.min(aim, treated.orElse(aim)) + GRID;
    }

    /** The largest disc about the tool point that is treated as a whole; 0 if the tool point is beside it. */
    private static double radius(Outline treated) {
        if (!treated.contains(Point.ORIGIN)) {
            return 0.0;
        }
        double least = Double.POSITIVE_INFINITY;
        List<Point> corners = treated.vertices();
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            least = Math.min(least, fromOrigin(corners.get(j), corners.get(i)));
        }
        return least;
    }

    private static double fromOrigin(Point a, Point b) {
        double ax = a.xMetres();
        double ay = a.yMetres();
        double dx = b.xMetres() - ax;
        double dy = b.yMetres() - ay;
        double share = Math.max(0.0, Math.min(1.0, -(ax * dx + ay * dy) / (dx * dx + dy * dy)));
        double x = ax + share * dx;
        double y = ay + share * dy;
        return Math.sqrt(x * x + y * y);
    }
}
