package headgate.verifier.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.rules.clearance.ArmToArm;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Heads 300 mm wide; arms 1 and 3 on the front beam, 1 m apart, 2 and 4 on the rear one, 1.2 m behind. */
class PairGapsTest {

    @Test
    void everyPairOfArmsInEveryPairOfStances() {
        List<PairGaps> pairs = PairGaps.of(Cases.weeding().build());

        assertThat(pairs)
                .extracting(p -> p.right() + p.left())
                .containsExactly("a1a2", "a1a3", "a1a4", "a2a3", "a2a4", "a3a4");
        assertThat(pairs).allSatisfy(p -> assertThat(p.gaps()).hasSize(9));
        PairGaps onOneBeam = pairs.get(1);
        // At work in the same heights: 1000 - 300 mm apart; lifted and at work overlap in height, too.
        assertThat(onOneBeam.least().orElseThrow()).isCloseTo(0.7, within(1e-9));
        assertThat(onOneBeam.gaps().get(0))
                .isEqualTo(new PairGaps.StanceGap(ArmStance.Kind.WORK, ArmStance.Kind.WORK, Optional.of(0.7)));
        // Backlash 1, tracking 2, two sigma 1 mm and the deflection of hypot(20, 20) N over 100 N/mm, for both; 30 mm
        // by
        // policy.
        assertThat(onOneBeam.required()).isCloseTo(0.03 + 2 * (0.004 + Math.hypot(20, 20) / 100_000), within(1e-9));
    }

    @Test
    void agreesWithTheRuleOnTheTightestPlace() {
        Case subject =
                Cases.weeding().rows(new CropPlan.Rows(0.42, 4, 0.4, 0.0)).build();

        double least = PairGaps.of(subject).stream()
                .mapToDouble(p -> p.least().orElseThrow() - p.required())
                .min()
                .orElseThrow();

        assertThat(new ArmToArm()
                        .check(subject)
                        .get(0)
                        .comparison()
                        .orElseThrow()
                        .margin())
                .isCloseTo(least, within(1e-9));
    }
}
