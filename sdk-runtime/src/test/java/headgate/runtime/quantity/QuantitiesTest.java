package headgate.runtime.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantitiesTest {

    private static double si(String text, Kind kind) {
        Quantities.Written written = Objects.requireNonNull(Quantities.parse(text));
        return Quantities.si(written.number(), kind.unit(written.unit()).orElseThrow(), kind);
    }

    /**
     * Factors from the SI brochure (BIPM, 9th edition 2019): prefixes in table 7, units accepted for use with the SI in
     * table 8 (minute, hour, degree, hectare, litre). The kilowatt hour follows from watt and hour: 3.6 MJ.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    120 mm,    LENGTH,       0.12
                    12.5 cm,   LENGTH,       0.125
                    -3 m,      LENGTH,       -3
                    0.9 m/s,   SPEED,        0.9
                    3.24 km/h, SPEED,        0.9
                    50 mm/s,   SPEED,        0.05
                    2 m/s2,    ACCELERATION, 2
                    250 g,     MASS,         0.25
                    25 kg,     MASS,         25
                    1.5 kN,    FORCE,        1500
                    60 N m,    MOMENT,       60
                    80 N/mm,   STIFFNESS,    80000
                    80 kN/m,   STIFFNESS,    80000
                    0.16 kW,   POWER,        160
                    2 kWh,     ENERGY,       7200000
                    24 V,      VOLTAGE,      24
                    6 A,       CURRENT,      6
                    180 deg,   ANGLE,        3.141592653589793
                    0.5 rad,   ANGLE,        0.5
                    120 ms,    TIME,         0.12
                    1.5 min,   TIME,         90
                    2 h,       TIME,         7200
                    20 Hz,     FREQUENCY,    20
                    2 1/m2,    DENSITY,      2
                    1.2 ha,    AREA,         12000
                    3.6 ha/h,  AREA_RATE,    10
                    95 %,      SHARE,        0.95
                    60 l,      VOLUME,       0.06
                    """)
    void readsEachUnitOfTheTrade(String text, Kind kind, double expected) {
        assertThat(si(text, kind)).isEqualTo(expected, within(Math.ulp(expected)));
    }

    @Test
    void decimalsAreRoundedOnce() {
        assertThat(si("120 mm", Kind.LENGTH)).isEqualTo(0.12);
        assertThat(si("0.1 mm", Kind.LENGTH)).isEqualTo(0.0001);
        assertThat(si("123456.789 mm", Kind.LENGTH)).isEqualTo(123.456789);
        assertThat(si("-0 mm", Kind.LENGTH)).isEqualTo(0.0);
    }

    @ParameterizedTest
    @CsvSource({
        "120",
        "120 ",
        "mm",
        "1e3 mm",
        "+1 mm",
        "01 mm",
        "1. mm",
        ".5 mm",
        "1  mm",
        "'1,5 mm'",
        "NaN m",
        "--1 mm"
    })
    void refusesOtherForms(String text) {
        assertThat(Quantities.parse(text)).isNull();
    }

    /** The library's own dimensions decide, not our table: every unit of a kind must convert to the kind's SI unit. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyUnitOfAKindMeasuresTheSame(Kind kind) {
        assertThat(kind.units()).isNotEmpty().allSatisfy(unit -> assertThat(
                        unit.unit().isCompatible(kind.si()))
                .as(unit.symbol())
                .isTrue());
    }

    /** What is written reads back as the same double, whatever the unit. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void textReadsBackAsTheSameValue(Kind kind) {
        Random random = new Random(20260101);
        for (WrittenUnit unit : kind.units()) {
            for (int i = 0; i < 200; i++) {
                BigDecimal number = i % 2 == 0
                        ? BigDecimal.valueOf(random.nextInt(100_000), 3)
                        : new BigDecimal(Double.toString(1 + random.nextDouble() * 1000));
                double value = Quantities.si(number, unit, kind);
                String text = Quantities.text(value, kind, unit);
                assertThat(si(text, kind)).as(text).isEqualTo(value);
            }
        }
        String unit = kind.units().get(0).symbol();
        assertThat(Quantities.text(si("25 " + unit, kind), kind, kind.units().get(0)))
                .isEqualTo("25 " + unit);
    }

    @Test
    void slipsAreNamedAndNeverApplied() {
        assertThat(Slips.guess(25, Kind.LENGTH, 0.005, 0.1)).hasValue("perhaps it was meant in mm instead of m: 25 mm");
        assertThat(Slips.guess(250, Kind.MASS, 0.1, 5))
                .hasValueSatisfying(s -> assertThat(s).contains("g instead of kg"));
        assertThat(Slips.guess(30, Kind.ANGLE, 0, 1.6))
                .hasValueSatisfying(s -> assertThat(s).contains("30 deg"));
        assertThat(Slips.guess(9, Kind.SPEED, 0.1, 4))
                .hasValueSatisfying(s -> assertThat(s).contains("km/h"));
        assertThat(Slips.guess(0.0095, Kind.SHARE, 0.5, 1))
                .hasValueSatisfying(s -> assertThat(s).contains("95 %"));
        // 1 lbf = 4.4482216152605 N: international pound (1959) times standard free fall (CGPM 1901).
        assertThat(Slips.converted(new Quantities.Written(new BigDecimal(10), "lbf"), Kind.FORCE))
                .hasValue("10 lbf is 44.48 N");
    }
}
