package headgate.verifier.rules;

import headgate.verifier.check.Rule;
import headgate.verifier.rules.behaviour.Accepts;
import headgate.verifier.rules.behaviour.ActionTimeHolds;
import headgate.verifier.rules.behaviour.Aims;
import headgate.verifier.rules.behaviour.Answers;
import headgate.verifier.rules.behaviour.ContactLabels;
import headgate.verifier.rules.behaviour.DeclaredDepth;
import headgate.verifier.rules.behaviour.GoesWithGround;
import headgate.verifier.rules.behaviour.OneKind;
import headgate.verifier.rules.behaviour.Pure;
import headgate.verifier.rules.behaviour.ReturnsReady;
import headgate.verifier.rules.behaviour.StaysInReach;
import headgate.verifier.rules.behaviour.Total;
import headgate.verifier.rules.clearance.ArmToArm;
import headgate.verifier.rules.clearance.ArmToFrame;
import headgate.verifier.rules.clearance.ArmToWheels;
import headgate.verifier.rules.clearance.DropZone;
import headgate.verifier.rules.clearance.HeadToOwnArm;
import headgate.verifier.rules.clearance.LiftedClears;
import headgate.verifier.rules.clearance.SensorView;
import headgate.verifier.rules.clearance.TransportClears;
import headgate.verifier.rules.clearance.WorkHeightExists;
import headgate.verifier.rules.mount.BoltsHold;
import headgate.verifier.rules.mount.ConnectorsFit;
import headgate.verifier.rules.mount.MassCarried;
import headgate.verifier.rules.mount.PlateFits;
import headgate.verifier.rules.mount.PowerSuffices;
import headgate.verifier.rules.mount.StaticMoment;
import headgate.verifier.rules.pack.Manifest;
import headgate.verifier.rules.pack.SelfContained;
import headgate.verifier.rules.plan.OperationMatches;
import headgate.verifier.rules.plan.WorkRangeHolds;
import headgate.verifier.rules.rows.EdgePassesClear;
import headgate.verifier.rules.rows.EveryLaneHasAnArm;
import headgate.verifier.rules.rows.PlanterPasses;
import headgate.verifier.rules.rows.StripCoversLane;
import headgate.verifier.rules.rows.WheelsBetweenRows;
import headgate.verifier.rules.safety.HazardsGuarded;
import headgate.verifier.rules.safety.LimitsNotLoosened;
import headgate.verifier.rules.safety.StandingCaution;
import headgate.verifier.rules.sheet.Connected;
import headgate.verifier.rules.sheet.Plausible;
import headgate.verifier.rules.throughput.AreaRate;
import headgate.verifier.rules.throughput.CoversTheStand;
import headgate.verifier.rules.throughput.KeepsPace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All rules, in the order in which they are run: a rule stands after those that it needs. One list a family. */
public final class RuleBook {

    /** The version of the rule book, raised whenever a rule is added or decides otherwise. */
    public static final String VERSION = "0.1.0";

    private static final List<Rule> PACKAGE = List.of(new Manifest(), new SelfContained());

    private static final List<Rule> BEHAVIOUR = List.of(
            new Answers(),
            new OneKind(),
            new Total(),
            new Accepts(),
            new Pure(),
            new ActionTimeHolds(),
            new StaysInReach(),
            new Aims(),
            new GoesWithGround(),
            new ContactLabels(),
            new ReturnsReady(),
            new DeclaredDepth());

    private static final List<Rule> SHEET = List.of(new Connected(), new Plausible());

    private static final List<Rule> PLAN = List.of(new OperationMatches(), new WorkRangeHolds());

    private static final List<Rule> MOUNT = List.of(
            new PlateFits(),
            new ConnectorsFit(),
            new MassCarried(),
            new StaticMoment(),
            new BoltsHold(),
            new PowerSuffices());

    private static final List<Rule> ROWS = List.of(
            new EveryLaneHasAnArm(),
            new StripCoversLane(),
            new WheelsBetweenRows(),
            new PlanterPasses(),
            new EdgePassesClear());

    private static final List<Rule> CLEARANCE = List.of(
            new WorkHeightExists(),
            new ArmToArm(),
            new ArmToFrame(),
            new ArmToWheels(),
            new HeadToOwnArm(),
            new LiftedClears(),
            new TransportClears(),
            new SensorView(),
            new DropZone());

    private static final List<Rule> THROUGHPUT = List.of(new KeepsPace(), new CoversTheStand(), new AreaRate());

    private static final List<Rule> SAFETY =
            List.of(new HazardsGuarded(), new LimitsNotLoosened(), new StandingCaution());

    private static final List<Rule> ALL = Stream.of(
                    PACKAGE, BEHAVIOUR, SHEET, PLAN, MOUNT, ROWS, CLEARANCE, THROUGHPUT, SAFETY)
            .flatMap(List::stream)
            .toList();

    private RuleBook() {}

    /** {@return every rule, in the order in which they are run} */
    public static List<Rule> all() {
        return ALL;
    }

    /**
     * Finds a rule.
     *
     * @param id its id
     * @return the rule, or empty if there is none of that id
     */
    public static Optional<Rule> find(String id) {
        return ALL.stream().filter(r -> r.info().id().equals(id)).findFirst();
    }
}
