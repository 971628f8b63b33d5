package headgate.verifier.replay;

import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.dispatch.EarliestDue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * One replay: one source of plants under one setting. A machine that goes on until it is done or needs an answer that is
 * not in the book; then it says what it wants to know. What comes out does not depend on when it is told.
 *
 * <p>All events of one instant are taken together; then the arms decide ({@link Choices}), and the targets that nothing
 * reaches any more ({@link Course}) are counted.
 */
public final class Replay {

    private final ReplaySetting setting;
    private final List<ArmState> arms = new ArrayList<>();
    private final Clock clock = new Clock();
    private final Course course;
    private final Questions questions;
    private final StartWindows windows;
    private final Choices choices;
    private final Tally tally = new Tally();
    private final int readAhead;
    private final @Nullable WidestWindows bound;
    private boolean deciding;
    private @Nullable ReplayOutcome outcome;

    /**
     * How a replay is run. Nothing of it changes what becomes of the plants but the dispatch.
     *
     * @param dispatch makes the dispatch of each arm
     * @param observer is told of every action
     * @param bound true to work out how many plants any dispatch could have reached
     * @param readAhead how many targets are read ahead, so that heads are asked for many plants at once
     */
    public record Options(Supplier<Dispatch> dispatch, ActionObserver observer, boolean bound, int readAhead) {

        /** Earliest due first, nobody is told, no bound. */
        public static final Options USUAL = new Options(EarliestDue::new, ActionObserver.NONE, false, 256);

        /**
         * The same with an observer.
         *
         * @param changed is told of every action
         * @return the options
         */
        public Options withObserver(ActionObserver changed) {
            return new Options(dispatch, changed, bound, readAhead);
        }

        /** {@return the same with the upper bound worked out} */
        public Options withBound() {
            return new Options(dispatch, observer, true, readAhead);
        }
    }

    /**
     * A replay with the usual options.
     *
     * @param setting all that is fixed
     * @param plants the plants
     * @param book the heads' answers; shared with the replays that run together
     */
    public Replay(ReplaySetting setting, PlantSource plants, AnswerBook book) {
        this(setting, plants, book, Options.USUAL);
    }

    /**
     * A replay.
     *
     * @param setting all that is fixed
     * @param plants the plants
     * @param book the heads' answers; shared with the replays that run together
     * @param options how it is run
     */
    public Replay(ReplaySetting setting, PlantSource plants, AnswerBook book, Options options) {
        this.setting = setting;
        this.readAhead = options.readAhead();
        for (int i = 0; i < setting.arms().size(); i++) {
            arms.add(new ArmState(i, setting, options.dispatch().get()));
        }
        LinkedShifts.tie(setting.links(), arms);
        this.course = new Course(setting, plants, arms);
        this.questions = new Questions(setting, arms, course, book);
        this.windows = new StartWindows(course, questions);
        this.bound = options.bound() ? new WidestWindows(setting, arms, course, windows) : null;
        this.choices = new Choices(
                arms,
                clock,
                course,
                questions,
                windows,
                new Neighbours(setting.interlocks(), arms, course.perSecond()),
                new Supplies(setting, arms, course, tally),
                new Effects(setting, course, tally),
                options.observer());
    }

    /** {@return what came of it; empty until it is done} */
    public Optional<ReplayOutcome> outcome() {
        return Optional.ofNullable(outcome);
    }

    /** {@return what it needs to know to go on; empty if it is done} */
    public List<AnswerBook.Question> wanted() {
        return questions.wanted();
    }

    /**
     * Goes on until it is done or needs to know something.
     *
     * @return true if it is done
     */
    public boolean advance() {
        questions.clear();
        boolean done = goOn();
        questions.tellLookedUp();
        return done;
    }

    private boolean goOn() {
        while (outcome == null) {
            if (!deciding && !nextInstant()) {
                if (!retire(Double.POSITIVE_INFINITY)) {
                    return false;
                }
                outcome = tally.outcome(
                        setting,
                        arms,
                        bound == null ? OptionalLong.empty() : OptionalLong.of(bound.total()),
                        course.beside());
                return true;
            }
            deciding = true;
            if (!choices.decide()) {
                questions.askAhead(readAhead);
                return false;
            }
            if (!retire(clock.now)) {
                return false;
            }
            deciding = false;
        }
        return true;
    }

    /** Takes all events of the next instant; false if there is none. */
    private boolean nextInstant() {
        EventQueue events = clock.events;
        course.admit(events);
        if (events.isEmpty()) {
            return false;
        }
        clock.advance();
        while (events.nextTime() == clock.now) {
            Candidate known = events.nextKnown();
            ArmState arm = arms.get(events.nextArm());
            if (known != null) {
                arm.waiting.add(known);
            }
            arm.mustDecide = true;
            events.removeNext();
            // What becomes known may be a target that was not admitted when this instant began.
            course.admit(events);
        }
        return true;
    }

    /** Counts the targets that nothing reaches any more; false if an answer is needed to say why one was missed. */
    private boolean retire(double until) {
        for (Target target = course.gone(until); target != null; target = course.gone(until)) {
            if ((!target.taken || bound != null) && !explain(target)) {
                return false;
            }
            if (bound != null) {
                bound.add(target);
            }
            tally.gone(target);
            course.letGo();
        }
        return true;
    }

    private boolean explain(Target target) {
        boolean complete = true;
        for (Candidate candidate : target.candidates) {
            ArmState arm = arms.get(candidate.arm);
            if (!candidate.closed && !windows.prepare(arm, candidate)) {
                complete = false;
            } else if (!candidate.closed && !target.taken) {
                candidate.close(StartWindows.overdue(candidate));
            }
        }
        return complete;
    }
}
