package headgate.verifier.rules.plan;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.vocabulary.Operation;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import org.junit.jupiter.api.Test;

@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet and every plan names an operation")
class OperationMatchesTest {

    @Test
    void passesTheSameOperation() {
        assertThat(only(Cases.weeding()).message())
                .isEqualTo("The plan \"Test weeding\" wants pull-weeds, which is what the head does.");
    }

    @Test
    void failsAnotherOperation() {
        Finding finding = only(Cases.weeding().sheet(b -> b.operation(Operation.HOE)));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).isEqualTo("The plan \"Test weeding\" wants pull-weeds, but the head does hoe.");
    }

    @Test
    void failsForAWordThatIsNotKnownHere() {
        assertThat(only(Cases.weeding().sheet(b -> b.operation(Operation.of("pull-weed"))))
                        .outcome())
                .isEqualTo(Outcome.FAIL);
    }

    private static Finding only(Cases cases) {
        return new OperationMatches().check(cases.build()).get(0);
    }
}
