package headgate.verifier.behaviour;

/**
 * A sequence of points that fills a box evenly: J. H. Halton, "On the efficiency of certain quasi-random sequences of
 * points in evaluating multi-dimensional integrals", Numerische Mathematik 2 (1960) 84-90. Each axis mirrors the digits
 * of the index at the point, in a prime base of its own.
 */
public final class Halton {

    private static final int[] BASES = {2, 3, 5, 7, 11, 13, 17, 19};

    private Halton() {}

    /**
     * A coordinate of a point.
     *
     * @param index number of the point, from 1
     * @param axis number of the axis, 0 to 7
     * @return the coordinate, more than 0 and less than 1
     */
    public static double at(int index, int axis) {
        int base = BASES[axis];
        long mirrored = 0;
        long scale = 1;
        for (int rest = index; rest > 0; rest /= base) {
            mirrored = mirrored * base + rest % base;
            scale *= base;
        }
        return (double) mirrored / scale;
    }
}
