package headgate.verifier.rules.rows;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import headgate.verifier.setup.EdgePass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Four rows 0.5 m apart in a pass. */
@NeverFinds(value = Outcome.UNDECIDED, because = "every plan gives the field's width")
class EdgePassesClearTest {

    @Test
    void passesAWholeNumberOfPasses() {
        assertThat(check(wide(100)).message()).isEqualTo("The 200 rows of the field make 50 whole passes.");
        // 0.1 + 0.2 is not 0.3 in binary; the rows are counted all the same.
        assertThat(EdgePass.rowsOfField(wide(1.0 / 3 * 6).plan().value())).isEqualTo(4);
    }

    @Test
    void passesWithTheArmsBeyondTheEdgeLifted() {
        Finding finding = check(wide(100.9));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message())
                .isEqualTo(
                        "Of the 201 rows of the field 1 is left for pass 51: with it to the right, arms a2, a3, a4 stay"
                                + " lifted.");
    }

    @Test
    void theRowsThatAreLeftMayLieToTheLeft() {
        List<EdgePass> passes = EdgePass.of(wide(101.5));

        assertThat(passes).extracting(EdgePass::rows).containsExactly(3, 3);
        assertThat(passes.get(0).lifted()).extracting(s -> s.arm().id()).containsExactly("a4");
        assertThat(passes.get(1).lifted()).extracting(s -> s.arm().id()).containsExactly("a1");
    }

    @Test
    void betweenRowsThereIsALaneMoreThanRows() {
        // Lanes 1 to 5: beside row 1, between 1 and 2, and so on. Two rows have three of them.
        Case between = Cases.weeding()
                .carriage(c -> c.withArms(List.of(
                        Cases.arm("b1", "front", -1.0),
                        Cases.arm("b2", "rear", -0.5),
                        Cases.arm("b3", "front", 0.0),
                        Cases.arm("b4", "rear", 0.5),
                        Cases.arm("b5", "front", 1.0))))
                .plan(p -> p.withWanted(new CropPlan.Wanted(
                        p.wanted().operation(),
                        0.2,
                        0.85,
                        Optional.empty(),
                        Optional.of(CropPlan.Ground.BETWEEN_ROWS),
                        Optional.empty(),
                        Optional.empty())))
                .field(new CropPlan.Field(100, 101))
                .build();

        assertThat(EdgePass.of(between).get(0).working())
                .extracting(s -> s.arm().id())
                .containsExactly("b1", "b2", "b3");
    }

    @Test
    void failsAnArmThatWorksAcrossTheEdge() {
        // Two arms that reach over two lanes each: one row or three rows are left in the middle of one of them.
        Reach reach = Reach.over(Outline.rectangle(0.1, 0.4, -0.4, 0.4), Interval.ofMetres(-0.6, -0.2));
        Case two = Cases.weeding()
                .carriage(c -> c.withArms(List.of(Cases.arm("b1", "front", -0.5), Cases.arm("b2", "rear", 0.5))))
                .sheet(b -> b.postures(b.build().postures().stream()
                        .map(p -> p.name().equals(PostureName.WORK)
                                ? Cases.posture(PostureName.WORK, p.fixed(), p.moving(), reach)
                                : p)
                        .toList()))
                .field(new CropPlan.Field(100, 100.5))
                .build();

        Finding finding = check(two);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.breaksFit()).isFalse();
        assertThat(finding.message())
                .isEqualTo(
                        "Of the 201 rows of the field 1 is left for pass 51, and arm b1 works on both sides of the field's"
                                + " edge; with those rows on the other side arm b2 does.");
    }

    private static Case wide(double width) {
        return Cases.weeding().field(new CropPlan.Field(100, width)).build();
    }

    private static Finding check(Case subject) {
        return new EdgePassesClear().check(subject).get(0);
    }
}
