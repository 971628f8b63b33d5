package headgate.runtime.transcript;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/**
 * Remembers every answer of a head, so that no task is asked twice, and can write down what was asked. Tasks lie on the
 * lattice, so a remembered answer is the answer and not one nearby.
 */
public final class MemoAnswers implements HeadAnswers {

    private final HeadAnswers head;
    private final Map<LatticeSpotTask, SpotAnswer> spots = new LinkedHashMap<>();
    private final Map<LatticeRowTask, RowAnswer> rows = new LinkedHashMap<>();

    /**
     * Remembers nothing yet.
     *
     * @param head whom to ask; closed with this
     */
    public MemoAnswers(HeadAnswers head) {
        this.head = head;
    }

    @Override
    public HeadKind kind() {
        return head.kind();
    }

    @Override
    public HeadSheet sheet() {
        return head.sheet();
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        return remembered(tasks, spots, head::act);
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        return remembered(tasks, rows, head::engage);
    }

    @Override
    public List<String> notes() {
        return head.notes();
    }

    @Override
    public void willAct(List<LatticeSpotTask> tasks) {
        head.willAct(unknown(tasks, spots));
    }

    @Override
    public void willEngage(List<LatticeRowTask> tasks) {
        head.willEngage(unknown(tasks, rows));
    }

    private static <T, A> List<T> unknown(List<T> tasks, Map<T, A> known) {
        Set<T> unknown = new LinkedHashSet<>();
        for (T task : tasks) {
            if (!known.containsKey(task)) {
                unknown.add(task);
            }
        }
        return List.copyOf(unknown);
    }

    private static <T, A> List<A> remembered(List<T> tasks, Map<T, A> known, Function<List<T>, List<A>> ask) {
        List<T> asked = unknown(tasks, known);
        if (!asked.isEmpty()) {
            List<A> answers = ask.apply(asked);
            for (int i = 0; i < asked.size(); i++) {
                known.put(asked.get(i), answers.get(i));
            }
        }
        List<A> result = new ArrayList<>(tasks.size());
        for (T task : tasks) {
            result.add(Objects.requireNonNull(known.get(task)));
        }
        return List.copyOf(result);
    }

    /** {@return how many different tasks were asked} */
    public int asked() {
        return spots.size() + rows.size();
    }

    /**
     * Writes down what was asked so far.
     *
     * @param subject SHA-256 of the partner's file, lower-case hexadecimal
     * @return the sheet, every task and its answer
     */
    public Transcript transcript(String subject) {
        return new Transcript(subject, kind(), sheet(), spots, rows);
    }

    @Override
    public void close() {
        head.close();
    }
}
