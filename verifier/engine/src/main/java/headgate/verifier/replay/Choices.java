package headgate.verifier.replay;

import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.dispatch.Jobs;
import java.util.ArrayList;
import java.util.List;

/**
 * What each arm does next. Every arm that is free and has something new decides, in the order of the arms. A decision
 * changes nothing until it is made, so one that lacks an answer is begun again later.
 */
final class Choices {

    private static final double SLACK = StartWindows.SLACK;

    private final List<ArmState> arms;
    private final Clock clock;
    private final Course course;
    private final Questions questions;
    private final StartWindows windows;
    private final Neighbours neighbours;
    private final Supplies supplies;
    private final Effects effects;
    private final ActionObserver observer;
    private final Jobs jobs = new Jobs();
    private final List<Candidate> jobOf = new ArrayList<>();

    Choices(
            List<ArmState> arms,
            Clock clock,
            Course course,
            Questions questions,
            StartWindows windows,
            Neighbours neighbours,
            Supplies supplies,
            Effects effects,
            ActionObserver observer) {
        this.arms = arms;
        this.clock = clock;
        this.course = course;
        this.questions = questions;
        this.windows = windows;
        this.neighbours = neighbours;
        this.supplies = supplies;
        this.effects = effects;
        this.observer = observer;
    }

    /** Lets every arm decide that has to; false if one lacks an answer. */
    boolean decide() {
        for (ArmState arm : arms) {
            if (arm.mustDecide && arm.freeAt <= clock.now) {
                if (!decide(arm)) {
                    // Whoever decides first changes what is left for the others.
                    return false;
                }
                arm.mustDecide = false;
            }
        }
        return true;
    }

    /** Lets an arm begin something, or wait; false if it lacks an answer. */
    private boolean decide(ArmState arm) {
        if (LinkedShifts.holds(arm, clock)) {
            return true;
        }
        while (true) {
            if (!listJobs(arm)) {
                return false;
            }
            if (jobs.size() == 0) {
                return true;
            }
            int job = arm.dispatch.next(jobs, clock.now);
            if (job == Dispatch.NONE) {
                return true;
            }
            if (jobs.ready(job) > clock.now) {
                clock.wake(jobs.ready(job), arm);
                return true;
            }
            Candidate candidate = jobOf.get(job);
            double start = clock.now + arm.shiftTime(candidate.mount);
            if (candidate.mount != arm.mount && LinkedShifts.mustWait(arm, candidate, clock)) {
                return true;
            }
            HeadAction action = questions.find(arm, candidate, course.ahead(candidate.target, arm, start));
            if (action == null) {
                return false;
            }
            if (windows.fits(arm, candidate, action, start) && neighbours.allow(arm, candidate, action, clock)) {
                begin(arm, candidate, action, start);
                return true;
            }
        }
    }

    /** Lists what an arm could do; false if an answer is missing. */
    private boolean listJobs(ArmState arm) {
        jobs.clear();
        jobOf.clear();
        boolean complete = true;
        int kept = 0;
        for (int i = 0; i < arm.waiting.size(); i++) {
            Candidate candidate = arm.waiting.get(i);
            if (candidate.target.taken || candidate.closed) {
                continue;
            }
            if (!windows.prepare(arm, candidate)) {
                complete = false;
            } else if (!candidate.closed) {
                list(arm, candidate);
            }
            if (!candidate.closed) {
                arm.waiting.set(kept++, candidate);
            }
        }
        arm.waiting.subList(kept, arm.waiting.size()).clear();
        return complete;
    }

    private void list(ArmState arm, Candidate candidate) {
        double shift = arm.shiftTime(candidate.mount);
        if (clock.now + shift > candidate.over() + SLACK) {
            StartWindows.nextPiece(candidate, StartWindows.overdue(candidate));
            if (!candidate.closed) {
                clock.again(arm);
            }
            return;
        }
        if (StartWindows.isTooShort(candidate)) {
            StartWindows.nextPiece(candidate, Miss.WINDOW_TOO_SHORT);
            if (!candidate.closed) {
                clock.again(arm);
            }
            return;
        }
        if (candidate.waitsUntil > clock.instant) {
            return;
        }
        if (!supplies.suffice(arm, candidate.target)) {
            candidate.missedForSupply = true;
            return;
        }
        double ready = Math.max(candidate.earliest() - shift, clock.now);
        // By the first answer it may be too late, but the head may need less time from where the plant is now.
        double last = Math.max(candidate.latest() - shift, ready);
        jobs.add(ready, last, candidate.busy + shift, candidate.target.number);
        jobOf.add(candidate);
    }

    private void begin(ArmState arm, Candidate candidate, HeadAction action, double start) {
        Target target = candidate.target;
        supplies.use(arm, target);
        double end = start + action.busy();
        neighbours.reserve(arm, action, start, clock);
        LinkedShifts.shift(arm, candidate.mount, start, clock);
        arm.waitsToShift = null;
        arm.actions++;
        arm.acting += action.busy();
        arm.freeAt = end;
        clock.wake(end, arm);
        int treated = effects.treat(arm, target, action, start);
        effects.sweep(arm, target, action, start);
        observer.acted(new ActionObserver.Done(
                arm.index,
                target.x,
                target.y,
                clock.now,
                start,
                start + action.approach(),
                start + action.approach() + action.inGround(),
                end,
                candidate.mount,
                treated));
    }
}
