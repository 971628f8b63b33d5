package headgate.verifier.behaviour;

import headgate.api.answer.Engagement;
import headgate.api.shape.Interval;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Range;
import headgate.api.sheet.WorkRange;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.TaskLattice;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The traits of a continuous head, looked for in its answers. */
public final class RowBehaviour {

    /** Gaps to the crop plants that are asked, m: from within the canopy to as good as none. */
    private static final double[] GAPS = {0.0, 0.05, 0.15, 0.40, 2.0};

    private static final double WIDEST_CANOPY = 0.60;

    private RowBehaviour() {}

    /**
     * Asks a head at every corner of its work range and at a sequence of tasks between, and looks for every trait.
     *
     * @param sheet what it says of itself
     * @param head where to ask
     * @param again another instance, asked the same last first; it must not remember what the first one said
     * @param setting where it is probed; its heights are not used
     * @return one tally a trait
     */
    public static List<Tally> examine(HeadSheet sheet, HeadAnswers head, HeadAnswers again, ProbeSetting setting) {
        List<LatticeRowTask> tasks = tasks(sheet, setting);
        List<RowAnswer> answers = head.engage(tasks);
        List<Violation> untold = new ArrayList<>();
        List<Violation> outside = new ArrayList<>();
        List<Violation> depths = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        long engaged = 0;
        for (int i = 0; i < tasks.size(); i++) {
            LatticeRowTask task = tasks.get(i);
            if (answers.get(i) instanceof RowAnswer.Failed failed) {
                untold.add(broken(Trait.TOTAL, task, failed.fault().sentence()));
                continue;
            }
            Engagement engagement = ((RowAnswer.Answered) answers.get(i)).engagement();
            if (engagement.declined().isPresent()) {
                refusals.add(engagement.declined().orElseThrow());
                continue;
            }
            engaged++;
            reach(sheet, task, engagement).ifPresent(outside::add);
            depth(sheet, task, engagement).ifPresent(depths::add);
        }
        List<Violation> never = engaged > 0 || refusals.isEmpty()
                ? List.of()
                : List.of(new Violation(
                        Trait.ACCEPTS,
                        Optional.empty(),
                        Optional.empty(),
                        0,
                        1,
                        "every task is refused, first because \"" + refusals.get(0) + "\""));
        return List.of(
                Tally.of(Trait.TOTAL, tasks.size(), untold),
                Tally.of(Trait.ACCEPTS, tasks.size(), never),
                Tally.of(Trait.IN_REACH, engaged, outside),
                Tally.of(Trait.DECLARED_DEPTH, engaged, depths),
                purity(tasks, answers, again));
    }

    /**
     * Tells another instance what {@link #examine} will ask it.
     *
     * @param sheet what the head says of itself
     * @param again the other instance
     * @param setting where it is probed; its heights are not used
     */
    public static void announcePurity(HeadSheet sheet, HeadAnswers again, ProbeSetting setting) {
        again.willEngage(backwards(tasks(sheet, setting)));
    }

    private static List<LatticeRowTask> backwards(List<LatticeRowTask> tasks) {
        List<LatticeRowTask> backwards = new ArrayList<>(tasks);
        Collections.reverse(backwards);
        return backwards;
    }

    private static Tally purity(List<LatticeRowTask> tasks, List<RowAnswer> answers, HeadAnswers again) {
        List<RowAnswer> second = new ArrayList<>(again.engage(backwards(tasks)));
        Collections.reverse(second);
        List<Violation> violations = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            if (!Alike.test(answers.get(i), second.get(i))) {
                violations.add(broken(
                        Trait.PURE,
                        tasks.get(i),
                        "the first answer was " + answers.get(i) + ", the second " + second.get(i)));
            }
        }
        return Tally.of(Trait.PURE, tasks.size(), violations);
    }

    private static Optional<Violation> reach(HeadSheet sheet, LatticeRowTask task, Engagement engagement) {
        Interval x = engagement.engaged().orElseThrow().xExtent();
        Interval y = engagement.engaged().orElseThrow().yExtent();
        Interval reachX = Path.outline(sheet).xExtent();
        Interval reachY = Path.outline(sheet).yExtent();
        boolean inside = reachX.contains(x.least())
                && reachX.contains(x.most())
                && reachY.contains(y.least())
                && reachY.contains(y.most());
        return inside
                ? Optional.empty()
                : Optional.of(broken(
                        Trait.IN_REACH,
                        task,
                        "the engaged ground, x " + x + " and y " + y + ", leaves the reach, x " + reachX + " and y "
                                + reachY));
    }

    private static Optional<Violation> depth(HeadSheet sheet, LatticeRowTask task, Engagement engagement) {
        Range declared = sheet.workRange().depth();
        return declared.contains(engagement.depth())
                ? Optional.empty()
                : Optional.of(broken(
                        Trait.DECLARED_DEPTH,
                        task,
                        "the depth is " + Violation.mm(engagement.depth()) + ", outside the sheet's "
                                + Violation.mm(declared.least()) + " to " + Violation.mm(declared.most())));
    }

    private static Violation broken(Trait trait, LatticeRowTask task, String what) {
        return new Violation(
                trait, Optional.empty(), Optional.empty(), Double.NaN, Double.NaN, what + "; task: " + say(task));
    }

    private static String say(LatticeRowTask task) {
        return task.soil() + " soil, canopy " + Violation.mm(task.canopyHeight()) + " high and "
                + Violation.mm(task.canopyWidth()) + " wide, crop plants " + Violation.mm(task.gapBefore())
                + " behind and " + Violation.mm(task.gapAfter()) + " ahead, ground moving at "
                + Violation.metresPerSecond(task.groundVelocity());
    }

    private static List<LatticeRowTask> tasks(HeadSheet sheet, ProbeSetting setting) {
        WorkRange range = sheet.workRange();
        List<SoilClass> soils = List.copyOf(range.soils());
        double highest = Math.max(range.plantHeight().most(), (double) setting.canopy() / Micrometres.PER_METRE);
        List<LatticeRowTask> tasks = new ArrayList<>();
        for (Facing facing : setting.facings()) {
            for (SoilClass soil : soils) {
                for (int corner = 0; corner < 8; corner++) {
                    for (double gap : GAPS) {
                        tasks.add(task(
                                facing,
                                soil,
                                range,
                                corner & 1,
                                (corner >> 1 & 1) * highest,
                                (corner >> 2) * WIDEST_CANOPY,
                                gap,
                                gap));
                    }
                }
            }
            for (int i = 1; i <= setting.sequence(); i++) {
                tasks.add(task(
                        facing,
                        soils.get(i % soils.size()),
                        range,
                        Halton.at(i, 0),
                        Halton.at(i, 1) * highest,
                        Halton.at(i, 2) * WIDEST_CANOPY,
                        Halton.at(i, 3),
                        Halton.at(i, 4)));
            }
        }
        return tasks;
    }

    private static LatticeRowTask task(
            Facing facing,
            SoilClass soil,
            WorkRange range,
            double speedShare,
            double canopyHeight,
            double canopyWidth,
            double before,
            double after) {
        double speed = ProbeTasks.on(TaskLattice.SPEED, range.groundSpeed(), speedShare);
        return LatticeRowTask.nearest(facing.ground(speed), soil, canopyHeight, canopyWidth, before, after);
    }
}
