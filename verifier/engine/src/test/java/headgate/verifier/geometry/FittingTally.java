package headgate.verifier.geometry;

import headgate.verifier.geometry.OtherEngine.Solid;
import headgate.verifier.geometry.RandomFitting.Arm;
import headgate.verifier.geometry.RandomFitting.Single;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;

/** Counts and worst figures over random fittings, ours against the other engine and against single configurations. */
final class FittingTally {

    /** Fitting number i is made from this plus i. */
    static final long SEED = 20_260_401L;

    private static final int SAMPLES = 10;

    int fittings;
    int pairs;
    int convexPairs;
    int twoBeams;
    int linked;
    int turnedArms;
    int meeting;
    long samples;
    int tightSamples;
    double mostOverOther;
    double mostUnderOther;
    double mostUnderOtherConvex;
    double mostOverSample = Double.NEGATIVE_INFINITY;
    private final MessageDigest digest = sha256();

    /** Looks at fittings from one number up to another, which is left out. */
    static FittingTally of(int from, int to) {
        FittingTally tally = new FittingTally();
        for (int i = from; i < to; i++) {
            tally.add(new SplittableRandom(SEED + i));
        }
        return tally;
    }

    private void add(SplittableRandom random) {
        RandomFitting fitting = RandomFitting.of(random);
        fittings++;
        twoBeams += fitting.twoBeams() ? 1 : 0;
        linked += fitting.linked() ? 1 : 0;
        turnedArms += (int) fitting.arms().stream().filter(Arm::turned).count();
        List<Arm> arms = fitting.arms();
        for (int i = 0; i < arms.size(); i++) {
            for (int j = i + 1; j < arms.size(); j++) {
                addPair(random, fitting, arms.get(i), arms.get(j));
            }
        }
    }

    private void addPair(SplittableRandom random, RandomFitting fitting, Arm a, Arm b) {
        boolean linkedPair = fitting.linked();
        long nanometres = Gap.between(a.occupied(linkedPair), b.occupied(linkedPair))
                .orElseThrow()
                .nanometres();
        double ours = nanometres / 1e3;
        double other = OtherEngine.distance(a.solids(linkedPair), b.solids(linkedPair));
        pairs++;
        convexPairs += fitting.convex() ? 1 : 0;
        meeting += nanometres == 0 ? 1 : 0;
        mostOverOther = Math.max(mostOverOther, ours - other);
        mostUnderOther = Math.max(mostUnderOther, other - ours);
        if (fitting.convex()) {
            mostUnderOtherConvex = Math.max(mostUnderOtherConvex, other - ours);
        }
        digest.update(ByteBuffer.allocate(Long.BYTES).putLong(nanometres).array());
        double nearest = Double.POSITIVE_INFINITY;
        Single first = a.single();
        Single second = b.single();
        for (int i = 0; i < SAMPLES; i++) {
            nearest = Math.min(nearest, sample(random, linkedPair, first, second));
            samples++;
        }
        mostOverSample = Math.max(mostOverSample, ours - nearest);
        tightSamples += nearest - ours < 2 ? 1 : 0;
    }

    /** The gap in one configuration: each tool somewhere on a straight way, each arm somewhere in its ranges. */
    private static double sample(SplittableRandom random, boolean linkedPair, Single a, Single b) {
        return OtherEngine.distance(placed(random, linkedPair, a), placed(random, linkedPair, b));
    }

    private static List<Solid> placed(SplittableRandom random, boolean linkedPair, Single single) {
        double shift =
                linkedPair ? 0 : RandomFitting.within(random, single.arm().shift());
        double lift = linkedPair ? 0 : RandomFitting.within(random, single.arm().lift());
        return single.placed(random, shift, lift);
    }

    /** SHA-256 over our gaps in whole nanometres, pair by pair. */
    String digest() {
        try {
            return HexFormat.of().formatHex(((MessageDigest) digest.clone()).digest());
        } catch (CloneNotSupportedException e) {
            throw new AssertionError(e);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }
}
