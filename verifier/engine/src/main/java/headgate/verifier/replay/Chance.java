package headgate.verifier.replay;

/**
 * Chance without a sequence: what happens to a plant follows from the seed, the plant's number and what is drawn, so it
 * does not matter who asks first. The mixing function is the finaliser of MurmurHash3 with Stafford's constants (variant
 * 13), as in Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014.
 */
final class Chance {

    /** What is drawn. */
    enum Draw {
        SEEN(1),
        CROP_TAKEN(2),
        SUCCESS(3),
        EMPTY_CELL(4),
        DOUBLE(5),
        UPRIGHT(6),
        COVERED(7),
        SPREAD_RADIUS(8),
        SPREAD_ANGLE(9),
        FALSE_GAP(10),
        FALSE_PLACE(11);

        private final long salt;

        Draw(long salt) {
            this.salt = salt;
        }
    }

    private static final long STEP = 0x9E3779B97F4A7C15L;

    private final long seed;

    Chance(long seed) {
        this.seed = mix(seed + STEP);
    }

    /** {@return a share from 0 up to but not including 1} */
    double share(long number, Draw draw) {
        long bits = mix(seed ^ mix(number * STEP + draw.salt));
        return (bits >>> 11) * 0x1.0p-53;
    }

    /** {@return true with a chance} */
    boolean happens(double chance, long number, Draw draw) {
        return chance >= 1 || (chance > 0 && share(number, draw) < chance);
    }

    /** {@return a figure of the standard normal law: G. E. P. Box and M. E. Muller, Ann. Math. Stat. 29 (1958) 610} */
    double normal(long number) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - share(number, Draw.SPREAD_RADIUS)));
        return radius * StrictMath.cos(2 * Math.PI * share(number, Draw.SPREAD_ANGLE));
    }

    private static long mix(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
