package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.geometry.OtherEngine;
import headgate.verifier.interlock.RandomPair.Shape;
import headgate.verifier.interlock.RandomPair.Side;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Counts and worst figures over random pairs of arms: what interlocks allow, against another engine's distances. */
final class CoincidenceTally {

    /** Pair number i is made from this plus i. */
    static final long SEED = 20_261_125L;

    private static final double GAP = 0.040;
    private static final int COINCIDENCES = 30;
    private static final int INSTANTS = 6;

    int pairs;
    int interlocks;
    int zones;
    int neverTogether;
    int withForbiddenPlaces;
    long allowed;
    long refused;
    long refusedAndTooNear;
    long checks;
    /** How many allowed configurations are within a millimetre of the gap: the samples come near the worst case. */
    long within1Millimetre;

    /** Largest amount by which an allowed configuration is nearer than the gap, micrometres; negative if none is. */
    double mostTooNear = Double.NEGATIVE_INFINITY;

    /** What the zones of each interlock close at most besides what is too near, in the set where that is most. */
    final List<Double> excesses = new ArrayList<>();

    private final MessageDigest digest = sha256();

    static CoincidenceTally of(int from, int to) {
        CoincidenceTally tally = new CoincidenceTally();
        for (int i = from; i < to; i++) {
            tally.add(new SplittableRandom(SEED + i));
        }
        return tally;
    }

    private void add(SplittableRandom random) {
        RandomPair pair = RandomPair.of(random);
        pairs++;
        Optional<Interlock> made =
                InterlockMaker.of(pair.right().atWork(), pair.left().atWork(), GAP);
        if (made.isEmpty() || (made.get().zones() == 0 && !made.get().neverTogether())) {
            return;
        }
        Interlock interlock = made.get();
        interlocks++;
        zones += interlock.zones();
        if (interlock.zones() > 0) {
            excesses.add(interlock.excess());
        }
        neverTogether += interlock.neverTogether() ? 1 : 0;
        withForbiddenPlaces +=
                interlock.firstNever().isEmpty() && interlock.secondNever().isEmpty() ? 0 : 1;
        for (int i = 0; i < COINCIDENCES; i++) {
            List<ToolWay> right = ways(random, pair.right());
            List<ToolWay> left =
                    nearAFace(random, interlock, right, pair.left()).orElseGet(() -> ways(random, pair.left()));
            boolean may = interlock.mayCoincide(right, left);
            digest.update((byte) (may ? 1 : 0));
            double least = together(random, pair, right, left);
            if (may) {
                allowed++;
                see(least);
            } else {
                refused++;
                refusedAndTooNear += least < GAP * 1e6 ? 1 : 0;
            }
            if (interlock.firstMayAct(right)) {
                see(whileOneRests(random, pair.right(), right, pair.left()));
            }
            if (interlock.secondMayAct(left)) {
                see(whileOneRests(random, pair.left(), left, pair.right()));
            }
        }
        digest.update(
                ByteBuffer.allocate(Integer.BYTES).putInt(interlock.zones()).array());
    }

    /** The excess that a share of all interlocks do not go beyond. */
    double excess(double share) {
        return excesses.stream()
                .sorted()
                .skip((long) (share * (excesses.size() - 1)))
                .findFirst()
                .orElseThrow();
    }

    private void see(double allowedDistance) {
        mostTooNear = Math.max(mostTooNear, GAP * 1e6 - allowedDistance);
        within1Millimetre += allowedDistance < GAP * 1e6 + 1000 ? 1 : 0;
    }

    /** Two straight ways, or a tool point that stands. */
    private static List<ToolWay> ways(SplittableRandom random, Side side) {
        Point3 a = side.somewhere(random);
        if (random.nextInt(4) == 0) {
            return List.of(new ToolWay(a, a));
        }
        Point3 b = side.somewhere(random);
        return List.of(new ToolWay(a, b), new ToolWay(b, side.somewhere(random)));
    }

    /** A tool point of the left arm that lies on a face of a zone of offsets, or a micrometre beside it: the hard places. */
    private static Optional<List<ToolWay>> nearAFace(
            SplittableRandom random, Interlock interlock, List<ToolWay> right, Side left) {
        if (interlock.offsets().isEmpty() || random.nextBoolean()) {
            return Optional.empty();
        }
        Zone zone = interlock.offsets().get(random.nextInt(interlock.offsets().size()));
        long[] offset = {inside(random, zone.x()), inside(random, zone.y()), inside(random, zone.z())};
        int axis = random.nextInt(3);
        Interval side = axis == 0 ? zone.x() : axis == 1 ? zone.y() : zone.z();
        long beside = random.nextLong(-1, 2);
        offset[axis] = random.nextBoolean() ? side.least() + beside : side.most() + beside;
        Point3 from = right.get(0).from();
        Point3 at = new Point3(from.x() + offset[0], from.y() + offset[1], from.z() + offset[2]);
        return left.reaches(at) ? Optional.of(List.of(new ToolWay(at, at))) : Optional.empty();
    }

    private static long inside(SplittableRandom random, Interval side) {
        return side.least() + (long) (random.nextDouble() * side.length());
    }

    private double together(SplittableRandom random, RandomPair pair, List<ToolWay> right, List<ToolWay> left) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < INSTANTS; i++) {
            Side a = pair.right();
            Side b = pair.left();
            Shape shapeA = pick(random, a.acting());
            Shape shapeB = pick(random, b.acting());
            least = Math.min(
                    least,
                    OtherEngine.distance(
                            a.solids(shapeA, along(random, right), height(random, a)),
                            b.solids(shapeB, along(random, left), height(random, b))));
            checks++;
        }
        return least;
    }

    /** One acts; the other is ready anywhere between work and lifted, or stowed. */
    private double whileOneRests(SplittableRandom random, Side acting, List<ToolWay> ways, Side resting) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < INSTANTS; i++) {
            boolean stowed = random.nextInt(4) == 0;
            Interval lift = resting.station().arm().lift();
            double height = stowed
                    ? lift.most()
                    : resting.station().workHeights().least()
                            + random.nextDouble()
                                    * (lift.most()
                                            - resting.station().workHeights().least());
            Shape shape = resting.shape(stowed ? PostureName.STOWED : PostureName.READY);
            least = Math.min(
                    least,
                    OtherEngine.distance(
                            acting.solids(pick(random, acting.acting()), along(random, ways), height(random, acting)),
                            resting.solids(shape, resting.ready(), height)));
            checks++;
        }
        return least;
    }

    private static Shape pick(SplittableRandom random, List<Shape> shapes) {
        return shapes.get(random.nextInt(shapes.size()));
    }

    private static double[] along(SplittableRandom random, List<ToolWay> ways) {
        ToolWay way = ways.get(random.nextInt(ways.size()));
        double[] from = RandomPair.array(way.from());
        double[] to = RandomPair.array(way.to());
        double t = random.nextInt(3) == 0 ? random.nextInt(2) : random.nextDouble();
        double[] at = new double[3];
        for (int i = 0; i < at.length; i++) {
            at[i] = from[i] + t * (to[i] - from[i]);
        }
        return at;
    }

    private static double height(SplittableRandom random, Side side) {
        Interval heights = side.station().workHeights();
        return random.nextBoolean()
                ? (random.nextBoolean() ? heights.least() : heights.most())
                : heights.least() + random.nextDouble() * heights.length();
    }

    String digest() {
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
