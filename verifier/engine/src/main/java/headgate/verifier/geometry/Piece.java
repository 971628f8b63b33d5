package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import java.util.List;

/** A convex prism with its bounds at hand. */
record Piece(Ring ring, Interval height, Box box) {

    static Piece of(Ring ring, Interval height) {
        long xLeast = Long.MAX_VALUE;
        long xMost = Long.MIN_VALUE;
        long yLeast = Long.MAX_VALUE;
        long yMost = Long.MIN_VALUE;
        for (int i = 0; i < ring.size(); i++) {
            xLeast = Math.min(xLeast, ring.x[i]);
            xMost = Math.max(xMost, ring.x[i]);
            yLeast = Math.min(yLeast, ring.y[i]);
            yMost = Math.max(yMost, ring.y[i]);
        }
        return new Piece(ring, height, new Box(new Interval(xLeast, xMost), new Interval(yLeast, yMost), height));
    }

    static List<Piece> of(Prism prism) {
        return ConvexParts.of(prism.outline()).stream()
                .map(part -> of(Ring.of(part), prism.height()))
                .toList();
    }

    Piece plus(Ring other, Interval rise) {
        return of(ring.plus(other), height.plus(rise));
    }

    Piece shifted(long dx, long dy, long dz) {
        return of(ring.shifted(dx, dy), height.shifted(dz));
    }

    Piece turned() {
        return of(ring.turned(), height);
    }

    Piece quarterTurned(int quarters) {
        return of(ring.quarterTurned(quarters), height);
    }

    boolean meets(Piece other) {
        return box.squaredGapTo(other.box) == 0
                && Planar.between(ring, other.ring).square().equals(SquaredDistance.ZERO);
    }

    boolean isNearerThan(long distance, Piece other) {
        return box.squaredGapTo(other.box) < distance * distance
                && Planar.between(ring, other.ring)
                                .square()
                                .withVertical(height.gapTo(other.height))
                                .compareToDistance(distance)
                        < 0;
    }

    Prism prism() {
        return Prism.of(ring.outline(), height);
    }
}
