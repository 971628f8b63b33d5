package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AnswersTest {

    @Test
    void passesAHeadThatGaveItsSheet() {
        Finding finding = only(Cases.weeding());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message()).isEqualTo("It started and gave the sheet of hardware revision A.");
    }

    static List<HeadFault> faults() {
        return List.of(
                new HeadFault.NoHead("no class is indexed"),
                new HeadFault.Exited(HeadStage.LOAD, 3),
                new HeadFault.TimedOut(HeadStage.SHEET, Duration.ofSeconds(10)),
                new HeadFault.OutOfMemory(HeadStage.LOAD),
                new HeadFault.StackOverflow(HeadStage.SHEET),
                new HeadFault.Threw(HeadStage.SHEET, "java.lang.IllegalStateException", "no figure"),
                new HeadFault.ReturnedNull(HeadStage.SHEET),
                new HeadFault.OutputFlood(HeadStage.LOAD, 65_536),
                new HeadFault.BadFrame(HeadStage.SHEET, "too short"),
                new HeadFault.LeftThread(HeadStage.LOAD, "poller"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void failsOnceForEachWayToBreak(HeadFault fault) {
        Finding finding = only(Cases.weeding().run(new HeadUnderTest.Run.Broke(fault)));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .isEqualToIgnoringCase(fault.sentence() + ".")
                .matches("[A-Z].*");
    }

    @Test
    void undecidedIfTheProcessItselfDidNotComeUp() {
        Finding finding = only(Cases.weeding().run(new HeadUnderTest.Run.Broke(new HeadFault.StartFailed("no java"))));

        assertThat(finding.outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(finding.message()).isEqualTo("The head process could not be started: no java.");
    }

    @Test
    void undecidedIfTheHeadWasNotRun() {
        Finding finding = only(Cases.weeding().run(new HeadUnderTest.Run.NotRun("the package was refused")));

        assertThat(finding.outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(finding.message()).contains("because the package was refused");
    }

    private static Finding only(Cases cases) {
        List<Finding> findings = new Answers().check(cases.build());
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
