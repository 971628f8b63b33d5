package headgate.verifier.stand;

import java.util.List;

/**
 * How a length of plants is spread: classes from small to large with their shares, even within each class.
 *
 * @param least least length, m
 * @param classes from small to large; the shares count in proportion to their sum
 */
public record SizeLaw(double least, List<Part> classes) {

    /** Largest length, m: what a stand file takes. */
    private static final double LARGEST = 5;

    /** Nothing is known of the length: 0 in every plant. */
    public static final SizeLaw UNKNOWN = always(0);

    /**
     * A class.
     *
     * @param upTo largest length of the class, m; its least is the largest of the class before
     * @param share of all plants, more than 0
     */
    public record Part(double upTo, double share) {}

    /**
     * Checks and copies.
     *
     * @throws IllegalArgumentException if there is no class, or the classes are not in order
     */
    public SizeLaw {
        classes = List.copyOf(classes);
        if (classes.isEmpty()) {
            throw new IllegalArgumentException("a law of sizes needs at least one class");
        }
        double before = least;
        Figure.check("a size in metres", least, 0, LARGEST);
        for (Part part : classes) {
            Figure.check("a size in metres, in order from small to large,", part.upTo(), before, LARGEST);
            Figure.check("a share", part.share(), Double.MIN_NORMAL, Double.MAX_VALUE);
            before = part.upTo();
        }
    }

    /**
     * The same length in every plant.
     *
     * @param length the length, m
     * @return the law
     */
    public static SizeLaw always(double length) {
        return even(length, length);
    }

    /**
     * Every length between two as likely as any other.
     *
     * @param least the least, m
     * @param most the largest, m
     * @return the law
     */
    public static SizeLaw even(double least, double most) {
        return new SizeLaw(least, List.of(new Part(most, 1)));
    }

    /**
     * The length that a share of all plants stays below, to the next whole micrometre, as a stand's file holds it.
     *
     * @param share from 0 up to but not including 1
     * @return the length, m
     */
    public double at(double share) {
        double sum = classes.stream().mapToDouble(Part::share).sum();
        double left = share * sum;
        double from = least;
        for (Part part : classes) {
            if (left < part.share()) {
                return grid(from + (part.upTo() - from) * (left / part.share()));
            }
            left -= part.share();
            from = part.upTo();
        }
        return grid(from);
    }

    /**
     * The share of plants that are shorter than a length; {@link #at} turned round, but for the grid.
     *
     * @param length the length, m
     * @return the share, 0 to 1
     */
    public double below(double length) {
        double sum = classes.stream().mapToDouble(Part::share).sum();
        double from = least;
        double shorter = 0;
        for (Part part : classes) {
            if (length >= part.upTo() && length > from) {
                shorter += part.share();
            } else if (length > from) {
                shorter += part.share() * (length - from) / (part.upTo() - from);
            }
            from = part.upTo();
        }
        return shorter / sum;
    }

    private static double grid(double length) {
        return Math.rint(length * 1e6) / 1e6;
    }
}
