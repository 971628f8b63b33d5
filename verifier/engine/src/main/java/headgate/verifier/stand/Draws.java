package headgate.verifier.stand;

import java.util.SplittableRandom;

/**
 * A stream of chance that gives the same figures on every machine and JDK. Only the bits of {@link SplittableRandom} are
 * used (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014); what is made of them is
 * plain arithmetic and {@link StrictMath}.
 */
final class Draws {

    /** No figure of {@link #normal()} is farther from 0: its radius is at most sqrt(2 ln 2^53). */
    static final double FARTHEST_NORMAL = 8.6;

    private final SplittableRandom bits;

    private Draws(SplittableRandom bits) {
        this.bits = bits;
    }

    Draws(long seed) {
        this(new SplittableRandom(seed));
    }

    /** {@return a stream of its own: what is drawn from one does not change the other} */
    Draws split() {
        return new Draws(bits.split());
    }

    /** {@return a figure from 0 up to but not including 1} */
    double share() {
        return (bits.nextLong() >>> 11) * 0x1.0p-53;
    }

    /** {@return a figure of the exponential law with mean 1} */
    double exponential() {
        return -StrictMath.log(1 - share());
    }

    /** {@return a figure of the standard normal law: G. E. P. Box and M. E. Muller, Ann. Math. Stat. 29 (1958) 610} */
    double normal() {
        double radius = StrictMath.sqrt(2 * exponential());
        return radius * StrictMath.cos(2 * Math.PI * share());
    }

    /** {@return a figure of a normal law about 0, drawn again until it is nearer to 0 than a bound} */
    double normal(double deviation, double bound) {
        if (deviation == 0) {
            return 0;
        }
        double drawn;
        do {
            drawn = deviation * normal();
        } while (Math.abs(drawn) >= bound);
        return drawn;
    }

    /** {@return a count of the Poisson law: how many exponential steps fit into the mean} */
    int poisson(double mean) {
        int count = -1;
        double at = 0;
        while (at <= mean) {
            at += exponential();
            count++;
        }
        return count;
    }

    /**
     * A count of the negative binomial law, by going through its probabilities.
     *
     * @param mean m, at most {@link QuadratWeeds#MOST_IN_ONE}
     * @param dispersion k, of which a small one means clumps; variance is m + m² / k
     */
    int negativeBinomial(double mean, double dispersion) {
        double left = share();
        double probability = StrictMath.pow(1 + mean / dispersion, -dispersion);
        int count = 0;
        while (left >= probability && probability > 0) {
            left -= probability;
            probability *= (dispersion + count) / (count + 1) * (mean / (mean + dispersion));
            count++;
        }
        return count;
    }
}
