package headgate.verifier.rules.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Prism;
import headgate.api.sheet.Figure;
import headgate.api.sheet.Forces;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.carriage.Arm;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.FakeHead;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Term;
import headgate.verifier.interlock.Claws;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.StancePair;
import headgate.verifier.setup.Station;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Hand arithmetic: neighbours on one beam stand 1.000 m apart. Required is 30 mm by policy plus, for each arm, 1 mm
 * backlash, 2 mm tracking and 2 x 0.5 mm: 38 mm while there is neither angular play nor force.
 */
@NeverFinds(value = Outcome.UNDECIDED, because = "every sheet, arm and policy gives what the gap needs")
class ArmToArmTest {

    static final Forces NO_FORCE =
            Forces.rigid(Figure.assumed(0), Figure.assumed(0), Figure.assumed(0), Figure.assumed(0));

    @Test
    void passesWithTheGapOfTheTightestPair() {
        Finding finding = check(Cases.weeding().sheet(b -> b.forces(NO_FORCE)).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        // Heads are 150 mm wide to either side: 1000 - 300 = 700 mm between neighbours on one beam. Neighbours on the
        // two
        // beams are 1200 - 450 - 50 = 700 mm apart along travel and 200 mm across: 728 mm.
        assertThat(measured(finding)).isEqualTo(0.700);
        assertThat(limit(finding)).isEqualTo(0.038);
        // Six pairs of arms, three stances each: 6 x 9.
        assertThat(finding.examined()).isEqualTo(54);
    }

    @Test
    void holdsExactlyAtTheLimit() {
        // 1000 - 2 x 481 = 38 mm.
        Finding finding = check(wide(0.481, 0.481));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(measured(finding)).isEqualTo(limit(finding)).isEqualTo(0.038);
    }

    @Test
    void failsOneMicrometreBelowTheLimit() {
        Finding finding = check(wide(0.481, 0.481001));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.037999);
        assertThat(finding.subject()).isEqualTo("arm a1 at work and arm a3 at work");
    }

    @Test
    void proposesATrimOnTheSideThatStandsOutFurtherAndWiderRows() {
        // 1000 - 400 - 581.5 = 18.5 mm where 38 are required: 19.5 mm are missing, a trim of 20 mm.
        Case tight = wide(0.400, 0.5815);

        Finding finding = check(tight);

        assertThat(finding.proposals())
                .extracting(Edit::text)
                .containsExactly(
                        "trim head test-head by 20 mm at +y",
                        "set rows at least 509.8 mm apart, so that neighbouring arms on a beam stand at least 1019.5 mm"
                                + " apart");
        for (Edit edit : finding.proposals()) {
            assertThat(check(edit.apply(tight)).outcome()).as(edit.text()).isEqualTo(Outcome.PASS);
        }
        assertThat(measured(check(finding.proposals().get(0).apply(tight)))).isEqualTo(0.0385);
    }

    @Test
    void trimsTheOtherSideOfATurnedHead() {
        Case tight = Cases.weeding()
                .sheet(b -> b.forces(NO_FORCE))
                .sheet(fixed(Body.of(Prism.box(-0.05, 0.45, -0.400, 0.5815, -0.15, 0.0))))
                .turned()
                .build();

        Finding finding = check(tight);

        assertThat(finding.proposals().get(0).text()).isEqualTo("trim head test-head by 20 mm at +y");
        assertThat(check(finding.proposals().get(0).apply(tight)).outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void showsEveryTermOfTheRequiredGap() {
        Case subject = Cases.weeding()
                .sheet(b -> b.forces(
                        Forces.rigid(Figure.assumed(0), Figure.assumed(0), Figure.assumed(300), Figure.assumed(400))))
                .arms(a -> new Arm(
                        a.id(),
                        a.beam(),
                        a.shift(),
                        a.lift(),
                        a.shiftMotion(),
                        a.liftMotion(),
                        new Arm.Tolerance(0.001, 0.002, 0.0005, 0.01, 100_000),
                        a.payload(),
                        a.plate(),
                        a.connectors(),
                        a.supply(),
                        a.body()))
                .build();

        Finding finding = check(subject);

        // Deflection: the hypotenuse of 300 and 400 N over 100 000 N/m is 5 mm. Angular play: the head at work fills x
        // to
        // 450 mm, y to 150 mm and z down to -600 mm, so no point is farther than sqrt(0.45² + 0.15² + 0.6²) = 764.853
        // mm.
        double each = 0.001 + 0.002 + 0.001 + 0.01 * Math.sqrt(0.45 * 0.45 + 0.15 * 0.15 + 0.6 * 0.6) + 0.005;
        assertThat(limit(finding)).isEqualTo(0.030 + 2 * each, within(1e-9));
        assertThat(finding.terms())
                .contains(
                        Term.of("deflection of arm a1 under its largest horizontal force", 0.005, Dimension.LENGTH),
                        Term.of("gap by policy", 0.030, Dimension.LENGTH));
    }

    @Test
    void measuresAHeadThatIsWideOnlyWhenLifted() {
        // Ready, 500 mm of material stand out at +y. It meets the neighbour's 150 mm at work: 1000 - 500 - 150 = 350
        // mm.
        Body wings = Body.of(Prism.box(-0.05, 0.45, -0.15, 0.5, -0.15, 0.0));
        Case subject = Cases.weeding()
                .sheet(b -> b.forces(NO_FORCE))
                .sheet(fixed(PostureName.READY, wings))
                .build();

        assertThat(measured(check(subject))).isEqualTo(0.350);
    }

    @Test
    void measuresTheHullOfAReachThatIsNotConvex() {
        // An L-shaped reach: the tool point can be 400 mm out at +y only in front, yet it may go there straight from
        // the
        // rear. Material at the tool point reaches 420 mm: 1000 - 420 - 150 = 430 mm.
        Outline l = Outline.ofMetres(0.1, -0.1, 0.4, -0.1, 0.4, 0.4, 0.3, 0.4, 0.3, 0.1, 0.1, 0.1);
        Case subject = Cases.weeding()
                .sheet(b -> b.forces(NO_FORCE))
                .sheet(b -> {
                    HeadSheet sheet = b.build();
                    return sheet.toBuilder()
                            .postures(sheet.postures().stream()
                                    .map(p -> p.name().equals(PostureName.WORK)
                                            ? Cases.posture(
                                                    p.name(),
                                                    p.fixed(),
                                                    p.moving(),
                                                    Reach.over(l, Interval.ofMetres(-0.6, -0.2)))
                                            : p)
                                    .toList());
                })
                .build();

        assertThat(measured(check(subject))).isEqualTo(0.430);
    }

    @Test
    void passesWithACautionForEachPairThatAnInterlockKeepsApart() {
        // Both claws out leave 20 mm; ready, or one out and one ready, 310 mm and more.
        List<Finding> findings = new ArmToArm().check(Claws.cases().build());

        assertThat(findings)
                .extracting(Finding::outcome)
                .containsExactly(Outcome.PASS, Outcome.CAUTION, Outcome.CAUTION);
        assertThat(measured(findings.get(0))).isGreaterThan(limit(findings.get(0)));
        assertThat(findings.get(1).subject()).isEqualTo("arm a1 at work and arm a3 at work");
        assertThat(measured(findings.get(1))).isEqualTo(0.020);
        assertThat(findings.get(1).message())
                .endsWith("An interlock keeps the two apart: one zone that their tool points stay out of.");
    }

    @Test
    void failsWhereThePolicyAllowsNoInterlock() {
        Finding finding =
                check(Claws.cases().policy(p -> Cases.withArmsInTurn(p, 1)).build());

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(measured(finding)).isEqualTo(0.020);
    }

    @Test
    void aContinuousHeadCannotWait() {
        Finding finding = check(Claws.cases()
                .run(sheet -> Cases.answering(FakeHead.continuous(
                        sheet, task -> new RowAnswer.Failed(new HeadFault.WrongKind(HeadStage.ENGAGE)))))
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void failsWhereAParkedHeadIsInTheWayOfOneThatWorksAndProposesAHigherLift() {
        // At work 600 mm stand out at +y, stowed 600 mm at -y: neighbours 1000 mm apart overlap seen from above. The
        // lift
        // ends at 600 mm, so what is parked hangs down to 450 mm, and what works stands up to 560 mm.
        Case low = folding(0.60);
        Finding finding = check(low);

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.subject()).isEqualTo("arm a1 at work and arm a3 parked");
        assertThat(measured(finding)).isZero();
        // 560 + 38 + 150 = 748 mm.
        Edit higher = finding.proposals().get(0);
        assertThat(higher.text()).isEqualTo("lift arm a3 up to 748 mm, arm a4 up to 748 mm");
        assertThat(check(higher.apply(low)).outcome()).isEqualTo(Outcome.PASS);
        assertThat(check(folding(0.747)).outcome()).isEqualTo(Outcome.FAIL);
    }

    private static Case folding(double top) {
        Body left = Body.of(Prism.box(-0.05, 0.45, -0.15, 0.60, -0.15, 0.0));
        Body right = Body.of(Prism.box(-0.05, 0.45, -0.60, 0.15, -0.15, 0.0));
        return Cases.weeding()
                .sheet(b -> b.forces(NO_FORCE))
                .arms(a -> a.withLift(Interval.ofMetres(0.35, top))
                        .withShift(Interval.at((a.shift().least() + a.shift().most()) / 2)))
                .sheet(fixed(PostureName.STOWED, right))
                .sheet(fixed(PostureName.WORK, left))
                .build();
    }

    @Test
    void showsThatSideShiftsAreLockedAndHowFarALiftMayRunOn() {
        List<Station> stations = Setup.of(Cases.weeding().build()).stations();
        ArmStance lifting = ArmStance.of(stations.get(0), 2).get(1);
        ArmStance working = ArmStance.of(stations.get(2), 2).get(0);

        List<Term> terms = new StancePair(lifting, working, 0.03).terms();

        assertThat(terms)
                .contains(
                        Term.of("overshoot of the side shift of arm a1, locked", 0.0, Dimension.LENGTH),
                        Term.of("overshoot of the side shift of arm a3, locked", 0.0, Dimension.LENGTH),
                        Term.of(
                                "overshoot of the lift of arm a1, in the heights that it sweeps",
                                0.001,
                                Dimension.LENGTH));
        // 0.2 m/s x 0.2 s + 0.2² / (2 x 1) = 40 + 20 mm. The other arm's lift is locked.
        assertThat(terms)
                .filteredOn(t -> t.name().startsWith("stopping distance"))
                .singleElement()
                .satisfies(t -> {
                    assertThat(t.name()).contains("of the lift of arm a1");
                    assertThat(t.measure().value()).isCloseTo(0.060, within(1e-12));
                });
    }

    @Test
    void aLoweringArmMayRunOnByItsOvershootAndStoppingDistance() {
        Station station = Setup.of(Cases.weeding().build()).stations().get(0);

        // Work begins at 390 mm; 61 mm below that is under the lift's own end at 350 mm, where its overshoot of 1 mm
        // counts.
        assertThat(station.workHeights()).isEqualTo(Interval.ofMetres(0.390, 0.560));
        assertThat(station.heights()).isEqualTo(Interval.ofMetres(0.349, 0.951));

        Station deep = Setup.of(Cases.weeding()
                        .arms(a -> a.withLift(Interval.ofMetres(0.10, 0.95)))
                        .build())
                .stations()
                .get(0);
        assertThat(deep.heights()).isEqualTo(Interval.ofMetres(0.329, 0.951));
    }

    @Test
    void anArmsColumnCountsAsItsMaterial() {
        // A column 300 mm wide to either side over a2's beam is nearer to nobody; one of a3 that reaches forward to a1
        // is: 1000
        // - 600 - 150 = 250 mm.
        Finding finding = check(Cases.weeding()
                .sheet(b -> b.forces(NO_FORCE))
                .arms(a -> a.id().equals("a3") ? withColumn(a) : a)
                .build());

        assertThat(measured(finding)).isEqualTo(0.250);
    }

    private static Arm withColumn(Arm a) {
        return new Arm(
                a.id(),
                a.beam(),
                Interval.at(250_000),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                a.tolerance(),
                a.payload(),
                a.plate(),
                a.connectors(),
                a.supply(),
                a.body(),
                Body.of(Prism.box(-0.05, 0.05, -0.60, 0.10, 0.3, 1.5)),
                a.liftPath(),
                a.following(),
                a.plateNormal());
    }

    @Test
    void doesNotApplyToOneArm() {
        Finding finding = check(Cases.weeding()
                .rows(new CropPlan.Rows(0.5, 1, 0.4, 0.0))
                .carriage(c -> c.withArms(c.arms().stream()
                        .filter(a -> a.id().equals("a2"))
                        .map(a -> a.withShift(Interval.ofMetres(-0.1, 0.1)))
                        .toList()))
                .build());

        assertThat(finding.outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
        assertThat(finding.message()).isEqualTo("There is only one arm: it has no neighbour.");
    }

    private static Case wide(double right, double left) {
        return Cases.weeding()
                .sheet(b -> b.forces(NO_FORCE))
                .sheet(fixed(Body.of(Prism.box(-0.05, 0.45, -right, left, -0.15, 0.0))))
                .build();
    }

    private static UnaryOperator<HeadSheet.Builder> fixed(Body body) {
        return b -> {
            HeadSheet sheet = b.build();
            List<Posture> postures = sheet.postures().stream()
                    .map(p -> Cases.posture(p.name(), body, p.moving(), p.region()))
                    .toList();
            return sheet.toBuilder().postures(postures);
        };
    }

    private static UnaryOperator<HeadSheet.Builder> fixed(PostureName posture, Body body) {
        return b -> {
            HeadSheet sheet = b.build();
            List<Posture> postures = sheet.postures().stream()
                    .map(p -> p.name().equals(posture) ? Cases.posture(p.name(), body, p.moving(), p.region()) : p)
                    .toList();
            return sheet.toBuilder().postures(postures);
        };
    }

    private static Finding check(Case subject) {
        List<Finding> findings = new ArmToArm().check(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    private static double measured(Finding finding) {
        return finding.comparison().orElseThrow().measured().value();
    }

    private static double limit(Finding finding) {
        return finding.comparison().orElseThrow().limit().value();
    }
}
