package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Boxes, their faces included, and what they have in common. */
final class Boxes {

    private Boxes() {}

    static Optional<Box> common(Box a, Box b) {
        Optional<Interval> x = common(a.x(), b.x());
        Optional<Interval> y = common(a.y(), b.y());
        Optional<Interval> z = common(a.z(), b.z());
        return x.isPresent() && y.isPresent() && z.isPresent()
                ? Optional.of(new Box(x.get(), y.get(), z.get()))
                : Optional.empty();
    }

    private static Optional<Interval> common(Interval a, Interval b) {
        long least = Math.max(a.least(), b.least());
        long most = Math.min(a.most(), b.most());
        return least <= most ? Optional.of(new Interval(least, most)) : Optional.empty();
    }

    /** The box around what one convex prism and a box have in common, rounded outward by less than a micrometre. */
    static Optional<Box> within(Occupied convex, Box region) {
        return convex.boxesWithin(region).stream()
                .flatMap(b -> common(b, region).stream())
                .findFirst();
    }

    /** Boxes that hold, together, what of a convex reach no zone closes. */
    static List<Box> open(Occupied reach, List<Zone> closed) {
        List<Box> left = new ArrayList<>();
        for (Rest rest : Rest.of(Zone.around(reach.bounds().orElseThrow().grown(Zone.TENTH)), closed)) {
            within(reach, rest.box()).ifPresent(left::add);
        }
        return left;
    }

    /** All differences of a point in one of some boxes less a point in one of others. */
    static List<Box> differences(List<Box> from, List<Box> less) {
        return from.stream()
                .flatMap(a ->
                        less.stream().map(b -> new Box(minus(a.x(), b.x()), minus(a.y(), b.y()), minus(a.z(), b.z()))))
                .toList();
    }

    private static Interval minus(Interval a, Interval b) {
        return new Interval(a.least() - b.most(), a.most() - b.least());
    }
}
