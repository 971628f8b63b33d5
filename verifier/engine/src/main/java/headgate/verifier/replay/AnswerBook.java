package headgate.verifier.replay;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeSpotTask;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.LongAdder;
import org.jspecify.annotations.Nullable;

/**
 * What the heads answered lately, for all replays that run together. Tasks lie on the lattice, so a kept answer is the
 * answer and not one nearby. Filled between the steps of the replays, only read during them.
 *
 * <p>It keeps a bounded number of answers: when a generation of them is full, the one before it is forgotten. Heads are pure,
 * so a task that is asked again has the same answer, and forgetting costs time only.
 */
public final class AnswerBook {

    /** Answers in a generation: about a kilobyte each. */
    private static final int GENERATION = 40_000;

    private final List<ReplayTool> tools;
    private final List<HeadAnswers> heads;
    private final long canopy;
    private final long budget;
    private final LongAdder lookedUp = new LongAdder();
    private List<KnownActions> known;
    private List<KnownActions> before;
    private long kept;
    private long asked;
    private @Nullable HeadFault fault;
    private boolean exhausted;

    /**
     * An empty book.
     *
     * @param tools the heads, as the settings number them
     * @param heads where to ask each
     * @param canopy height of the canopy over the ground, m
     * @param budget most answers that are asked for
     */
    public AnswerBook(List<ReplayTool> tools, List<HeadAnswers> heads, double canopy, long budget) {
        if (tools.size() != heads.size()) {
            throw new IllegalArgumentException("each tool needs a place to ask it");
        }
        this.tools = List.copyOf(tools);
        this.heads = List.copyOf(heads);
        this.canopy = Math.round(canopy * 1e6);
        this.budget = budget;
        this.known = empty();
        this.before = empty();
    }

    private List<KnownActions> empty() {
        return tools.stream().map(t -> new KnownActions()).toList();
    }

    /**
     * A question to a head.
     *
     * @param tool which head
     * @param task what it is asked
     */
    public record Question(int tool, LatticeSpotTask task) {}

    /** Looks an answer up; null if it is not known. Whoever looks up says so afterwards with {@link #addLookedUp}. */
    @Nullable
    HeadAction find(int tool, TaskKind kind, long place) {
        HeadAction young = known.get(tool).get(kind, place);
        return young != null ? young : before.get(tool).get(kind, place);
    }

    /** Counts look-ups; many together, since threads would wait for one another at every one. */
    void addLookedUp(long number) {
        lookedUp.add(number);
    }

    /**
     * Asks the heads, each with all of its questions at once.
     *
     * @param questions the questions; those that were answered before are not asked again
     * @return true if all are answered; false if a head broke or the budget is used up
     */
    public boolean ask(Collection<Question> questions) {
        if (kept >= GENERATION) {
            before = known;
            known = empty();
            kept = 0;
        }
        for (int tool = 0; tool < tools.size(); tool++) {
            Set<LatticeSpotTask> fresh = new LinkedHashSet<>();
            for (Question question : questions) {
                if (question.tool() == tool
                        && find(tool, TaskKind.of(question.task()), TaskKind.place(question.task())) == null) {
                    fresh.add(question.task());
                }
            }
            if (!fresh.isEmpty() && !ask(tool, List.copyOf(fresh))) {
                return false;
            }
        }
        return true;
    }

    private boolean ask(int tool, List<LatticeSpotTask> tasks) {
        if (asked + tasks.size() > budget) {
            exhausted = true;
            return false;
        }
        asked += tasks.size();
        List<SpotAnswer> answers = heads.get(tool).act(tasks);
        for (int i = 0; i < tasks.size(); i++) {
            if (answers.get(i) instanceof SpotAnswer.Answered answered) {
                LatticeSpotTask task = tasks.get(i);
                HeadAction action = HeadAction.of(
                        tools.get(tool).sheet(),
                        answered.action(),
                        task.position().z(),
                        canopy);
                known.get(tool).put(TaskKind.of(task), TaskKind.place(task), action);
                kept++;
            } else if (answers.get(i) instanceof SpotAnswer.Failed failed) {
                fault = failed.fault();
                return false;
            }
        }
        return true;
    }

    /** {@return how often an answer was looked up, found or not} */
    public long lookedUp() {
        return lookedUp.sum();
    }

    /** {@return how many tasks the heads were asked; what was forgotten meanwhile counts again} */
    public long asked() {
        return asked;
    }

    /** {@return how a head broke; empty if none did} */
    public Optional<HeadFault> fault() {
        return Optional.ofNullable(fault);
    }

    /** {@return true if more answers were needed than the budget allows} */
    public boolean exhausted() {
        return exhausted;
    }

    /** {@return most answers that are asked for} */
    public long budget() {
        return budget;
    }
}
