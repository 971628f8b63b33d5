package headgate.verifier.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Hand arithmetic in a reach of 400 mm by 400 mm by 100 mm about the origin; the gap is 20 mm. */
class ZoneCoverTest {

    private static final long GAP = 20_000;

    private static final Occupied REACH = Occupied.hullOf(
            List.of(Reach.over(Outline.rectangle(-0.2, 0.2, -0.2, 0.2), Interval.ofMetres(-0.05, 0.05))));

    /** A box needs one zone, grown by the gap to each side and cut to the reach. */
    @Test
    void aBoxNeedsOneZone() {
        Cover cover = ZoneCover.of(bar(Outline.rectangle(0.05, 0.1, -0.3, 0.3)), GAP, REACH);

        assertThat(cover.zones())
                .containsExactly(new Zone(
                        Interval.ofMetres(0.03, 0.12),
                        Interval.ofMetres(-0.2001, 0.2001),
                        Interval.ofMetres(-0.0501, 0.0501)));
        // 90 mm of 400 mm are closed, and the very same are too near.
        assertThat(cover.excess()).isLessThan(0.001);
    }

    /**
     * A bar 20 mm thick from one corner of the reach to the other. One box about it would be the reach; too near is what lies
     * within 10 + 20 mm of the diagonal, 2 x 30 x 1.414 = 85 mm of 400 along each line across, about a fifth.
     */
    @Test
    void aSlantedBarIsCoveredInSteps() {
        Occupied bar = bar(Outline.ofMetres(-0.307, -0.293, -0.293, -0.307, 0.307, 0.293, 0.293, 0.307));

        Cover cover = ZoneCover.of(bar, GAP, REACH);

        assertThat(cover.zones()).hasSizeBetween(4, 32);
        assertThat(cover.excess()).isLessThan(0.06);
        holdsAllThatIsTooNear(cover.zones(), bar);
    }

    @Test
    void aZoneThatOthersCloseIsLeftOut() {
        Occupied bar = bar(Outline.rectangle(0.05, 0.1, -0.3, 0.3));
        Zone all = Zone.around(REACH.bounds().orElseThrow().grown(Zone.TENTH));

        assertThat(ZoneCover.of(bar, GAP, REACH, List.of(all), REACH.boxes()).zones())
                .isEmpty();
        // Something beside it does not spare it.
        Zone beside =
                new Zone(Interval.ofMetres(-0.3, 0.119), Interval.ofMetres(-0.3, 0.3), Interval.ofMetres(-0.1, 0.1));
        assertThat(ZoneCover.of(bar, GAP, REACH, List.of(beside), REACH.boxes()).zones())
                .hasSize(1);
    }

    @Test
    void aZoneOfPlacesThatCannotOccurIsLeftOut() {
        Occupied bar = bar(Outline.rectangle(0.05, 0.1, -0.3, 0.3));
        Occupied left = Occupied.hullOf(
                List.of(Reach.over(Outline.rectangle(-0.2, 0.02, -0.2, 0.2), Interval.ofMetres(-0.05, 0.05))));

        assertThat(ZoneCover.of(bar, GAP, REACH, List.of(), left.boxes()).zones())
                .isEmpty();
    }

    @Test
    void twoBarsSideBySideShareOneZone() {
        // 5 mm lie between what is too near to the one and to the other: 5 of 400 mm are within the two in a hundred.
        Occupied bars =
                bar(Outline.rectangle(-0.06, -0.04, -0.3, 0.3)).and(bar(Outline.rectangle(0.005, 0.025, -0.3, 0.3)));
        assertThat(ZoneCover.of(bars, GAP, REACH).zones()).hasSize(1);

        // 20 of 400 mm are not.
        Occupied apart =
                bar(Outline.rectangle(-0.06, -0.04, -0.3, 0.3)).and(bar(Outline.rectangle(0.02, 0.04, -0.3, 0.3)));
        assertThat(ZoneCover.of(apart, GAP, REACH).zones()).hasSize(2);
    }

    @Test
    void whatIsNotInTheWayNeedsNone() {
        assertThat(ZoneCover.of(bar(Outline.rectangle(0.22, 0.3, -0.3, 0.3)), GAP, REACH))
                .isEqualTo(Cover.NOTHING);
    }

    private static void holdsAllThatIsTooNear(List<Zone> zones, Occupied set) {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 20_000; i++) {
            Point3 at = new Point3(
                    random.nextLong(-200_000, 200_001),
                    random.nextLong(-200_000, 200_001),
                    random.nextLong(-50_000, 50_001));
            if (!Gap.between(Occupied.at(at), set).orElseThrow().isAtLeast(GAP)) {
                assertThat(zones).anyMatch(z -> new ToolWay(at, at).meets(z));
            }
        }
    }

    private static Occupied bar(Outline outline) {
        return Occupied.of(List.of(Prism.of(outline, Interval.ofMetres(-0.2, 0.2))));
    }
}
