package headgate.verifier.replay;

import headgate.verifier.replay.Chance.Draw;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** Counts what becomes of targets as they go out of reach for good. */
final class Tally {

    /** Length of a block of travel, micrometres. */
    static final long BLOCK = 1_000_000;

    private final Map<Miss, Long> missed = new EnumMap<>(Miss.class);
    private final List<long[]> blocks = new ArrayList<>();
    private long targets;
    private long reached;
    private long alongside;
    private long successful;
    private long cropPlants;
    private long cropLost;
    private long cropTouched;
    private long first = Long.MIN_VALUE;
    private long last = Long.MIN_VALUE;
    long falseActions;
    long plugActions;
    long emptyCells;
    long doubles;
    long fallen;
    long bare;
    private long errors;
    private double errorSum;
    private double worstError;
    double stopped;

    /** Counts a target that nothing can change any more. */
    void gone(Target target) {
        if (first == Long.MIN_VALUE) {
            first = target.x;
        }
        last = target.x;
        if (target.isCrop()) {
            cropPlants++;
            cropLost += target.lost ? 1 : 0;
            cropTouched += target.touched && !target.lost ? 1 : 0;
        }
        if (target.nature != Target.Nature.WANTED) {
            return;
        }
        if (target.lost) {
            target.successful = false;
        }
        targets++;
        if (target.treated) {
            reached++;
            alongside += target.alongside ? 1 : 0;
            successful += target.successful ? 1 : 0;
            if (!target.successful) {
                missed.merge(Miss.IN_VAIN, 1L, Long::sum);
            }
        } else {
            missed.merge(reason(target), 1L, Long::sum);
        }
        long[] block = block((int) ((target.x - first) / BLOCK));
        block[0]++;
        block[1] += target.successful ? 1 : 0;
    }

    private static Miss reason(Target target) {
        Miss why = target.reason == null ? Miss.NEVER_IN_REACH : target.reason;
        if (why == Miss.OUTSIDE_RANGE) {
            return why;
        }
        if (target.hidden != null) {
            return target.hidden;
        }
        return target.leader != null ? Miss.UNSEEN : why;
    }

    private long[] block(int index) {
        while (blocks.size() <= index) {
            blocks.add(new long[2]);
        }
        return blocks.get(index);
    }

    /** Says whether a plug that was set is established, and counts what is wrong with it. */
    boolean established(Target place, PlugQuality quality, Chance chance) {
        plugActions++;
        if (chance.happens(quality.emptyCells(), place.number, Draw.EMPTY_CELL)) {
            emptyCells++;
            return false;
        }
        if (chance.happens(quality.doubles(), place.number, Draw.DOUBLE)) {
            doubles++;
        }
        double error = quality.spread() > 0 ? Math.abs(quality.spread() * chance.normal(place.number)) : 0;
        errors++;
        errorSum += error;
        worstError = Math.max(worstError, error);
        boolean upright = chance.happens(quality.upright(), place.number, Draw.UPRIGHT);
        boolean covered = chance.happens(quality.covered(), place.number, Draw.COVERED);
        fallen += upright ? 0 : 1;
        bare += covered ? 0 : 1;
        return upright && covered;
    }

    ReplayOutcome outcome(ReplaySetting setting, List<ArmState> arms, OptionalLong mostTreatable, long beside) {
        return new ReplayOutcome(
                targets,
                missed,
                reached,
                alongside,
                successful,
                falseActions,
                new ReplayOutcome.Crop(cropPlants, cropLost, cropTouched),
                new ReplayOutcome.Planting(
                        plugActions,
                        emptyCells,
                        doubles,
                        fallen,
                        bare,
                        errors,
                        errors == 0 ? 0 : errorSum / errors,
                        worstError),
                arms.stream()
                        .map(a -> new ArmUse(a.arm.id(), a.actions, a.acting, a.shifting, a.refills))
                        .toList(),
                blocks.stream().map(b -> new ReplayOutcome.Block(b[0], b[1])).toList(),
                first == Long.MIN_VALUE ? 0 : (last - first) / 1e6,
                setting.speed(),
                stopped,
                mostTreatable,
                beside);
    }
}
