package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConvexPartsTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void partsAreConvexFillTheOutlineAndDoNotOverlap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            Outline outline = RandomBody.plan(random, false).outline();
            List<Outline> parts = ConvexParts.of(outline);

            assertThat(parts).allMatch(Outline::isConvex);
            assertThat(parts.stream().mapToDouble(Outline::area).sum()).isCloseTo(outline.area(), within(1e-15));
            // Same area as the sum means no overlap; the union, by another code, is the outline itself.
            PlanArea union = PlanArea.of(parts);
            assertThat(union.squareMetres()).isCloseTo(outline.area(), within(1e-12));
            assertThat(union.minus(PlanArea.of(List.of(outline))).squareMetres())
                    .isZero();
        }
    }

    @Test
    void anLIsTwoPartsAndAConvexOutlineIsItself() {
        Outline ell = Outline.ofMetres(0, 0, 0.4, 0, 0.4, 0.1, 0.1, 0.1, 0.1, 0.4, 0, 0.4);
        Outline square = Outline.rectangle(0, 1, 0, 1);

        assertThat(ConvexParts.of(ell)).hasSize(2);
        assertThat(ConvexParts.of(square)).containsExactly(square);
    }

    /** A comb with corners in line along its back: ears that would swallow a corner on their cut must be passed over. */
    @Test
    void aCombWithManyTines() {
        List<Point> ring = new ArrayList<>();
        int tines = 120;
        for (int i = 0; i < tines; i++) {
            ring.add(new Point(1_000, 2_000L * i));
            ring.add(new Point(50_000, 2_000L * i));
            ring.add(new Point(50_000, 2_000L * i + 1_000));
            ring.add(new Point(1_000, 2_000L * i + 1_000));
        }
        ring.add(new Point(0, 2_000L * tines - 1_000));
        ring.add(new Point(0, 0));
        Outline comb = Outline.of(ring);

        List<Outline> parts = ConvexParts.of(comb);

        assertThat(parts).allMatch(Outline::isConvex).hasSizeLessThanOrEqualTo(4 * (tines + 1));
        assertThat(parts.stream().mapToDouble(Outline::area).sum()).isCloseTo(comb.area(), within(1e-15));
    }
}
