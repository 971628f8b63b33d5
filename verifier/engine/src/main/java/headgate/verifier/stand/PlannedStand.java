package headgate.verifier.stand;

import headgate.runtime.cropplan.CropPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes stands as a crop plan expects them, one pass wide: the rows that the carriage works at once, evenly to both sides
 * of y = 0, with the plan's weeds in the bands that are to be treated.
 *
 * <p>What the plan does not say is invented here: plants are off their places by a standard deviation of a thirtieth of
 * their spacing, and three of a hundred are missing.
 */
public final class PlannedStand {

    /** Standard deviation of a plant along its row, as a share of the plant spacing: invented. */
    private static final double ALONG = 1 / 30.0;

    /** Share of the places at which no plant stands: invented. */
    private static final double GAPS = 0.03;

    private PlannedStand() {}

    /**
     * Makes a stand.
     *
     * @param plan the plan
     * @param length along travel, m
     * @param seed what chance follows from
     * @return the stand; without crop if nothing stands yet, without weeds if the plan has none
     * @throws IllegalArgumentException if the length is not one that a plot can have
     */
    public static GeneratedStand of(CropPlan plan, double length, long seed) {
        CropPlan.Rows rows = plan.rows();
        SownRows sown = new SownRows(
                rows.perPass(),
                rows.spacing(),
                rows.plantSpacing(),
                rows.plantSpacing() * ALONG,
                0,
                rows.wander(),
                GAPS);
        Plot plot = new Plot(length, -sown.width() / 2, sown.width() / 2);
        Optional<GeneratedStand.Crop> crop = plan.crop().canopyWidth() > 0
                ? Optional.of(new GeneratedStand.Crop(
                        sown,
                        SizeLaw.always(plan.crop().canopyHeight()),
                        SizeLaw.always(plan.crop().canopyWidth())))
                : Optional.empty();
        return new GeneratedStand(
                plot, crop, plan.weeds().map(w -> weeds(w, sown)).stream().toList(), seed);
    }

    private static GeneratedStand.Weeds weeds(CropPlan.Weeds weeds, SownRows rows) {
        List<GeneratedStand.Band> bands = new ArrayList<>();
        for (int row = 0; row < rows.rows(); row++) {
            double line = rows.line(row);
            bands.add(new GeneratedStand.Band(line - weeds.bandWidth() / 2, line + weeds.bandWidth() / 2));
        }
        WeedPattern pattern = weeds.clumps()
                .<WeedPattern>map(c -> new ClumpedWeeds(weeds.density(), c.mean(), c.sigma()))
                .orElseGet(() -> new RandomWeeds(weeds.density()));
        return new GeneratedStand.Weeds(
                pattern,
                bands,
                weeds.classes(),
                SizeLaw.even(weeds.stemLeast(), weeds.stemMost()),
                heights(weeds),
                SizeLaw.UNKNOWN);
    }

    /** Even from the least to the largest height, or even within each class of size, as the plan gives their shares. */
    private static SizeLaw heights(CropPlan.Weeds weeds) {
        if (weeds.sizes().isEmpty()) {
            return SizeLaw.even(weeds.heightLeast(), weeds.heightMost());
        }
        double most = weeds.heightLeast();
        List<SizeLaw.Part> parts = new ArrayList<>();
        for (CropPlan.SizeClass size : weeds.sizes()) {
            most = Math.max(most, Math.min(size.heightMost(), weeds.heightMost()));
            if (size.share() > 0) {
                parts.add(new SizeLaw.Part(most, size.share()));
            }
        }
        return new SizeLaw(weeds.heightLeast(), parts);
    }
}
