package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.runtime.stand.Plant;
import headgate.verifier.replay.Chance.Draw;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Turns plants into targets, in the order of travel: what is seen, what is under leaves, what is taken for a weed, what is
 * one detection with another, and what stands too near the crop. It reads ahead as far as neighbours matter and keeps no
 * more than that.
 */
final class Sightings {

    /** Leaves are looked for this far from a weed, micrometres: no crop plant is wider than a metre. */
    private static final long WIDEST_LEAVES = 500_000;

    private final ReplaySetting setting;
    private final PlantSource source;
    private final Chance chance;
    private final long margin;
    private final double protectedSquared;
    private final double resolutionSquared;
    private final double falsePerMicrometre;
    private final Deque<Target> read = new ArrayDeque<>();
    private final Deque<Target> crop = new ArrayDeque<>();
    private final Deque<Target> detections = new ArrayDeque<>();
    private @Nullable Plant next;
    private boolean atEnd;
    private long numbered;
    private long falseNumbered;
    private double nextFalse = Double.NaN;
    private @Nullable Target lookalike;
    private long lastX = Long.MIN_VALUE;
    private long beside;

    Sightings(ReplaySetting setting, PlantSource source) {
        this.setting = setting;
        this.source = source;
        this.chance = new Chance(setting.seed());
        Perception perception = setting.perception();
        long protectedRadius = micrometres(setting.crop().protectedRadius());
        long resolution = micrometres(perception.resolution());
        this.margin = Math.max(protectedRadius, perception.occlusion() ? WIDEST_LEAVES : 0);
        this.protectedSquared = (double) protectedRadius * protectedRadius;
        this.resolutionSquared = (double) resolution * resolution;
        double width = setting.ground().stream().mapToLong(Interval::length).sum();
        this.falsePerMicrometre = perception.falseAlarms() * width / 1e12;
    }

    static long micrometres(double metres) {
        return Math.round(metres * 1e6);
    }

    /** {@return the next target; null at the end} */
    @Nullable
    Target next() {
        if (read.isEmpty() && !readOne()) {
            return null;
        }
        Target target = read.element();
        while (!atEnd && lastX <= target.x + margin) {
            readOne();
        }
        read.remove();
        forget(target.x);
        if (!target.isCrop() || target.nature == Target.Nature.CROP_TAKEN) {
            classify(target);
        }
        return target;
    }

    /** {@return how many plants stood outside of the ground to be treated} */
    long beside() {
        return beside;
    }

    private void forget(long x) {
        while (!crop.isEmpty() && crop.element().x < x - margin) {
            crop.remove();
        }
        long resolution = (long) Math.sqrt(resolutionSquared);
        while (!detections.isEmpty() && detections.element().x < x - resolution) {
            detections.remove();
        }
    }

    private void classify(Target target) {
        if (target.nature == Target.Nature.WANTED) {
            double recall = setting.perception().recall(target.height);
            if (!chance.happens(recall, target.number, Draw.SEEN)) {
                target.hidden = Miss.UNSEEN;
                return;
            }
            for (Target plant : crop) {
                double apart = plant.squaredDistance(target);
                double leaves = plant.canopy * 5e5;
                if (setting.perception().occlusion() && target.height < plant.height && apart < leaves * leaves) {
                    target.hidden = Miss.UNSEEN;
                    return;
                }
                if (apart < protectedSquared) {
                    target.hidden = Miss.TOO_NEAR;
                }
            }
        }
        if (resolutionSquared > 0) {
            for (Target earlier : detections) {
                if (earlier.squaredDistance(target) < resolutionSquared) {
                    target.leader = earlier;
                    return;
                }
            }
            detections.add(target);
        }
    }

    /** Reads one more plant, or false alarm, into the buffer. */
    private boolean readOne() {
        while (!atEnd) {
            if (next == null) {
                next = source.next();
                if (next == null) {
                    atEnd = true;
                    return false;
                }
                demandOrder(next);
            }
            if (nextFalse < next.position().x()) {
                keep(falseAlarm());
                return true;
            }
            Plant plant = next;
            next = null;
            Target target = target(plant);
            if (Double.isNaN(nextFalse) && falsePerMicrometre > 0 && lookalike != null) {
                nextFalse = plant.position().x() + gap();
            }
            if (target != null) {
                keep(target);
                return true;
            }
        }
        return false;
    }

    private void demandOrder(Plant plant) {
        if (plant.position().x() < lastX) {
            throw new IllegalArgumentException("plants must come in the order of travel, but one at "
                    + plant.position().x() / 1e6 + " m comes after one at " + lastX / 1e6 + " m");
        }
    }

    private void keep(Target target) {
        lastX = target.x;
        read.add(target);
        if (target.isCrop()) {
            crop.add(target);
        }
    }

    private @Nullable Target target(Plant plant) {
        long number = numbered++;
        Plant.Position at = plant.position();
        if (plant.isCrop()) {
            boolean taken = setting.treats(at.y())
                    && chance.happens(setting.perception().cropTaken(), number, Draw.CROP_TAKEN);
            CropCare care = setting.crop();
            return new Target(
                    number,
                    at.x(),
                    at.y(),
                    taken && lookalike != null ? lookalike.kind : plant.kind(),
                    taken && lookalike != null ? lookalike.stem : plant.stem(),
                    plant.height() > 0 ? plant.height() : care.canopyHeight(),
                    plant.canopy() > 0 ? plant.canopy() : care.canopyWidth(),
                    taken && lookalike != null ? Target.Nature.CROP_TAKEN : Target.Nature.CROP);
        }
        if (!setting.treats(at.y())) {
            beside++;
            return null;
        }
        Target wanted = new Target(
                number,
                at.x(),
                at.y(),
                plant.kind(),
                plant.stem(),
                plant.height(),
                plant.canopy(),
                Target.Nature.WANTED);
        lookalike = wanted;
        return wanted;
    }

    /** Something that looks like the last weed, anywhere across the ground to be treated. */
    private Target falseAlarm() {
        long number = falseNumbered++;
        Target like = Objects.requireNonNull(lookalike);
        double rest = chance.share(number, Draw.FALSE_PLACE)
                * setting.ground().stream().mapToLong(Interval::length).sum();
        long y = setting.ground().get(0).least();
        for (Iterator<Interval> strips = setting.ground().iterator(); strips.hasNext(); ) {
            Interval strip = strips.next();
            if (rest <= strip.length() || !strips.hasNext()) {
                y = strip.least() + Math.min((long) rest, strip.length());
                break;
            }
            rest -= strip.length();
        }
        Target alarm = new Target(
                -1 - number, (long) nextFalse, y, like.kind, like.stem, like.height, 0, Target.Nature.FALSE_ALARM);
        nextFalse += gap();
        return alarm;
    }

    private double gap() {
        return -StrictMath.log(1 - chance.share(falseNumbered, Draw.FALSE_GAP)) / falsePerMicrometre;
    }
}
