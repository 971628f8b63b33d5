package headgate.verifier.rules.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.sheet.Breakaway;
import headgate.api.sheet.Figure;
import headgate.api.sheet.Forces;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.PlateDesignation;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Term;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Proof load of an M6 screw of class 8.8: 11 600 N (ISO 898-1, as printed in screw makers' tables). */
class BoltsHoldTest {

    /** 50 N m on four screws on a circle of 50 mm: 4 x 50 / (4 x 0.05) = 1000 N. */
    @Test
    void passesWithTheLoadOfAWorkedExample() {
        // No weight to speak of; a pull of 125 N at the far corner of the reach, 0.4 m along and 0.1 m across:
        // about y 125 x 0.4 = 50 N m, about x 12.5 N m; together 51.539 N m. Tension 1030.776 + 125 / 4 = 1062.026 N.
        Finding finding =
                only(b -> b.mass(Cases.mass(0.001, 0, 0, 0), Cases.mass(0.001, 0, 0, 0), Cases.mass(0.001, 0, 0, 0))
                        .forces(forces(125, 0, 0, 0, 0.001)));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(term(finding, "bending moment")).isCloseTo(51.539, within(2e-3));
        assertThat(term(finding, "tension of the worst screw")).isCloseTo(1062.03, within(0.05));
        assertThat(finding.comparison().orElseThrow().limit().value()).isEqualTo(5800);
    }

    @Test
    void addsWeightSideForceAndBreakaway() {
        Finding finding = only(UnaryOperator.identity());

        // Weight 6 x 9.80665 = 58.84 N at x = 0.2 m: 11.768 N m. About y: 11.768 + 0.4 x 100 + 0.6 x 50 = 81.768;
        // about x: 0.1 x 100 + 0.6 x 20 = 22; together 84.676 N m. Tension 4 x 84.676 / 0.2 + 158.84 / 4 = 1733.2 N.
        assertThat(term(finding, "bending moment")).isCloseTo(84.676, within(1e-3));
        assertThat(term(finding, "tension of the worst screw")).isCloseTo(1733.23, within(0.01));
        // hypot(50, 20) / 4 + 2 x (0.4 x 20 + 0.1 x 50) / 0.2 = 13.463 + 130 = 143.463 N; sqrt(T² + 3 S²) = 1750.95 N.
        assertThat(term(finding, "shear of the worst screw")).isCloseTo(143.463, within(1e-3));
        assertThat(finding.comparison().orElseThrow().measured().value()).isCloseTo(1750.95, within(0.01));
        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void failsAPullThatIsTooStrong() {
        // About 20 N of tension for each newton of pull at 0.41 m, and a quarter of it directly: 700 N is too much.
        Finding finding = only(b -> b.forces(forces(700, 0, 0, 0, 50)));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .startsWith("The worst of 4 screws M6 is loaded with ")
                .endsWith("; half of its proof load, class 8.8, is 5800 N.");
    }

    @Test
    void holdsAtTheLimit() {
        // Weightless but for a gram, a pull F at x = 0.4 m, y = 0.1 m: T = (4 x 0.412311 / 0.2 + 0.25) F = 8.49621 F.
        UnaryOperator<HeadSheet.Builder> light =
                b -> b.mass(Cases.mass(0.001, 0, 0, 0), Cases.mass(0.001, 0, 0, 0), Cases.mass(0.001, 0, 0, 0));
        double factor = 4 * Math.hypot(0.4, 0.1) / 0.2 + 0.25;

        assertThat(only(b -> light.apply(b).forces(forces(5790 / factor, 0, 0, 0, 0.001)))
                        .outcome())
                .isEqualTo(Outcome.PASS);
        assertThat(only(b -> light.apply(b).forces(forces(5801 / factor, 0, 0, 0, 0.001)))
                        .outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void undecidedForAThreadWithoutATabledLoad() {
        Finding finding = only(b -> b.plate(PlateDesignation.of("9409-1-25-4-M4")));

        assertThat(finding.outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(finding.message()).contains("M4").contains("9409-1-25-4-M4");
    }

    @Test
    void undecidedForASoilToolThatNeverGivesWay() {
        Finding finding = only(b ->
                b.forces(Forces.rigid(Figure.assumed(1), Figure.assumed(1), Figure.assumed(1), Figure.assumed(1))));

        assertThat(finding.outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(finding.message()).contains("breakaway force");
    }

    private static Forces forces(double pull, double press, double side, double draft, double breakaway) {
        return Forces.of(
                Figure.assumed(pull),
                Figure.assumed(press),
                Figure.assumed(side),
                Figure.assumed(draft),
                Breakaway.of(Figure.assumed(breakaway), Figure.assumed(0.05)));
    }

    private static double term(Finding finding, String name) {
        return finding.terms().stream()
                .filter(t -> t.name().equals(name))
                .map(Term::measure)
                .filter(m -> m.dimension() == Dimension.FORCE || m.dimension() == Dimension.MOMENT)
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Finding only(UnaryOperator<HeadSheet.Builder> sheet) {
        List<Finding> findings =
                new BoltsHold().check(Cases.weeding().sheet(sheet).build());
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
