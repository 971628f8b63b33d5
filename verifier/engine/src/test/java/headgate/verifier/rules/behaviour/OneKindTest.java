package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Engagement;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.verifier.check.Cases;
import headgate.verifier.check.FakeHead;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@NeverFinds(value = Outcome.UNDECIDED, because = "a head that gave its sheet is known by its class")
class OneKindTest {

    @Test
    void passesASpotHeadWithAnActionTime() {
        assertThat(only(Cases.weeding()).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsAContinuousHeadWithAnActionTime() {
        Finding finding = only(Cases.weeding()
                .run(sheet -> Cases.answering(
                        FakeHead.continuous(sheet, t -> new RowAnswer.Answered(Engagement.decline("rest"))))));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).endsWith("leave it out.");
    }

    @ParameterizedTest
    @EnumSource(
            value = HeadKind.class,
            names = {"BOTH", "NEITHER"})
    void failsAHeadOfBothKindsOrNone(HeadKind kind) {
        Finding finding = only(Cases.weeding().run(sheet -> Cases.answering(of(kind, sheet))));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
    }

    private static FakeHead of(HeadKind kind, HeadSheet sheet) {
        return new FakeHead(
                kind,
                sheet,
                t -> new SpotAnswer.Failed(new HeadFault.WrongKind(HeadStage.ACT)),
                t -> new RowAnswer.Failed(new HeadFault.WrongKind(HeadStage.ENGAGE)));
    }

    private static Finding only(Cases cases) {
        List<Finding> findings = new OneKind().check(cases.build());
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
