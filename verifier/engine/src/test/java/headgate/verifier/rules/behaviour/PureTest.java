package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.FakeHead;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PureTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAHeadThatCounts() {
        int[] calls = {0};

        List<Finding> findings = check(Cases.weeding().act(task -> {
            calls[0]++;
            return Action.decline("asked " + calls[0] + " times");
        }));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message()).contains("the first answer was declined: asked 1 times");
    }

    @Test
    void failsASheetThatChanges() {
        HeadSheet other = Cases.weederSheet().hardwareRevision("B").build();

        List<Finding> findings = check(Cases.weeding()
                .run(sheet -> new HeadUnderTest.Run.Answering(
                        sheet,
                        FakeHead.spot(sheet, PureTest::refused),
                        Optional.of(FakeHead.spot(other, PureTest::refused)))));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).subject()).endsWith("sheet-stays");
    }

    /** It can then answer while the first one's answers are looked at; announced is what is asked, in the same order. */
    @Test
    void theOtherInstanceIsToldBeforehandWhatItWillBeAsked() {
        List<LatticeSpotTask> announced = new ArrayList<>();
        List<LatticeSpotTask> asked = new ArrayList<>();
        Case subject = Cases.weeding()
                .run(sheet -> new HeadUnderTest.Run.Answering(
                        sheet,
                        FakeHead.spot(sheet, PureTest::refused),
                        Optional.of(new Announced(FakeHead.spot(sheet, PureTest::refused), announced, asked))))
                .build();

        new Total().check(subject);
        assertThat(announced).isNotEmpty();
        assertThat(asked).isEmpty();
        new Pure().check(subject);
        assertThat(asked).isEqualTo(announced);
    }

    private record Announced(HeadAnswers head, List<LatticeSpotTask> announced, List<LatticeSpotTask> asked)
            implements HeadAnswers {

        @Override
        public HeadKind kind() {
            return head.kind();
        }

        @Override
        public HeadSheet sheet() {
            return head.sheet();
        }

        @Override
        public void willAct(List<LatticeSpotTask> tasks) {
            announced.addAll(tasks);
        }

        @Override
        public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
            asked.addAll(tasks);
            return head.act(tasks);
        }

        @Override
        public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
            return head.engage(tasks);
        }

        @Override
        public void close() {
            head.close();
        }
    }

    @Test
    void undecidedWithoutAnotherInstance() {
        List<Finding> findings = check(Cases.weeding()
                .run(sheet -> new HeadUnderTest.Run.Answering(
                        sheet, FakeHead.spot(sheet, PureTest::refused), Optional.empty())));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static SpotAnswer refused(LatticeSpotTask task) {
        return new SpotAnswer.Answered(Action.decline("not " + task.plantClass()));
    }

    private static List<Finding> check(Cases cases) {
        return new Pure().check(cases.build());
    }
}
