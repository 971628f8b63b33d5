package headgate.verifier.rules.throughput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.answer.Action;
import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Prism;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.interlock.Claws;
import headgate.verifier.remedy.SetSpeed;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: the reach is 300 mm long, an action takes T = 1.5 s of which 0.5 s in the ground. At 0.2 m/s the window
 * is d = 0.3 / 0.2 - 0.5 = 1.0 s. A band of 0.2 m with 2 weeds per square metre, 95 % of them seen, and 0.1 false alarms
 * per square metre sends 0.2 x 0.2 x 2.0 = 0.08 a second, so rho = 0.12.
 */
class KeepsPaceTest {

    /**
     * Fixed service, d below T: H = e^(0.08 x 1.0) = 1.0832871, so the served share is H / (1 + rho H) = 0.9586660 (the
     * queue with constant patience; Bae and Kim, Queueing Systems 64 (2010) 253-265, closed form for fixed service).
     */
    private static final double REACHED = 0.9586660;

    @Test
    void passesWithTheCoverageOfTheQueue() {
        Finding finding = only(Cases.weeding().build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.95 * REACHED, within(1e-6));
        assertThat(finding.message())
                .isEqualTo("At 0.2 m/s one arm treats 91.1 % of its lane's weeds, where 85 % are wanted.");
    }

    @Test
    void holdsExactlyAtTheLimit() {
        double coverage = only(Cases.weeding().build())
                .comparison()
                .orElseThrow()
                .measured()
                .value();

        Finding finding = only(Cases.weeding()
                .wanted(Operation.PULL_WEEDS, 0.2, coverage, Optional.empty())
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().margin()).isEqualTo(0.0);
    }

    @Test
    void failsAndProposesTheFastestSpeedThatReachesWhatIsWanted() {
        Case wanting = Cases.weeding()
                .wanted(Operation.PULL_WEEDS, 0.2, 0.93, Optional.empty())
                .build();

        Finding finding = only(wanting);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).endsWith("4.1 % leave the reach while the arm is busy.");
        Edit slower = finding.proposals().get(0);
        double best = (double) Objects.requireNonNull(slower.figures().get("speed"));
        // Served must be 0.93 / 0.95 = 0.978947. At 0.172 m/s lambda is 0.0688, rho 0.1032 and d 1.244186 s: H =
        // 1.089374,
        // served 0.979277. At 0.173 m/s it is 0.978526.
        assertThat(best).isEqualTo(0.172, within(1e-12));
        assertThat(only(slower.apply(wanting)).outcome()).isEqualTo(Outcome.PASS);
        assertThat(only(speed(wanting, best + 0.001)).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void saysSoWhereAWeedLeavesBeforeTheToolIsOut() {
        // At 0.8 m/s the reach passes in 0.375 s, but the tool is in the ground for 0.5 s.
        Finding finding = only(Cases.weeding().speed(0.8).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.comparison().orElseThrow().measured().value()).isEqualTo(0.0);
    }

    @Test
    void countsTheBandThatTheReachDoesNotCover() {
        // A band of 0.4 m, a reach 0.2 m wide: half of the plants looked at are in reach.
        Finding finding = only(Cases.weeding()
                .weeds(2.0, 0.4, Optional.of(0.95), Optional.of(0.1))
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).contains("only 50 % of those seen may be treated");
        assertThat(finding.proposals()).isEmpty();
    }

    @Test
    void countsWeedsOnProtectedGroundAsMissed() {
        // Discs of 50 mm every 400 mm in a band of 200 mm: pi x 0.0025 m² of 0.08 m² are protected, 9.82 %.
        Finding finding =
                only(Cases.weeding().crop(new CropPlan.Crop(0.1, 0.2, 0.05)).build());

        double unprotected = 1 - Math.PI * 0.0025 / 0.08;
        assertThat(finding.terms())
                .filteredOn(t -> t.name().equals("of the seen, outside of protected ground"))
                .singleElement()
                .satisfies(t -> assertThat(t.measure().value()).isCloseTo(unprotected, within(1e-12)));
        // The arm is asked for fewer weeds, and for as many false alarms: 0.04 m²/s times 1.9 and 0.1 a square metre.
        double arrivals = 0.04 * (1.9 * unprotected + 0.1);
        double h = Math.exp(arrivals * 1.0);
        assertThat(finding.comparison().orElseThrow().measured().value())
                .isCloseTo(0.95 * unprotected * h / (1 + arrivals * 1.5 * h), within(1e-9));
    }

    @Test
    void countsWeedsUnderLeavesAsUnseen() {
        // Leaves 100 mm wide every 400 mm hide 9.82 % of the band from view, and of the weeds, 100 to 150 mm tall, the
        // 40 %
        // that are lower than a crop of 120 mm.
        double hidden = 0.4 * Math.PI * 0.0025 / 0.08;

        Finding finding =
                only(Cases.weeding().crop(new CropPlan.Crop(0.12, 0.1, 0.0)).build());

        double seen = 0.95 * (1 - hidden);
        assertThat(term(finding, "seen: recall, less what leaves hide")).isCloseTo(seen, within(1e-12));
        double arrivals = 0.04 * (2 * seen + 0.1);
        double h = Math.exp(arrivals * 1.0);
        assertThat(finding.comparison().orElseThrow().measured().value())
                .isCloseTo(seen * h / (1 + arrivals * 1.5 * h), within(1e-9));
    }

    @Test
    void saysSoWhereLeavesHideTooMany() {
        // All of the weeds are lower than the crop, whose leaves, 200 mm wide, hide pi x 0.01 m² of 0.08 m²: 39.3 %.
        Finding finding =
                only(Cases.weeding().crop(new CropPlan.Crop(0.2, 0.2, 0.0)).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .endsWith("only 57.7 % are seen, as leaves of the crop hide 37.3 %, whatever the head does.");
        assertThat(finding.proposals()).isEmpty();
    }

    @Test
    void countsTreatedWeedsThatGrowOnAsMissed() {
        // Of the 96 plants that are looked at 46 are grass, of which a fifth grows on.
        Finding finding = only(Cases.weeding()
                .success(new CropPlan.Success(PlantClass.BROADLEAF, 1.0), new CropPlan.Success(PlantClass.GRASS, 0.8))
                .build());

        double successful = 1 - 0.2 * 46 / 96;
        assertThat(term(finding, "successful: treated and not growing on")).isCloseTo(successful, within(1e-12));
        assertThat(finding.comparison().orElseThrow().measured().value())
                .isCloseTo(0.95 * REACHED * successful, within(1e-6));
        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void saysSoWhereTooManyGrowOn() {
        Finding finding = only(Cases.weeding()
                .success(new CropPlan.Success(PlantClass.BROADLEAF, 0.8), new CropPlan.Success(PlantClass.GRASS, 0.8))
                .build());

        assertThat(finding.message()).endsWith("of the treated weeds 20 % grow on, whatever the speed.");
        assertThat(finding.proposals()).isEmpty();
    }

    @Test
    void saysWhichWeedsAreTakenNotToGrowOn() {
        Finding finding = only(Cases.weeding()
                .success(new CropPlan.Success(PlantClass.GRASS, 1.0))
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.message())
                .endsWith(
                        "Treated weeds are taken not to grow on, since the crop plan gives no success for broadleaf.");
    }

    @Test
    void cautionsLoudlyWhereNobodyKnowsHowManyAreSeen() {
        Finding finding = only(Cases.weeding()
                .weeds(2.0, 0.2, Optional.empty(), Optional.of(0.1))
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.CAUTION);
        assertThat(finding.message()).contains("PERFECT PERCEPTION ASSUMED");
    }

    @Test
    void anArmOnTwoLanesIsAskedForTwiceAsManyWeeds() {
        // Two rows 0.1 m apart with bands of 0.1 m: the reach of 0.2 m holds both.
        Finding one = only(narrow(1));
        Finding two = only(narrow(2));

        assertThat(two.subject()).isEqualTo(one.subject() + ", on 2 lanes");
        assertThat(asked(two)).isEqualTo(2 * asked(one));
    }

    @Test
    void armsThatWaitForOneAnotherShareTheTime() {
        List<Finding> findings = new KeepsPace().check(Claws.cases().build());

        assertThat(findings)
                .extracting(Finding::subject)
                .containsExactly(
                        "head test-head 1.0.0 on arm a1, in turn with arm a3",
                        "head test-head 1.0.0 on arm a2, in turn with arm a4",
                        "head test-head 1.0.0 on arm a3, in turn with arm a1",
                        "head test-head 1.0.0 on arm a4, in turn with arm a2");
        // One server for both: lambda is 0.16, rho 0.24 and H = e^(0.16 x 1.0).
        double h = Math.exp(0.16);
        assertThat(findings).allSatisfy(f -> {
            assertThat(f.outcome()).isEqualTo(Outcome.PASS);
            assertThat(f.comparison().orElseThrow().measured().value())
                    .isCloseTo(0.95 * h / (1 + 0.24 * h), within(1e-9));
            assertThat(f.terms())
                    .filteredOn(t -> t.name().startsWith("time that the arms it takes turns with"))
                    .singleElement()
                    .satisfies(t -> assertThat(t.measure().value()).isCloseTo(0.12, within(1e-12)));
        });
    }

    @Test
    void failsWhereWaitingForATurnTakesTooLong() {
        Finding finding = new KeepsPace()
                .check(Claws.cases()
                        .wanted(Operation.PULL_WEEDS, 0.2, 0.88, Optional.empty())
                        .build())
                .get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message()).endsWith("leave the reach while the arm is busy or waits for its turn.");
        assertThat(finding.proposals()).isNotEmpty();
    }

    @Test
    void plantersThatTakeTurnsNeedTheTimeOfAllOfThem() {
        // A place passes every 0.4 / 0.2 = 2 s, and two actions in turn take 3 s: 0.4 / 3 = 0.133 m/s. Waiting 1.5 s
        // and 0.5
        // s in the ground are 0.4 m, of a reach of 0.3 m: 0.15 m/s.
        Case planting = Claws.on(Cases.planting()).build();

        List<Finding> findings = new KeepsPace().check(planting);

        Finding rate = findings.get(0);
        assertThat(rate.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(rate.message())
                .isEqualTo(
                        "Every 2 s a place for a plug passes (s / v), and one action, in turn with arm a3 takes up to 3 s.");
        assertThat(findings.get(1).comparison().orElseThrow().measured().value())
                .isCloseTo(0.4, within(1e-12));
        Edit slower = rate.proposals().get(0);
        assertThat(slower.text()).isEqualTo("drive at up to 0.133 m/s");
        assertThat(new KeepsPace().check(slower.apply(planting)))
                .extracting(Finding::outcome)
                .containsOnly(Outcome.PASS);
    }

    @Test
    void whatAnInterlockKeepsTheToolOffIsNotTreated() {
        // A bar of the left neighbour, 330 mm to the left of the right arm, closes that one's reach beyond 330 - 238 =
        // 92 mm,
        // over its whole length: 8 of the 200 mm of the band, 4 %.
        Body post = Body.of(
                Prism.box(-0.05, 0.45, -0.30, 0.25, -0.15, 0.0), Prism.box(0.05, 0.45, -0.67, -0.29, -0.2, -0.1));
        List<Finding> findings = new KeepsPace()
                .check(Claws.cases().sheet(b -> Claws.postures(b, post)).build());

        Finding right = findings.get(0);
        assertThat(right.terms())
                .filteredOn(t -> t.name().equals("of the band, kept off by an interlock"))
                .singleElement()
                .satisfies(t -> assertThat(t.measure().value()).isCloseTo(0.04, within(0.011)));
    }

    @Test
    void failsWhereAnInterlockKeepsTheToolOffThePlacesOfPlugs() {
        Body post = Body.of(
                Prism.box(-0.05, 0.45, -0.30, 0.15, -0.15, 0.0), Prism.box(0.35, 0.45, -0.77, -0.29, -0.2, -0.1));

        List<Finding> findings = new KeepsPace()
                .check(Claws.on(Cases.planting())
                        .sheet(b -> Claws.postures(b, post))
                        .build());

        assertThat(findings.get(0).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(findings.get(0).message())
                .isEqualTo("An interlock keeps the tool off the places of plugs on 1 of 1 lanes.");
    }

    private static Case narrow(int rows) {
        return Cases.weeding()
                .rows(new CropPlan.Rows(0.1, rows, 0.4, 0.0))
                .weeds(2.0, 0.1, Optional.of(0.95), Optional.of(0.1))
                .carriage(c -> c.withArms(c.arms().stream()
                        .filter(a -> a.id().equals("a2"))
                        .map(a -> a.withShift(Interval.ofMetres(-0.1, 0.1)))
                        .toList()))
                .build();
    }

    private static double asked(Finding finding) {
        return term(finding, "weeds and false alarms");
    }

    private static double term(Finding finding, String begins) {
        return finding.terms().stream()
                .filter(t -> t.name().startsWith(begins))
                .mapToDouble(t -> t.measure().value())
                .sum();
    }

    @Test
    void isUndecidedWithoutWeeds() {
        Finding finding = only(Cases.weeding().weeds(Optional.empty()).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(finding.message()).contains("add \"weeds\"");
    }

    @Test
    void plantsWhileAPlaceTakesLongerToPassThanAnAction() {
        // s / v = 0.4 / 0.2 = 2.0 s against T = 1.5 s; 0.2 x 0.5 = 100 mm of a reach of 300 mm.
        List<Finding> findings = check(Cases.planting().build());

        assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS, Outcome.PASS);
        assertThat(findings.get(0).comparison().orElseThrow().limit().value()).isEqualTo(2.0, within(1e-12));
        assertThat(findings.get(1).comparison().orElseThrow().measured().value())
                .isEqualTo(0.1, within(1e-12));
    }

    @Test
    void plantingHoldsExactlyAtTheLimit() {
        // s / v = 0.3 / 0.2 = 1.5 s = T.
        Finding finding = check(planting(0.3, 0.2)).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.comparison().orElseThrow().margin()).isEqualTo(0.0);
    }

    @Test
    void plantingFailsAboveItAndProposesTheSpeedThatFits() {
        Case fast = planting(0.3, 0.25);

        Finding finding = check(fast).get(0);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        // s / T = 0.3 / 1.5 = 0.2 m/s; chord / t_g = 0.6 m/s does not bind.
        assertThat(finding.proposals()).extracting(Edit::text).containsExactly("drive at up to 0.2 m/s");
        assertThat(check(finding.proposals().get(0).apply(fast)).get(0).outcome())
                .isEqualTo(Outcome.PASS);
    }

    @Test
    void plantingIsUndecidedIfTheHeadDeclines() {
        Finding finding =
                only(Cases.planting().act(task -> Action.decline("not today")).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    private static Case planting(double spacing, double speed) {
        return Cases.planting()
                .rows(new CropPlan.Rows(0.5, 4, spacing, 0.0))
                .speed(speed)
                .build();
    }

    private static Case speed(Case subject, double speed) {
        return new SetSpeed(speed).apply(subject);
    }

    private static Finding only(Case subject) {
        List<Finding> findings = check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    private static List<Finding> check(Case subject) {
        return new KeepsPace().check(subject);
    }
}
