package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StaysInReachTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAWayThatLeavesTheReach() {
        List<Finding> findings = check(Cases.weeding().act(task -> through(task, Point3.ofMetres(0.401, 0.0, -0.3))));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).subject()).endsWith("in-reach");
    }

    @Test
    void holdsAtTheEdgeOfTheReach() {
        assertThat(check(Cases.weeding().act(task -> through(task, Point3.ofMetres(0.4, 0.1, -0.3)))))
                .extracting(Finding::outcome)
                .containsExactly(Outcome.PASS);
    }

    @Test
    void undecidedAboutAHeadThatRefusesEverything() {
        List<Finding> findings = check(Cases.weeding().act(task -> Action.decline("not today")));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    /** The usual action, but the way back goes through a point. */
    private static Action through(LatticeSpotTask task, Point3 point) {
        Action usual = Cases.action(Cases.weederSheet().build(), task, 0.5);
        if (usual.declined().isPresent()) {
            return usual;
        }
        List<Phase> phases = new ArrayList<>(usual.phases());
        phases.add(3, Cases.phase("detour", 0.2, point, Contact.CANOPY).build());
        return Action.of(phases);
    }

    private static List<Finding> check(Cases cases) {
        return new StaysInReach().check(cases.build());
    }
}
