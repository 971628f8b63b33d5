package headgate.verifier.stand;

import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.stand.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes stands as a crop plan expects them, one pass wide: the rows that the carriage works at once, evenly to both sides
 * of y = 0, with the plan's weeds in the bands that are to be treated. For a plan that plants, the places of the plugs.
 *
 * <p>What the plan does not say is invented here: plants of a crop are off their places by a standard deviation of a
 * thirtieth of their spacing, and three of a hundred are missing.
 */
public final class PlannedStand {

    /** Standard deviation of a plant along its row, as a share of the plant spacing: invented. */
    private static final double ALONG = 1 / 30.0;

    /** Share of the places at which no plant stands: invented. */
    private static final double GAPS = 0.03;

    private PlannedStand() {}

    /**
     * Makes a stand with the plan's own density of weeds.
     *
     * @param plan the plan
     * @param length along travel, m
     * @param seed what chance follows from
     * @return the stand
     * @throws IllegalArgumentException if the length is not one that a plot can have
     */
    public static GeneratedStand of(CropPlan plan, double length, long seed) {
        return of(plan, plan.weeds().map(CropPlan.Weeds::density).orElse(0.0), length, seed);
    }

    /**
     * Makes a stand.
     *
     * @param plan the plan
     * @param density weeds per square metre in the bands; if the plan has no weeds, there are none
     * @param length along travel, m
     * @param seed what chance follows from
     * @return the stand
     * @throws IllegalArgumentException if length or density is not one that a plot can have
     */
    public static GeneratedStand of(CropPlan plan, double density, double length, long seed) {
        CropPlan.Rows rows = plan.rows();
        double width = rows.servedWidth();
        return new GeneratedStand(
                new Ground(length, -width / 2, width / 2),
                sown(plan),
                plan.weeds().map(w -> weeds(w, density, rows)).stream().toList(),
                seed);
    }

    private static Optional<GeneratedStand.Sown> sown(CropPlan plan) {
        CropPlan.Rows rows = plan.rows();
        if (plan.wanted().operation().equals(Operation.SET_PLUGS)) {
            return plan.plugs()
                    .map(plugs -> new GeneratedStand.Sown(
                            SownRows.exact(rows.perPass(), rows.spacing(), rows.plantSpacing()),
                            PlantClass.PLUG,
                            SizeLaw.always(plugs.diameter()),
                            SizeLaw.always(plugs.height()),
                            SizeLaw.UNKNOWN));
        }
        if (plan.crop().canopyWidth() == 0) {
            return Optional.empty();
        }
        double along = rows.plantSpacing() * ALONG;
        return Optional.of(new GeneratedStand.Sown(
                new SownRows(rows.perPass(), rows.spacing(), rows.plantSpacing(), along, 0, rows.wander(), GAPS),
                Plant.CROP,
                SizeLaw.UNKNOWN,
                SizeLaw.always(plan.crop().canopyHeight()),
                SizeLaw.always(plan.crop().canopyWidth())));
    }

    private static GeneratedStand.Weeds weeds(CropPlan.Weeds weeds, double density, CropPlan.Rows rows) {
        SownRows lines = SownRows.exact(rows.perPass(), rows.spacing(), rows.plantSpacing());
        List<GeneratedStand.Band> bands = new ArrayList<>();
        for (int row = 0; row < lines.rows(); row++) {
            double line = lines.line(row);
            bands.add(new GeneratedStand.Band(line - weeds.bandWidth() / 2, line + weeds.bandWidth() / 2));
        }
        WeedPattern pattern = weeds.clumps()
                .<WeedPattern>map(c -> new ClumpedWeeds(density, c.mean(), c.sigma()))
                .orElseGet(() -> new RandomWeeds(density));
        return new GeneratedStand.Weeds(
                pattern,
                bands,
                weeds.classes(),
                SizeLaw.even(weeds.stemLeast(), weeds.stemMost()),
                heights(weeds),
                SizeLaw.UNKNOWN);
    }

    /**
     * How tall a plan's weeds are: even from the least to the largest height, or even within each class of size, as the plan
     * gives their shares.
     *
     * @param weeds the plan's weeds
     * @return the law
     */
    public static SizeLaw heights(CropPlan.Weeds weeds) {
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
