package headgate.verifier.rules.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.vocabulary.PlantClass;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

@NeverFinds(value = Outcome.UNDECIDED, because = "every work range has corners to ask")
class AcceptsTest {

    @Test
    void passesTheDefaultHeads() {
        assertThat(check(Cases.weeding())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.planting())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(check(Cases.weeding().turned())).extracting(Finding::outcome).containsExactly(Outcome.PASS);
    }

    @Test
    void failsAHeadThatRefusesOneOfItsOwnClasses() {
        List<Finding> findings = check(Cases.weeding()
                .act(task -> task.plantClass().equals(PlantClass.GRASS)
                        ? Action.decline("no grass today")
                        : Cases.action(Cases.weederSheet().build(), task, 0.5)));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message()).contains("no grass today");
    }

    private static List<Finding> check(Cases cases) {
        return new Accepts().check(cases.build());
    }
}
