package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Engagement;
import headgate.api.shape.Outline;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.verifier.check.Cases;
import headgate.verifier.check.FakeHead;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class DeclaredDepthTest {

    @Test
    void passesAContinuousHeadAtTheEndsOfItsDepth() {
        assertThat(check(hoeing(0.02))).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAMillimetreDeeperThanDeclared() {
        List<Finding> findings = check(hoeing(0.021));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).subject()).endsWith("declared-depth");
    }

    @Test
    void undecidedAboutAHeadThatNeverEngages() {
        assertThat(check(continuous(task -> new RowAnswer.Answered(Engagement.decline("not today")))))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.UNDECIDED);
    }

    @Test
    void doesNotApplyToASpotHead() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.NOT_APPLICABLE);
    }

    private static Cases hoeing(double depth) {
        return continuous(task -> new RowAnswer.Answered(Engagement.builder()
                .engaged(Outline.rectangle(0.2, 0.3, -0.05, 0.05))
                .depth(depth)
                .draft(50)
                .insertTime(0.2)
                .withdrawTime(0.2)
                .following(0.1, 1)
                .build()));
    }

    private static Cases continuous(Function<LatticeRowTask, RowAnswer> row) {
        return Cases.weeding().run(sheet -> Cases.answering(FakeHead.continuous(sheet, row)));
    }

    private static List<Finding> check(Cases cases) {
        return new DeclaredDepth().check(cases.build());
    }
}
