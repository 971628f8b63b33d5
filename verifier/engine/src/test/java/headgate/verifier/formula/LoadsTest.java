package headgate.verifier.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headgate.verifier.formula.SoilDraft.Texture;
import headgate.verifier.formula.SoilDraft.Tool;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screws, plates, draft, error budgets and sun. */
class LoadsTest {

    /** Derived; 4 M / (n D) for a screw on the extreme fibre stands at atreydes.com, "Bolted circular flange". */
    @ParameterizedTest
    @CsvSource({
        "50, 4, 50, 90, 1000.00",
        "50, 4, 50, 45, 707.11",
        "50, 6, 80, 90, 416.667",
        "100, 6, 100, 90, 666.667",
        "100, 6, 100, 60, 577.350"
    })
    void bendingTensionOfABoltCircle(double moment, int screws, double pitchMm, double degrees, double newtons) {
        BoltCircle circle = BoltCircle.of(screws, pitchMm / 1000);

        assertThat(circle.bendingTension(moment, Math.toRadians(degrees))).isCloseTo(newtons, within(5e-3));
        assertThat(circle.bendingTension(moment)).isGreaterThanOrEqualTo(newtons - 5e-3);
    }

    @Test
    @DisplayName("the screws' tensions balance the moment, whatever the phase (derived)")
    void tensionsBalanceTheMoment() {
        for (int n = 3; n <= 12; n++) {
            for (double phase = 0; phase < 1; phase += 0.1) {
                BoltCircle circle = BoltCircle.of(n, 0.08);
                double balance = 0;
                for (int i = 0; i < n; i++) {
                    double angle = phase + 2 * Math.PI * i / n;
                    balance += circle.bendingTension(50, angle) * 0.04 * Math.sin(angle);
                }
                assertThat(balance).isCloseTo(50, within(1e-9));
            }
        }
    }

    /** T / (n R) and V / n a screw: machinecalcs.com, bolt circle loads. */
    @Test
    void shearOfABoltCircle() {
        assertThat(BoltCircle.of(4, 0.05).shear(0, 20)).isCloseTo(200, within(1e-9));
        assertThat(BoltCircle.of(4, 0.05).shear(100, 0)).isCloseTo(25, within(1e-9));
        assertThat(BoltCircle.of(4, 0.05).directTension(100)).isCloseTo(25, within(1e-9));
        assertThat(BoltCircle.of(4, 0.05).directTension(-100)).isZero();
        assertThatThrownBy(() -> BoltCircle.of(2, 0.05)).hasMessageContaining("screws");
    }

    /**
     * Stress areas are derived from the formula; ISO 898-1 proof loads as printed at slsbearings.com, "Tensile strength",
     * optimas.com and usefastener.com. M5 is from memory, and checked here only against 580 N/mm2 times the area.
     */
    @ParameterizedTest
    @CsvSource({"6, 20.1233, 11600, 16700", "8, 36.6085, 21200, 30400", "10, 57.9895, 33700, 48100"})
    void screwTable(int diameter, double areaMm2, double proof88, double proof109) {
        Screw screw = Screw.metric(diameter).orElseThrow();

        assertThat(screw.stressArea() * 1e6).isCloseTo(areaMm2, within(5e-5));
        assertThat(screw.proofLoad(Screw.PropertyClass.C8_8)).isEqualTo(proof88);
        assertThat(screw.proofLoad(Screw.PropertyClass.C10_9)).isEqualTo(proof109);
        assertThat(screw.proofLoad(Screw.PropertyClass.C8_8) / (580e6 * screw.stressArea()))
                .isCloseTo(1, within(0.007));
    }

    @Test
    void screwsOutsideTheTable() {
        Screw five = Screw.metric(5).orElseThrow();
        assertThat(five.proofLoad(Screw.PropertyClass.C8_8) / (580e6 * five.stressArea()))
                .isCloseTo(1, within(0.007));
        assertThat(Screw.metric(7)).isEmpty();
    }

    /** Arithmetic on D497 parameters as seen in public transcriptions of its Table 1. */
    @ParameterizedTest
    @CsvSource({
        "FIELD_CULTIVATOR_SECONDARY, MEDIUM, 8, 12, 7, 3370.08",
        "FIELD_CULTIVATOR_PRIMARY, FINE, 8, 10, 10, 6840",
        "MOULDBOARD_PLOUGH, MEDIUM, 7, 1.6, 20, 20202.56",
        "SUBSOILER, COARSE, 5, 1, 40, 4878.0",
        "PLANTER_MOUNTED, COARSE, 6, 4, 5, 2000"
    })
    void draft(Tool tool, Texture texture, double kmh, double width, double depthCm, double newtons) {
        assertThat(SoilDraft.newtons(tool, texture, kmh / 3.6, width, depthCm / 100))
                .isCloseTo(newtons, within(5e-3));
    }

    /** Arithmetic on D497 parameters that are from memory. */
    @ParameterizedTest
    @CsvSource({
        "ROW_CULTIVATOR_S_TINE, MEDIUM, 6.5, 4, 5, 3153.5",
        "ROW_CULTIVATOR_S_TINE, COARSE, 3.6, 1, 3, 322.14",
        "ROW_CULTIVATOR_C_SHANK, FINE, 8, 6, 7.5, 16380"
    })
    void draftFromMemory(Tool tool, Texture texture, double kmh, double width, double depthCm, double newtons) {
        assertThat(SoilDraft.newtons(tool, texture, kmh / 3.6, width, depthCm / 100))
                .isCloseTo(newtons, within(5e-3));
    }

    @Test
    void draftAtTheUpperEndOfItsBand() {
        double most = SoilDraft.mostNewtons(Tool.FIELD_CULTIVATOR_SECONDARY, Texture.MEDIUM, 8 / 3.6, 12, 0.07);
        assertThat(most).isCloseTo(3370.08 * 1.25, within(1e-6));
        assertThat(Tool.FIELD_CULTIVATOR_SECONDARY.widthUnit()).isEqualTo(SoilDraft.WidthUnit.TOOLS);
    }

    /** JCGM 100:2008 (GUM), example H.1, end gauge: contributions in nanometres as printed there. */
    @Test
    void endGaugeExample() {
        double[] parts = {25, 9.7, 0, 0, 2.9, 16.675};
        double[] freedoms = {18, 25.6, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 50, 2};

        double combined = Uncertainty.combined(parts);
        double freedom = Uncertainty.effectiveFreedom(parts, freedoms);

        assertThat(combined).isCloseTo(31.71, within(0.05));
        assertThat(Math.round(combined)).isEqualTo(32);
        // The printed 1002 comes from parts that were cut to fewer digits.
        assertThat(combined * combined).isCloseTo(1002.0, within(5.0));
        assertThat(freedom).isCloseTo(16.7, within(0.05));
        // Student's factor for 99 % and 16 degrees of freedom, as printed: 2.92.
        assertThat(Math.round(2.92 * combined)).isEqualTo(93);
    }

    /** Derived. */
    @Test
    void errorBudgetOfAHead() {
        assertThat(Uncertainty.combined(10, 15, 8, 5)).isCloseTo(20.347, within(5e-4));
        assertThat(2 * Uncertainty.combined(10, 15, 8, 5)).isCloseTo(40.694, within(5e-4));
        assertThat(Uncertainty.uniform(10)).isCloseTo(5.7735, within(5e-5));
        assertThat(Uncertainty.triangular(10)).isCloseTo(4.0825, within(5e-5));
        assertThat(Uncertainty.planarRadius(10, 0.95)).isCloseTo(24.477, within(5e-4));
        assertThat(Uncertainty.planarRadius(10, 0.86466)).isCloseTo(20, within(5e-4));
        assertThatThrownBy(() -> Uncertainty.effectiveFreedom(new double[1], new double[2]))
                .hasMessageContaining("2 for 1");
    }

    /** FAO 56 (1998), examples 8, 9 and 10, pages 80, 83 and 84. */
    @Test
    void sunExamples() {
        Sunlight september = Sunlight.of(Math.toRadians(-20), 246);

        assertThat(september.inverseDistance()).isCloseTo(0.985, within(5e-4));
        assertThat(september.declination()).isCloseTo(0.120, within(5e-4));
        assertThat(september.sunsetAngle()).isCloseTo(1.527, within(5e-4));
        assertThat(september.extraterrestrial()).isCloseTo(32.2, within(0.05));
        assertThat(september.daylightHours()).isCloseTo(11.7, within(0.05));
        assertThat(Sunlight.onGround(25.1, 7.1 / 10.9)).isCloseTo(14.45, within(5e-3));
    }

    /** NCAR Command Language manual, radsol_clrsky_fao56: 22.9 degrees south, day 135. */
    @Test
    void clearSkyOfRio() {
        Sunlight may = Sunlight.of(Math.toRadians(-22.9), 135);

        assertThat(may.extraterrestrial()).isCloseTo(25.111, within(5e-4));
        assertThat(may.clearSky()).isCloseTo(18.83327, within(5e-6));
    }

    /** FAO 56 (1998), Annex 2, Table 2.6, northern hemisphere, on the fifteenth of each month. */
    @ParameterizedTest
    @CsvSource({
        "52, 7.7, 13.2, 21.1, 30.8, 38.2, 41.6, 40.1, 33.8, 24.7, 15.7, 9.0, 6.4",
        "48, 10.1, 15.7, 23.3, 32.2, 38.8, 41.8, 40.4, 34.9, 26.6, 18.1, 11.4, 8.7",
        "40, 15.0, 20.4, 27.2, 34.7, 39.7, 41.9, 40.8, 36.7, 30.0, 22.5, 16.3, 13.6",
        "0, 36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6"
    })
    void radiationTable(
            double latitude,
            double m1,
            double m2,
            double m3,
            double m4,
            double m5,
            double m6,
            double m7,
            double m8,
            double m9,
            double m10,
            double m11,
            double m12) {
        double[] printed = {m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12};
        for (int month = 0; month < 12; month++) {
            assertThat(Sunlight.of(Math.toRadians(latitude), FIFTEENTH[month]).extraterrestrial())
                    .as("month %s", month + 1)
                    .isCloseTo(printed[month], within(0.11));
        }
    }

    /** FAO 56 (1998), Annex 2, Table 2.7, 52 degrees north. */
    @Test
    void daylightTable() {
        double[] printed = {8.0, 9.7, 11.5, 13.6, 15.4, 16.5, 16.0, 14.4, 12.4, 10.3, 8.5, 7.5};
        for (int month = 0; month < 12; month++) {
            assertThat(Sunlight.of(Math.toRadians(52), FIFTEENTH[month]).daylightHours())
                    .isCloseTo(printed[month], within(0.06));
        }
    }

    private static final int[] FIFTEENTH = {15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349};

    /** Derived: 1 kWh is 3.6 MJ. */
    @Test
    void electricityOfPanels() {
        assertThat(Sunlight.kilowattHours(20, 8, 0.18, 0.8)).isCloseTo(6.400, within(1e-12));
    }
}
