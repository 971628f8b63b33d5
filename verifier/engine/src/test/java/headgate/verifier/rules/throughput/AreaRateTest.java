package headgate.verifier.rules.throughput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.vocabulary.Operation;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: rows of 200 m at 0.2 m/s take 1000 s; the tools span 1.2 m, 6 s; a turn takes 25 s and lifting 5 s:
 * E = 1000 / 1036. Four rows at 0.5 m are 2 m wide: C = 0.36 x 0.2 x 2 x E ha/h, the form of ASABE EP496 as quoted by
 * University of Kentucky AEN-73 (1991).
 */
class AreaRateTest {

    private static final double SQUARE_METRES_PER_SECOND = 0.2 * 2 * 1000 / 1036.0;

    @Test
    void passesAtARateThatIsReached() {
        Finding finding = check(wanting(0.35));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().measured().value())
                .isEqualTo(SQUARE_METRES_PER_SECOND, within(1e-12));
        // 0.36 x 0.386100 = 0.1390 ha/h.
        assertThat(finding.message()).contains("0.139 ha/h");
    }

    @Test
    void holdsExactlyAtTheLimit() {
        assertThat(check(wanting(SQUARE_METRES_PER_SECOND)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsAboveIt() {
        assertThat(check(wanting(0.3862)).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void failsAndProposesTheSpeedThatReachesIt() {
        Case slow = wanting(0.5);

        Finding finding = check(slow);

        // 2 m x 200 m / 0.5 m²/s = 800 s a pass, less 30 s for turn and lift; 201.2 m / 770 s = 0.26130 m/s.
        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("drive at 0.262 m/s or faster");
        assertThat(check(finding.proposals().get(0).apply(slow)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void proposesNothingWhereTurnsAloneTakeTooLong() {
        // 400 m² in 30 s of turning and lifting: 13.3 m²/s at the most, however fast.
        assertThat(check(wanting(13.4)).proposals()).isEmpty();
    }

    @Test
    void givesTheFigureWhereNoneIsWanted() {
        Finding finding = check(Cases.weeding().build());

        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
        assertThat(finding.terms().get(8).measure().value()).isEqualTo(SQUARE_METRES_PER_SECOND, within(1e-12));
    }

    @Test
    void isUndecidedWithoutASpeed() {
        assertThat(check(Cases.weeding().speed(0).build()).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    @Test
    void plantingRefillsItsShareInEachPass() {
        // 200 / 0.4 = 500 plugs a pass, 100 a filling, 50 s a refill: 250 s. E = 1000 / 1286.
        Finding finding = check(Cases.planting().build());

        assertThat(finding.terms().get(6).measure().value()).isEqualTo(250.0, within(1e-9));
        assertThat(finding.terms().get(7).measure().value()).isEqualTo(1000 / 1286.0, within(1e-12));
    }

    private static Case wanting(double areaRate) {
        return Cases.weeding()
                .wanted(Operation.PULL_WEEDS, 0.2, 0.85, Optional.of(areaRate))
                .build();
    }

    private static Finding check(Case subject) {
        return new AreaRate().check(subject).get(0);
    }
}
