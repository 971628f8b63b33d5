package headgate.verifier.report;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.judge.Judge;
import headgate.verifier.judge.Judgement;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.remedy.SetSpeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Judgements for tests of reports: a carriage with eight arms and rules made up so that every kind of finding occurs. All
 * figures are invented.
 */
public final class Judgements {

    private Judgements() {}

    /** {@return a rule that is asked for its answer} */
    public static Rule rule(RuleInfo info, Function<Case, List<Finding>> check) {
        return new Rule() {
            @Override
            public RuleInfo info() {
                return info;
            }

            @Override
            public List<Finding> check(Case subject) {
                return check.apply(subject);
            }
        };
    }

    /**
     * What is known about a made-up rule.
     *
     * @param id its id
     * @param title what must hold
     * @param severity what a failure means
     * @return the info
     */
    public static RuleInfo info(String id, String title, Severity severity) {
        return new RuleInfo(
                id,
                title,
                "Whoever fits the head must know.",
                "Measured value against limit.",
                "invented for tests",
                severity,
                "0.1.0",
                List.of());
    }

    /** {@return a case of six rows, eight arms, a head as long as a forearm} */
    public static Cases eightArms() {
        return Cases.weeding()
                .sheet(Judgements::longHead)
                .carriage(c -> eightArmCarriage())
                .plan(p -> new CropPlan(
                        "Lettuce at 45 cm",
                        new CropPlan.Rows(0.45, 8, 0.3, 0.01),
                        new CropPlan.Crop(0.14, 0.24, 0.03),
                        p.soil(),
                        p.weeds(),
                        p.plugs(),
                        p.wanted(),
                        p.field()));
    }

    private static HeadSheet.Builder longHead(HeadSheet.Builder sheet) {
        Body fixed = Body.of(
                Prism.box(-0.06, 0.10, -0.06, 0.06, -0.09, 0), Prism.box(0.04, 0.48, -0.18, 0.18, -0.20, -0.09));
        Body moving = Body.of(
                Prism.box(-0.025, 0.025, -0.025, 0.025, 0.04, 0.43), Prism.aroundCylinder(0, 0, 0.035, 0, 0.08));
        Body weed = Body.of(Prism.aroundCylinder(0, 0, 0.08, -0.08, 0.0));
        Point3 ready = Point3.ofMetres(0.26, 0, -0.22);
        Reach reach = Reach.over(Outline.rectangle(0.09, 0.43, -0.13, 0.13), Interval.ofMetres(-0.60, -0.22));
        return sheet.postures(
                Cases.posture(PostureName.STOWED, fixed, moving, Reach.at(ready)),
                Posture.named(PostureName.READY)
                        .fixed(fixed)
                        .moving(moving)
                        .carried(weed)
                        .region(Reach.at(ready))
                        .build(),
                Posture.named(PostureName.WORK)
                        .fixed(fixed)
                        .moving(moving)
                        .carried(weed)
                        .region(reach)
                        .build());
    }

    private static Carriage eightArmCarriage() {
        Carriage base = Cases.carriage();
        List<Arm> arms = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            arms.add(Cases.arm("A" + (i + 1), i % 2 == 0 ? "front" : "rear", -1.575 + 0.45 * i));
        }
        return new Carriage(
                "Eight-arm test carriage",
                "T-8",
                List.of(new Carriage.Beam("front", 0), new Carriage.Beam("rear", -1_100_000)),
                arms,
                List.of(
                        new Carriage.Part("right leg", Body.of(Prism.box(-1.3, 0.3, -2.1, -2.0, 0.0, 1.5))),
                        new Carriage.Part("left leg", Body.of(Prism.box(-1.3, 0.3, 2.0, 2.1, 0.0, 1.5))),
                        new Carriage.Part("front bar", Body.of(Prism.box(-0.06, 0.06, -2.0, 2.0, 1.3, 1.42))),
                        new Carriage.Part("rear bar", Body.of(Prism.box(-1.16, -1.04, -2.0, 2.0, 1.3, 1.42)))),
                new Carriage.GroundMotion(0.005, 0.005, 0.005),
                base.stopping(),
                base.turning());
    }

    /** {@return rules whose findings are of every kind, one failure with a remedy among them} */
    public static List<Rule> everyKind() {
        RuleInfo gap = info("clearance.arm-to-arm", "Neighbouring arms stay apart", Severity.ERROR);
        RuleInfo mass = info("mount.mass", "The arm carries the head's mass", Severity.ERROR);
        RuleInfo caution = info("safety.standing", "What is known of hazards is said", Severity.CAUTION);
        RuleInfo open = info("throughput.spot", "The head keeps the pace", Severity.ERROR);
        RuleInfo none = info("rows.shared", "Lanes that are shared are shared well", Severity.ERROR);
        return List.of(
                rule(
                        mass,
                        c -> List.of(Finding.of(mass, "head test-head 1.0.0")
                                .comparison(Comparison.atMost(5.8, 9.0, Dimension.MASS))
                                .term("mass, soiled", 5.8, Dimension.MASS)
                                .term("payload of the arm", 10.0, Dimension.MASS)
                                .term("share that may be used", 0.9, Dimension.SHARE)
                                .field("carriage:arms[0].payload.mass")
                                .examined(8)
                                .decide("The heaviest head weighs 5.8 kg, and the weakest arm may carry 9 kg."))),
                rule(
                        none,
                        c -> List.of(Finding.notApplicable(
                                none, "all lanes", "Every lane has an arm of its own, so none is shared."))),
                rule(gap, c -> armToArm(gap, c)),
                rule(
                        open,
                        c -> List.of(Finding.undecided(
                                open,
                                "head test-head 1.0.0",
                                "The plan does not say how many weeds the sensors find (weeds.recall)."))),
                rule(
                        caution,
                        c -> List.of(Finding.of(caution, "head test-head 1.0.0")
                                .examined(1)
                                .end(Outcome.CAUTION, "1 hazard is declared: crushing, kept by limited force."))));
    }

    private static List<Finding> armToArm(RuleInfo gap, Case c) {
        double spacing = c.plan().value().rows().spacing();
        List<Finding> found = new ArrayList<>();
        found.add(pair(gap, "arm A3 and arm A5", -0.675, spacing, 0.56));
        found.add(pair(gap, "arm A1 and arm A3", -1.575, spacing, 0.43));
        return found;
    }

    private static Finding pair(RuleInfo gap, String subject, double y, double spacing, double needed) {
        double width = 0.42;
        double free = 2 * spacing - width;
        return Finding.of(gap, subject)
                .comparison(Comparison.atLeast(free, needed, Dimension.LENGTH))
                .term("policy gap", 0.05, Dimension.LENGTH)
                .term("tolerances of both arms", needed - 0.05, Dimension.LENGTH)
                .witness(new Witness(
                        Point3.ofMetres(0.3, y + width / 2, 0.4),
                        Point3.ofMetres(0.3, y + width / 2 + free, 0.4),
                        Dimension.LENGTH.text(free)))
                .field("crop-plan:rows.spacing")
                .examined(3)
                .propose(new SetRowSpacing((needed + width) / 2, needed + width))
                .propose(new SetSpeed(0.1))
                .decide("The heads come to within " + Dimension.LENGTH.text(free) + " of each other, and need "
                        + Dimension.LENGTH.text(needed) + ".");
    }

    /**
     * Judges a case whose files know where their fields stand.
     *
     * @param subject the case
     * @param rules the rules
     * @return the judgement
     */
    public static Judgement judge(Case subject, List<Rule> rules) {
        return new Judge(rules).judge(placed(subject));
    }

    private static Case placed(Case c) {
        return new Case(
                placed(c.carriage(), "/home/somebody/files/carriage.json", Map.of("arms[0]", place(12))),
                placed(c.plan(), "plans\\lettuce.json", Map.of("rows.spacing", place(5))),
                c.policy(),
                c.mountings());
    }

    private static Place place(int line) {
        return new Place("/home/somebody/files/file.json", line, 7);
    }

    private static <T> Loaded<T> placed(Loaded<T> loaded, String file, Map<String, Place> places) {
        return new Loaded<>(loaded.value(), file, loaded.sha256(), places);
    }

    /** {@return a report in which every kind of finding occurs} */
    public static Report everyKindReport() {
        return report(judge(eightArms().build(), everyKind()));
    }

    /**
     * Makes the report of a judgement.
     *
     * @param judgement the judgement
     * @return the report
     */
    public static Report report(Judgement judgement) {
        return ReportMaker.of(
                judgement,
                new Edition("0.1.0", "0.1.0"),
                List.of(new Subject("transcript", "head test-head 1.0.0", "1".repeat(64))),
                List.of("The head ran without a wall by the operating system."));
    }
}
