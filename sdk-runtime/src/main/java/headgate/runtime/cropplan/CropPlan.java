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
 * @param season when the work can be done; empty if the grower does not say
 * @param sun where the field lies to the sun; empty if the grower does not say
 */
public record CropPlan(
        String name,
        Rows rows,
        Crop crop,
        Soil soil,
        Optional<Weeds> weeds,
        Optional<Plugs> plugs,
        Wanted wanted,
        Field field,
        Optional<Season> season,
        Optional<Sun> sun) {

    /**
     * A plan that says nothing about season and sun.
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
    public CropPlan(
            String name,
            Rows rows,
            Crop crop,
            Soil soil,
            Optional<Weeds> weeds,
            Optional<Plugs> plugs,
            Wanted wanted,
            Field field) {
        this(name, rows, crop, soil, weeds, plugs, wanted, field, Optional.empty(), Optional.empty());
    }

    /**
     * Changes the rows.
     *
     * @param changed the rows
     * @return the same plan with them
     */
    public CropPlan withRows(Rows changed) {
        return new CropPlan(name, changed, crop, soil, weeds, plugs, wanted, field, season, sun);
    }

    /**
     * Changes the crop.
     *
     * @param changed the crop's plants
     * @return the same plan with them
     */
    public CropPlan withCrop(Crop changed) {
        return new CropPlan(name, rows, changed, soil, weeds, plugs, wanted, field, season, sun);
    }

    /**
     * Changes the weeds expected.
     *
     * @param changed the weeds; empty if the operation is not about weeds
     * @return the same plan with them
     */
    public CropPlan withWeeds(Optional<Weeds> changed) {
        return new CropPlan(name, rows, crop, soil, changed, plugs, wanted, field, season, sun);
    }

    /**
     * Changes what is wanted.
     *
     * @param changed what is wanted
     * @return the same plan with it
     */
    public CropPlan withWanted(Wanted changed) {
        return new CropPlan(name, rows, crop, soil, weeds, plugs, changed, field, season, sun);
    }

    /**
     * The rows.
     *
     * @param spacing distance from row to row, m
     * @param perPass rows that the carriage works in one pass, at least 1
     * @param plantSpacing distance from plant to plant within a row, m
     * @param wander how far a row wanders to either side of its line, m
     * @param planterRows rows that the planter set in one pass, at least 1; empty if nobody knows
     * @param guessRowError how much wider or narrower than the spacing the gap between two planter passes may be, m
     * @param radius radius of the rows' curve, m; empty if they are straight
     */
    public record Rows(
            double spacing,
            int perPass,
            double plantSpacing,
            double wander,
            Optional<Integer> planterRows,
            double guessRowError,
            Optional<Double> radius) {

        /**
         * Straight rows of an unknown planter.
         *
         * @param spacing distance from row to row, m
         * @param perPass rows that the carriage works in one pass, at least 1
         * @param plantSpacing distance from plant to plant within a row, m
         * @param wander how far a row wanders to either side of its line, m
         */
        public Rows(double spacing, int perPass, double plantSpacing, double wander) {
            this(spacing, perPass, plantSpacing, wander, Optional.empty(), 0.0, Optional.empty());
        }

        /**
         * Changes the distance from row to row.
         *
         * @param changed the distance, m
         * @return the same rows with it
         */
        public Rows withSpacing(double changed) {
            return new Rows(changed, perPass, plantSpacing, wander, planterRows, guessRowError, radius);
        }

        /**
         * Changes the number of rows worked in one pass.
         *
         * @param changed the number, at least 1
         * @return the same rows with it
         */
        public Rows withPerPass(int changed) {
            return new Rows(spacing, changed, plantSpacing, wander, planterRows, guessRowError, radius);
        }

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
     * @param relief how far the ground is above or below its mean, m; ridges not counted
     * @param ridges the ridges that the crop grows on; empty on flat ground
     */
    public record Soil(SoilClass texture, double moisture, double relief, Optional<Ridges> ridges) {

        /**
         * Flat ground.
         *
         * @param texture its class
         * @param moisture water content by volume, 0 to 1
         * @param relief how far the ground is above or below its mean, m
         */
        public Soil(SoilClass texture, double moisture, double relief) {
            this(texture, moisture, relief, Optional.empty());
        }
    }

    /**
     * Ridges, one under each row.
     *
     * @param height height of their top over the furrow, m
     * @param topWidth width of the flat top, m
     */
    public record Ridges(double height, double topWidth) {}

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
     * @param clumps how they stand in clumps; empty if they stand at random
     * @param sizes classes of size, from small to large, whose shares add up to 1; none if nobody knows
     * @param cropTaken chance that a crop plant is taken for a weed, 0 to 1; empty if nobody knows
     * @param success what becomes of treated weeds, by class; nothing for classes of which nobody knows
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
            Optional<Double> falseAlarms,
            Optional<Clumps> clumps,
            List<SizeClass> sizes,
            Optional<Double> cropTaken,
            List<Success> success) {

        /** Copies the lists. */
        public Weeds {
            classes = List.copyOf(classes);
            sizes = List.copyOf(sizes);
            success = List.copyOf(success);
        }

        /**
         * Weeds that stand at random, in sizes of which only the bounds are known.
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
        public Weeds(
                double density,
                double bandWidth,
                List<PlantClass> classes,
                double stemLeast,
                double stemMost,
                double heightLeast,
                double heightMost,
                Optional<Double> recall,
                Optional<Double> falseAlarms) {
            this(
                    density,
                    bandWidth,
                    classes,
                    stemLeast,
                    stemMost,
                    heightLeast,
                    heightMost,
                    recall,
                    falseAlarms,
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    List.of());
        }

        /**
         * What becomes of treated weeds of a class.
         *
         * @param kind the class
         * @return share of them that do not grow on, 0 to 1; empty if nobody knows
         */
        public Optional<Double> success(PlantClass kind) {
            return success.stream()
                    .filter(s -> s.kind().equals(kind))
                    .map(Success::share)
                    .findFirst();
        }

        /** {@return the classes of which nobody knows how many grow on once treated} */
        public List<PlantClass> withoutSuccess() {
            return classes.stream().filter(kind -> success(kind).isEmpty()).toList();
        }

        /** {@return true if nobody knows how many of them the sensors find} */
        public boolean withoutRecall() {
            return recall.isEmpty() && sizes.isEmpty();
        }
    }

    /**
     * What becomes of treated weeds of one class.
     *
     * @param kind the class
     * @param share share of them that do not grow on, in this soil, 0 to 1
     */
    public record Success(PlantClass kind, double share) {}

    /**
     * How weeds stand in clumps: a Thomas process, whose clumps have a Poisson number of weeds around a centre.
     *
     * @param mean mean number of weeds in a clump
     * @param sigma standard deviation of a weed's distance from the centre along each axis, m
     */
    public record Clumps(double mean, double sigma) {}

    /**
     * Weeds of one class of size.
     *
     * @param name what the grower calls it
     * @param heightMost largest height of the class, m
     * @param share of all weeds, 0 to 1
     * @param recall share of them that the carriage's sensors find, 0 to 1
     */
    public record SizeClass(String name, double heightMost, double share, double recall) {}

    /**
     * The plugs to be set.
     *
     * @param diameter of the plug, m
     * @param height of the plant over the ground once set, m
     * @param depth of the plug below the ground once set, m
     * @param quality what becomes of them; empty if nobody knows
     */
    public record Plugs(double diameter, double height, double depth, Optional<Quality> quality) {

        /**
         * Plugs of which nobody knows what becomes of them.
         *
         * @param diameter of the plug, m
         * @param height of the plant over the ground once set, m
         * @param depth of the plug below the ground once set, m
         */
        public Plugs(double diameter, double height, double depth) {
            this(diameter, height, depth, Optional.empty());
        }
    }

    /**
     * What becomes of plugs, each a share from 0 to 1. A plant is established if its cell held one and it stands upright and
     * covered.
     *
     * @param emptyCells cells of the tray that hold no plant
     * @param doubles cells that hold two
     * @param upright plugs that stand upright once set, in this soil
     * @param covered plugs whose root ball is covered once set, in this soil
     */
    public record Quality(double emptyCells, double doubles, double upright, double covered) {}

    /**
     * What is wanted.
     *
     * @param operation what is to be done
     * @param speed the carriage's speed, m/s
     * @param coverage share of the target plants that must be treated or set, 0 to 1
     * @param areaRate area per time, m²/s; empty if the grower does not ask for one
     * @param ground where the ground to be treated lies; empty for what is usual with the operation
     * @param accuracy largest distance of a treated plant or position from where it should be, m; empty if not asked for
     * @param cropLoss largest share of crop plants that may be lost, 0 to 1; empty for the policy's limit
     */
    public record Wanted(
            Operation operation,
            double speed,
            double coverage,
            Optional<Double> areaRate,
            Optional<Ground> ground,
            Optional<Double> accuracy,
            Optional<Double> cropLoss) {

        /**
         * The usual ground of an operation, without wishes for accuracy and crop loss.
         *
         * @param operation what is to be done
         * @param speed the carriage's speed, m/s
         * @param coverage share of the target plants that must be treated or set, 0 to 1
         * @param areaRate area per time, m²/s; empty if the grower does not ask for one
         */
        public Wanted(Operation operation, double speed, double coverage, Optional<Double> areaRate) {
            this(operation, speed, coverage, areaRate, Optional.empty(), Optional.empty(), Optional.empty());
        }

        /**
         * Changes the speed.
         *
         * @param changed the carriage's speed, m/s
         * @return the same wishes with it
         */
        public Wanted withSpeed(double changed) {
            return new Wanted(operation, changed, coverage, areaRate, ground, accuracy, cropLoss);
        }
    }

    /** Where the ground to be treated lies. */
    public enum Ground {
        /** A band along each row. */
        ON_ROW,
        /** The strips between two rows. */
        BETWEEN_ROWS,
        /** All of it. */
        FULL_SURFACE
    }

    /**
     * The field.
     *
     * @param length of a row, m
     * @param width across the rows, m
     * @param headland depth of the headland at each end, m; empty if there is room enough
     * @param slope largest slope along the rows, rad
     * @param crossSlope largest slope across the rows, rad
     */
    public record Field(double length, double width, Optional<Double> headland, double slope, double crossSlope) {

        /**
         * A level field with room enough to turn.
         *
         * @param length of a row, m
         * @param width across the rows, m
         */
        public Field(double length, double width) {
            this(length, width, Optional.empty(), 0.0, 0.0);
        }
    }

    /**
     * When the work can be done.
     *
     * @param firstDay first day, as a day of the year, 1 to 366
     * @param lastDay last day, as a day of the year, not before the first
     * @param fieldDays days in it on which the ground can be driven on
     * @param hoursPerDay working time on such a day, s
     */
    public record Season(int firstDay, int lastDay, int fieldDays, double hoursPerDay) {}

    /**
     * Where the field lies to the sun.
     *
     * @param latitude north positive, rad
     * @param sunshine share of the possible sunshine that there is, 0 to 1: n / N of FAO irrigation and drainage paper 56
     */
    public record Sun(double latitude, double sunshine) {}
}
