package headgate.runtime.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.testing.Generator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TaskLatticeTest {

    @Test
    void theStepsAreThePublishedOnes() {
        assertThat(TaskLattice.STEM.step()).isEqualTo(0.0005);
        assertThat(TaskLattice.HEIGHT.step()).isEqualTo(0.005);
        assertThat(TaskLattice.GAP.step()).isEqualTo(0.005);
        assertThat(TaskLattice.MOISTURE.step()).isEqualTo(0.01);
        assertThat(TaskLattice.SPEED.step()).isEqualTo(0.001);
    }

    /** Every value on the lattice is the double nearest to its decimal, as exact decimal arithmetic says. */
    @ParameterizedTest
    @EnumSource
    void valuesAreTheDoublesOfTheirDecimals(TaskLattice lattice) {
        BigDecimal step = BigDecimal.valueOf(lattice.step());
        for (int n = 0; BigDecimal.valueOf(n).multiply(step).doubleValue() <= lattice.most() && n < 5000; n++) {
            double value = BigDecimal.valueOf(n).multiply(step).doubleValue();
            assertThat(lattice.holds(value)).isTrue();
            assertThat(lattice.nearest(value)).isEqualTo(value);
            assertThat(lattice.up(value)).isEqualTo(value);
            assertThat(lattice.down(value)).isEqualTo(value);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.00124, 0.001251, 0.0099, 0.123456, 0.3})
    void upAndDownEncloseTheFigure(double figure) {
        double step = TaskLattice.STEM.step();
        BigDecimal below = BigDecimal.valueOf(figure)
                .divide(BigDecimal.valueOf(step), 0, RoundingMode.FLOOR)
                .multiply(BigDecimal.valueOf(step));
        assertThat(TaskLattice.STEM.down(figure)).isEqualTo(below.doubleValue());
        assertThat(TaskLattice.STEM.up(figure)).isBetween(figure, figure + step);
        assertThat(TaskLattice.STEM.up(figure) - TaskLattice.STEM.down(figure)).isLessThanOrEqualTo(step * 1.000001);
    }

    @Test
    void handSnappedTask() {
        LatticeSpotTask task = LatticeSpotTask.nearest(
                new Point3(12_400, -12_600, 499),
                new Velocity(-499_500, 1_499),
                PlantClass.GRASS,
                0.0038,
                0.1174,
                SoilClass.FINE,
                0.234);
        // A tie goes to the even multiple: -499.5 mm/s to -500.
        assertThat(task)
                .isEqualTo(new LatticeSpotTask(
                        new Point3(12_000, -13_000, 0),
                        new Velocity(-500_000, 1_000),
                        PlantClass.GRASS,
                        0.004,
                        0.115,
                        SoilClass.FINE,
                        0.23));
    }

    @Test
    void noTaskStandsBesideTheLattice() {
        LatticeSpotTask good = new Generator(1).spotTask();
        assertThatThrownBy(() -> new LatticeSpotTask(
                        new Point3(500, 0, 0),
                        good.groundVelocity(),
                        good.plantClass(),
                        good.stemDiameter(),
                        good.plantHeight(),
                        good.soil(),
                        good.moisture()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("position");
        assertThatThrownBy(() -> new LatticeRowTask(Velocity.ZERO, SoilClass.FINE, 0.0051, 0, 0, 0))
                .hasMessageContaining("canopyHeight");
        for (double bad : new double[] {-0.0, -0.005, 5.005, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new LatticeRowTask(Velocity.ZERO, SoilClass.FINE, bad, 0, 0, 0))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void snappingTwiceIsSnappingOnce() {
        for (long seed = 0; seed < 300; seed++) {
            LatticeSpotTask spot = new Generator(seed).spotTask();
            assertThat(LatticeSpotTask.nearest(
                            spot.position(),
                            spot.groundVelocity(),
                            spot.plantClass(),
                            spot.stemDiameter(),
                            spot.plantHeight(),
                            spot.soil(),
                            spot.moisture()))
                    .isEqualTo(spot);
            LatticeRowTask row = new Generator(seed).rowTask();
            assertThat(TaskLattice.nearest(row)).isSameAs(row);
        }
        assertThat(LatticeRowTask.nearest(Velocity.ZERO, SoilClass.FINE, -0.0, 0, 0, 0))
                .isEqualTo(LatticeRowTask.nearest(Velocity.ZERO, SoilClass.FINE, 0.0, 0, 0, 0));
    }
}
