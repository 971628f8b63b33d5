package headgate.verifier.rules.throughput;

/** How much of the band along a row lies in discs about its plants: their protected radius, or their leaves. */
final class CropDiscs {

    private CropDiscs() {}

    /**
     * The share of the band that lies outside of all discs. The discs' centres stand on the middle of the band
     * at one spacing; over one spacing the discs cover, at the offset y, the length min(s, 2 sqrt(r^2 - y^2)).
     *
     * @param radius radius r of each disc, m; 0 or more
     * @param spacing distance s from plant to plant, m; more than 0
     * @param width width of the band, m; more than 0
     * @return the share, 0 to 1
     */
    static double shareOutside(double radius, double spacing, double width) {
        double r = radius;
        double to = Math.min(width / 2, r);
        // Up to this offset the discs of neighbours overlap, and the whole spacing is covered.
        double overlap = Math.min(to, StrictMath.sqrt(Math.max(0, r * r - spacing * spacing / 4)));
        double covered = 2 * (overlap * spacing + disc(r, to) - disc(r, overlap));
        return Math.max(0, 1 - covered / (spacing * width));
    }

    /** The area of the disc of radius r between the offsets 0 and y: the integral of 2 sqrt(r^2 - u^2) du. */
    private static double disc(double r, double y) {
        return r == 0
                ? 0
                : y * StrictMath.sqrt(Math.max(0, r * r - y * y)) + r * r * StrictMath.asin(Math.min(1, y / r));
    }
}
