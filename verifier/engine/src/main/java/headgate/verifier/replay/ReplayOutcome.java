package headgate.verifier.replay;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * What came of a replay. Every target plant is either reached or missed for one reason.
 *
 * @param targets plants in the ground to be treated, or places for plugs
 * @param missed how many were missed for each reason; reasons that did not occur are left out
 * @param reached plants that an action treated
 * @param alongside how many of those were treated by an action for another plant
 * @param successful plants reached by an action that did its work
 * @param falseActions actions for things that were no plant of the kind wanted
 * @param crop what happened to the crop
 * @param planting what became of plugs; all 0 if none were set
 * @param arms what each arm did, in the order of the setting
 * @param blocks targets and successes along travel, by blocks of one metre
 * @param travelled distance from the first plant to the last, m
 * @param speed of the carriage, m/s
 * @param stopped time that the carriage stood still for refills, s
 * @param mostTreatable how many any dispatch could have reached, at most; empty if that was not asked for
 * @param beside plants outside of the ground to be treated
 */
public record ReplayOutcome(
        long targets,
        Map<Miss, Long> missed,
        long reached,
        long alongside,
        long successful,
        long falseActions,
        Crop crop,
        Planting planting,
        List<ArmUse> arms,
        List<Block> blocks,
        double travelled,
        double speed,
        double stopped,
        OptionalLong mostTreatable,
        long beside) {

    /** Copies. */
    public ReplayOutcome {
        missed = java.util.Collections.unmodifiableMap(
                missed.isEmpty() ? new EnumMap<>(Miss.class) : new EnumMap<>(missed));
        arms = List.copyOf(arms);
        blocks = List.copyOf(blocks);
    }

    /**
     * The crop's plants.
     *
     * @param plants how many there were
     * @param lost how many a tool met within their protected radius, or took for a weed
     * @param touched how many a tool met among their leaves only
     */
    public record Crop(long plants, long lost, long touched) {}

    /**
     * Plugs.
     *
     * @param actions actions that ended with a plug, or should have
     * @param empty cells that held no plant
     * @param doubles cells that held two
     * @param fallen plugs that did not stand upright
     * @param bare plugs that were not covered
     * @param errors number of plugs whose place along travel was off, for the two figures that follow
     * @param meanError mean distance along travel from where it should be, m
     * @param worstError largest such distance, m
     */
    public record Planting(
            long actions,
            long empty,
            long doubles,
            long fallen,
            long bare,
            long errors,
            double meanError,
            double worstError) {}

    /**
     * Plants of a metre of travel, or of another part of a stand.
     *
     * @param targets plants that should have been treated in it
     * @param successful how many of them were
     */
    public record Block(long targets, long successful) {}

    /** {@return what should have been treated, and what was, as one block} */
    public Block all() {
        return new Block(targets, successful);
    }

    /**
     * How many were missed for a reason.
     *
     * @param why the reason
     * @return the number
     */
    public long missed(Miss why) {
        return missed.getOrDefault(why, 0L);
    }

    /** {@return plants that an arm could have treated, had it had nothing else to do} */
    public long treatable() {
        return reached + missed(Miss.MAGAZINE_EMPTY) + missed(Miss.BLOCKED) + missed(Miss.ARM_BUSY);
    }

    /** {@return how many of the treatable plants no dispatch could have reached; empty if that was not asked for} */
    public OptionalLong lostToCapacity() {
        return mostTreatable.isPresent()
                ? OptionalLong.of(Math.max(0, treatable() - mostTreatable.getAsLong()))
                : OptionalLong.empty();
    }

    /** {@return how many more another dispatch could have reached at most; empty if that was not asked for} */
    public OptionalLong lostToDispatch() {
        return mostTreatable.isPresent()
                ? OptionalLong.of(Math.max(0, Math.min(treatable(), mostTreatable.getAsLong()) - reached))
                : OptionalLong.empty();
    }

    /** {@return plants that were seen} */
    public long seen() {
        return targets - missed(Miss.UNSEEN);
    }

    /** {@return plants that were seen and that the head may treat} */
    public long allowed() {
        return seen() - missed(Miss.OUTSIDE_RANGE) - missed(Miss.TOO_NEAR);
    }

    /** {@return successes over all target plants: seen times allowed times reached times successful; 1 without plants} */
    public double coverage() {
        return targets == 0 ? 1 : (double) successful / targets;
    }

    /** {@return the share of crop plants that were lost; 0 without crop} */
    public double cropLoss() {
        return crop.plants() == 0 ? 0 : (double) crop.lost() / crop.plants();
    }

    /** {@return the time of the carriage's travel and stops, s} */
    public double time() {
        return travelled / speed + stopped;
    }
}
