package headgate.verifier.rules.throughput;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.stand.PlannedStand;
import headgate.verifier.stand.SizeLaw;
import java.util.List;

/**
 * What the cameras see of a band's weeds, and how much of that stands off the crop. A weed under the leaves of a crop plant
 * that is taller is not seen. Weeds lie evenly over the band, a crop plant stands at each place of the row.
 *
 * @param recall share of weeds that is found where no leaves are, by their classes of size, 0 to 1
 * @param seen share of weeds that is found, 0 to 1
 * @param unprotected share of those found that stands outside of the protected radius of crop plants, 0 to 1
 */
record Sight(double recall, double seen, double unprotected) {

    static Sight of(CropPlan plan, CropPlan.Weeds weeds) {
        double leaves = plan.crop().canopyWidth() / 2;
        double radius = plan.crop().protectedRadius();
        double open = outside(leaves, plan, weeds);
        double free = outside(radius, plan, weeds);
        // The two discs share their centre, so whoever is outside of the larger is outside of both.
        double both = outside(Math.max(leaves, radius), plan, weeds);
        SizeLaw heights = PlannedStand.heights(weeds);
        double all = 0;
        double seen = 0;
        double treatable = 0;
        double from = 0;
        for (CropPlan.SizeClass size : classes(weeds)) {
            double to = heights.below(size.heightMost());
            double low = Math.min(Math.max(heights.below(plan.crop().canopyHeight()), from), to);
            double lower = size.recall() * (low - from);
            double taller = size.recall() * (to - low);
            all += lower + taller;
            seen += lower * open + taller;
            treatable += lower * both + taller * free;
            from = to;
        }
        return new Sight(all, seen, seen > 0 ? treatable / seen : 0);
    }

    private static double outside(double radius, CropPlan plan, CropPlan.Weeds weeds) {
        return CropDiscs.shareOutside(radius, plan.rows().plantSpacing(), weeds.bandWidth());
    }

    private static List<CropPlan.SizeClass> classes(CropPlan.Weeds weeds) {
        return weeds.sizes().isEmpty()
                ? List.of(new CropPlan.SizeClass(
                        "", weeds.heightMost(), 1, weeds.recall().orElse(1.0)))
                : weeds.sizes();
    }

    /** {@return the share of weeds that leaves alone keep from being found, 0 to 1} */
    double hidden() {
        return recall - seen;
    }
}
