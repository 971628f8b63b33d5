package headgate.verifier.replay;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The targets that pass under the arms: read ahead in the order of travel, admitted once an arm may come to know of them,
 * and let go when nothing reaches them any more.
 */
final class Course {

    /** Sums of times that are taken in another order differ by less, s. */
    private static final double ROUNDING = 1e-6;

    private final ReplaySetting setting;
    private final List<ArmState> arms;
    private final Sightings sightings;
    private final Passing passing = new Passing();
    private final double perSecond;

    /** Behind this, ahead of the carriage's origin, nothing of the carriage meets a target any more, micrometres. */
    private final double rear;

    /** When any arm knows of something at x = 0 at the soonest, less what rounding may do, s. */
    private final double soonest;

    private long firstX = Long.MIN_VALUE;
    private int admitted;
    private boolean readAll;

    Course(ReplaySetting setting, PlantSource plants, List<ArmState> arms) {
        this.setting = setting;
        this.arms = arms;
        this.sightings = new Sightings(setting, plants);
        this.perSecond = setting.speed() * 1e6;
        this.soonest = arms.stream()
                        .mapToDouble(a -> a.soonestKnown(setting.speed(), setting.ahead()))
                        .min()
                        .orElseThrow()
                - ROUNDING;
        this.rear = arms.stream()
                .mapToDouble(a -> a.arm.mountX() + a.reach.rear() + behind(a))
                .min()
                .orElseThrow();
    }

    /** Crop plants are kept until no leaf of them can touch what of the head is behind its reach, micrometres. */
    private static double behind(ArmState arm) {
        return arm.sweep == null ? 0 : Math.min(0, arm.sweep.rear() - arm.reach.rear()) - CropSweep.WIDEST;
    }

    /** Way of the carriage in a second, micrometres. */
    double perSecond() {
        return perSecond;
    }

    /** When a target is so far ahead of an arm's mount, s. */
    double time(Target target, ArmState arm, double ahead) {
        return (target.x - arm.arm.mountX() - ahead) / perSecond;
    }

    /** How far ahead of an arm's mount a target is, micrometres. */
    double ahead(Target target, ArmState arm, double time) {
        return target.x - arm.arm.mountX() - perSecond * time;
    }

    /** The targets that are read and not let go yet, in the order of travel. */
    Passing passing() {
        return passing;
    }

    /** Where the first target is, micrometres. */
    long firstX() {
        return firstX;
    }

    /** {@return how many plants stood outside of the ground to be treated} */
    long beside() {
        return sightings.beside();
    }

    // ---- reading

    private boolean readOne() {
        if (readAll) {
            return false;
        }
        Target target = sightings.next();
        if (target == null) {
            readAll = true;
            return false;
        }
        firstX = firstX == Long.MIN_VALUE ? target.x : firstX;
        passing.add(target);
        return true;
    }

    /** Reads on until every target up to x is there. */
    void readTo(double x) {
        while (passing.size() == 0 || passing.get(passing.size() - 1).x <= x) {
            if (!readOne()) {
                return;
            }
        }
    }

    /**
     * Reads on until so many are there that no arm knows of yet.
     *
     * @return up to where they are in the row of those that pass
     */
    int readAhead(int number) {
        while (passing.size() - admitted < number && readOne()) {
            // Reading is all.
        }
        return Math.min(passing.size(), admitted + number);
    }

    // ---- admitting

    /** Admits every target that may become known before the next event, or with it. */
    void admit(EventQueue events) {
        while (true) {
            if (admitted == passing.size() && !readOne()) {
                return;
            }
            Target next = passing.get(admitted);
            if (next.x / perSecond + soonest > events.nextTime()) {
                return;
            }
            admit(next, events);
            admitted++;
        }
    }

    private void admit(Target target, EventQueue events) {
        if (target.nature == Target.Nature.CROP) {
            return;
        }
        for (ArmState arm : arms) {
            if (!arm.takes(target)) {
                target.failed(Miss.OUTSIDE_RANGE);
                continue;
            }
            if (!arm.covers(target.y)) {
                target.failed(Miss.NEVER_IN_REACH);
                continue;
            }
            double known = arm.known(target, setting.speed(), setting.ahead());
            if (Double.isInfinite(known)) {
                target.failed(Miss.UNSEEN);
                continue;
            }
            if (!target.isDetection()) {
                target.failed(Miss.NEVER_IN_REACH);
                continue;
            }
            if (known > time(target, arm, arm.reach.rear())) {
                target.failed(Miss.SEEN_TOO_LATE);
                continue;
            }
            Candidate candidate = new Candidate(target, arm, known);
            target.candidates.add(candidate);
            events.known(known, candidate);
        }
    }

    // ---- letting go

    /** {@return the first target if nothing reaches it from a time on; null if there is none such} */
    @Nullable
    Target gone(double time) {
        if (passing.size() == 0 || admitted == 0) {
            return null;
        }
        Target target = passing.get(0);
        return (target.x - rear) / perSecond >= time ? null : target;
    }

    /** Forgets the first target. */
    void letGo() {
        passing.removeFirst();
        admitted--;
    }
}
