package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class AimsTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAToolThatTreatsBesideThePlant() {
        // It goes to a place 20 mm ahead of the plant; the aim tolerance is 10 mm.
        List<Finding> findings = check(Cases.weeding().act(task -> aside(task, 0.02)));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message()).contains("20.0 mm").contains("10.0 mm");
    }

    @Test
    void holdsAtTheToleranceAndFailsAMillimetreBeyond() {
        assertThat(check(Cases.weeding().act(task -> aside(task, 0.01))))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().act(task -> aside(task, 0.011))))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.FAIL);
    }

    @Test
    void failsAnActionThatTreatsNothing() {
        HeadSheet sheet = Cases.weederSheet().build();

        List<Finding> findings = check(Cases.weeding()
                .act(task -> Action.of(Cases.phase("nod", 1.5, sheet.readyToolPoint(), Contact.FREE)
                        .build())));

        assertThat(findings).extracting(Finding::subject).containsExactly("head test-head 1.0.0, treats");
    }

    @Test
    void undecidedAboutAHeadThatRefusesEverything() {
        List<Finding> findings = check(Cases.weeding().act(task -> Action.decline("not today")));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static Action aside(LatticeSpotTask task, double metres) {
        Point3 p = task.position();
        return Cases.action(
                Cases.weederSheet().build(),
                task.at(new Point3(p.x() + Micrometres.nearest(metres), p.y(), p.z())),
                0.5);
    }

    private static List<Finding> check(Cases cases) {
        return new Aims().check(cases.build());
    }
}
