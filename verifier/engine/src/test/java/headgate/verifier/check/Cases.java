package headgate.verifier.check;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Accuracy;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Breakaway;
import headgate.api.sheet.Connector;
import headgate.api.sheet.Figure;
import headgate.api.sheet.Forces;
import headgate.api.sheet.Hazard;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.MassPoint;
import headgate.api.sheet.PlateDesignation;
import headgate.api.sheet.Posture;
import headgate.api.sheet.PowerDraw;
import headgate.api.sheet.Range;
import headgate.api.sheet.Reach;
import headgate.api.sheet.Supply;
import headgate.api.sheet.WorkRange;
import headgate.api.vocabulary.ConnectorKind;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import headgate.api.vocabulary.SoilClass;
import headgate.api.vocabulary.SupplyKind;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.Stance;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.Loaded;
import headgate.runtime.pack.ApiRange;
import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.PackageProblem;
import headgate.runtime.pack.Version;
import headgate.runtime.policy.Policy;
import headgate.runtime.policy.PolicyReader;
import headgate.runtime.task.LatticeSpotTask;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Builds cases for tests. The figures are invented so that sums can be done by hand; a test changes those that it is
 * about. As it stands, each case fits by every figure that is set here.
 *
 * <p>Four rows 0.5 m apart; arms a1 (y = -0.75 m) and a3 (0.25 m) on a front beam at x = 0, a2 (-0.25 m) and a4 (0.75 m)
 * on a rear beam at x = -1.2 m. The mounts shift by 0.25 m either way and lift from 0.35 to 0.95 m. Ground moves by 20 mm.
 * On the road all arms stay lifted where they work. A beam of the frame is 0.25 m over the arms when they are lifted; the tyres are 0.7 m high.
 * The head's reach is x 0.1 to 0.4, y -0.1 to 0.1, z -0.6 to -0.2 m; its material x -0.05 to 0.45, y -0.15 to 0.15 m.
 * One action takes 1.5 s: 0.5 s to the plant, 0.5 s in the soil, 0.5 s back.
 */
public final class Cases {

    /** Time of approach, soil and return of the default action, s. */
    public static final double PHASE_TIME = 0.5;

    /** How far over the ground the tool comes over the plant, m. */
    private static final double OVER_GROUND = 0.01;

    private static final Outline TREATED = Outline.insideDisc(new Point(0, 0), 0.02, 8);

    private UnaryOperator<PackageFacts> facts = UnaryOperator.identity();
    private UnaryOperator<HeadSheet.Builder> sheet = UnaryOperator.identity();
    private UnaryOperator<Carriage> carriage = UnaryOperator.identity();
    private UnaryOperator<CropPlan> plan = UnaryOperator.identity();
    private UnaryOperator<Policy> policy = UnaryOperator.identity();
    private @Nullable Function<LatticeSpotTask, SpotAnswer> answer;
    private @Nullable Function<HeadSheet, HeadUnderTest.Run> run;
    private boolean turned;
    private final boolean planting;

    private Cases(boolean planting) {
        this.planting = planting;
    }

    /** {@return a head that pulls weeds, on the carriage above} */
    public static Cases weeding() {
        return new Cases(false);
    }

    /** {@return a head that sets plugs, on the carriage above} */
    public static Cases planting() {
        return new Cases(true);
    }

    /**
     * Changes what the package says.
     *
     * @param change the change
     * @return this
     */
    public Cases facts(UnaryOperator<PackageFacts> change) {
        this.facts = change;
        return this;
    }

    /**
     * Changes the sheet.
     *
     * @param change the change
     * @return this
     */
    public Cases sheet(UnaryOperator<HeadSheet.Builder> change) {
        UnaryOperator<HeadSheet.Builder> before = this.sheet;
        this.sheet = b -> change.apply(before.apply(b));
        return this;
    }

    /**
     * Changes how the head acts.
     *
     * @param act a task in, an action out
     * @return this
     */
    public Cases act(Function<LatticeSpotTask, Action> act) {
        return answer(task -> new SpotAnswer.Answered(act.apply(task)));
    }

    /**
     * Changes how the head answers.
     *
     * @param act a task in, an answer out
     * @return this
     */
    public Cases answer(Function<LatticeSpotTask, SpotAnswer> act) {
        this.answer = act;
        return this;
    }

    /**
     * Says what came of running the head.
     *
     * @param outcome what came of it
     * @return this
     */
    public Cases run(HeadUnderTest.Run outcome) {
        this.run = ignored -> outcome;
        return this;
    }

    /**
     * Says what came of running the head, given its sheet.
     *
     * @param outcome the sheet in, what came of it out
     * @return this
     */
    public Cases run(Function<HeadSheet, HeadUnderTest.Run> outcome) {
        this.run = outcome;
        return this;
    }

    /**
     * Fits every head turned by 180 degrees.
     *
     * @return this
     */
    public Cases turned() {
        this.turned = true;
        return this;
    }

    /**
     * Changes the carriage.
     *
     * @param change the change
     * @return this
     */
    public Cases carriage(UnaryOperator<Carriage> change) {
        UnaryOperator<Carriage> before = this.carriage;
        this.carriage = c -> change.apply(before.apply(c));
        return this;
    }

    /**
     * Changes every arm.
     *
     * @param change the change
     * @return this
     */
    public Cases arms(UnaryOperator<Arm> change) {
        return carriage(c -> new Carriage(
                c.name(),
                c.serial(),
                c.beams(),
                c.arms().stream().map(change).toList(),
                c.structure(),
                c.ground(),
                c.stopping(),
                c.turning()));
    }

    /**
     * Changes what every arm can carry.
     *
     * @param mass largest mass, kg
     * @param momentX largest static moment about x, N m
     * @param momentY largest static moment about y, N m
     * @param momentZ largest moment about z, N m
     * @return this
     */
    public Cases payload(double mass, double momentX, double momentY, double momentZ) {
        return arms(a -> new Arm(
                a.id(),
                a.beam(),
                a.shift(),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                a.tolerance(),
                new Arm.Payload(mass, momentX, momentY, momentZ),
                a.plate(),
                a.connectors(),
                a.supply(),
                a.body()));
    }

    /**
     * Changes what every arm offers at its mount.
     *
     * @param plate the plate
     * @param connectors the connectors
     * @param supply the electric power
     * @return this
     */
    public Cases mount(PlateDesignation plate, List<Connector> connectors, Arm.PowerSupply supply) {
        return arms(a -> new Arm(
                a.id(),
                a.beam(),
                a.shift(),
                a.lift(),
                a.shiftMotion(),
                a.liftMotion(),
                a.tolerance(),
                a.payload(),
                plate,
                connectors,
                supply,
                a.body()));
    }

    /**
     * Changes how the ground moves under the arms.
     *
     * @param roll roll of the frame, rad
     * @param pitch pitch of the frame, rad
     * @param wheelSink how far the wheels sink, m
     * @return this
     */
    public Cases ground(double roll, double pitch, double wheelSink) {
        return carriage(c -> new Carriage(
                c.name(),
                c.serial(),
                c.beams(),
                c.arms(),
                c.structure(),
                new Carriage.GroundMotion(roll, pitch, wheelSink),
                c.stopping(),
                c.turning()));
    }

    /**
     * Changes what a turn costs.
     *
     * @param turnTime one turn, s
     * @param liftTime lifting and lowering besides, s
     * @return this
     */
    public Cases turning(double turnTime, double liftTime) {
        return carriage(c -> new Carriage(
                c.name(),
                c.serial(),
                c.beams(),
                c.arms(),
                c.structure(),
                c.ground(),
                c.stopping(),
                new Carriage.Turning(turnTime, liftTime)));
    }

    /**
     * Changes the crop plan.
     *
     * @param change the change
     * @return this
     */
    public Cases plan(UnaryOperator<CropPlan> change) {
        UnaryOperator<CropPlan> before = this.plan;
        this.plan = p -> change.apply(before.apply(p));
        return this;
    }

    /**
     * Changes what is wanted.
     *
     * @param operation the operation
     * @param speed the speed, m/s
     * @param coverage the coverage, 0 to 1
     * @param areaRate the area rate, m²/s, or empty
     * @return this
     */
    public Cases wanted(Operation operation, double speed, double coverage, Optional<Double> areaRate) {
        return plan(p -> new CropPlan(
                p.name(),
                p.rows(),
                p.crop(),
                p.soil(),
                p.weeds(),
                p.plugs(),
                new CropPlan.Wanted(operation, speed, coverage, areaRate),
                p.field()));
    }

    /**
     * Changes the wanted speed.
     *
     * @param speed the speed, m/s
     * @return this
     */
    public Cases speed(double speed) {
        return plan(p -> new CropPlan(
                p.name(),
                p.rows(),
                p.crop(),
                p.soil(),
                p.weeds(),
                p.plugs(),
                new CropPlan.Wanted(
                        p.wanted().operation(),
                        speed,
                        p.wanted().coverage(),
                        p.wanted().areaRate()),
                p.field()));
    }

    /**
     * Changes the weeds.
     *
     * @param weeds the weeds, or empty
     * @return this
     */
    public Cases weeds(Optional<CropPlan.Weeds> weeds) {
        return plan(p -> new CropPlan(p.name(), p.rows(), p.crop(), p.soil(), weeds, p.plugs(), p.wanted(), p.field()));
    }

    /**
     * Changes how many weeds there are, and how well they are seen.
     *
     * @param density weeds per square metre
     * @param bandWidth the band, m
     * @param recall the share that is found, or empty
     * @param falseAlarms things taken for a weed, per square metre, or empty
     * @return this
     */
    public Cases weeds(double density, double bandWidth, Optional<Double> recall, Optional<Double> falseAlarms) {
        return plan(p -> new CropPlan(
                p.name(),
                p.rows(),
                p.crop(),
                p.soil(),
                p.weeds()
                        .map(w -> new CropPlan.Weeds(
                                density,
                                bandWidth,
                                w.classes(),
                                w.stemLeast(),
                                w.stemMost(),
                                w.heightLeast(),
                                w.heightMost(),
                                recall,
                                falseAlarms,
                                w.clumps(),
                                w.sizes(),
                                w.cropTaken(),
                                w.success())),
                p.plugs(),
                p.wanted(),
                p.field()));
    }

    /**
     * Changes what becomes of treated weeds.
     *
     * @param success by class
     * @return this
     */
    public Cases success(CropPlan.Success... success) {
        return plan(p -> p.withWeeds(p.weeds()
                .map(w -> new CropPlan.Weeds(
                        w.density(),
                        w.bandWidth(),
                        w.classes(),
                        w.stemLeast(),
                        w.stemMost(),
                        w.heightLeast(),
                        w.heightMost(),
                        w.recall(),
                        w.falseAlarms(),
                        w.clumps(),
                        w.sizes(),
                        w.cropTaken(),
                        List.of(success)))));
    }

    /**
     * Changes the plugs.
     *
     * @param plugs the plugs, or empty
     * @return this
     */
    public Cases plugs(Optional<CropPlan.Plugs> plugs) {
        return plan(p -> new CropPlan(p.name(), p.rows(), p.crop(), p.soil(), p.weeds(), plugs, p.wanted(), p.field()));
    }

    /**
     * Changes the rows.
     *
     * @param rows the rows
     * @return this
     */
    public Cases rows(CropPlan.Rows rows) {
        return plan(p -> new CropPlan(p.name(), rows, p.crop(), p.soil(), p.weeds(), p.plugs(), p.wanted(), p.field()));
    }

    /**
     * Changes the crop's plants.
     *
     * @param crop the plants
     * @return this
     */
    public Cases crop(CropPlan.Crop crop) {
        return plan(p -> new CropPlan(p.name(), p.rows(), crop, p.soil(), p.weeds(), p.plugs(), p.wanted(), p.field()));
    }

    /**
     * Changes the soil.
     *
     * @param soil the soil
     * @return this
     */
    public Cases soil(CropPlan.Soil soil) {
        return plan(p -> new CropPlan(p.name(), p.rows(), p.crop(), soil, p.weeds(), p.plugs(), p.wanted(), p.field()));
    }

    /**
     * Changes the field.
     *
     * @param field the field
     * @return this
     */
    public Cases field(CropPlan.Field field) {
        return plan(p -> new CropPlan(p.name(), p.rows(), p.crop(), p.soil(), p.weeds(), p.plugs(), p.wanted(), field));
    }

    /**
     * Changes the policy.
     *
     * @param change the change
     * @return this
     */
    public Cases policy(UnaryOperator<Policy> change) {
        this.policy = change;
        return this;
    }

    /** {@return the case} */
    public Case build() {
        HeadUnderTest head = head();
        Loaded<Carriage> onCarriage = loaded(carriage.apply(carriage()), "carriage.json");
        List<Case.Mounting> mountings = onCarriage.value().arms().stream()
                .map(a -> new Case.Mounting(a.id(), head, turned))
                .toList();
        return new Case(
                onCarriage,
                loaded(plan.apply(planting ? plantingPlan() : weedingPlan()), "crop-plan.json"),
                loaded(policy.apply(policy()), "policy.json"),
                mountings);
    }

    /** {@return the head alone} */
    public HeadUnderTest head() {
        HeadSheet made = sheet.apply(planting ? planterSheet() : weederSheet()).build();
        Function<LatticeSpotTask, SpotAnswer> answers =
                answer != null ? answer : task -> new SpotAnswer.Answered(action(made, task, PHASE_TIME));
        HeadUnderTest.Run outcome = run != null ? run.apply(made) : answering(FakeHead.spot(made, answers));
        return new HeadUnderTest(facts.apply(facts()), outcome);
    }

    /**
     * A head that answers, and whose other instance is asked in the same way.
     *
     * @param head the head
     * @return what came of running it
     */
    public static HeadUnderTest.Run answering(FakeHead head) {
        return new HeadUnderTest.Run.Answering(head.sheet(), head, Optional.of(head));
    }

    /**
     * An action that goes to the plant, stays with it in the soil, and comes back; it declines a plant that is not in
     * reach for the whole of its time in the soil.
     *
     * @param sheet the head's sheet
     * @param task the task
     * @param phaseTime how long approach, soil and return take each, s; half of the time in the soil goes down
     * @return the action
     */
    public static Action action(HeadSheet sheet, LatticeSpotTask task, double phaseTime) {
        Point3 over = along(task, phaseTime, OVER_GROUND);
        Point3 in = along(task, 1.5 * phaseTime, -sheet.workRange().depth().most());
        Point3 out = along(task, 2 * phaseTime, OVER_GROUND);
        if (!sheet.reach().contains(over)
                || !sheet.reach().contains(in)
                || !sheet.reach().contains(out)) {
            return Action.decline("the plant is not in reach while the tool is in the soil");
        }
        return Action.of(
                phase("approach", phaseTime, over, Contact.CANOPY).build(),
                phase("insert", phaseTime / 2, in, Contact.SOIL)
                        .treating(TREATED)
                        .build(),
                phase("draw", phaseTime / 2, out, Contact.SOIL)
                        .treating(TREATED)
                        .build(),
                phase("return", phaseTime, sheet.readyToolPoint(), Contact.CANOPY)
                        .build());
    }

    /**
     * Begins a phase in the working posture.
     *
     * @param name its name
     * @param time its duration, s
     * @param to where it ends, head frame
     * @param contact what it touches
     * @return the builder
     */
    public static Phase.Builder phase(String name, double time, Point3 to, Contact contact) {
        return Phase.named(name).lasting(time).endingAt(to).in(PostureName.WORK).touching(contact);
    }

    private static Point3 along(LatticeSpotTask task, double time, double height) {
        return Point3.ofMetres(
                task.position().xMetres() + task.groundVelocity().xMetresPerSecond() * time,
                task.position().yMetres() + task.groundVelocity().yMetresPerSecond() * time,
                task.position().zMetres() + height);
    }

    /** {@return what the package of the default head says} */
    public static PackageFacts facts() {
        return facts(List.of());
    }

    /**
     * What the package of the default head says, with problems.
     *
     * @param problems the problems
     * @return the facts
     */
    public static PackageFacts facts(List<PackageProblem> problems) {
        return new PackageFacts(
                "0".repeat(64),
                10_000,
                Optional.of("test-head"),
                Optional.of(new Version(1, 0, 0)),
                Optional.of("Testing"),
                ApiRange.parse(">=0.1.0 & <0.2.0"),
                Optional.of("testing.Head"),
                List.of("META-INF/MANIFEST.MF", "META-INF/extensions.idx", "testing/Head.class"),
                List.of("testing.Head"),
                problems);
    }

    /** {@return the default sheet of a head that pulls weeds, with everything set; it drops nothing} */
    public static HeadSheet.Builder weederSheet() {
        return silentWeederSheet().drops();
    }

    /** {@return the same, but it does not say whether it drops anything} */
    public static HeadSheet.Builder silentWeederSheet() {
        return sheet(Operation.PULL_WEEDS)
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.0, 0.5))
                        .plantClasses(PlantClass.BROADLEAF, PlantClass.GRASS)
                        .stemDiameter(Range.of(0.001, 0.012))
                        .plantHeight(Range.of(0.01, 0.2))
                        .soils(SoilClass.FINE, SoilClass.MEDIUM, SoilClass.COARSE)
                        .moisture(Range.of(0.08, 0.4))
                        .depth(Range.of(0.02, 0.02))
                        .build());
    }

    /** {@return the default sheet of a head that sets plugs, with everything set} */
    public static HeadSheet.Builder planterSheet() {
        return sheet(Operation.SET_PLUGS)
                .supplies(Supply.of(SupplyKind.of("plugs"), 100, 1, Figure.measured(50)))
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.0, 0.5))
                        .plantClasses(PlantClass.PLUG)
                        .stemDiameter(Range.of(0.02, 0.045))
                        .plantHeight(Range.of(0.04, 0.12))
                        .soils(SoilClass.FINE, SoilClass.MEDIUM)
                        .moisture(Range.of(0.08, 0.4))
                        .depth(Range.of(0.02, 0.04))
                        .build());
    }

    private static HeadSheet.Builder sheet(Operation operation) {
        Body fixed = Body.of(Prism.box(-0.05, 0.45, -0.15, 0.15, -0.15, 0.0));
        Body moving = Body.of(Prism.box(-0.02, 0.02, -0.02, 0.02, 0.0, 0.45));
        Point3 ready = Point3.ofMetres(0.25, 0.0, -0.2);
        Reach reach = Reach.over(Outline.rectangle(0.1, 0.4, -0.1, 0.1), Interval.ofMetres(-0.6, -0.2));
        return HeadSheet.builder()
                .operation(operation)
                .turnable(true)
                .plate(PlateDesignation.of("9409-1-50-4-M6"))
                .connectors(Connector.of(ConnectorKind.ELECTRIC, "M12-L 5-pole 24 V"))
                .mass(mass(5.0, 0.2, 0.0, -0.1), mass(5.0, 0.2, 0.0, -0.1), mass(6.0, 0.2, 0.0, -0.1))
                .postures(
                        posture(PostureName.STOWED, fixed, moving, Reach.at(ready)),
                        posture(PostureName.READY, fixed, moving, Reach.at(ready)),
                        posture(PostureName.WORK, fixed, moving, reach))
                .actionTime(ActionTime.of(Figure.measured(1.5), Figure.measured(1.5), Figure.measured(1.5)))
                .power(PowerDraw.of(Figure.measured(10), Figure.measured(50), Figure.measured(100)))
                .forces(Forces.of(
                        Figure.measured(100),
                        Figure.measured(40),
                        Figure.measured(20),
                        Figure.measured(20),
                        Breakaway.of(Figure.measured(50), Figure.measured(0.05))))
                .accuracy(Accuracy.of(Figure.measured(0.002), Figure.measured(0.01)))
                .hazards(Hazard.of(HazardKind.CRUSHING, GuardKind.LIMITED_FORCE, Figure.measured(0.2)))
                .withdrawTime(Figure.measured(0.2))
                .onPowerLoss(PowerLossState.WITHDRAWS)
                .hardwareRevision("A");
    }

    /**
     * A mass and its centre.
     *
     * @param kg the mass, kg
     * @param x centre, m, head frame
     * @param y centre, m, head frame
     * @param z centre, m, head frame
     * @return the mass point
     */
    public static MassPoint mass(double kg, double x, double y, double z) {
        return MassPoint.of(Figure.measured(kg), Point3.ofMetres(x, y, z));
    }

    /**
     * A posture.
     *
     * @param name its name
     * @param fixed what does not move with the tool point
     * @param moving what does
     * @param region where the tool point can be
     * @return the posture
     */
    public static Posture posture(PostureName name, Body fixed, Body moving, Reach region) {
        return Posture.named(name).fixed(fixed).moving(moving).region(region).build();
    }

    /** {@return the default carriage} */
    public static Carriage carriage() {
        List<Arm> arms = new ArrayList<>();
        double[] y = {-0.75, -0.25, 0.25, 0.75};
        for (int i = 0; i < y.length; i++) {
            arms.add(arm("a" + (i + 1), i % 2 == 0 ? "front" : "rear", y[i]));
        }
        return new Carriage(
                        "Test carriage",
                        "T-1",
                        List.of(new Carriage.Beam("front", 0), new Carriage.Beam("rear", -1_200_000)),
                        arms,
                        List.of(part("beam", Prism.box(-0.05, 0.05, -1.2, 1.2, 1.5, 1.6))),
                        new Carriage.GroundMotion(0, 0, 0),
                        new Carriage.Stopping(0.2, 2.0),
                        new Carriage.Turning(25, 5))
                .withWheels(List.of(wheel("right", -1.3, -0.9), wheel("left", 0.9, 1.3)))
                .withStances(List.of(
                        new Stance("road", Stance.Use.TRANSPORT, Map.of(), List.of(), List.of(), List.of(), 0.0)));
    }

    /**
     * A wheel, a metre in front of the foremost beam and a metre from the steered point.
     *
     * @param name what it is called
     * @param least where the middle of its tyre, 120 mm wide, may be set at least, m
     * @param most and at most, m
     * @return the wheel
     */
    public static Carriage.Wheel wheel(String name, double least, double most) {
        return new Carriage.Wheel(name, 1_000_000, Interval.ofMetres(least, most), 0.12, 1.0, Optional.of(0.7), 0);
    }

    /**
     * A part of the frame.
     *
     * @param name what it is called
     * @param prisms its material, carriage frame
     * @return the part
     */
    public static Carriage.Part part(String name, Prism... prisms) {
        return new Carriage.Part(name, Body.of(prisms));
    }

    /**
     * An arm.
     *
     * @param id its id
     * @param beam its beam's id
     * @param y middle of its rail, m
     * @return the arm
     */
    public static Arm arm(String id, String beam, double y) {
        return new Arm(
                id,
                beam,
                Interval.ofMetres(y - 0.25, y + 0.25),
                Interval.ofMetres(0.35, 0.95),
                new Arm.AxisMotion(0.5, 1.0, 1.0, 0.001),
                new Arm.AxisMotion(0.2, 1.0, 1.0, 0.001),
                new Arm.Tolerance(0.001, 0.002, 0.0005, 0.0, 100_000),
                new Arm.Payload(10, 20, 20, 20),
                PlateDesignation.of("9409-1-50-4-M6"),
                List.of(
                        Connector.of(ConnectorKind.ELECTRIC, "M12-L 5-pole 24 V"),
                        Connector.of(ConnectorKind.DATA, "M12-D 4-pole 100 Mbit/s")),
                new Arm.PowerSupply(100, 250),
                Body.of(Prism.box(-0.05, 0.05, -0.05, 0.05, 0.0, 0.3)));
    }

    /** Treated weeds do not grow on. */
    private static final List<CropPlan.Success> KILLED =
            List.of(new CropPlan.Success(PlantClass.BROADLEAF, 1.0), new CropPlan.Success(PlantClass.GRASS, 1.0));

    /** {@return the default plan for pulling weeds} */
    public static CropPlan weedingPlan() {
        return new CropPlan(
                "Test weeding",
                new CropPlan.Rows(0.5, 4, 0.4, 0.0),
                new CropPlan.Crop(0.1, 0.2, 0.0),
                new CropPlan.Soil(SoilClass.MEDIUM, 0.2, 0.02),
                Optional.of(new CropPlan.Weeds(
                        2.0,
                        0.2,
                        List.of(PlantClass.BROADLEAF, PlantClass.GRASS),
                        0.002,
                        0.01,
                        // No lower than the crop, whose leaves therefore hide none.
                        0.1,
                        0.15,
                        Optional.of(0.95),
                        Optional.of(0.1),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        KILLED)),
                Optional.empty(),
                new CropPlan.Wanted(Operation.PULL_WEEDS, 0.2, 0.85, Optional.empty()),
                new CropPlan.Field(200, 100));
    }

    /** {@return the default plan for setting plugs} */
    public static CropPlan plantingPlan() {
        return new CropPlan(
                "Test planting",
                new CropPlan.Rows(0.5, 4, 0.4, 0.0),
                new CropPlan.Crop(0.0, 0.0, 0.0),
                new CropPlan.Soil(SoilClass.MEDIUM, 0.2, 0.02),
                Optional.empty(),
                Optional.of(new CropPlan.Plugs(0.03, 0.08, 0.04)),
                new CropPlan.Wanted(Operation.SET_PLUGS, 0.2, 0.95, Optional.empty()),
                new CropPlan.Field(200, 100));
    }

    /** {@return the default policy: round figures for what hand arithmetic uses, the built-in limits for the rest} */
    public static Policy policy() {
        Policy builtIn = PolicyReader.builtIn().value();
        return new Policy(
                limit(0.03),
                limit(0.02),
                limit(2.0),
                limit(0.9),
                limit(0.8),
                builtIn.frameGap(),
                builtIn.groundGap(),
                builtIn.wheelGap(),
                builtIn.shockAtWork(),
                builtIn.shockInTransport(),
                builtIn.boltUse(),
                builtIn.powerUse(),
                builtIn.sensorShadow(),
                builtIn.cropLoss(),
                builtIn.confidence(),
                builtIn.transportWidth(),
                builtIn.transportHeight(),
                builtIn.transportGroundGap(),
                builtIn.armsInTurn());
    }

    /**
     * Changes how many arms may wait for one another.
     *
     * @param p the policy
     * @param most how many
     * @return the same policy with it
     */
    public static Policy withArmsInTurn(Policy p, int most) {
        return new Policy(
                p.armGap(),
                p.canopyGap(),
                p.coverageFactor(),
                p.massUse(),
                p.momentUse(),
                p.frameGap(),
                p.groundGap(),
                p.wheelGap(),
                p.shockAtWork(),
                p.shockInTransport(),
                p.boltUse(),
                p.powerUse(),
                p.sensorShadow(),
                p.cropLoss(),
                p.confidence(),
                p.transportWidth(),
                p.transportHeight(),
                p.transportGroundGap(),
                limit(most));
    }

    /**
     * Changes the least gap between two arms.
     *
     * @param p the policy
     * @param gap the gap, m
     * @return the same policy with it
     */
    public static Policy withArmGap(Policy p, double gap) {
        return new Policy(
                limit(gap),
                p.canopyGap(),
                p.coverageFactor(),
                p.massUse(),
                p.momentUse(),
                p.frameGap(),
                p.groundGap(),
                p.wheelGap(),
                p.shockAtWork(),
                p.shockInTransport(),
                p.boltUse(),
                p.powerUse(),
                p.sensorShadow(),
                p.cropLoss(),
                p.confidence(),
                p.transportWidth(),
                p.transportHeight(),
                p.transportGroundGap(),
                p.armsInTurn());
    }

    /**
     * A limit of a policy.
     *
     * @param value the limit, SI
     * @return the limit
     */
    public static Policy.Limit limit(double value) {
        return new Policy.Limit(value, "invented for tests");
    }

    private static <T> Loaded<T> loaded(T value, String file) {
        return new Loaded<>(value, file, "0".repeat(64), Map.of());
    }
}
