package headgate.verifier.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.evidence.Evidence;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random pairs of arms against dyn4j, which is told only corners: whatever an interlock allows keeps the gap, in every
 * sampled instant, height and posture.
 */
class CoincidencesAgainstOtherEngineTest {

    private static final String ID = "interlocks-independent";
    private static final int SLICE = 150;
    private static final int ALL = 10_000;

    /** Micrometres: room for the rounding of the other engine. */
    private static final double TOLERANCE = 2.0;

    @Test
    void aSliceHoldsAndIsTheOneThatTheEvidenceStartsWith() throws IOException {
        CoincidenceTally slice = CoincidenceTally.of(0, SLICE);
        Evidence committed = Evidence.read(ID);

        assertThat(slice.mostTooNear).isLessThanOrEqualTo(TOLERANCE);
        assertThat(committed.whole("slicePairs")).isEqualTo(SLICE);
        assertThat(committed.whole("sliceInterlocks")).isEqualTo(slice.interlocks);
        assertThat(committed.fact("sliceDigest")).isEqualTo(slice.digest());
        assertThat(committed.whole("seed")).isEqualTo(CoincidenceTally.SEED);
        assertThat(committed.whole("pairs")).isGreaterThanOrEqualTo(ALL);
        assertThat(committed.decimal("mostTooNearMicrometres")).isLessThanOrEqualTo(TOLERANCE);
    }

    @Test
    @Tag("evidence")
    void allHold() throws IOException {
        CoincidenceTally slice = CoincidenceTally.of(0, SLICE);
        CoincidenceTally all = CoincidenceTally.of(0, ALL);

        assertThat(all.mostTooNear).isLessThanOrEqualTo(TOLERANCE);
        // Floors: the generator makes what the claim speaks of, and the samples come near the worst case.
        assertThat(all.interlocks).isGreaterThan(ALL / 20);
        assertThat(all.neverTogether).isGreaterThan(20);
        assertThat(all.withForbiddenPlaces).isGreaterThan(all.interlocks / 10);
        assertThat(all.allowed).isGreaterThan(all.refused / 4);
        assertThat(all.within1Millimetre).isGreaterThan(100);
        Evidence.of(ID)
                .with("claim", "No coincidence that an interlock allows is nearer than the required gap")
                .with(
                        "command",
                        "mvn -Pevidence verify -pl verifier/engine -am -Dtest=CoincidencesAgainstOtherEngineTest"
                                + " -Dsurefire.failIfNoSpecifiedTests=false")
                .with("against", "org.dyn4j:dyn4j:6.0.0, distance by GJK, at single instants, heights and postures")
                .with("seed", CoincidenceTally.SEED)
                .with("pairs", all.pairs)
                .with("interlocks", all.interlocks)
                .with("zones", all.zones)
                .with("excessMedian", up(all.excess(0.5)))
                .with("excessOf95InAHundred", up(all.excess(0.95)))
                .with("excessMost", up(all.excess(1)))
                .with("interlocksThatLetOneActAtATime", all.neverTogether)
                .with("interlocksWithPlacesThatAreNeverAllowed", all.withForbiddenPlaces)
                .with("coincidencesAllowed", all.allowed)
                .with("coincidencesRefused", all.refused)
                .with("refusedAndSampledTooNear", all.refusedAndTooNear)
                .with("configurations", all.checks)
                .with("allowedWithin1MillimetreOfTheGap", all.within1Millimetre)
                .with("mostTooNearMicrometres", up(all.mostTooNear))
                .with("digest", all.digest())
                .with("slicePairs", slice.pairs)
                .with("sliceInterlocks", slice.interlocks)
                .with("sliceDigest", slice.digest())
                .write();
    }

    /** Three decimals, rounded up, so that the file overstates an error, or an excess, rather than hides one. */
    private static String up(double figure) {
        return BigDecimal.valueOf(figure).setScale(3, RoundingMode.CEILING).toPlainString();
    }
}
