package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.sheet.HeadSheet;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContactLabelsTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsALabelMilderThanTheShape() {
        HeadSheet sheet = Cases.weederSheet().build();

        List<Finding> findings = check(Cases.weeding().act(task -> {
            Action usual = Cases.action(sheet, task, 0.5);
            if (usual.declined().isPresent()) {
                return usual;
            }
            List<Phase> phases = new ArrayList<>(usual.phases());
            // It comes out of the soil and says that it is among the leaves.
            Phase draw = phases.get(2);
            phases.set(
                    2,
                    Cases.phase("draw", draw.duration(), draw.toolPoint(), Contact.CANOPY)
                            .build());
            return Action.of(phases);
        }));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message()).contains("labelled canopy").contains("soil");
    }

    @Test
    void undecidedAboutAHeadThatRefusesEverything() {
        List<Finding> findings = check(Cases.weeding().act(task -> Action.decline("not today")));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static List<Finding> check(Cases cases) {
        return new ContactLabels().check(cases.build());
    }
}
