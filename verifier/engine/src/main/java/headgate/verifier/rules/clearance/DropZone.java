package headgate.verifier.rules.clearance;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.Operation;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.remedy.DropChange;
import headgate.verifier.remedy.MoveDrops;
import headgate.verifier.remedy.NarrowDrops;
import headgate.verifier.remedy.Side;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.RowLine;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** {@code clearance.drop-zone}: what a head drops falls clear of the crop and of other heads. */
public final class DropZone implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.drop-zone",
            "What heads drop falls outside the protected ground of the crop and clear of other heads",
            "A weed that is dropped on a lettuce, or into the fingers of the next head, was better left where it stood.",
            "A sheet says where its head lets things fall, and how high they lie then. The carriage goes on, so what has"
                    + " fallen goes back with the ground: seen from the carriage it sweeps a strip to the rear. Beside every"
                    + " row, also of the next passes, the strip keeps the protected radius, how far the row may be off and the"
                    + " arm's own terms. The column in which things fall, from the highest that the head can hold them, and the"
                    + " strip, as high as they lie plus the ground's motion G, keep both arms' own terms to every other arm at"
                    + " work, lifting, parked or waiting. Not looked at are the head's own tool, which works where it dropped"
                    + " things, and wheels, which roll over what lies there. A head that pulls weeds must say where it lets them"
                    + " fall; of any other that says nothing it is taken that it drops nothing.",
            "first principles",
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
        Setup setup = Setup.of(subject);
        double k = subject.policy().value().coverageFactor().value();
        List<Fall> falls =
                setup.stations().stream().flatMap(s -> Fall.of(s, k).stream()).toList();
        List<Finding> findings = new ArrayList<>();
        for (HeadUnderTest head : silent(setup)) {
            findings.add(Finding.undecided(
                    INFO,
                    head.label(),
                    "The sheet of " + head.label()
                            + " says that it pulls weeds, but not where it lets them fall: say so with"
                            + " \"drops\", or with no drops if it keeps them or leaves them where they stood."));
        }
        if (falls.isEmpty()) {
            if (findings.isEmpty()) {
                findings.add(
                        Finding.notApplicable(INFO, "all arms", "No head at work drops anything: " + why(setup) + "."));
            }
            return findings;
        }
        List<Beside> beside = beside(subject, falls);
        GapSearch<Meeting> met = meetings(setup, falls, k);
        List<Edit> changes = changes(beside, met);
        findings.add(besideRows(subject, beside, changes));
        met.tightest().ifPresent(t -> findings.add(clearOfArms(t, met, changes)));
        return findings;
    }

    /** Heads at work that pull weeds and do not say what becomes of them. */
    private static List<HeadUnderTest> silent(Setup setup) {
        return setup.stations().stream()
                .filter(s ->
                        s.sheet().drops().isEmpty() && s.sheet().operation().equals(Operation.PULL_WEEDS))
                .map(Station::head)
                .distinct()
                .toList();
    }

    private static String why(Setup setup) {
        return setup.stations().stream()
                .map(s -> s.head().label()
                        + (s.sheet().drops().isPresent()
                                ? " says so"
                                : " does " + s.sheet().operation() + " and names no drop"))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** A strip beside a row. */
    private record Beside(Fall fall, RowLine row, long apart, long needed) {

        long margin() {
            return apart - needed;
        }

        /** The side of the row on which most of what falls lies. */
        Side side() {
            Interval y = fall.outline().yExtent();
            return y.least() + y.most() >= 2 * row.y() ? Side.LEFT : Side.RIGHT;
        }

        /** How far it must go to that side. */
        long missing() {
            Interval y = fall.outline().yExtent();
            return needed + (side() == Side.LEFT ? row.y() - y.least() : y.most() - row.y());
        }
    }

    private static List<Beside> beside(Case subject, List<Fall> falls) {
        CropPlan plan = subject.plan().value();
        List<Beside> all = new ArrayList<>();
        for (Fall fall : falls) {
            Interval y = fall.outline().yExtent();
            for (RowLine row : RowLine.near(plan.rows(), y)) {
                long needed = Rounding.up(plan.crop().protectedRadius()
                        + row.mayBeOff()
                        + fall.allowance().total());
                all.add(new Beside(fall, row, y.gapTo(Interval.at(row.y())), needed));
            }
        }
        return all;
    }

    private static Finding besideRows(Case subject, List<Beside> all, List<Edit> changes) {
        Beside worst =
                all.stream().min(Comparator.comparingLong(Beside::margin)).orElseThrow();
        Fall fall = worst.fall();
        Interval y = fall.outline().yExtent();
        double apart = Micrometres.toMetres(worst.apart());
        double needed = Micrometres.toMetres(worst.needed());
        double radius = subject.plan().value().crop().protectedRadius();
        long x = fall.outline().xExtent().least();
        long near = Math.max(y.least(), Math.min(y.most(), worst.row().y()));
        Finding.Builder finding = Finding.of(INFO, fall.label())
                .examined(all.size())
                .comparison(Comparison.atLeast(apart, needed, Dimension.LENGTH))
                .term("protected radius", radius, Dimension.LENGTH)
                .term("how far the row may be off", worst.row().mayBeOff(), Dimension.LENGTH)
                .terms(fall.allowance().terms("arm " + fall.station().arm().id()))
                .field("crop-plan:crop.protectedRadius")
                .witness(new Witness(
                        new Point3(x, near, 0), new Point3(x, worst.row().y(), 0), text(apart)));
        if (worst.margin() < 0) {
            changes.forEach(finding::propose);
        }
        return finding.decide("Nearest of all to a row, " + fall.label() + " falls "
                + (worst.margin() < 0 ? "only " : "")
                + text(apart) + " beside the row at y = "
                + Approach.text(worst.row().y()) + ", where " + Dimension.LENGTH.text(needed) + " is required.");
    }

    /** Rounded down, so that what lacks a micrometre does not look as if it held. */
    private static String text(double apart) {
        return Dimension.LENGTH.text(apart, RoundingMode.FLOOR);
    }

    /** Something that falls, and an arm that it may meet. */
    private record Meeting(Fall fall, Occupied space, ArmStance other) {

        double required() {
            return GapSearch.nearestNanometre(
                    fall.allowance().total() + other.allowance().total());
        }
    }

    private static GapSearch<Meeting> meetings(Setup setup, List<Fall> falls, double k) {
        List<ArmStance> stances =
                ArmStance.all(setup, k).stream().flatMap(List::stream).toList();
        long rear = stances.stream()
                .flatMap(s -> s.space().bounds().stream())
                .mapToLong(b -> b.x().least())
                .min()
                .orElse(0);
        GapSearch<Meeting> search = new GapSearch<>();
        for (Fall fall : falls) {
            Occupied space = fall.space(rear);
            for (ArmStance other : stances) {
                if (!other.arm().id().equals(fall.station().arm().id())) {
                    Meeting met = new Meeting(fall, space, other);
                    search.look(met, space, other.space(), met.required());
                }
            }
        }
        return search;
    }

    private static Finding clearOfArms(GapSearch.Found<Meeting> worst, GapSearch<Meeting> all, List<Edit> changes) {
        Fall fall = worst.pair().fall();
        ArmStance other = worst.pair().other();
        String gap = text(worst.gap().metres());
        Finding.Builder finding = Finding.of(INFO, fall.label() + " and " + other.label())
                .examined(all.examined())
                .comparison(Comparison.atLeast(worst.gap().metres(), worst.required(), Dimension.LENGTH))
                .terms(fall.allowance().terms("arm " + fall.station().arm().id()))
                .terms(other.allowance().terms("arm " + other.arm().id()))
                .witness(new Witness(worst.gap().first(), worst.gap().second(), gap));
        if (worst.margin() < 0) {
            changes.forEach(finding::propose);
        }
        return finding.decide("Nearest of all to an arm, between " + fall.label() + ", swept back with the ground, and "
                + other.label() + " there " + (worst.margin() < 0 ? "are only " : "are ") + gap + " where "
                + Dimension.LENGTH.text(worst.required()) + " is required.");
    }

    /** The drops, each with what it must keep off on the two sides of the carriage. */
    private static List<Edit> changes(List<Beside> beside, GapSearch<Meeting> met) {
        Map<DropSide, DropChange> away = new LinkedHashMap<>();
        for (Beside b : beside) {
            if (b.margin() < 0) {
                add(away, b.fall(), b.side(), b.missing());
            }
        }
        for (GapSearch.Found<Meeting> m : met.tooNear()) {
            Interval y = m.pair().fall().outline().yExtent();
            boolean left = y.least() + y.most() >= 2 * m.pair().other().mount().y();
            Occupied falls = m.pair().space();
            Occupied arm = m.pair().other().space();
            long needed = Math.max(1, Rounding.up(m.required()));
            ForbiddenOffsets forbidden =
                    left ? ForbiddenOffsets.alongY(arm, falls, needed) : ForbiddenOffsets.alongY(falls, arm, needed);
            add(away, m.pair().fall(), left ? Side.LEFT : Side.RIGHT, forbidden.leastPitch());
        }
        List<Edit> edits = new ArrayList<>();
        List<DropChange> moves = List.copyOf(away.values());
        boolean opposed = moves.stream()
                .anyMatch(c -> away.containsKey(
                        new DropSide(c.headId(), c.number(), c.side().turned())));
        if (!moves.isEmpty() && !opposed) {
            edits.add(new MoveDrops(moves));
        }
        // What must go to the left falls no more at its right-hand end.
        if (!moves.isEmpty()) {
            edits.add(new NarrowDrops(moves.stream()
                    .map(c -> new DropChange(c.headId(), c.number(), c.side().turned(), c.amount()))
                    .toList()));
        }
        return edits;
    }

    private record DropSide(String head, int number, Side side) {}

    private static void add(Map<DropSide, DropChange> away, Fall fall, Side to, long missing) {
        long amount = -Math.floorDiv(-missing, STEP) * STEP;
        if (amount > 0) {
            DropChange change = fall.change(to, amount);
            away.merge(
                    new DropSide(change.headId(), change.number(), change.side()),
                    change,
                    (p, q) -> p.amount() >= q.amount() ? p : q);
        }
    }
}
