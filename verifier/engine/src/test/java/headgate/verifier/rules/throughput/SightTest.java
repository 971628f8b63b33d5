package headgate.verifier.rules.throughput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Cases;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hand arithmetic: discs of radius r every 0.4 m in a band of 0.2 m take pi r² of 0.08 m². */
class SightTest {

    private static final double TIGHT = 1e-12;

    /** Two classes: 20 to 60 mm, three in ten, half of them found; 60 to 160 mm, seven in ten, all found. */
    private static final CropPlan.Weeds WEEDS = new CropPlan.Weeds(
            2.0,
            0.2,
            List.of(PlantClass.BROADLEAF),
            0.002,
            0.01,
            0.02,
            0.16,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(new CropPlan.SizeClass("small", 0.06, 0.3, 0.5), new CropPlan.SizeClass("tall", 0.16, 0.7, 1.0)),
            Optional.empty(),
            List.of());

    private static Sight sight(double canopyHeight, double canopyWidth, double protectedRadius) {
        return Sight.of(
                Cases.weeding()
                        .crop(new CropPlan.Crop(canopyHeight, canopyWidth, protectedRadius))
                        .build()
                        .plan()
                        .value(),
                WEEDS);
    }

    @Test
    void withoutACropEveryClassIsFoundAsOftenAsItSays() {
        Sight sight = sight(0.1, 0.0, 0.0);

        assertThat(sight.recall()).isEqualTo(0.85, within(TIGHT));
        assertThat(sight.seen()).isEqualTo(0.85, within(TIGHT));
        assertThat(sight.unprotected()).isEqualTo(1.0, within(TIGHT));
    }

    @Test
    void leavesHideWhatIsLowerThanTheCropInEveryClass() {
        // A crop of 80 mm: all of the small and a fifth of the tall are lower. Leaves of radius 60 mm.
        double covered = Math.PI * 0.0036 / 0.08;
        double lower = 0.3 * 0.5 + 0.7 * 0.2;
        double taller = 0.7 * 0.8;

        Sight sight = sight(0.08, 0.12, 0.02);

        assertThat(sight.seen()).isEqualTo(lower * (1 - covered) + taller, within(TIGHT));
        assertThat(sight.hidden()).isEqualTo(lower * covered, within(TIGHT));
        // Protected discs of radius 20 mm lie under the leaves: only the tall that stand out of them are seen there.
        double protectedShare = Math.PI * 0.0004 / 0.08;
        assertThat(sight.seen() * sight.unprotected())
                .isEqualTo(lower * (1 - covered) + taller * (1 - protectedShare), within(TIGHT));
    }

    @Test
    void protectedDiscsThatReachBeyondTheLeavesKeepTheSeenOff() {
        double covered = Math.PI * 0.0001 / 0.08;
        double kept = Math.PI * 0.0025 / 0.08;

        // A crop taller than all weeds, leaves of radius 10 mm, protected radius 50 mm.
        Sight sight = sight(0.3, 0.02, 0.05);

        assertThat(sight.seen()).isEqualTo(0.85 * (1 - covered), within(TIGHT));
        assertThat(sight.seen() * sight.unprotected()).isEqualTo(0.85 * (1 - kept), within(TIGHT));
    }
}
