package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.Stance;
import headgate.runtime.policy.Policy;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Term;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.remedy.LatchHeads;
import headgate.verifier.remedy.RaisePoses;
import headgate.verifier.remedy.Side;
import headgate.verifier.remedy.TrimHead;
import headgate.verifier.setup.FoldStep;
import headgate.verifier.setup.FoldWay;
import headgate.verifier.setup.FoldedArm;
import headgate.verifier.setup.WorkHeight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code clearance.transport}: folded for the road, and on the way there, nothing meets, sticks out or drags. */
public final class TransportClears implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.transport",
            "Folded for the road, in every step to it and on the ways between, heads clear each other, the frame and the ground, and the carriage"
                    + " is no wider or higher than allowed",
            "A head is carried on the road for more days than anybody thinks of when it is drawn, and there it meets people.",
            "For each stance for transport, every step to it, the ways between them and the stance itself are looked at. An arm that has a pose is"
                    + " turned by its quarter turns and moved there; one that has none stays at its work place, lifted. A"
                    + " latched head fills its stowed posture; one that is not latched fills all that it can fill in any"
                    + " posture, since nothing holds what moves. Turned about x or y, each convex prism is taken as the box"
                    + " about it: exact for boxes, an outer bound for others. In every step and on every way each two arms keep the policy's"
                    + " gap between arms plus both arms' own terms, and each arm keeps the policy's gap to the frame plus its"
                    + " own. On the road, width and height over heads, arms and frame are within the policy's, and heads and"
                    + " arms stay the policy's gap over the ground, less its motion G and the suspension's travel; in a step,"
                    + " or on a way, the gap of a lifted head. On the way to a step an arm fills all that it passes through, its"
                    + " moves one after the other as its pose says, or else straight and with any part of its turn behind it at"
                    + " every place: an outer bound. All arms and parts of the frame are taken at every place of their ways, since"
                    + " nobody says which moves first; a part of the frame that moves fills the boxes about where its prisms were"
                    + " and come to be. Two arms that are too near as they are parked are left to clearance.arm-to-arm until one of"
                    + " them has moved. Wheels count as"
                    + " parts of the frame, set as for the plan until the stance is reached and there as it says, each in the box"
                    + " about its tyre and turned as far as it is steered; those of unknown diameter are not looked at.",
            "first principles; limits from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    /** What a change is rounded up to, micrometres. */
    private static final long STEP = 1000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        List<Stance> stances = subject.carriage().value().stances().stream()
                .filter(s -> s.use() == Stance.Use.TRANSPORT)
                .toList();
        if (stances.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    "the road",
                    "The carriage's file gives no stance for transport: say under \"stances\" where the arms are on the road,"
                            + " and the steps to it."));
        }
        List<Finding> findings = new ArrayList<>();
        for (Stance stance : stances) {
            List<FoldStep> steps = FoldStep.of(subject, stance);
            List<Shape> shapes = Shape.of(steps, FoldWay.of(subject, stance));
            findings.add(gaps(subject, stance, shapes));
            Outer outer = Outer.of(steps.get(steps.size() - 1));
            if (outer.isEmpty()) {
                findings.add(Finding.notApplicable(INFO, named(stance), "Nothing that is carried holds any material."));
                continue;
            }
            findings.add(width(subject, stance, outer));
            findings.add(height(subject, stance, outer));
            ground(subject, stance, shapes).ifPresent(findings::add);
        }
        return findings;
    }

    private static String named(Stance stance) {
        return "stance \"" + stance.name() + "\"";
    }

    /** The number of the shape on the road: it comes after all steps. */
    private static int road(Stance stance) {
        return stance.steps().size() + 1;
    }

    /**
     * All that is filled in a step, or on the way to it.
     *
     * @param where in words
     * @param fold the number of the step in pictures: the step itself, or the one to which the way leads
     * @param travels true for the shape that goes on the road
     * @param before the arms where the way to it begins; in a step, where they are
     * @param parked the arms as they are parked
     */
    private record Shape(
            String where,
            int fold,
            boolean travels,
            List<FoldedArm> arms,
            List<FoldWay.FrameSpace> frame,
            List<FoldedArm> before,
            List<FoldedArm> parked) {

        /** Arms that have not moved and are too near as they are parked: another rule says so, and it would be no news here. */
        boolean isTooNearParked(int first, int second, double required) {
            return before.get(first).pose().isEmpty()
                    && before.get(second).pose().isEmpty()
                    && Gap.between(parked.get(first).space(), parked.get(second).space())
                            .filter(gap -> gap.metres() < required)
                            .isPresent();
        }

        /** Each step before the way to it, so that what is wrong with a step is not said of its way. */
        static List<Shape> of(List<FoldStep> steps, List<FoldWay> ways) {
            List<Shape> shapes = new ArrayList<>();
            List<FoldedArm> parked = ways.get(0).from().arms();
            for (int i = 0; i < steps.size(); i++) {
                FoldStep step = steps.get(i);
                String name = step.onTheRoad() ? "the road" : "the step \"" + step.name() + "\"";
                List<FoldWay.FrameSpace> frame = step.structure().stream()
                        .map(p -> new FoldWay.FrameSpace(p.name(), Occupied.of(p.body())))
                        .toList();
                shapes.add(new Shape(
                        (step.onTheRoad() ? "on " : "in ") + name,
                        i + 1,
                        step.onTheRoad(),
                        step.arms(),
                        frame,
                        step.arms(),
                        parked));
                FoldWay way = ways.get(i);
                List<FoldedArm> before = way.from().arms();
                shapes.add(
                        new Shape("on the way to " + name, i + 1, false, way.arms(), way.structure(), before, parked));
            }
            return shapes;
        }
    }

    /** Two things in one shape: one arm or two, and what else is near. */
    private record Meeting(Shape shape, List<FoldedArm> arms, String other, double policyGap) {

        String label() {
            return arms.get(0).label() + " and " + other;
        }

        double required() {
            return GapSearch.nearestNanometre(policyGap
                    + arms.stream().mapToDouble(a -> a.allowance().total()).sum());
        }

        List<Term> terms() {
            List<Term> terms = new ArrayList<>();
            terms.add(Term.of("gap by policy", policyGap, Dimension.LENGTH));
            arms.forEach(a -> terms.addAll(a.allowance().terms("arm " + a.arm().id())));
            return terms;
        }
    }

    private static Finding gaps(Case subject, Stance stance, List<Shape> shapes) {
        Policy policy = subject.policy().value();
        GapSearch<Meeting> search = new GapSearch<>();
        for (Shape shape : shapes) {
            for (int i = 0; i < shape.arms().size(); i++) {
                FoldedArm arm = shape.arms().get(i);
                for (int j = i + 1; j < shape.arms().size(); j++) {
                    FoldedArm other = shape.arms().get(j);
                    Meeting met = new Meeting(
                            shape,
                            List.of(arm, other),
                            other.label(),
                            policy.armGap().value());
                    if (!shape.isTooNearParked(i, j, met.required())) {
                        search.look(met, arm.space(), other.space(), met.required());
                    }
                }
                for (FoldWay.FrameSpace part : shape.frame()) {
                    Meeting met = new Meeting(
                            shape, List.of(arm), part.name(), policy.frameGap().value());
                    search.look(met, arm.space(), part.space(), met.required());
                }
            }
        }
        Optional<GapSearch.Found<Meeting>> tightest = search.tightest();
        if (tightest.isEmpty()) {
            return Finding.notApplicable(INFO, named(stance), "There is nothing that an arm or a head could meet.");
        }
        Gap nearest = tightest.get().gap();
        Meeting worst = tightest.get().pair();
        String gap = Dimension.LENGTH.text(nearest.metres());
        String required = Dimension.LENGTH.text(worst.required());
        Finding.Builder finding = Finding.of(INFO, worst.label())
                .examined(search.examined())
                .comparison(Comparison.atLeast(nearest.metres(), worst.required(), Dimension.LENGTH))
                .terms(worst.terms())
                .field("policy:" + (worst.arms().size() == 2 ? "armGap" : "frameGap"))
                .witness(new Witness(nearest.first(), nearest.second(), gap)
                        .folded(stance.name(), worst.shape().fold()));
        String where = worst.label() + " " + worst.shape().where();
        List<GapSearch.Found<Meeting>> tooNear = search.tooNear();
        if (tooNear.isEmpty()) {
            return finding.decide("Folding to " + named(stance) + ", the tightest place is between " + where + ": "
                    + gap + " where " + required + " is required.");
        }
        latch(stance, tooNear.stream().flatMap(n -> n.pair().arms().stream())).ifPresent(finding::propose);
        return finding.decide(
                "Folding to " + named(stance) + ", between " + where + " there are only " + gap + " where " + required
                        + " is required; " + tooNear.size() + " of " + search.examined() + " pairs are too near.");
    }

    /** Holds what moves, if anything of it is loose. */
    private static Optional<LatchHeads> latch(Stance stance, Stream<FoldedArm> arms) {
        List<String> loose = arms.filter(FoldedArm::isLoose)
                .map(a -> a.arm().id())
                .distinct()
                .sorted()
                .toList();
        return loose.isEmpty() ? Optional.empty() : Optional.of(new LatchHeads(stance.name(), loose));
    }

    /** Everything that is carried on the road, each with the box about it; an arm, or a part of the frame. */
    private record Outer(List<Carried> all) {

        record Carried(String label, Optional<FoldedArm> arm, Box box) {}

        static Outer of(FoldStep road) {
            List<Carried> all = new ArrayList<>();
            for (FoldedArm arm : road.arms()) {
                arm.space().bounds().ifPresent(b -> all.add(new Carried(arm.label(), Optional.of(arm), b)));
            }
            for (Carriage.Part part : road.structure()) {
                Occupied.of(part.body())
                        .bounds()
                        .ifPresent(b -> all.add(new Carried(part.name(), Optional.empty(), b)));
            }
            return new Outer(all);
        }

        boolean isEmpty() {
            return all.isEmpty();
        }

        Carried rightmost() {
            return all.stream()
                    .min(Comparator.comparingLong(c -> c.box().y().least()))
                    .orElseThrow();
        }

        Carried leftmost() {
            return all.stream()
                    .max(Comparator.comparingLong(c -> c.box().y().most()))
                    .orElseThrow();
        }

        Carried highest() {
            return all.stream()
                    .max(Comparator.comparingLong(c -> c.box().z().most()))
                    .orElseThrow();
        }
    }

    private static Finding width(Case subject, Stance stance, Outer outer) {
        double limit = subject.policy().value().transportWidth().value();
        Outer.Carried right = outer.rightmost();
        Outer.Carried left = outer.leftmost();
        long y0 = right.box().y().least();
        long y1 = left.box().y().most();
        long width = y1 - y0;
        String text = Dimension.LENGTH.text(Micrometres.toMetres(width));
        Point3 from = new Point3(right.box().x().least(), y0, right.box().z().most());
        Finding.Builder finding = Finding.of(INFO, named(stance) + ", width")
                .examined(outer.all().size())
                .comparison(Comparison.atMost(Micrometres.toMetres(width), limit, Dimension.LENGTH))
                .term("to the right as far as " + right.label(), Micrometres.toMetres(-y0), Dimension.LENGTH)
                .term("to the left as far as " + left.label(), Micrometres.toMetres(y1), Dimension.LENGTH)
                .field("policy:transportWidth")
                .witness(new Witness(from, new Point3(from.x(), y1, from.z()), text)
                        .folded(stance.name(), road(stance)));
        String between = text + " wide, from " + right.label() + " to " + left.label();
        if (Micrometres.toMetres(width) <= limit) {
            return finding.decide("On the road the carriage is " + between + ", where " + Dimension.LENGTH.text(limit)
                    + " is allowed.");
        }
        List<FoldedArm> widest =
                Stream.of(right, left).flatMap(c -> c.arm().stream()).toList();
        latch(stance, widest.stream()).ifPresent(finding::propose);
        long over = roundedUp(width - Rounding.down(limit));
        left.arm().flatMap(a -> trim(a, 0, over)).ifPresent(finding::propose);
        right.arm().flatMap(a -> trim(a, 2, over)).ifPresent(finding::propose);
        return finding.decide("On the road the carriage is " + between + ", where only " + Dimension.LENGTH.text(limit)
                + " is allowed" + (widest.isEmpty() ? "; the frame alone is too wide." : "."));
    }

    /** Less of a head on the side that faces left, or right after two more quarter turns; none if it is tipped. */
    private static Optional<TrimHead> trim(FoldedArm arm, int more, long amount) {
        List<Stance.Turn> turns = arm.pose().map(Stance.Pose::turns).orElse(List.of());
        if (arm.station().isEmpty() || turns.stream().anyMatch(t -> t.axis() != Stance.Axis.Z)) {
            return Optional.empty();
        }
        int quarters = turns.stream().mapToInt(Stance.Turn::quarters).sum() + more;
        Side facing = List.of(Side.LEFT, Side.FRONT, Side.RIGHT, Side.REAR).get(quarters % 4);
        return arm.station().map(s -> new TrimHead(s.head().id(), s.turned() ? facing.turned() : facing, amount));
    }

    private static Finding height(Case subject, Stance stance, Outer outer) {
        double limit = subject.policy().value().transportHeight().value();
        Outer.Carried top = outer.highest();
        Box box = top.box();
        double height = Micrometres.toMetres(box.z().most());
        Point3 at = new Point3(middle(box.x()), middle(box.y()), box.z().most());
        Finding.Builder finding = Finding.of(INFO, named(stance) + ", height")
                .examined(outer.all().size())
                .comparison(Comparison.atMost(height, limit, Dimension.LENGTH))
                .term("up to the top of " + top.label(), height, Dimension.LENGTH)
                .field("policy:transportHeight")
                .witness(new Witness(at, new Point3(at.x(), at.y(), 0), Dimension.LENGTH.text(height))
                        .folded(stance.name(), road(stance)));
        if (height > limit) {
            latch(stance, top.arm().stream()).ifPresent(finding::propose);
        }
        return finding.decide(
                "On the road the carriage is " + Dimension.LENGTH.text(height) + " high, up to the top of "
                        + top.label() + ", where " + (height > limit ? "only " : "") + Dimension.LENGTH.text(limit)
                        + " is allowed.");
    }

    /** An arm over the ground in one shape. */
    private record Over(Shape shape, FoldedArm arm, Box lowest, long motion, long travel, long needed) {

        long clear() {
            return lowest.z().least() - motion - travel;
        }

        long margin() {
            return clear() - needed;
        }
    }

    private static Optional<Finding> ground(Case subject, Stance stance, List<Shape> shapes) {
        Policy policy = subject.policy().value();
        List<Over> all = new ArrayList<>();
        for (Shape shape : shapes) {
            Policy.Limit limit = shape.travels() ? policy.transportGroundGap() : policy.groundGap();
            long travel = shape.travels() ? Rounding.up(stance.suspensionTravel()) : 0;
            for (FoldedArm arm : shape.arms()) {
                Point place = arm.mount().plan();
                arm.space().boxes().stream()
                        .min(Comparator.comparingLong(b -> b.z().least()))
                        .ifPresent(low -> all.add(new Over(
                                shape,
                                arm,
                                low,
                                WorkHeight.groundMotion(subject, arm.arm(), place),
                                travel,
                                Rounding.up(limit.value()))));
            }
        }
        return all.stream().min(Comparator.comparingLong(Over::margin)).map(worst -> ground(stance, worst, all));
    }

    private static Finding ground(Stance stance, Over worst, List<Over> all) {
        double clear = Micrometres.toMetres(worst.clear());
        double needed = Micrometres.toMetres(worst.needed());
        Box low = worst.lowest();
        Point3 at = new Point3(middle(low.x()), middle(low.y()), low.z().least());
        boolean road = worst.shape().travels();
        Finding.Builder finding = Finding.of(INFO, named(stance) + ", ground")
                .examined(all.size())
                .comparison(Comparison.atLeast(clear, needed, Dimension.LENGTH))
                .term(
                        "lowest point over level ground, of " + worst.arm().label(),
                        Micrometres.toMetres(low.z().least()),
                        Dimension.LENGTH)
                .term("ground motion G", Micrometres.toMetres(worst.motion()), Dimension.LENGTH)
                .term("travel of the suspension", Micrometres.toMetres(worst.travel()), Dimension.LENGTH)
                .field(road ? "policy:transportGroundGap" : "policy:groundGap")
                .witness(new Witness(
                                at,
                                new Point3(at.x(), at.y(), Math.min(at.z(), worst.motion() + worst.travel())),
                                Dimension.LENGTH.text(clear))
                        .folded(stance.name(), worst.shape().fold()));
        String in = worst.shape().where();
        String where = Character.toUpperCase(in.charAt(0)) + in.substring(1);
        List<Over> failing = all.stream().filter(o -> o.margin() < 0).toList();
        latch(stance, failing.stream().map(Over::arm)).ifPresent(finding::propose);
        if (!failing.isEmpty()) {
            finding.propose(new RaisePoses(stance.name(), roundedUp(-worst.margin())));
        }
        return finding.decide(where + " " + worst.arm().label() + " stays " + (failing.isEmpty() ? "" : "only ")
                + Dimension.LENGTH.text(clear) + " over the ground, where " + Dimension.LENGTH.text(needed)
                + " is required; it is the lowest of all arms and steps.");
    }

    private static long roundedUp(long micrometres) {
        return -Math.floorDiv(-micrometres, STEP) * STEP;
    }

    private static long middle(Interval extent) {
        return Math.floorDiv(extent.least() + extent.most(), 2L);
    }
}
