package headgate.verifier.rules.safety;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.sheet.Figure;
import headgate.api.sheet.Hazard;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class HazardsGuardedTest {

    private static final Hazard CRUSHING =
            Hazard.of(HazardKind.CRUSHING, GuardKind.LIMITED_FORCE, Figure.measured(0.15));

    @Test
    void passesGuardedHazardsWithTheirStopTimes() {
        List<Finding> findings = check(CRUSHING, Hazard.of(HazardKind.CUTTING, GuardKind.FIXED, Figure.measured(2)));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(findings.get(0).message())
                .isEqualTo("Guarded and with a stop time: crushing (limited-force, at rest after 0.15 s); cutting"
                        + " (fixed-guard, at rest after 2 s).");
    }

    @Test
    void failsAHazardThatNothingKeepsPeopleFrom() {
        List<Finding> findings = check(CRUSHING, Hazard.of(HazardKind.CUTTING, GuardKind.NONE, Figure.measured(0)));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message()).isEqualTo("Nothing keeps people from the hazard cutting.");
    }

    @Test
    void undecidedAboutAStopTimeThatNobodyKnows() {
        List<Finding> findings = check(CRUSHING, Hazard.withUnknownStop(HazardKind.CUTTING, GuardKind.FIXED));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
        assertThat(findings.get(0).subject()).endsWith(", cutting");
    }

    @Test
    void undecidedAboutAHeadThatNamesNoHazard() {
        assertThat(check()).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static List<Finding> check(Hazard... hazards) {
        return new HazardsGuarded()
                .check(Cases.weeding().sheet(b -> b.hazards(hazards)).build());
    }
}
