package headgate.verifier.trial;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.task.TaskLattice;
import headgate.verifier.replay.AnswerBook;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.replay.Replay;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.replay.ReplayRun;
import headgate.verifier.replay.ReplaySetting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * Runs one case at speeds and densities. All seeds, speeds and densities step together, so that the heads are asked for all
 * of them at once. Seed k is the same stand at every speed, so that speeds are compared on the same plants.
 */
public final class Trial {

    /** Steps of a ladder are refined by so many. */
    private static final int FINER = 10;

    private final CaseSetting subject;
    private final Stands stands;
    private final TrialPlan plan;
    private final AnswerBook book;
    private final boolean onePlot;
    private boolean broken;

    /**
     * A trial.
     *
     * @param subject the case's setting; its seed is the first
     * @param stands makes the plants
     * @param plan how it is run
     * @param onePlot true if the stand is one plot, the same for all seeds: it is run once, and its blocks of travel are
     *     drawn anew
     */
    public Trial(CaseSetting subject, Stands stands, TrialPlan plan, boolean onePlot) {
        this.onePlot = onePlot;
        this.subject = subject;
        this.stands = stands;
        this.plan = plan;
        this.book = new AnswerBook(
                subject.setting().tools(),
                subject.heads(),
                subject.setting().crop().canopyHeight(),
                plan.budget());
    }

    /**
     * A speed and a density to be run.
     *
     * @param speed m/s; taken to the next lower whole mm/s
     * @param density weeds per square metre
     */
    public record Question(double speed, double density) {}

    /** A cell while it is run. */
    private static final class Open {
        final Question question;
        final List<ReplayOutcome> outcomes = new ArrayList<>();

        Open(Question question) {
            this.question = question;
        }
    }

    /**
     * Runs cells.
     *
     * @param questions speeds and densities
     * @return one cell for each, in their order; empty if a head broke or the budget was used up
     */
    public Optional<List<Cell>> run(List<Question> questions) {
        List<Open> all = questions.stream().map(Open::new).toList();
        if (onePlot) {
            return addSeeds(all, 1) ? Optional.of(all.stream().map(this::cell).toList()) : Optional.empty();
        }
        List<Open> undecided = all;
        for (int seeds = plan.firstSeeds(); !undecided.isEmpty(); seeds = Math.min(2 * seeds, plan.mostSeeds())) {
            if (!addSeeds(undecided, seeds)) {
                return Optional.empty();
            }
            if (seeds == plan.mostSeeds()) {
                break;
            }
            undecided = undecided.stream()
                    .filter(open -> cell(open).standing() == Standing.UNDECIDED)
                    .toList();
        }
        return Optional.of(all.stream().map(this::cell).toList());
    }

    private boolean addSeeds(List<Open> cells, int upTo) {
        if (broken) {
            return false;
        }
        List<Replay> replays = new ArrayList<>();
        for (Open open : cells) {
            double speed = TaskLattice.SPEED.down(open.question.speed());
            for (int k = open.outcomes.size(); k < upTo; k++) {
                long seed = subject.setting().seed() + k;
                ReplaySetting setting = subject.setting().withSpeed(speed).withSeed(seed);
                replays.add(new Replay(setting, stands.make(open.question.density(), seed), book));
            }
        }
        if (!ReplayRun.run(replays, book, plan.threads())) {
            broken = true;
            return false;
        }
        int next = 0;
        for (Open open : cells) {
            while (open.outcomes.size() < upTo) {
                open.outcomes.add(replays.get(next++).outcome().orElseThrow());
            }
        }
        return true;
    }

    private Cell cell(Open open) {
        if (onePlot) {
            return cell(
                    open,
                    Bounds.ofBlocks(
                            open.outcomes.get(0).blocks(),
                            plan.confidence(),
                            subject.setting().seed()));
        }
        return cell(
                open,
                Bounds.ofSeeds(open.outcomes.stream().map(ReplayOutcome::all).toList(), plan.confidence()));
    }

    private Cell cell(Open open, Bounds bounds) {
        return new Cell(
                open.question.speed(), open.question.density(), bounds, bounds.against(plan.wanted()), open.outcomes);
    }

    /**
     * The best speed: the largest up to which every speed of a ladder passes, refined once.
     *
     * @param density weeds per square metre
     * @param step first step of the ladder, m/s
     * @param most where the ladder ends, m/s
     * @return the ladder that was climbed; empty if a head broke or the budget was used up
     */
    public Optional<Climb> bestSpeed(double density, double step, double most) {
        return climb(step, most, speed -> new Question(speed, density));
    }

    /**
     * The density that a speed can bear: the largest up to which every density of a ladder passes, refined once.
     *
     * @param speed m/s
     * @param step first step of the ladder, weeds per square metre
     * @param most where the ladder ends, weeds per square metre
     * @return the ladder that was climbed; empty if a head broke or the budget was used up
     */
    public Optional<Climb> densityBorne(double speed, double step, double most) {
        return climb(step, most, density -> new Question(speed, density));
    }

    /**
     * A ladder that was climbed.
     *
     * @param best the largest value up to which every rung passes; empty if not even the first does
     * @param cells all rungs that were run, coarse ones first
     */
    public record Climb(Optional<Double> best, List<Cell> cells) {

        /** Copies the list. */
        public Climb {
            cells = List.copyOf(cells);
        }
    }

    private Optional<Climb> climb(double step, double most, DoubleFunction<Question> question) {
        int rungs = (int) Math.floor(most / step + 1e-9);
        List<Cell> cells = new ArrayList<>();
        Optional<Integer> coarse = passing(1, rungs, n -> n * step, question, cells);
        if (coarse.isEmpty()) {
            return Optional.empty();
        }
        int passed = coarse.get();
        double fine = step / FINER;
        int end = Math.min(FINER * (passed + 1) - 1, (int) Math.floor(most / fine + 1e-9));
        Optional<Integer> finer = passing(FINER * passed + 1, end, n -> n * fine, question, cells);
        return finer.map(n -> new Climb(n > 0 ? Optional.of(n * fine) : Optional.empty(), cells));
    }

    /** The last rung up to which all pass; one less than the first if that does not. */
    private Optional<Integer> passing(
            int first, int last, DoubleUnaryOperator value, DoubleFunction<Question> question, List<Cell> cells) {
        List<Question> questions = new ArrayList<>();
        for (int n = first; n <= last; n++) {
            questions.add(question.apply(value.applyAsDouble(n)));
        }
        Optional<List<Cell>> run = run(questions);
        if (run.isEmpty()) {
            return Optional.empty();
        }
        cells.addAll(run.get());
        int passed = 0;
        while (passed < questions.size() && run.get().get(passed).standing() == Standing.PASSES) {
            passed++;
        }
        return Optional.of(first - 1 + passed);
    }

    /** {@return how many different tasks the heads were asked} */
    public long asked() {
        return book.asked();
    }

    /** {@return how often an answer was looked up; what was not asked came from the book} */
    public long lookedUp() {
        return book.lookedUp();
    }

    /** {@return how a head broke; empty if none did} */
    public Optional<HeadFault> fault() {
        return book.fault();
    }

    /** {@return true if more answers were needed than the plan allows} */
    public boolean exhausted() {
        return book.exhausted();
    }
}
