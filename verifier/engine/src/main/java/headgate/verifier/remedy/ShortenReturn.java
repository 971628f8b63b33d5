package headgate.verifier.remedy;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Figure;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.HeadUnderTest;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Make a spot head ready again sooner: the phases after its last contact take less time, all by the same share. What it
 * does to the plant stays as it is.
 *
 * @param headId the head's id
 * @param seconds by how much the action is shorter, s; shown and applied rounded up to a millisecond
 */
public record ShortenReturn(String headId, double seconds) implements Edit {

    /** Shortest action time that a sheet may give, s. */
    private static final double SHORTEST = 0.001;

    /** Rounds up, so that whoever shortens by what is shown is safe. */
    public ShortenReturn {
        seconds = Dimension.TIME.rounded(seconds, RoundingMode.CEILING);
    }

    @Override
    public Case apply(Case before) {
        return before.withHead(headId, this::shortened);
    }

    private HeadUnderTest shortened(HeadUnderTest head) {
        if (!(head.run() instanceof HeadUnderTest.Run.Answering run)) {
            return head;
        }
        HeadSheet sheet = run.sheet()
                .actionTime()
                .map(time -> run.sheet().toBuilder().actionTime(shorter(time)).build())
                .orElse(run.sheet());
        Optional<HeadAnswers> again = run.again().map(a -> new Sooner(a, sheet, seconds));
        return new HeadUnderTest(
                head.facts(), new HeadUnderTest.Run.Answering(sheet, new Sooner(run.answers(), sheet, seconds), again));
    }

    private ActionTime shorter(ActionTime time) {
        return ActionTime.of(shorter(time.least()), shorter(time.typical()), shorter(time.most()));
    }

    private Figure shorter(Figure figure) {
        return Figure.assumed(Math.max(SHORTEST, figure.value() - seconds));
    }

    /** A head that answers the same but for the time after its last contact. */
    private record Sooner(HeadAnswers head, HeadSheet sheet, double seconds) implements HeadAnswers {

        @Override
        public HeadKind kind() {
            return head.kind();
        }

        @Override
        public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
            return head.act(tasks).stream().map(this::sooner).toList();
        }

        private SpotAnswer sooner(SpotAnswer answer) {
            return answer instanceof SpotAnswer.Answered answered
                            && answered.action().declined().isEmpty()
                    ? new SpotAnswer.Answered(sooner(answered.action()))
                    : answer;
        }

        private Action sooner(Action action) {
            List<Phase> phases = new ArrayList<>(action.phases());
            int first = phases.size();
            double after = 0;
            while (first > 0 && isFree(phases.get(first - 1))) {
                first--;
                after += phases.get(first).duration();
            }
            double share = after > 0 ? Math.max(0, after - seconds) / after : 1;
            for (int i = first; i < phases.size(); i++) {
                Phase phase = phases.get(i);
                phases.set(
                        i,
                        Phase.named(phase.name())
                                .lasting(phase.duration() * share)
                                .endingAt(phase.toolPoint())
                                .in(phase.posture())
                                .touching(phase.contact())
                                .build());
            }
            return Action.of(phases);
        }

        private static boolean isFree(Phase phase) {
            return !phase.contact().equals(Contact.SOIL) && phase.treated().isEmpty();
        }

        @Override
        public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
            return head.engage(tasks);
        }

        @Override
        public void close() {
            // The head belongs to the case that this one was made of.
        }
    }

    @Override
    public String text() {
        return "return from a plant " + Dimension.TIME.text(seconds) + " sooner";
    }

    @Override
    public String kind() {
        return "shorten-return";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("seconds", seconds);
    }
}
