package headgate.verifier.rules.rows;

import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.remedy.NarrowTyres;
import headgate.verifier.remedy.SetWheels;
import headgate.verifier.setup.WheelRun;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** {@code rows.wheels}: every wheel runs between two rows with room for the tyre. */
public final class WheelsBetweenRows implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "rows.wheels",
            "Every wheel runs between two rows with room for its tyre",
            "A wheel that rolls over the leaves costs the grower a whole row in every pass.",
            "Each wheel is set, within what it can be set to, where it has the most room between two rows. Twice the way from"
                    + " its middle to the nearer row, less the canopy's width, must be at least tyre width + 2 (wander + L^2 / 2R"
                    + " + gap): L is the wheel's distance from the point that is steered along the row, R the radius of the rows."
                    + " For a wheel in the middle that is the row spacing less the canopy's width, so a track that is no whole"
                    + " number of rows takes room away. The row beyond a pass, and each row if a pass spans several of the"
                    + " planter's, may stand nearer by the guess-row error. Turns on the headland are not looked at.",
            "first principles (L^2 / 2R is the sagitta of a short arc); least gap from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of());

    /** Narrower tyres than this carry no carriage, m. */
    private static final double NARROWEST = 0.05;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        List<WheelRun> runs = WheelRun.of(subject);
        if (runs.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    "the wheels",
                    "The carriage's file says nothing about its wheels: give each one's place, tyre width and distance from"
                            + " the steered point."));
        }
        List<WheelRun> failing = runs.stream().filter(r -> r.margin() < 0).toList();
        WheelRun tightest =
                runs.stream().min(Comparator.comparingLong(WheelRun::margin)).orElseThrow();
        Finding.Builder finding = finding(tightest, runs.size());
        if (failing.isEmpty()) {
            return List.of(finding.decide("Every wheel has room between two rows: "
                    + runs.stream().map(WheelsBetweenRows::place).collect(Collectors.joining(", ")) + "."));
        }
        remedies(subject, runs).forEach(finding::propose);
        return List.of(finding.witness(free(tightest))
                .decide("The " + place(tightest) + " has " + Dimension.LENGTH.text(tightest.room())
                        + " between the leaves of the rows at y = " + text(tightest.right()) + " and y = "
                        + text(tightest.left()) + ", but needs " + Dimension.LENGTH.text(tightest.required()) + "; "
                        + failing.size() + " of " + runs.size() + " wheels lack room."));
    }

    /** The free ground about the middle of a wheel, as the nearer row leaves it. */
    private static Witness free(WheelRun run) {
        long half = Math.max(0, Rounding.down(run.room() / 2));
        return new Witness(
                new Point3(run.wheel().x(), run.y() - half, 0),
                new Point3(run.wheel().x(), run.y() + half, 0),
                Dimension.LENGTH.text(run.room()));
    }

    private static Finding.Builder finding(WheelRun run, int examined) {
        Carriage.Wheel wheel = run.wheel();
        long near = run.y() - run.right() <= run.left() - run.y() ? run.right() : run.left();
        return Finding.of(INFO, "wheel " + wheel.name())
                .examined(examined)
                .comparison(Comparison.atLeast(run.room(), run.required(), Dimension.LENGTH))
                .term("tyre width", wheel.tyreWidth(), Dimension.LENGTH)
                .term("twice the rows' wander", 2 * run.wander(), Dimension.LENGTH)
                .term("twice L^2 / 2R", 2 * run.offTracking(), Dimension.LENGTH)
                .term("twice the policy's gap", 2 * run.gap(), Dimension.LENGTH)
                .term("canopy width", run.canopy(), Dimension.LENGTH)
                .term(
                        "guess-row error of the nearer row",
                        near == run.right() ? run.guessRight() : run.guessLeft(),
                        Dimension.LENGTH)
                .term("middle of the wheel from the middle between the rows", aside(run), Dimension.LENGTH)
                .field("carriage:wheels");
    }

    private static double aside(WheelRun run) {
        return Micrometres.toMetres(Math.abs(2 * run.y() - run.right() - run.left())) / 2;
    }

    private static String place(WheelRun run) {
        return "wheel " + run.wheel().name() + " at y = " + text(run.y());
    }

    private static String text(long micrometres) {
        return Dimension.LENGTH.text(Micrometres.toMetres(micrometres));
    }

    private static List<Edit> remedies(Case subject, List<WheelRun> runs) {
        Predicate<Case> holds = c -> WheelRun.of(c).stream().allMatch(r -> r.margin() >= 0);
        return List.of(setElsewhere(subject, runs), narrower(runs), Changes.otherSpacing(subject, holds)).stream()
                .flatMap(Optional::stream)
                .filter(edit -> holds.test(edit.apply(subject)))
                .toList();
    }

    /** Each wheel that lacks room where it can be set, in the middle of the rows where it is now. */
    private static Optional<Edit> setElsewhere(Case subject, List<WheelRun> runs) {
        SortedMap<String, Long> places = new TreeMap<>();
        runs.stream()
                .filter(r -> r.margin() < 0)
                .forEach(r -> places.put(r.wheel().name(), r.free(subject).y()));
        return Optional.of(new SetWheels(places));
    }

    private static Optional<Edit> narrower(List<WheelRun> runs) {
        double width = runs.stream()
                .mapToDouble(r -> r.wheel().tyreWidth() + r.room() - r.required())
                .min()
                .orElseThrow();
        return width < NARROWEST ? Optional.empty() : Optional.of(new NarrowTyres(width));
    }
}
