package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Figure;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class ActionTimeHoldsTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void holdsAtTheLeastAndTheMostAndFailsAMillisecondBeyond() {
        // The head always takes 1.5 s.
        assertThat(within(1.5, 1.5)).containsExactly(Outcome.PASS);
        assertThat(within(1.0, 1.499)).containsExactly(Outcome.FAIL);
        assertThat(within(1.501, 2.0)).containsExactly(Outcome.FAIL);
    }

    @Test
    void failsWithTheTimeAndTheLimit() {
        List<Finding> findings = check(Cases.weeding().sheet(b -> b.actionTime(time(1.0, 1.4))));

        assertThat(findings.get(0).message()).contains("1.500 s").contains("1.400 s");
    }

    @Test
    void undecidedAboutAHeadThatRefusesEverything() {
        List<Finding> findings = check(Cases.weeding().act(task -> Action.decline("not today")));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static List<Outcome> within(double least, double most) {
        return check(Cases.weeding().sheet(b -> b.actionTime(time(least, most)))).stream()
                .map(Finding::outcome)
                .toList();
    }

    private static ActionTime time(double least, double most) {
        return ActionTime.of(Figure.measured(least), Figure.measured(least), Figure.measured(most));
    }

    private static List<Finding> check(Cases cases) {
        return new ActionTimeHolds().check(cases.build());
    }
}
