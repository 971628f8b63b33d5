package headgate.verifier.rules.rows;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import org.junit.jupiter.api.Test;

/** Hand arithmetic: the mounts of four arms shift by 250 mm about y = -750, -250, 250 and 750 mm. */
@NeverFinds(value = Outcome.UNDECIDED, because = "every plan gives its rows, every carriage its rails")
class EveryLaneHasAnArmTest {

    @Test
    void passesAndNamesTheArmOfEachLane() {
        Finding finding = check(rows(0.5, 4));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message())
                .isEqualTo("Each of the 4 lanes has an arm: lane 1 a1, lane 2 a2, lane 3 a3, lane 4 a4.");
    }

    @Test
    void holdsWithTheOuterRowsAtTheEndsOfTheirRails() {
        // Four rows at 2/3 m: the outer ones at 1.000 m, where the outer rails end.
        assertThat(check(rows(2.0 / 3.0, 4)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsWhereNoRailReachesARowAndProposesFewerRows() {
        Case wide = rows(0.7, 4);

        Finding finding = check(wide);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .isEqualTo("Of 4 lanes only 3 can have an arm in one pass: no rail reaches lane 1 at y = -1050 mm.");
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "work 3 rows in one pass",
                        "let arm a1 shift from -1050 mm to -500 mm, arm a4 shift from 500 mm to 1050 mm",
                        "work rows that are 665 mm apart");
        assertThat(finding.proposals())
                .allSatisfy(
                        edit -> assertThat(check(edit.apply(wide)).outcome()).isEqualTo(Outcome.PASS));
    }

    @Test
    void failsWithMoreRowsThanArms() {
        assertThat(check(rows(0.4, 5)).message())
                .isEqualTo("Of 5 lanes only 4 can have an arm in one pass: there are only 4 arms with a head.");
    }

    private static Case rows(double spacing, int perPass) {
        return Cases.weeding()
                .rows(new CropPlan.Rows(spacing, perPass, 0.4, 0.0))
                .build();
    }

    private static Finding check(Case subject) {
        return new EveryLaneHasAnArm().check(subject).get(0);
    }
}
