package headgate.runtime.cropplan;

import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import java.util.List;
import java.util.Optional;

/**
 * What is grown and what is wanted done to it.
 *
 * @param name what the grower calls it
 * @param rows the rows
 * @param crop the crop's plants as they stand when the operation is done
 * @param soil the soil
 * @param weeds the weeds expected; empty if the operation is not about weeds
 * @param plugs the plugs to be set; empty if the operation does not plant
 * @param wanted what is wanted
 * @param field the field
 */
public record CropPlan(
        String name,
        Rows rows,
        Crop crop,
        Soil soil,
        Optional<Weeds> weeds,
        Optional<Plugs> plugs,
        Wanted wanted,
        Field field) {

    /**
     * The rows.
     *
     * @param spacing distance from row to row, m
     * @param perPass rows that the carriage works in one pass, at least 1
     * @param plantSpacing distance from plant to plant within a row, m
     * @param wander how far a row wanders to either side of its line, m
     */
    public record Rows(double spacing, int perPass, double plantSpacing, double wander) {

        /** {@return the width served in one pass, m: rows per pass times spacing} */
        public double servedWidth() {
            return perPass * spacing;
        }
    }

    /**
     * The crop's plants.
     *
     * @param canopyHeight height of the leaves over the ground, m; 0 if nothing stands yet
     * @param canopyWidth width of the leaves of one plant, m; 0 if nothing stands yet
     * @param protectedRadius radius about a plant that no tool may touch, m
     */
    public record Crop(double canopyHeight, double canopyWidth, double protectedRadius) {}

    /**
     * The soil.
     *
     * @param texture its class
     * @param moisture water content by volume, 0 to 1
     * @param relief how far the ground is above or below its mean, m
     */
    public record Soil(SoilClass texture, double moisture, double relief) {}

    /**
     * The weeds expected.
     *
     * @param density weeds per square metre in the band to be treated
     * @param bandWidth width of the band to be treated, centred on each row, m
     * @param classes their kinds
     * @param stemLeast least stem diameter, m
     * @param stemMost largest stem diameter, m
     * @param heightLeast least height, m
     * @param heightMost largest height, m
     * @param recall share of them that the carriage's sensors find, 0 to 1; empty if nobody knows
     * @param falseAlarms things taken for a weed, per square metre; empty if nobody knows
     */
    public record Weeds(
            double density,
            double bandWidth,
            List<PlantClass> classes,
            double stemLeast,
            double stemMost,
            double heightLeast,
            double heightMost,
            Optional<Double> recall,
            Optional<Double> falseAlarms) {

        /** Copies the list. */
        public Weeds {
            classes = List.copyOf(classes);
        }
    }

    /**
     * The plugs to be set.
     *
     * @param diameter of the plug, m
     * @param height of the plant over the ground once set, m
     * @param depth of the plug below the ground once set, m
     */
    public record Plugs(double diameter, double height, double depth) {}

    /**
     * What is wanted.
     *
     * @param operation what is to be done
     * @param speed the carriage's speed, m/s
     * @param coverage share of the target plants that must be treated or set, 0 to 1
     * @param areaRate area per time, m²/s; empty if the grower does not ask for one
     */
    public record Wanted(Operation operation, double speed, double coverage, Optional<Double> areaRate) {}

    /**
     * The field.
     *
     * @param length of a row, m
     * @param width across the rows, m
     */
    public record Field(double length, double width) {}
}
