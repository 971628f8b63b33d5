package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.sheet.HeadSheet;
import headgate.api.task.Velocity;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class GoesWithGroundTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAToolThatStandsStillInTheSoil() {
        HeadSheet sheet = Cases.weederSheet().build();

        List<Finding> findings =
                check(Cases.weeding().act(task -> Cases.action(sheet, task.moving(Velocity.ZERO), 0.5)));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).subject()).endsWith("goes-with-ground");
    }

    @Test
    void undecidedAboutAHeadThatRefusesEverything() {
        List<Finding> findings = check(Cases.weeding().act(task -> Action.decline("not today")));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static List<Finding> check(Cases cases) {
        return new GoesWithGround().check(cases.build());
    }
}
