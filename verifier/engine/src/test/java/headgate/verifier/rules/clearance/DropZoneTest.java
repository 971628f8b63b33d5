package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Outline;
import headgate.api.sheet.Drop;
import headgate.api.sheet.Figure;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Hand arithmetic: heads stand over rows 500 mm apart, every second on the front beam. The protected radius is 40 mm, rows do not
 * wander, an arm may be off by 4 mm: what falls must stay 44 mm beside a row, and 8 mm beside another arm. A head is 150 mm wide to
 * either side, and its tool with its reach 120 mm.
 */
class DropZoneTest {

    private static final int ROWS = 0;
    private static final int ARMS = 1;

    @Test
    void passesBesideTheRow() {
        List<Finding> findings = check(dropping(0.100, 0.200, 0.05));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS, Outcome.PASS);
        assertThat(measured(findings.get(ROWS))).isEqualTo(0.100);
        assertThat(limit(findings.get(ROWS))).isEqualTo(0.044);
        // What falls beside a1 reaches to y = -550 mm and goes back past a2's tool, which comes as far as -250 - 120
        // mm.
        assertThat(measured(findings.get(ARMS))).isEqualTo(0.180);
        assertThat(limit(findings.get(ARMS))).isEqualTo(0.008);
        // One strip beside two rows each, and four strips against three other arms in three stances each.
        assertThat(findings.get(ROWS).examined()).isEqualTo(8);
        assertThat(findings.get(ARMS).examined()).isEqualTo(36);
    }

    @Test
    void holdsExactlyAtTheLimits() {
        // 500 - 120 - 8 = 372 mm to the left of the row, where the tool of the next arm comes as low.
        List<Finding> findings = check(dropping(0.044, 0.372, 0.05));

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS, Outcome.PASS);
        assertThat(measured(findings.get(ROWS))).isEqualTo(limit(findings.get(ROWS)));
        assertThat(measured(findings.get(ARMS))).isEqualTo(limit(findings.get(ARMS)));
    }

    @Test
    void failsOnProtectedGround() {
        Case subject = dropping(0.043999, 0.200, 0.05);

        Finding finding = check(subject).get(ROWS);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .isEqualTo(
                        "Nearest of all to a row, what head test-head 1.0.0 drops on arm a1 falls only 43.9 mm beside the"
                                + " row at y = -750 mm, where 44 mm is required.");
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "let drop 1 of head test-head fall 1 mm further to +y",
                        "let drop 1 of head test-head keep 1 mm more off at -y");
        assertMends(subject, finding);
    }

    @Test
    void failsWhereItIsCarriedIntoTheHeadBehind() {
        Case subject = dropping(0.100, 0.372001, 0.05);

        Finding finding = check(subject).get(ARMS);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.subject()).isEqualTo("what head test-head 1.0.0 drops on arm a1 and arm a2 at work");
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "let drop 1 of head test-head fall 1 mm further to -y",
                        "let drop 1 of head test-head keep 1 mm more off at +y");
        assertMends(subject, finding);
    }

    @Test
    void theHeadInFrontIsNotReached() {
        // Two rows: a2 on the rear beam, a3 on the front beam to its left. What falls goes to the rear, from a3 to a2
        // alone.
        Case fromBehind =
                dropping(0.100, 0.372001, 0.05).withPlan(p -> p.withRows(new CropPlan.Rows(0.5, 2, 0.4, 0.0)));
        Case fromTheFront =
                dropping(-0.372001, -0.100, 0.05).withPlan(p -> p.withRows(new CropPlan.Rows(0.5, 2, 0.4, 0.0)));

        assertThat(check(fromBehind).get(ARMS).outcome()).isEqualTo(Outcome.PASS);
        assertThat(check(fromTheFront).get(ARMS).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(check(fromTheFront).get(ARMS).subject()).contains("drops on arm a3 and arm a2");
    }

    @Test
    void aHeapMustStayUnderWhatHangsOverIt() {
        // Between tool and frame of a2 hangs nothing; its fixed part ends 150 mm under the mount, from y = -400 mm on.
        // The lowest
        // mount height at work is -(-200) + 20 ... so a heap that ends under it may lie there, and one that is higher
        // may not.
        double right = 0.100;
        double left = 0.360;
        double flat = measured(check(dropping(right, left, 0.05)).get(ARMS));
        double high = measured(check(dropping(right, left, 0.9)).get(ARMS));

        // Flat, the tool is nearest: 500 - 120 - 360 = 20 mm. High, it lies 10 mm inside of the head's own width.
        assertThat(flat).isEqualTo(0.020);
        assertThat(high).isZero();
    }

    @Test
    void movesAndNarrowsWhatIsTooNearOnBothSides() {
        // 44 mm from its row and 8 mm from the head behind leave 328 mm: 340 mm can only be narrowed.
        Case subject = dropping(0.038, 0.378, 0.05);

        Finding finding = check(subject).get(ROWS);

        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "let drop 1 of head test-head keep 6 mm more off at -y, drop 1 of head test-head keep 6 mm"
                                + " more off at +y");
        assertMends(subject, finding);
    }

    @Test
    void aTurnedHeadDropsOnTheOtherSide() {
        Case turned = dropping(List.of(drop(-0.200, -0.043999)), true);

        Finding finding = check(turned).get(ROWS);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "let drop 1 of head test-head fall 1 mm further to -y",
                        "let drop 1 of head test-head keep 1 mm more off at +y");
        assertMends(turned, finding);
    }

    @Test
    void rowsOfTheNextPassCountWithTheirGuessRowError() {
        CropPlan.Rows rows = new CropPlan.Rows(0.5, 4, 0.4, 0.010, Optional.of(4), 0.030, Optional.empty());
        Case subject = dropping(0.100, 0.200, 0.05).withPlan(p -> p.withRows(rows));
        // Left of a4 at 750 mm the next row stands at 1250 mm, 30 mm nearer: 500 - 200 mm where 40 + 10 + 30 + 4 mm are
        // needed.
        assertThat(check(subject).get(ROWS).outcome()).isEqualTo(Outcome.PASS);
        Case outside = dropping(0.100, 0.417, 0.05).withPlan(p -> p.withRows(rows));
        assertThat(limit(check(outside).get(ROWS))).isEqualTo(0.084);
        assertThat(check(outside).get(ROWS).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void undecidedForAPullerThatDoesNotSayWhatBecomesOfItsWeeds() {
        HeadSheet silent = Cases.silentWeederSheet().build();

        List<Finding> findings =
                check(Cases.weeding().sheet(b -> silent.toBuilder()).build());

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
        assertThat(findings.get(0).message()).contains("says that it pulls weeds, but not where it lets them fall");
    }

    @Test
    void doesNotApplyToHeadsThatDropNothing() {
        Finding said = check(Cases.weeding().build()).get(0);
        Finding unsaid = check(Cases.planting().build()).get(0);

        assertThat(said.outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
        assertThat(said.message()).isEqualTo("No head at work drops anything: head test-head 1.0.0 says so.");
        assertThat(unsaid.outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
        assertThat(unsaid.message()).contains("does set-plugs and names no drop");
    }

    /** Turned by 180 degrees with the head, a drop lies where it lay: what is measured to rows stays; and more never helps. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void turningMirroringAndAddingMoveResultsOnlyTheWayTheyMust(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        double right = random.nextInt(-300, 300) / 1000.0;
        double left = right + random.nextInt(1, 300) / 1000.0;
        double height = random.nextInt(0, 600) / 1000.0;
        Drop drop = Drop.over(Outline.rectangle(0.2, 0.3, right, left), Figure.measured(height));
        Drop turned = Drop.over(drop.outline().turned(), drop.height());
        Drop mirrored = Drop.over(Outline.rectangle(0.2, 0.3, -left, -right), drop.height());
        Drop wider = Drop.over(Outline.rectangle(0.15, 0.3, right, left + 0.05), drop.height());
        Drop higher = Drop.over(drop.outline(), Figure.measured(height + 0.1));

        List<Finding> plain = check(dropping(List.of(drop), false));
        assertThat(margin(check(dropping(List.of(turned), true)), ROWS)).isEqualTo(margin(plain, ROWS));
        assertThat(margin(check(dropping(List.of(mirrored), false)), ROWS)).isEqualTo(margin(plain, ROWS));
        for (Drop more : List.of(wider, higher)) {
            List<Finding> findings = check(dropping(List.of(more), false));
            assertThat(margin(findings, ROWS)).isLessThanOrEqualTo(margin(plain, ROWS));
            assertThat(margin(findings, ARMS)).isLessThanOrEqualTo(margin(plain, ARMS));
        }
        List<Finding> both = check(dropping(List.of(drop, mirrored), false));
        assertThat(margin(both, ROWS)).isEqualTo(margin(plain, ROWS));
        assertThat(margin(both, ARMS)).isLessThanOrEqualTo(margin(plain, ARMS));
    }

    private static void assertMends(Case subject, Finding finding) {
        assertThat(finding.proposals()).isNotEmpty();
        for (Edit edit : finding.proposals()) {
            assertThat(check(edit.apply(subject)))
                    .as(edit.text())
                    .extracting(Finding::outcome)
                    .containsOnly(Outcome.PASS);
        }
    }

    private static Drop drop(double right, double left) {
        return Drop.over(Outline.rectangle(0.2, 0.3, right, left), Figure.measured(0.05));
    }

    private static Case dropping(double right, double left, double height) {
        return dropping(List.of(Drop.over(Outline.rectangle(0.2, 0.3, right, left), Figure.measured(height))), false);
    }

    private static Case dropping(List<Drop> drops, boolean turned) {
        Cases cases = Cases.weeding()
                .sheet(b -> b.forces(ArmToArmTest.NO_FORCE).drops(drops))
                .crop(new CropPlan.Crop(0.1, 0.2, 0.040));
        return (turned ? cases.turned() : cases).build();
    }

    private static List<Finding> check(Case subject) {
        return new DropZone().check(subject);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static double limit(Finding finding) {
        return finding.comparison().orElseThrow().limit().value();
    }

    private static double margin(List<Finding> findings, int which) {
        return measured(findings.get(which)) - limit(findings.get(which));
    }
}
