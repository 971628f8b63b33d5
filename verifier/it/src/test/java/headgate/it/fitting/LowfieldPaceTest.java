package headgate.it.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.it.Checkout;
import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.policy.PolicyReader;
import headgate.sample.gripper.Gripper;
import headgate.testkit.LocalHead;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.replay.CaseSetting;
import headgate.verifier.replay.PlantSource;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.rules.throughput.KeepsPace;
import headgate.verifier.stand.PlannedStand;
import headgate.verifier.trial.Bounds;
import headgate.verifier.trial.Trial;
import headgate.verifier.trial.TrialPlan;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The closed form of the pace against the replay of the same case, which shares only the head's answers with it. The closed
 * form takes the shortest window for all, so it is on the low side; the made-up stands miss three crop plants of a
 * hundred, whose leaves then hide nothing.
 */
class LowfieldPaceTest {

    private static final Path FOLDER = Checkout.folder().resolve("sample-heads/lowfield/src/main/resources/lowfield");

    private static final int SEEDS = 12;

    /** By how much the shortest window of all may make the closed form less than the replay: a share of the plants. */
    private static final double LOW_SIDE = 0.02;

    @ParameterizedTest
    @ValueSource(strings = {"lettuce-45-weeding", "celeriac-60-weeding", "leek-75-weeding"})
    void theClosedFormIsTheReplaysCoverageOrALittleLess(String name) throws InvalidFileException {
        Case subject = gripperOn(name);
        CropPlan plan = subject.plan().value();
        Finding pace = new KeepsPace().check(subject).get(0);

        List<ReplayOutcome> outcomes = replay(subject, plan);

        Bounds coverage = bounds(outcomes.stream().map(ReplayOutcome::all).toList());
        double closed = pace.comparison().orElseThrow().measured().value();
        assertThat(closed).isLessThanOrEqualTo(coverage.upper()).isGreaterThan(coverage.lower() - LOW_SIDE);
        Bounds seen = bounds(outcomes.stream()
                .map(o -> new ReplayOutcome.Block(o.targets(), o.seen()))
                .toList());
        assertThat(term(pace, "seen: recall, less what leaves hide")).isBetween(seen.lower(), seen.upper());
    }

    private static List<ReplayOutcome> replay(Case subject, CropPlan plan) {
        double density = plan.weeds().orElseThrow().density();
        Trial trial = new Trial(
                CaseSetting.of(subject, 1),
                (weeds, seed) ->
                        PlantSource.of(PlannedStand.of(plan, weeds, plan.field().length(), seed)),
                new TrialPlan(plan.wanted().coverage(), 0.999, SEEDS, SEEDS, 1_000_000, 1),
                false);
        return trial.run(List.of(new Trial.Question(plan.wanted().speed(), density)))
                .orElseThrow()
                .get(0)
                .outcomes();
    }

    private static Bounds bounds(List<ReplayOutcome.Block> seeds) {
        return Bounds.ofSeeds(seeds, 0.999);
    }

    private static double term(Finding finding, String name) {
        return finding.terms().stream()
                .filter(t -> t.name().equals(name))
                .findFirst()
                .orElseThrow()
                .measure()
                .value();
    }

    private static Case gripperOn(String plan) throws InvalidFileException {
        LocalHead head = new LocalHead(new Gripper());
        return Case.ofOneHead(
                new HeadUnderTest(
                        SheetOnly.head("gripper", head.sheet()).facts(),
                        new HeadUnderTest.Run.Answering(head.sheet(), head, Optional.empty())),
                CarriageReader.read(FOLDER.resolve("carriage.json")),
                CropPlanReader.read(FOLDER.resolve(plan + ".json")),
                PolicyReader.builtIn());
    }
}
