package headgate.verifier.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Field capacity, efficiency and plant population against extension tables and handbooks. */
class FieldWorkTest {

    private static final double METRES_PER_FOOT = 0.3048;
    private static final double MS_PER_MPH = 0.44704;
    private static final double HECTARES_PER_ACRE = 0.40468564224;

    /** Iowa State University Extension, Ag Decision Maker A3-24 (before: PM 696, 2001), Table 1, to its last digit. */
    @ParameterizedTest
    @CsvSource({
        "40, 6, 70, 20.4",
        "60, 6, 68, 29.7",
        "60, 12, 68, 59.3",
        "80, 6, 68, 39.6",
        "80, 12, 68, 79.1",
        "15, 5, 63, 5.7",
        "20, 6, 63, 9.2",
        "30, 6, 60, 13.1",
        "36, 5, 60, 13.1",
        "45, 5, 60, 16.4",
        "10, 5, 63, 3.8",
        "50, 6, 70, 25.5",
        "15, 6, 63, 6.9"
    })
    void capacityTableInAcresPerHour(double feet, double mph, double percent, double acresPerHour) {
        double hectares = FieldCapacity.hectaresPerHour(mph * MS_PER_MPH, feet * METRES_PER_FOOT, percent / 100);

        assertThat(hectares / HECTARES_PER_ACRE).isCloseTo(acresPerHour, within(0.05));
    }

    /** C = w v E / 10 with km/h: University of Kentucky AEN-73 (1991), quoting ASABE EP496; values by hand. */
    @ParameterizedTest
    @CsvSource({
        "3.0, 5.0, 1.00, 1.50",
        "3.0, 5.0, 0.80, 1.200",
        "6.0, 8.0, 1.00, 4.80",
        "6.0, 8.0, 0.75, 3.600",
        "4.5, 7.0, 1.00, 3.15",
        "4.5, 7.0, 0.80, 2.520",
        "1.5, 0.9, 1.00, 0.135",
        "1.5, 0.9, 0.70, 0.0945"
    })
    void capacityInHectaresPerHour(double width, double kmh, double efficiency, double expected) {
        assertThat(FieldCapacity.hectaresPerHour(kmh / 3.6, width, efficiency)).isCloseTo(expected, within(1e-12));
    }

    /** Printed by calculatorshub.net, "Effective field capacity", rounded to 0.01. */
    @ParameterizedTest
    @CsvSource({"5, 2.5, 0.85, 1.06", "6, 3.0, 0.80, 1.44"})
    void capacityAsPrinted(double kmh, double width, double efficiency, double printed) {
        assertThat(FieldCapacity.hectaresPerHour(kmh / 3.6, width, efficiency)).isCloseTo(printed, within(0.005));
    }

    @Test
    @DisplayName("15 ft at 5 mph: w s / 8.25 acres per hour, and the same in SI (the constant is 43560 / 5280)")
    void customaryAndMetricUnitsAgree() {
        double hectares = FieldCapacity.hectaresPerHour(5 * MS_PER_MPH, 15 * METRES_PER_FOOT, 1);

        assertThat(hectares).isCloseTo(3.678960, within(1e-6));
        assertThat(hectares / HECTARES_PER_ACRE).isCloseTo(15 * 5 / 8.25, within(1e-9));
    }

    @Test
    @DisplayName("Guide to Machinery Costs 2015/2016 (South Africa), field capacity, example 1")
    void timeLossExample() {
        double perHour = FieldCapacity.hectaresPerHour(5 / 3.6, 2, 1 - 0.17);

        assertThat(perHour).isCloseTo(0.83, within(1e-12));
        assertThat(perHour * 10).isCloseTo(8.3, within(1e-12));
    }

    /** Derived: working time over working, turning and refilling time. */
    @ParameterizedTest
    @CsvSource({"200, 1.5, 20, 0, 0.869565", "100, 0.5, 30, 0, 0.869565", "200, 0.25, 30, 150, 0.816327"})
    void efficiencyOfTurnsAndRefills(double length, double speed, double turn, double refill, double expected) {
        assertThat(FieldEfficiency.of(length, speed, 0, turn, 0, refill)).isCloseTo(expected, within(5e-7));
    }

    @Test
    void refillPerPassOfAPlugPlanter() {
        // 200 m at 0.30 m from a magazine of 800 in 180 s: derived.
        assertThat(FieldEfficiency.refillPerPass(200, 0.30, 800, 180)).isCloseTo(150, within(1e-9));
    }

    @Test
    void efficiencyMovesTheWayItMust() {
        double base = FieldEfficiency.of(200, 1, 2, 20, 3, 10);

        assertThat(FieldEfficiency.of(300, 1, 2, 20, 3, 10)).isGreaterThan(base);
        assertThat(FieldEfficiency.of(200, 1, 2, 25, 3, 10)).isLessThan(base);
        assertThat(FieldEfficiency.of(200, 1, 2, 20, 3, 15)).isLessThan(base);
        assertThat(FieldEfficiency.of(200, 1, 4, 20, 3, 10)).isLessThan(base);
        assertThat(FieldEfficiency.of(1e9, 1, 2, 20, 3, 0)).isCloseTo(1, within(1e-7));
        assertThat(FieldEfficiency.of(200, 1, 0, 0, 0, 0)).isEqualTo(1);
    }

    /** Derived: 10000 over the product of the spacings, to a whole plant. */
    @ParameterizedTest
    @CsvSource({
        "37.5, 177778, 133333, 106667, 88889, 76190, 66667, 53333",
        "45, 148148, 111111, 88889, 74074, 63492, 55556, 44444",
        "50, 133333, 100000, 80000, 66667, 57143, 50000, 40000",
        "75, 88889, 66667, 53333, 44444, 38095, 33333, 26667"
    })
    void populationTable(double rowCm, long at15, long at20, long at25, long at30, long at35, long at40, long at50) {
        double[] spacings = {15, 20, 25, 30, 35, 40, 50};
        long[] expected = {at15, at20, at25, at30, at35, at40, at50};
        for (int i = 0; i < spacings.length; i++) {
            assertThat(Math.round(PlantPopulation.perHectare(rowCm / 100, spacings[i] / 100)))
                    .as("%s cm in the row", spacings[i])
                    .isEqualTo(expected[i]);
        }
    }

    /** Printed by sabiagrik.com, "How to calculate plant population", and calculator-era.com (which truncates). */
    @ParameterizedTest
    @CsvSource({
        "0.90, 0.30, 37037",
        "0.45, 0.25, 88888",
        "1.0, 0.01, 1000000",
        "0.5, 0.02, 1000000",
        "0.1, 0.1, 1000000"
    })
    void populationAsPrinted(double row, double plant, long printed) {
        assertThat((long) Math.floor(PlantPopulation.perHectare(row, plant) + 1e-6))
                .isEqualTo(printed);
    }

    /** Valley Potato Grower, March 2021, p. 12, Table 1: plants per acre for row and seed spacing in inches. */
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
    void populationTableInPlantsPerAcre(double rowInches, double plantInches, long printed) {
        double perHectare = PlantPopulation.perHectare(rowInches * 0.0254, plantInches * 0.0254);

        assertThat(perHectare * HECTARES_PER_ACRE).isCloseTo((double) printed, within(0.5));
    }

    /** The rates are those of Acta Horticulturae 187, paper 24 (hand feeding 30 to 40 a minute, batches 90). */
    @ParameterizedTest
    @CsvSource({"30, 0.15", "40, 0.20", "90, 0.45"})
    void speedOfAPlantingRate(double perMinute, double speed) {
        assertThat(PlantPopulation.speed(perMinute / 60, 0.30)).isCloseTo(speed, within(1e-12));
        assertThat(PlantPopulation.plantsPerSecond(speed, 0.30) * 60).isCloseTo(perMinute, within(1e-9));
    }

    @Test
    @DisplayName("two-row hand-fed transplanter, abstract: 31 plants a minute, 0.045 and 0.06 ha/h")
    void efficiencyOfAPublishedTransplanter() {
        // The theoretical rates and shares are derived from the printed figures, 31 a minute being per row.
        double at45 = FieldCapacity.hectaresPerHour(PlantPopulation.speed(31 / 60.0, 0.45), 2 * 0.45, 1);
        double at60 = FieldCapacity.hectaresPerHour(PlantPopulation.speed(31 / 60.0, 0.60), 2 * 0.60, 1);

        assertThat(at45).isCloseTo(0.07533, within(5e-6));
        assertThat(at60).isCloseTo(0.13392, within(5e-6));
        assertThat(0.045 / at45).isCloseTo(0.597, within(5e-4));
        assertThat(0.06 / at60).isCloseTo(0.448, within(5e-4));
    }
}
