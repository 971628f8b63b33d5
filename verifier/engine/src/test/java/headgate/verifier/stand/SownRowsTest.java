package headgate.verifier.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headgate.runtime.stand.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SownRowsTest {

    private static List<Plant> sow(SownRows rows, double length, long seed) {
        GeneratedStand stand = new GeneratedStand(
                new Ground(length, -rows.width() / 2, rows.width() / 2),
                Optional.of(new GeneratedStand.Sown(
                        rows, Plant.CROP, SizeLaw.UNKNOWN, SizeLaw.always(0.1), SizeLaw.always(0.2))),
                List.of(),
                seed);
        List<Plant> plants = new ArrayList<>();
        stand.forEach(plants::add);
        return plants;
    }

    private static double perSquareMetre(int rows, double spacing, double plantSpacing, int steps) {
        SownRows exact = SownRows.exact(rows, spacing, plantSpacing);
        double length = steps * plantSpacing;
        return sow(exact, length, 1).size() / (exact.width() * length);
    }

    /**
     * Plants per hectare, 10000 / (r s). 0.90 x 0.30 m: sabiagrik.com, "How to calculate plant population", prints 37037;
     * 0.45 x 0.25 m: calculator-era.com prints 88888, cut off; the others by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "0.90, 0.30, 37037",
        "0.45, 0.25, 88889",
        "0.45, 0.30, 74074",
        "0.375, 0.15, 177778",
        "0.50, 0.20, 100000",
        "0.75, 0.35, 38095",
        "0.75, 0.50, 26667"
    })
    void aHectareHoldsAsManyPlantsAsTablesSay(double spacing, double plantSpacing, long plants) {
        assertThat(Math.round(1e4 * perSquareMetre(8, spacing, plantSpacing, 1000)))
                .isEqualTo(plants);
    }

    /** 1000 x 10, 500 x 20 and 100 x 100 mm all hold 100 plants per square metre: sabiagrik.com, as above. */
    @ParameterizedTest
    @CsvSource({"1.0, 0.01", "0.5, 0.02", "0.1, 0.1"})
    void threeSpacingsHoldTheSameNumber(double spacing, double plantSpacing) {
        assertThat(perSquareMetre(4, spacing, plantSpacing, 500)).isCloseTo(100, within(1e-9));
    }

    /** Valley Potato Grower, March 2021, p. 12, table 1: plants per acre for rows and plants so many inches apart. */
    @ParameterizedTest
    @CsvSource({
        "34, 6, 30748",
        "34, 7, 26356",
        "34, 12, 15374",
        "36, 6, 29040",
        "36, 10, 17424",
        "36, 14, 12446",
        "38, 6, 27512",
        "38, 14, 11791"
    })
    void anAcreHoldsAsManyPlantsAsATableSays(double rowInches, double plantInches, double plants) {
        double acre = 4046.8564224;
        double inch = 0.0254;

        double found = acre * perSquareMetre(6, rowInches * inch, plantInches * inch, 1000);

        assertThat(found).isCloseTo(plants, within(0.5 + 1e-6));
    }

    @Test
    void gapsAreAsFrequentAsSaid() {
        double gaps = 0.08;
        SownRows rows = new SownRows(8, 0.45, 0.3, 0.02, 0.01, 0.01, gaps);

        int found = sow(rows, 3000, 3).size();

        int places = 80_000;
        assertThat(found)
                .isCloseTo((int) (places * (1 - gaps)), within((int) (4 * Math.sqrt(places * gaps * (1 - gaps)))));
    }

    @Test
    void plantsAreOffTheirPlacesByTheDeviationsGiven() {
        SownRows rows = new SownRows(1, 0.45, 0.3, 0.02, 0.01, 0, 0);

        List<Plant> plants = sow(rows, 6000, 5);

        double along = 0;
        double across = 0;
        for (int i = 0; i < plants.size(); i++) {
            double off = plants.get(i).position().x() * 1e-6 - (i + 0.5) * 0.3;
            along += off * off;
            across += Math.pow(plants.get(i).position().y() * 1e-6, 2);
        }
        int n = plants.size();
        assertThat(n).isEqualTo(20_000);
        // A variance of n normal figures has the standard error sqrt(2 / n) of itself.
        assertThat(along / n).isCloseTo(4e-4, within(4 * 4e-4 * Math.sqrt(2.0 / n)));
        assertThat(across / n).isCloseTo(1e-4, within(4 * 1e-4 * Math.sqrt(2.0 / n)));
    }

    @Test
    void rowsWanderAsFarAsSaidAndNoFarther() {
        SownRows rows = new SownRows(3, 0.45, 0.3, 0, 0, 0.03, 0);

        List<Plant> plants = sow(rows, 3000, 9);

        double farthest = plants.stream()
                .mapToDouble(p -> {
                    double y = p.position().y() * 1e-6;
                    return Math.abs(y - 0.45 * Math.rint(y / 0.45));
                })
                .max()
                .orElseThrow();
        assertThat(farthest).isBetween(0.029, 0.030001);
    }

    @Test
    void plantsKeepTheirOrderHoweverLooseTheyStand() {
        SownRows loose = new SownRows(1, 0.45, 0.3, 0.3, 0.2, 0.1, 0);

        List<Plant> plants = sow(loose, 300, 2);

        for (int i = 0; i < plants.size(); i++) {
            assertThat(plants.get(i).position().x()).isBetween(i * 300_000L, (i + 1) * 300_000L);
        }
    }

    @Test
    void whatCannotBeSownIsRefused() {
        assertThatThrownBy(() -> new SownRows(8, 0, 0.3, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a row spacing in metres")
                .hasMessageContaining("0.0");
        assertThatThrownBy(() -> new SownRows(8, 0.45, Double.NaN, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a plant spacing in metres");
        assertThatThrownBy(() -> new SownRows(0, 0.45, 0.3, 0, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SownRows(8, 0.45, 0.3, 0, 0, 0, 1.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
