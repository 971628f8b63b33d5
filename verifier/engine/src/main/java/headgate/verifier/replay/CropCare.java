package headgate.verifier.replay;

/**
 * What must be kept off the crop's plants.
 *
 * @param protectedRadius radius about a crop plant in which no weed may be treated, m
 * @param positionError how far a tool may be off, by which protected discs grow when bodies are held against them
 * @param canopyHeight height of the leaves, m
 * @param canopyWidth width of a plant's leaves where the stand does not record it, m
 * @param groundMotion how far the ground may be above where it should be, m
 */
public record CropCare(
        double protectedRadius,
        PositionError positionError,
        double canopyHeight,
        double canopyWidth,
        double groundMotion) {

    /** No crop stands. */
    public static final CropCare NONE = new CropCare(0, PositionError.NONE, 0, 0, 0);
}
