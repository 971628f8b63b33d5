package headgate.it.page;

import headgate.api.head.ToolHead;
import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.it.Checkout;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.pack.ApiRange;
import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.Version;
import headgate.runtime.policy.PolicyReader;
import headgate.sample.gripper.Gripper;
import headgate.sample.planter.PlugPlanter;
import headgate.testkit.LocalHead;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.judge.Judge;
import headgate.verifier.report.Edition;
import headgate.verifier.report.Report;
import headgate.verifier.report.ReportMaker;
import headgate.verifier.rules.RuleBook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reports for pages: the sample heads on Lowfield's carriage as the rule book judges them, and what strains a page. */
final class Pages {

    private static final Path LOWFIELD = Checkout.folder().resolve("sample-heads/lowfield/src/main/resources/lowfield");
    private static final String LONG =
            "an-id-that-is-far-longer-than-anybody-would-choose-but-that-is-allowed-all-the-same";
    private static final String TAGS = "</h1><script>alert(1)</script><img src=x onerror=alert(2)> & \"quoted\" 'too'";

    private Pages() {}

    /** A sample head on a plan of Lowfield, judged by the whole rule book. */
    static Report sample(String plan) throws InvalidFileException {
        boolean planting = plan.endsWith("planting");
        return report(onLowfield(planting ? new PlugPlanter() : new Gripper(), plan), RuleBook.all());
    }

    /** Names that are tags, names without an end, and findings by the hundred. */
    static Report hostile() throws InvalidFileException {
        Case c = onLowfield(new Gripper(), "lettuce-45-weeding");
        RuleInfo info = info("clearance.hostile", Severity.ERROR);
        Rule rule = rule(info, subject -> {
            List<Finding> found = new ArrayList<>();
            for (Outcome outcome : Outcome.values()) {
                for (int i = 0; i < 60; i++) {
                    found.add(Finding.of(info, TAGS + " " + LONG.repeat(3))
                            .term(LONG + TAGS, -1e6 / 3, Dimension.FORCE)
                            .comparison(Comparison.atMost(1e9, Double.NaN, Dimension.FORCE))
                            .field("carriage:" + LONG + TAGS)
                            .examined(1)
                            .end(outcome, TAGS + LONG.repeat(8)));
                }
            }
            return found;
        });
        return report(
                c.withCarriage(k -> renamed(k, TAGS + LONG)).withPlan(p -> renamed(p, LONG + LONG + TAGS)),
                List.of(rule));
    }

    /** So many lanes side by side that their names have no room, and two heads that meet. */
    static Report crowded() throws InvalidFileException {
        Case c = onLowfield(new Gripper(), "lettuce-45-weeding")
                .withPlan(p -> narrow(p, 24, 0.15))
                .withCarriage(k -> manyArms(k, 24, 0.15));
        List<Case.Mounting> mountings = c.carriage().value().arms().stream()
                .map(a -> new Case.Mounting(a.id(), c.heads().get(0), false))
                .toList();
        RuleInfo info = info("clearance.meeting", Severity.ERROR);
        Rule rule = rule(
                info,
                subject -> List.of(Finding.of(info, "arm " + LONG + "7 and arm " + LONG + "8")
                        .comparison(Comparison.atLeast(0, 0.0421, Dimension.LENGTH))
                        .witness(new Witness(Point3.ofMetres(0.3, 0, 0.4), Point3.ofMetres(0.3, 0, 0.4), "0 mm"))
                        .examined(1)
                        .decide("They meet.")));
        return report(new Case(c.carriage(), c.plan(), c.policy(), mountings), List.of(rule));
    }

    /** A tightest place that goes up and down, and is next to nothing. */
    static Report upright() throws InvalidFileException {
        RuleInfo info = info("clearance.upright", Severity.ERROR);
        Rule rule = rule(
                info,
                subject -> List.of(Finding.of(info, "arm and ground")
                        .comparison(Comparison.atLeast(0.0031, 0.003, Dimension.LENGTH))
                        .witness(new Witness(
                                Point3.ofMetres(0.3, -1.575, 0.1), Point3.ofMetres(0.3, -1.575, 0.1031), "3.1 mm"))
                        .examined(1)
                        .decide("It stays clear.")));
        return report(onLowfield(new PlugPlanter(), "leek-75-planting"), List.of(rule));
    }

    /** A head that gave no sheet: nothing to draw. */
    static Report withoutSheet() throws InvalidFileException {
        Case c = onLowfield(new Gripper(), "leek-75-weeding");
        HeadUnderTest head = new HeadUnderTest(
                c.heads().get(0).facts(), new HeadUnderTest.Run.NotRun("the package rules object to it"));
        return report(Case.ofOneHead(head, c.carriage(), c.plan(), c.policy()), RuleBook.all());
    }

    private static Case onLowfield(ToolHead head, String plan) throws InvalidFileException {
        LocalHead answers = new LocalHead(head);
        HeadSheet sheet = answers.sheet();
        PackageFacts facts = new PackageFacts(
                "c".repeat(64),
                20_000,
                Optional.of(head instanceof Gripper ? "gripper" : "planter"),
                Version.parse("0.1.0"),
                Optional.of("Sample"),
                ApiRange.parse(">=0.1.0 & <0.2.0"),
                Optional.of(head.getClass().getName()),
                List.of(),
                List.of(),
                List.of());
        return Case.ofOneHead(
                new HeadUnderTest(
                        facts, new HeadUnderTest.Run.Answering(sheet, answers, Optional.of(new LocalHead(head)))),
                CarriageReader.read(LOWFIELD.resolve("carriage.json")),
                CropPlanReader.read(LOWFIELD.resolve(plan + ".json")),
                PolicyReader.builtIn());
    }

    private static Report report(Case subject, List<Rule> rules) {
        return ReportMaker.of(
                new Judge(rules).judge(subject), new Edition("0.1.0", RuleBook.VERSION), List.of(), List.of());
    }

    private static RuleInfo info(String id, Severity severity) {
        return new RuleInfo(
                id, "It holds", "For tests.", "As told.", "made up for tests", severity, "0.1.0", List.of());
    }

    private static Rule rule(RuleInfo info, Function<Case, List<Finding>> check) {
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

    private static Carriage renamed(Carriage c, String name) {
        return new Carriage(
                name,
                name,
                c.beams().stream()
                        .map(b -> new Carriage.Beam(b.id() + LONG, b.x()))
                        .toList(),
                c.arms().stream()
                        .map(a -> copy(a, a.id() + LONG, a.beam() + LONG, a.shift()))
                        .toList(),
                c.structure().stream()
                        .map(p -> new Carriage.Part(TAGS, p.body()))
                        .toList(),
                c.ground(),
                c.stopping(),
                c.turning());
    }

    private static CropPlan renamed(CropPlan p, String name) {
        return new CropPlan(name, p.rows(), p.crop(), p.soil(), p.weeds(), p.plugs(), p.wanted(), p.field());
    }

    private static CropPlan narrow(CropPlan p, int rows, double spacing) {
        return p.withRows(p.rows().withSpacing(spacing).withPerPass(rows));
    }

    private static Carriage manyArms(Carriage c, int count, double spacing) {
        List<Arm> arms = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double y = (i - (count - 1) / 2.0) * spacing;
            Arm like = c.arms().get(i % c.arms().size());
            arms.add(copy(like, LONG + i, like.beam(), Interval.ofMetres(y - 0.1, y + 0.1)));
        }
        return c.withArms(arms);
    }

    private static Arm copy(Arm a, String id, String beam, Interval shift) {
        return new Arm(
                id,
                beam,
                shift,
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                a.tolerance(),
                a.payload(),
                a.plate(),
                a.connectors(),
                a.supply(),
                a.body());
    }
}
