package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.api.vocabulary.SoilClass;
import headgate.verifier.interlock.Interlocks;
import java.util.List;
import java.util.OptionalDouble;

/**
 * All that a replay holds fixed while plants pass, but for the plants.
 *
 * @param speed of the carriage, m/s; a whole number of mm/s, more than 0
 * @param tools the heads
 * @param arms the arms at work
 * @param links arms that shift as one
 * @param ground where plants are to be treated across travel, micrometres, carriage frame; none for everywhere
 * @param ahead how far before its mount an arm without sensors knows of a plant, m
 * @param perception what is seen
 * @param crop what must be kept off the crop
 * @param success how often an action works
 * @param plugs what becomes of plugs
 * @param soil class of the soil
 * @param moisture water content by volume, 0 to 1
 * @param rowLength length of a row, after which heads can be filled on the headland, m; empty if the plot is one row
 * @param interlocks which actions may coincide, for arms that do not shift
 * @param seed for all that is left to chance
 */
public record ReplaySetting(
        double speed,
        List<ReplayTool> tools,
        List<ReplayArm> arms,
        List<LinkGroup> links,
        List<Interval> ground,
        double ahead,
        Perception perception,
        CropCare crop,
        Success success,
        PlugQuality plugs,
        SoilClass soil,
        double moisture,
        OptionalDouble rowLength,
        Interlocks interlocks,
        long seed) {

    /**
     * Checks and copies.
     *
     * @throws IllegalArgumentException if the speed is not more than 0, there is no arm, or arms both shift and have
     *     interlocks
     */
    public ReplaySetting {
        if (!(speed > 0) || Double.isInfinite(speed)) {
            throw new IllegalArgumentException("a replay needs a speed above 0, but it is " + speed);
        }
        if (arms.isEmpty()) {
            throw new IllegalArgumentException("a replay needs at least one arm");
        }
        if (!interlocks.all().isEmpty() && arms.stream().anyMatch(a -> a.shift().length() > 0)) {
            throw new IllegalArgumentException("interlocks hold at set-points, so arms that have them must not shift");
        }
        tools = List.copyOf(tools);
        arms = List.copyOf(arms);
        links = List.copyOf(links);
        ground = List.copyOf(ground);
    }

    /**
     * The same at another speed.
     *
     * @param changed the speed, m/s
     * @return the setting
     */
    public ReplaySetting withSpeed(double changed) {
        return new ReplaySetting(
                changed,
                tools,
                arms,
                links,
                ground,
                ahead,
                perception,
                crop,
                success,
                plugs,
                soil,
                moisture,
                rowLength,
                interlocks,
                seed);
    }

    /**
     * The same with other luck.
     *
     * @param changed the seed
     * @return the setting
     */
    public ReplaySetting withSeed(long changed) {
        return new ReplaySetting(
                speed,
                tools,
                arms,
                links,
                ground,
                ahead,
                perception,
                crop,
                success,
                plugs,
                soil,
                moisture,
                rowLength,
                interlocks,
                changed);
    }

    /**
     * The same with other arms.
     *
     * @param changed the arms
     * @return the setting
     */
    public ReplaySetting withArms(List<ReplayArm> changed) {
        return new ReplaySetting(
                speed,
                tools,
                changed,
                links,
                ground,
                ahead,
                perception,
                crop,
                success,
                plugs,
                soil,
                moisture,
                rowLength,
                interlocks,
                seed);
    }

    /**
     * The same with another perception.
     *
     * @param changed what is seen
     * @return the setting
     */
    public ReplaySetting withPerception(Perception changed) {
        return new ReplaySetting(
                speed,
                tools,
                arms,
                links,
                ground,
                ahead,
                changed,
                crop,
                success,
                plugs,
                soil,
                moisture,
                rowLength,
                interlocks,
                seed);
    }

    /** Whether plants at this y are to be treated. */
    boolean treats(long y) {
        if (ground.isEmpty()) {
            return true;
        }
        for (Interval strip : ground) {
            if (strip.contains(y)) {
                return true;
            }
        }
        return false;
    }
}
