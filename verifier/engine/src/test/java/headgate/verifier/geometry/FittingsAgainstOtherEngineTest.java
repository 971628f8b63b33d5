package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.evidence.Evidence;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random fittings against dyn4j, which is told only corners, and against single configurations with each tool somewhere
 * on a straight way through its region: the gap is never overstated, and not understated either.
 */
class FittingsAgainstOtherEngineTest {

    private static final String ID = "clearance-independent";
    private static final int SLICE = 5_000;
    private static final int ALL = 200_000;

    /** Micrometres: room for the rounding of the other engine. */
    private static final double TOLERANCE = 2.0;

    @Test
    void aSliceHoldsAndIsTheOneThatTheEvidenceStartsWith() throws IOException {
        FittingTally slice = FittingTally.of(0, SLICE);
        Evidence committed = Evidence.read(ID);

        assertHolds(slice);
        assertThat(committed.whole("sliceFittings")).isEqualTo(SLICE);
        assertThat(committed.whole("slicePairs")).isEqualTo(slice.pairs);
        assertThat(committed.whole("slicePairsThatMeet")).isEqualTo(slice.meeting);
        assertThat(committed.fact("sliceDigest")).isEqualTo(slice.digest());
        assertThat(committed.whole("seed")).isEqualTo(FittingTally.SEED);
        assertThat(committed.whole("fittings")).isGreaterThanOrEqualTo(ALL);
        assertThat(committed.decimal("mostOverOtherEngineMicrometres")).isLessThanOrEqualTo(TOLERANCE);
        assertThat(committed.decimal("mostUnderOtherEngineMicrometres")).isLessThanOrEqualTo(TOLERANCE);
        assertThat(committed.decimal("mostOverSingleConfigurationMicrometres")).isLessThanOrEqualTo(TOLERANCE);
    }

    @Test
    @Tag("evidence")
    void allHold() throws IOException {
        FittingTally slice = FittingTally.of(0, SLICE);
        FittingTally all = FittingTally.of(0, ALL);

        assertHolds(all);
        Evidence.of(ID)
                .with("claim", "A gap is never more than the true one by over 2 micrometres, and equal within 2")
                .with(
                        "command",
                        "mvn -Pevidence verify -pl verifier/engine -am -Dtest=FittingsAgainstOtherEngineTest"
                                + " -Dsurefire.failIfNoSpecifiedTests=false")
                .with("against", "org.dyn4j:dyn4j:6.0.0, hull by gift wrapping and distance by GJK")
                .with("seed", FittingTally.SEED)
                .with("fittings", all.fittings)
                .with("fittingsOnTwoBeams", all.twoBeams)
                .with("fittingsWithLinkedArms", all.linked)
                .with("armsTurned", all.turnedArms)
                .with("pairs", all.pairs)
                .with("pairsOfConvexBodies", all.convexPairs)
                .with("pairsThatMeet", all.meeting)
                .with("singleConfigurations", all.samples)
                .with("pairsWithAConfigurationWithin2Micrometres", all.tightSamples)
                .with("mostOverOtherEngineMicrometres", up(all.mostOverOther))
                .with("mostUnderOtherEngineMicrometres", up(all.mostUnderOther))
                .with("mostUnderOtherEngineConvexMicrometres", up(all.mostUnderOtherConvex))
                .with("mostOverSingleConfigurationMicrometres", up(all.mostOverSample))
                .with("digest", all.digest())
                .with("sliceFittings", slice.fittings)
                .with("slicePairs", slice.pairs)
                .with("slicePairsThatMeet", slice.meeting)
                .with("sliceDigest", slice.digest())
                .write();
    }

    private static void assertHolds(FittingTally tally) {
        assertThat(tally.mostOverOther).isLessThanOrEqualTo(TOLERANCE);
        assertThat(tally.mostOverSample).isLessThanOrEqualTo(TOLERANCE);
        assertThat(tally.mostUnderOtherConvex).isLessThanOrEqualTo(TOLERANCE);
        assertThat(tally.mostUnderOther).isLessThanOrEqualTo(TOLERANCE);
        // Floors: the generator makes what the claim speaks of, and the samples come near the worst case often enough
        // to say something.
        assertThat(tally.twoBeams).isGreaterThan(tally.fittings / 3);
        assertThat(tally.linked).isGreaterThan(tally.fittings / 5);
        assertThat(tally.turnedArms).isGreaterThan(tally.fittings / 3);
        assertThat(tally.convexPairs).isBetween(tally.pairs / 3, 2 * tally.pairs / 3);
        assertThat(tally.meeting).isBetween(tally.pairs / 50, tally.pairs / 2);
        assertThat(tally.tightSamples).isGreaterThan(tally.pairs / 10);
    }

    /** Three decimals, rounded up, so that the file overstates an error rather than hides one. */
    private static String up(double micrometres) {
        return BigDecimal.valueOf(micrometres).setScale(3, RoundingMode.CEILING).toPlainString();
    }
}
