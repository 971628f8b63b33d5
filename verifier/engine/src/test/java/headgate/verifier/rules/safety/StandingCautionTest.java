package headgate.verifier.rules.safety;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

@NeverFinds(
        value = {Outcome.PASS, Outcome.FAIL, Outcome.UNDECIDED},
        because = "it only says what a verdict is not")
class StandingCautionTest {

    @Test
    void cautionsWhateverTheCase() {
        List<Finding> fits = new StandingCaution().check(Cases.weeding().build());
        List<Finding> broken = new StandingCaution()
                .check(Cases.weeding()
                        .run(new HeadUnderTest.Run.NotRun("nobody asked"))
                        .build());

        assertThat(fits).extracting(Finding::outcome).containsExactly(Outcome.CAUTION);
        assertThat(broken)
                .extracting(Finding::message)
                .containsExactly(fits.get(0).message());
        assertThat(fits.get(0).message())
                .contains("evidence for a licensed engineer and the local authority")
                .contains("isolate the supply");
    }
}
