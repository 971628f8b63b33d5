package headgate.verifier.replay;

/**
 * What becomes of plugs, each a share from 0 to 1.
 *
 * @param emptyCells cells of the tray that hold no plant: the action sets nothing
 * @param doubles cells that hold two
 * @param upright plugs that stand upright once set
 * @param covered plugs whose root ball is covered once set
 * @param spread standard deviation of where a plug stands from where it should, along travel, m
 */
public record PlugQuality(double emptyCells, double doubles, double upright, double covered, double spread) {

    /** Every cell holds one plug, and each stands well. */
    public static final PlugQuality PERFECT = new PlugQuality(0, 0, 1, 1, 0);
}
