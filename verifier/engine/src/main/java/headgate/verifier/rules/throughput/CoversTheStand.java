package headgate.verifier.rules.throughput;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Stand;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.replay.Miss;
import headgate.verifier.replay.PlantSource;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.trial.Cell;
import headgate.verifier.trial.Standing;
import headgate.verifier.trial.Trial;
import headgate.verifier.trial.TrialPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** {@code throughput.coverage}: replayed over a stand, the heads treat as many plants as are wanted. */
public final class CoversTheStand implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "throughput.coverage",
            "Replayed over the stand, the heads treat as many plants as are wanted",
            "A closed form knows one arm and plants at random. Real plants stand in clumps, arms help and block one another,"
                    + " and what the cameras see too late is lost.",
            "The plants pass under the moving carriage event by event, with the times that the heads answer for each plant."
                    + " Coverage is seen x allowed x reached x successful over all target plants, each with its count; a"
                    + " missed plant has one reason. Crop loss is held to the plan's limit, or else the policy's. Stands made up from seeds: pass if the one-sided lower bound over seeds"
                    + " reaches what is wanted, fail if the upper bound does not, else more seeds up to a cap. One recorded"
                    + " plot: its metres of travel are drawn anew.",
            "First principles; bounds by Student's law, or by the bootstrap of Efron, Annals of Statistics 7 (1979) 1-26, and never"
                    + " nearer than Clopper and Pearson, Biometrika 26 (1934) 404-413, for as many plants",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.total", "plan.operation", "plan.work-range", "rows.every-lane-has-an-arm"));

    /** Most answers that the heads are asked for in one trial. */
    private static final long BUDGET = 400_000;

    private static final long SEED = 1;

    /** Rungs of the ladder of speeds up to the wanted one. */
    private static final int RUNGS = 10;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        Optional<Stand> stand = subject.stand();
        if (stand.isEmpty()) {
            return List.of(Finding.notApplicable(
                    INFO, "all arms", "No stand is given to replay; throughput.pace judges by a closed form."));
        }
        Optional<String> obstacle = CaseSetting.obstacle(subject);
        if (obstacle.isPresent()) {
            return List.of(Finding.notApplicable(
                    INFO, stand.get().name(), "There is nothing to replay: " + obstacle.get() + "."));
        }
        return check(subject, stand.get());
    }

    private static List<Finding> check(Case subject, Stand stand) {
        Trial trial = trial(subject, stand);
        Optional<List<Cell>> cells = trial.run(List.of(asWanted(subject)));
        if (cells.isEmpty()) {
            return List.of(Finding.undecided(INFO, stand.name(), notRun(trial)));
        }
        Cell cell = cells.get().get(0);
        if (sum(cell, ReplayOutcome::targets) == 0) {
            return List.of(Finding.undecided(
                    INFO, stand.name(), "No plant of the stand is one to be treated within the lanes."));
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(found(subject, stand, cell));
        if (sum(cell, o -> o.crop().plants()) > 0) {
            findings.add(cropLoss(subject, stand, cell));
        }
        return findings;
    }

    private static Finding cropLoss(Case subject, Stand stand, Cell cell) {
        double plants = count(cell, o -> o.crop().plants());
        double lost = count(cell, o -> o.crop().lost());
        Optional<Double> wish = subject.plan().value().wanted().cropLoss();
        double most = wish.orElse(subject.policy().value().cropLoss().value());
        return Finding.of(INFO, "the crop of " + stand.name())
                .examined(sum(cell, o -> o.crop().plants()))
                .comparison(Comparison.atMost(lost / plants, most, Dimension.SHARE))
                .field(wish.isPresent() ? "crop-plan:wanted.cropLoss" : "policy:cropLoss")
                .term("crop plants", plants, Dimension.COUNT)
                .term("lost: met within their protected radius, or taken for a weed", lost, Dimension.COUNT)
                .term(
                        "touched among their leaves only",
                        count(cell, o -> o.crop().touched()),
                        Dimension.COUNT)
                .decide("Of the crop's plants " + Dimension.SHARE.text(lost / plants) + " are lost to the heads, where "
                        + Dimension.SHARE.text(most) + " may be.");
    }

    private static Finding found(Case subject, Stand stand, Cell cell) {
        double wanted = subject.plan().value().wanted().coverage();
        long targets = sum(cell, ReplayOutcome::targets);
        Finding.Builder finding = Finding.of(INFO, stand.name())
                .examined(targets)
                .comparison(Comparison.atLeast(judged(cell), wanted, Dimension.SHARE))
                .field("crop-plan:wanted.coverage");
        terms(finding, cell);
        String said = "At " + Dimension.SPEED.text(cell.speed()) + ", "
                + Dimension.SHARE.text(cell.coverage().mean()) + " of " + targets + " target plants are treated ("
                + cell.coverage().of() + "), where " + Dimension.SHARE.text(wanted) + " are wanted";
        if (cell.standing() == Standing.UNDECIDED) {
            return finding.end(Outcome.UNDECIDED, said + ": too near to say. Give a longer stand.");
        }
        if (cell.standing() == Standing.FAILS) {
            remedies(subject, stand).forEach(finding::propose);
            return finding.decide(said + most(cell) + ".");
        }
        List<String> missing = CaseSetting.of(subject, SEED).missing();
        return missing.isEmpty()
                ? finding.decide(said + ".")
                : finding.end(
                        Outcome.CAUTION, said + ". PERFECT WHERE NOBODY SAYS: " + String.join("; ", missing) + ".");
    }

    private static void terms(Finding.Builder finding, Cell cell) {
        finding.term("speed v", cell.speed(), Dimension.SPEED)
                .term("coverage", cell.coverage().mean(), Dimension.SHARE)
                .term("one-sided lower bound", cell.coverage().lower(), Dimension.SHARE)
                .term("one-sided upper bound", cell.coverage().upper(), Dimension.SHARE)
                .term("target plants", count(cell, ReplayOutcome::targets), Dimension.COUNT)
                .term("seen", count(cell, ReplayOutcome::seen), Dimension.COUNT)
                .term("of these allowed", count(cell, ReplayOutcome::allowed), Dimension.COUNT)
                .term("of these reached", count(cell, ReplayOutcome::reached), Dimension.COUNT)
                .term("of these treated with success", count(cell, ReplayOutcome::successful), Dimension.COUNT);
        for (Miss why : Miss.values()) {
            long missed = sum(cell, o -> o.missed(why));
            if (missed > 0) {
                finding.term("missed: " + why.label(), (double) missed, Dimension.COUNT);
            }
        }
    }

    /** What decides: the lower bound, unless even the upper one does not reach what is wanted. */
    private static double judged(Cell cell) {
        return cell.standing() == Standing.FAILS
                ? cell.coverage().upper()
                : cell.coverage().lower();
    }

    /** The reason for which most plants were missed. */
    private static String most(Cell cell) {
        return Arrays.stream(Miss.values())
                .filter(why -> sum(cell, o -> o.missed(why)) > 0)
                .max(Comparator.comparingLong(why -> sum(cell, o -> o.missed(why))))
                .map(why -> "; of the missed, most for this reason: " + why.label())
                .orElse("");
    }

    private static long sum(Cell cell, ToLongFunction<ReplayOutcome> count) {
        return cell.outcomes().stream().mapToLong(count).sum();
    }

    private static double count(Cell cell, ToLongFunction<ReplayOutcome> count) {
        return (double) sum(cell, count);
    }

    private static Trial.Question asWanted(Case subject) {
        CropPlan plan = subject.plan().value();
        return new Trial.Question(plan.wanted().speed(), density(plan));
    }

    private static double density(CropPlan plan) {
        return plan.weeds().map(CropPlan.Weeds::density).orElse(0.0);
    }

    private static Trial trial(Case subject, Stand stand) {
        TrialPlan plan = TrialPlan.usual(
                subject.plan().value().wanted().coverage(),
                subject.policy().value().confidence().value(),
                BUDGET,
                1);
        return new Trial(
                CaseSetting.of(subject, SEED),
                (density, seed) -> PlantSource.of(stand.plants().of(density, seed)),
                plan,
                stand.recorded());
    }

    private static String notRun(Trial trial) {
        return trial.fault()
                .map(fault -> "The head did not answer: " + fault.sentence() + ".")
                .orElse("More than " + BUDGET + " answers of the head would be needed: replay a shorter stand.");
    }

    /** Slower, with one more arm, or sooner back from a plant; what is proposed passes here. */
    private static List<Edit> remedies(Case subject, Stand stand) {
        CropPlan plan = subject.plan().value();
        List<Edit> edits = new ArrayList<>();
        trial(subject, stand)
                .bestSpeed(
                        density(plan),
                        plan.wanted().speed() / RUNGS,
                        plan.wanted().speed())
                .flatMap(Trial.Climb::best)
                .ifPresent(speed -> edits.add(new SetSpeed(speed)));
        PaceRemedies.oneMoreArm(subject, edit -> passes(edit.apply(subject), stand))
                .ifPresent(edits::add);
        PaceRemedies.shorterAction(subject, edit -> passes(edit.apply(subject), stand))
                .ifPresent(edits::add);
        return edits;
    }

    private static boolean passes(Case changed, Stand stand) {
        if (CaseSetting.obstacle(changed).isPresent()) {
            return false;
        }
        Optional<List<Cell>> cells = trial(changed, stand).run(List.of(asWanted(changed)));
        return cells.map(c -> c.get(0).standing()).equals(Optional.of(Standing.PASSES));
    }
}
