package headgate.verifier.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.vocabulary.Operation;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Cases;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hand arithmetic on the default plan: four rows 500 mm apart, a weed band of 200 mm. */
class LaneTest {

    @Test
    void liesOnTheRowAsWideAsTheWeedBandAndAsTheRowMayWander() {
        List<Lane> lanes = Lane.of(rows(Cases.weedingPlan(), 0.01));

        assertThat(lanes).extracting(Lane::number).containsExactly(1, 2, 3, 4);
        assertThat(lanes).extracting(Lane::y).containsExactly(-750_000L, -250_000L, 250_000L, 750_000L);
        assertThat(lanes).allMatch(l -> l.kind() == Lane.Kind.ON_ROW);
        assertThat(lanes.get(0).ground()).isEqualTo(Interval.ofMetres(-0.86, -0.64));
    }

    @Test
    void isALineForPlugsThatAreSetOnStraightRows() {
        assertThat(Lane.of(Cases.plantingPlan()).get(3).ground()).isEqualTo(Interval.at(750_000));
    }

    @Test
    void isNeverWiderThanTheRowSpacing() {
        List<Lane> lanes = Lane.of(rows(Cases.weedingPlan(), 0.4));

        assertThat(lanes.get(1).ground()).isEqualTo(Interval.ofMetres(-0.5, 0));
        assertThat(lanes.get(2).ground()).isEqualTo(Interval.ofMetres(0, 0.5));
    }

    @Test
    void liesBetweenRowsForAHoeWithHalfALaneBesideTheOutermostRows() {
        // Kept about each row: 60 mm protected and 10 mm wander.
        List<Lane> lanes = Lane.of(hoeing(0.06, 0.01));

        assertThat(lanes)
                .extracting(Lane::kind)
                .containsExactly(
                        Lane.Kind.EDGE,
                        Lane.Kind.BETWEEN_ROWS,
                        Lane.Kind.BETWEEN_ROWS,
                        Lane.Kind.BETWEEN_ROWS,
                        Lane.Kind.EDGE);
        assertThat(lanes)
                .extracting(Lane::ground)
                .containsExactly(
                        Interval.ofMetres(-1.0, -0.82),
                        Interval.ofMetres(-0.68, -0.32),
                        Interval.ofMetres(-0.18, 0.18),
                        Interval.ofMetres(0.32, 0.68),
                        Interval.ofMetres(0.82, 1.0));
    }

    @Test
    void isMissingWhereNothingLiesBetweenTheRows() {
        assertThat(Lane.of(hoeing(0.24, 0.01))).isEmpty();
    }

    @Test
    void coversTheWholeSurfaceWhereThePlanWantsIt() {
        CropPlan plan = Cases.weedingPlan();
        CropPlan.Wanted w = plan.wanted();
        List<Lane> lanes = Lane.of(plan.withWanted(new CropPlan.Wanted(
                w.operation(),
                w.speed(),
                w.coverage(),
                w.areaRate(),
                Optional.of(CropPlan.Ground.FULL_SURFACE),
                w.accuracy(),
                w.cropLoss())));

        assertThat(lanes.get(0).ground()).isEqualTo(Interval.ofMetres(-1.0, -0.5));
        assertThat(lanes.get(3).ground()).isEqualTo(Interval.ofMetres(0.5, 1.0));
    }

    @Test
    void isWiderByTheGuessRowErrorUnlessRowsPerPassDivideThePlanters() {
        // The planter set 6 rows. 4 rows a pass span two of its passes, 3 never do.
        CropPlan.Rows four = new CropPlan.Rows(0.5, 4, 0.4, 0.01, Optional.of(6), 0.05, Optional.empty());

        assertThat(Lane.rowsMayBeOff(four)).isCloseTo(0.06, within(1e-12));
        assertThat(Lane.rowsMayBeOff(four.withPerPass(3))).isEqualTo(0.01);
        assertThat(Lane.rowsMayBeOff(four.withPerPass(6))).isEqualTo(0.01);
        assertThat(Lane.of(Cases.plantingPlan().withRows(four)).get(0).ground())
                .isEqualTo(Interval.ofMetres(-0.81, -0.69));
    }

    private static CropPlan rows(CropPlan plan, double wander) {
        return plan.withRows(new CropPlan.Rows(0.5, 4, 0.4, wander));
    }

    private static CropPlan hoeing(double protectedRadius, double wander) {
        return rows(Cases.weedingPlan(), wander)
                .withCrop(new CropPlan.Crop(0.1, 0.2, protectedRadius))
                .withWanted(new CropPlan.Wanted(Operation.HOE, 0.2, 0.9, Optional.empty()));
    }
}
