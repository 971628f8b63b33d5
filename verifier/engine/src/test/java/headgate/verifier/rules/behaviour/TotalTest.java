package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.SpotAnswer;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

@NeverFinds(value = Outcome.UNDECIDED, because = "there is always a task to ask")
class TotalTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsOnceWithTheNumberOfTasksLeftUnanswered() {
        List<Finding> findings = check(Cases.weeding()
                .answer(task -> task.plantClass().equals(PlantClass.GRASS)
                        ? new SpotAnswer.Failed(
                                new HeadFault.Threw(HeadStage.ACT, "java.lang.ArithmeticException", "/ by zero"))
                        : new SpotAnswer.Answered(Action.decline("not today"))));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message())
                .matches("Broken [0-9]+ times in [0-9]+: total: the head threw java.lang.ArithmeticException"
                        + " \\(/ by zero\\) when asked for an action; task: grass, .*");
    }

    private static List<Finding> check(Cases cases) {
        return new Total().check(cases.build());
    }
}
