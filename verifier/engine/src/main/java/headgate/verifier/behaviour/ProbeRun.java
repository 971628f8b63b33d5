package headgate.verifier.behaviour;

import headgate.api.answer.Action;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeSpotTask;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Probes, asked of a spot head, with its answers in the order in which they were asked. */
public final class ProbeRun {

    /** Starts that are tried before a corner of the work range counts as refused: the path in steps of 1/128. */
    static final int STARTS = 127;

    /** Places on a path that is followed from end to end. */
    static final int FOLLOWED = 64;

    private final HeadSheet sheet;
    private final ProbeSetting setting;
    private final List<LatticeSpotTask> tasks = new ArrayList<>();
    private final List<SpotAnswer> answers = new ArrayList<>();
    private final List<CornerAnswer> corners = new ArrayList<>();
    private final List<Followed> followed = new ArrayList<>();

    private ProbeRun(HeadSheet sheet, ProbeSetting setting) {
        this.sheet = sheet;
        this.setting = setting;
    }

    /**
     * A corner of the work range.
     *
     * @param middle the task with the plant in the middle of its path
     * @param tried how many starts were tried
     * @param refusal the reason given for the middle, if no start was accepted
     */
    record CornerAnswer(LatticeSpotTask middle, int tried, Optional<String> refusal) {}

    /**
     * A path followed from end to end.
     *
     * @param path the path
     * @param accepted for each place in order, whether the head acts
     */
    record Followed(Path path, List<Boolean> accepted) {}

    /**
     * Asks a head all that a setting calls for.
     *
     * @param sheet what it says of itself
     * @param answers where to ask
     * @param setting where it is probed
     * @return tasks and answers
     */
    public static ProbeRun ask(HeadSheet sheet, HeadAnswers answers, ProbeSetting setting) {
        ProbeRun run = new ProbeRun(sheet, setting);
        ProbeTasks probes = new ProbeTasks(sheet, setting);
        run.askCorners(answers, probes.corners());
        run.keep(answers, probes.spread());
        for (Path path : probes.followed()) {
            run.follow(answers, path);
        }
        return run;
    }

    /** Tries the middle of every path first, then ever finer between, and leaves a corner once it is accepted. */
    private void askCorners(HeadAnswers head, List<Path> paths) {
        List<Integer> open =
                new ArrayList<>(IntStream.range(0, paths.size()).boxed().toList());
        List<Optional<String>> refusals = new ArrayList<>();
        int[] tried = new int[paths.size()];
        for (int round = 1; round <= STARTS && !open.isEmpty(); round++) {
            double share = Halton.at(round, 0);
            List<SpotAnswer> given =
                    keep(head, open.stream().map(i -> paths.get(i).at(share)).toList());
            List<Integer> still = new ArrayList<>();
            for (int k = 0; k < open.size(); k++) {
                int corner = open.get(k);
                tried[corner] = round;
                Optional<String> refusal = refusal(given.get(k));
                if (round == 1) {
                    refusals.add(refusal);
                }
                if (refusal.isPresent()) {
                    still.add(corner);
                }
            }
            open = still;
        }
        Set<Integer> refused = Set.copyOf(open);
        for (int corner = 0; corner < paths.size(); corner++) {
            corners.add(new CornerAnswer(
                    paths.get(corner).at(0.5),
                    tried[corner],
                    refused.contains(corner) ? refusals.get(corner) : Optional.empty()));
        }
    }

    private void follow(HeadAnswers head, Path path) {
        List<LatticeSpotTask> places = IntStream.rangeClosed(0, FOLLOWED)
                .mapToObj(i -> path.at((double) i / FOLLOWED))
                .toList();
        followed.add(new Followed(
                path, keep(head, places).stream().map(a -> act(a).isPresent()).toList()));
    }

    private List<SpotAnswer> keep(HeadAnswers head, List<LatticeSpotTask> asked) {
        List<SpotAnswer> given = head.act(asked);
        tasks.addAll(asked);
        answers.addAll(given);
        return given;
    }

    static Optional<Action> act(SpotAnswer answer) {
        return answer instanceof SpotAnswer.Answered answered
                        && answered.action().declined().isEmpty()
                ? Optional.of(answered.action())
                : Optional.empty();
    }

    private static Optional<String> refusal(SpotAnswer answer) {
        return answer instanceof SpotAnswer.Answered answered
                ? answered.action().declined()
                : Optional.empty();
    }

    /** {@return what the head says of itself} */
    public HeadSheet sheet() {
        return sheet;
    }

    /** {@return where it was probed} */
    public ProbeSetting setting() {
        return setting;
    }

    /** {@return every task asked} */
    public List<LatticeSpotTask> tasks() {
        return Collections.unmodifiableList(tasks);
    }

    /** {@return the answer to each task} */
    public List<SpotAnswer> answers() {
        return Collections.unmodifiableList(answers);
    }

    /** {@return how many tasks were answered by an action} */
    public long actions() {
        return answers.stream().filter(a -> act(a).isPresent()).count();
    }

    List<CornerAnswer> corners() {
        return Collections.unmodifiableList(corners);
    }

    List<Followed> followed() {
        return Collections.unmodifiableList(followed);
    }
}
