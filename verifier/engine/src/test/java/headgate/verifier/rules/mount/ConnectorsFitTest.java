package headgate.verifier.rules.mount;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.sheet.Connector;
import headgate.api.vocabulary.ConnectorKind;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet and every arm lists its connectors")
class ConnectorsFitTest {

    private static final Connector POWER = Connector.of(ConnectorKind.ELECTRIC, "M12-L 5-pole 24 V");
    private static final Connector DATA = Connector.of(ConnectorKind.DATA, "M12-D 4-pole 100 Mbit/s");

    @Test
    void passesWhatEveryArmOffers() {
        List<Finding> findings = check(POWER, DATA);

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        assertThat(findings.get(0).examined()).isEqualTo(8);
    }

    @Test
    void failsOnceForEachConnectorThatIsMissing() {
        List<Finding> findings = check(
                POWER,
                Connector.of(ConnectorKind.ELECTRIC, "M12-L 5-pole 48 V"),
                Connector.of(ConnectorKind.WATER, "G1/2"));

        assertThat(findings)
                .extracting(Finding::message)
                .containsExactly(
                        "The head needs electric M12-L 5-pole 48 V, but arm a1 offers electric M12-L 5-pole 24 V and"
                                + " data M12-D 4-pole 100 Mbit/s.",
                        "The head needs water G1/2, but arm a1 offers electric M12-L 5-pole 24 V and data M12-D 4-pole"
                                + " 100 Mbit/s.");
    }

    @Test
    void failsIfOneConnectorWouldHaveToServeTwice() {
        List<Finding> findings = check(POWER, POWER);

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.FAIL);
        assertThat(findings.get(0).message()).startsWith("The head needs 2 of electric M12-L 5-pole 24 V, but arm a1");
    }

    @Test
    void doesNotApplyToAHeadWithoutConnectors() {
        assertThat(check()).extracting(Finding::outcome).containsExactly(Outcome.NOT_APPLICABLE);
    }

    private static List<Finding> check(Connector... needed) {
        return new ConnectorsFit()
                .check(Cases.weeding().sheet(b -> b.connectors(needed)).build());
    }
}
