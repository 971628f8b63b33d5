package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReturnsReadyTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAHeadThatStaysAMicrometreAway() {
        HeadSheet sheet = Cases.weederSheet().build();

        List<Finding> findings = check(Cases.weeding().act(task -> {
            Action usual = Cases.action(sheet, task, 0.5);
            if (usual.declined().isPresent()) {
                return usual;
            }
            List<Phase> phases = new ArrayList<>(usual.phases());
            Point3 ready = sheet.readyToolPoint();
            phases.set(
                    3,
                    Cases.phase("return", 0.5, new Point3(ready.x() + 1, ready.y(), ready.z()), Contact.CANOPY)
                            .build());
            return Action.of(phases);
        }));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
    }

    @Test
    void undecidedAboutAHeadThatRefusesEverything() {
        List<Finding> findings = check(Cases.weeding().act(task -> Action.decline("not today")));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static List<Finding> check(Cases cases) {
        return new ReturnsReady().check(cases.build());
    }
}
