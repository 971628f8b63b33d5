package headgate.verifier.rules.rows;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanterPassesTest {

    @ParameterizedTest
    @CsvSource({"4, 4", "8, 4", "12, 4", "4, 2", "3, 1"})
    void passesWhatDividesThePlantersRows(int planter, int perPass) {
        assertThat(check(perPass, Optional.of(planter), 0.02).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsAPassThatSpansTwoOfThePlantersAndProposesOneThatDoesNot() {
        Finding finding = check(4, Optional.of(6), 0.02);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.breaksFit()).isFalse();
        assertThat(finding.message())
                .isEqualTo(
                        "A pass of 4 rows spans passes of the planter, which set 6 at once: every lane is wider by 20 mm to"
                                + " both sides.");
        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("work 3 rows in one pass");
    }

    @Test
    void failsAndSaysThatNoErrorIsGiven() {
        assertThat(check(4, Optional.of(2), 0).message()).contains("the crop plan gives no guess-row error");
    }

    @Test
    void undecidedIfNobodyKnowsThePlanter() {
        assertThat(check(4, Optional.empty(), 0.02).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    @Test
    void doesNotApplyToThePlanterItself() {
        Case planting = Cases.planting().build();

        assertThat(new PlanterPasses().check(planting).get(0).outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
    }

    private static Finding check(int perPass, Optional<Integer> planter, double error) {
        Case subject = Cases.weeding()
                .rows(new CropPlan.Rows(0.5, perPass, 0.4, 0, planter, error, Optional.empty()))
                .build();
        return new PlanterPasses().check(subject).get(0);
    }
}
