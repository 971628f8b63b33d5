package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import java.util.List;
import java.util.Optional;

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

    /** The box around what lies in a region seen from above; empty if nothing does. */
    Optional<Box> boxWithin(Box region) {
        Optional<Interval> x = extent(ring.y, ring.x, region.y()).flatMap(e -> common(e, region.x()));
        Optional<Interval> y = extent(ring.x, ring.y, region.x()).flatMap(e -> common(e, region.y()));
        return x.isEmpty() || y.isEmpty() ? Optional.empty() : Optional.of(new Box(x.get(), y.get(), height));
    }

    private static Optional<Interval> common(Interval a, Interval b) {
        long least = Math.max(a.least(), b.least());
        long most = Math.min(a.most(), b.most());
        return least <= most ? Optional.of(new Interval(least, most)) : Optional.empty();
    }

    /** The extent along one axis of what lies in a range along the other, rounded outward. */
    private static Optional<Interval> extent(long[] across, long[] along, Interval range) {
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (int i = 0; i < across.length; i++) {
            if (range.contains(across[i])) {
                least = Math.min(least, along[i]);
                most = Math.max(most, along[i]);
            }
            int next = i + 1 == across.length ? 0 : i + 1;
            for (long cut : new long[] {range.least(), range.most()}) {
                if ((across[i] < cut && cut < across[next]) || (across[i] > cut && cut > across[next])) {
                    long gain = (along[next] - along[i]) * (cut - across[i]);
                    long span = across[next] - across[i];
                    least = Math.min(least, along[i] + Math.floorDiv(gain, span));
                    most = Math.max(most, along[i] - Math.floorDiv(-gain, span));
                }
            }
        }
        return least <= most ? Optional.of(new Interval(least, most)) : Optional.empty();
    }

    Prism prism() {
        return Prism.of(ring.outline(), height);
    }
}
