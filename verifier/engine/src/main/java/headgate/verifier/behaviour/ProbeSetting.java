package headgate.verifier.behaviour;

import headgate.api.shape.Interval;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import java.util.List;

/**
 * Where a head is probed.
 *
 * @param ground heights at which the ground may lie, head frame, micrometres; below the mount, so negative
 * @param canopy height of the crop's canopy over the ground, micrometres; 0 if there is none or it is not known
 * @param facings the ways in which the head is fitted; at least one
 * @param sequence how many probes are spread over the work range for each facing, besides its corners; 0 or more
 */
public record ProbeSetting(Interval ground, long canopy, List<Facing> facings, int sequence) {

    /** Probes besides the corners, for each facing: enough that each twentieth of any two ranges meets one. */
    public static final int USUAL_SEQUENCE = 512;

    /** Ground that moves up and down by this much under an arm. Common practice for a levelled bed, no source. */
    private static final long USUAL_GROUND = 40_000;

    /**
     * Checks the bounds.
     *
     * @throws IllegalArgumentException if there is no facing or a figure is negative
     */
    public ProbeSetting {
        facings = List.copyOf(facings);
        if (facings.isEmpty() || canopy < 0 || sequence < 0) {
            throw new IllegalArgumentException("a probe needs a facing, and neither canopy nor count may be negative");
        }
    }

    /**
     * The setting for a head on its own, without carriage and crop: mounted as high as its reach allows over ground that
     * moves by 40 mm either way, in every way in which it may be fitted.
     *
     * @param sheet what the head says of itself
     * @return the setting
     */
    public static ProbeSetting alone(HeadSheet sheet) {
        Interval reach = sheet.reach().height();
        long lowest =
                reach.least() + Micrometres.nearest(sheet.workRange().depth().most());
        long highest =
                reach.most() + Micrometres.nearest(sheet.workRange().depth().least());
        Interval ground = new Interval(lowest, Math.max(lowest, Math.min(highest, lowest + 2 * USUAL_GROUND)));
        return new ProbeSetting(ground, 0, Facing.allowedBy(sheet), USUAL_SEQUENCE);
    }
}
