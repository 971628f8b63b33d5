package headgate.verifier.replay;

import headgate.runtime.cropplan.CropPlan;
import java.util.Comparator;
import java.util.List;

/**
 * What the carriage sees of what stands there.
 *
 * @param recall share of weeds that is found, 0 to 1, where no class of size says otherwise
 * @param sizes shares by class of size, from small to large
 * @param falseAlarms things taken for a weed that are none, per square metre
 * @param cropTaken chance that a crop plant is taken for a weed, 0 to 1
 * @param resolution distance below which two weeds are seen as one, m
 * @param occlusion true if a weed under the leaves of a crop plant that is taller is not seen
 */
public record Perception(
        double recall,
        List<CropPlan.SizeClass> sizes,
        double falseAlarms,
        double cropTaken,
        double resolution,
        boolean occlusion) {

    /** Sees everything, each plant apart. */
    public static final Perception PERFECT = new Perception(1, List.of(), 0, 0, 0, false);

    /** Sorts the classes by size. */
    public Perception {
        sizes = sizes.stream()
                .sorted(Comparator.comparingDouble(CropPlan.SizeClass::heightMost))
                .toList();
    }

    /**
     * What a plan expects to be seen. Where it says nothing, everything is seen.
     *
     * @param weeds the plan's weeds
     * @param resolution distance below which two weeds are seen as one, m
     * @return the perception
     */
    public static Perception of(CropPlan.Weeds weeds, double resolution) {
        return new Perception(
                weeds.recall().orElse(1.0),
                weeds.sizes(),
                weeds.falseAlarms().orElse(0.0),
                weeds.cropTaken().orElse(0.0),
                resolution,
                true);
    }

    /** The share found of weeds of a height; the largest class also holds what is taller. */
    double recall(double height) {
        if (sizes.isEmpty()) {
            return recall;
        }
        for (CropPlan.SizeClass size : sizes) {
            if (height <= size.heightMost()) {
                return size.recall();
            }
        }
        return sizes.get(sizes.size() - 1).recall();
    }
}
