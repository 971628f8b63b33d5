package headgate.runtime.testing;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Engagement;
import headgate.api.answer.Phase;
import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Accuracy;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Basis;
import headgate.api.sheet.Breakaway;
import headgate.api.sheet.Connector;
import headgate.api.sheet.Drop;
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
import headgate.api.sheet.Transition;
import headgate.api.sheet.WorkRange;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.ConnectorKind;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import headgate.api.vocabulary.SoilClass;
import headgate.api.vocabulary.SupplyKind;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Makes any value that goes over the wire, the same for the same seed. */
public final class Generator {

    private final RandomGenerator random;

    public Generator(long seed) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    private boolean coin() {
        return random.nextBoolean();
    }

    private double from(double least, double most) {
        return coin() ? random.nextDouble(least, Math.nextUp(most)) : coin() ? least : most;
    }

    private <T> List<T> some(int most, Supplier<T> each) {
        List<T> list = new ArrayList<>();
        for (int n = random.nextInt(most + 1); n > 0; n--) {
            list.add(each.get());
        }
        return list;
    }

    private String word() {
        String letters = "abcxyz";
        StringBuilder text = new StringBuilder();
        for (int n = random.nextInt(1, 12); n > 0; n--) {
            text.append(letters.charAt(random.nextInt(letters.length())));
        }
        return coin() ? text + "-" + random.nextInt(10) + "a" : text.toString();
    }

    private String text() {
        return coin() ? "Größe \"" + word() + "\" 𝄞 µm" : word();
    }

    private long micrometres() {
        return random.nextInt(20) == 0 ? (coin() ? 1 : -1) * 100_000_000L : random.nextLong(-3_000_000, 3_000_000);
    }

    private Point3 point3() {
        return new Point3(micrometres(), micrometres(), micrometres());
    }

    private Interval interval() {
        long least = random.nextLong(-3_000_000, 3_000_000);
        return new Interval(least, least + random.nextLong(1, 1_000_000));
    }

    private Outline outline() {
        if (coin()) {
            return Outline.rectangle(interval(), interval());
        }
        // An arrow head: not convex.
        return coin()
                ? Outline.aroundDisc(
                        new Point(micrometres() / 2, micrometres() / 2), from(0.001, 0.5), random.nextInt(4, 40))
                : Outline.ofMetres(0, 0, 1, 0, 0.2, 0.2 + random.nextDouble() / 10, 0, 1);
    }

    private Body body() {
        return Body.of(some(4, () -> Prism.of(outline(), interval())));
    }

    private Figure figure(double least, double most) {
        Basis basis = List.of(Basis.MEASURED, Basis.CALCULATED, Basis.ASSUMED).get(random.nextInt(3));
        return Figure.of(from(least, most), basis);
    }

    private Posture posture(PostureName name, boolean single) {
        Reach reach = single || coin()
                ? Reach.at(point3())
                : Reach.over(outline(), coin() ? interval() : Interval.at(micrometres()));
        return Posture.named(name)
                .fixed(Body.of(Prism.of(outline(), interval())))
                .moving(body())
                .carried(body())
                .region(reach)
                .build();
    }

    private Range range(double most) {
        double a = from(0, most);
        double b = from(0, most);
        return Range.of(Math.min(a, b), Math.max(a, b));
    }

    private ActionTime actionTime() {
        return ActionTime.of(figure(0.001, 1), figure(1, 2), figure(2, 600));
    }

    public HeadSheet sheet() {
        List<Posture> postures = new ArrayList<>(List.of(
                posture(PostureName.STOWED, true), posture(PostureName.READY, true), posture(PostureName.WORK, false)));
        if (coin()) {
            postures.add(posture(PostureName.of("own"), false));
        }
        HeadSheet.Builder b = HeadSheet.builder()
                .operation(Operation.of(word()))
                .turnable(coin())
                .plate(PlateDesignation.of("9409-1-" + random.nextInt(20, 200) + (coin() ? ".5" : "") + "-4-M6"))
                .connectors(some(3, () -> Connector.of(ConnectorKind.of(word()), text()))
                        .toArray(Connector[]::new))
                .mass(mass(0.001, 1), mass(1, 2), mass(2, 1000))
                .postures(postures)
                .transitions(some(2, () -> Transition.between(PostureName.STOWED, PostureName.WORK, body())))
                .power(PowerDraw.of(figure(0, 10), figure(0, 20), figure(20, 100_000)))
                .forces(forces())
                .accuracy(Accuracy.of(figure(0, 1), figure(1e-6, 1)))
                .workRange(WorkRange.builder()
                        .groundSpeed(range(10))
                        .plantClasses(some(3, () -> PlantClass.of(word())).toArray(PlantClass[]::new))
                        .stemDiameter(range(0.5))
                        .plantHeight(range(5))
                        .soils(SoilClass.of(word()), SoilClass.MEDIUM)
                        .moisture(range(1))
                        .depth(range(1))
                        .build())
                .supplies(some(3, () -> Supply.of(SupplyKind.of(word()), from(1, 1e6), from(0, 1), figure(0, 86_400)))
                        .toArray(Supply[]::new))
                .hazards(some(3, () -> hazard()).toArray(Hazard[]::new))
                .withdrawTime(figure(0, 60))
                .onPowerLoss(PowerLossState.of(word()))
                .hardwareRevision(text());
        if (coin()) {
            b.actionTime(actionTime());
        }
        if (coin()) {
            b.drops(some(3, () -> Drop.over(outline(), figure(0, 1))));
        }
        return b.build();
    }

    private Hazard hazard() {
        HazardKind kind = HazardKind.of(word());
        GuardKind guard = GuardKind.of(word());
        return coin() ? Hazard.of(kind, guard, figure(0, 600)) : Hazard.withUnknownStop(kind, guard);
    }

    private MassPoint mass(double least, double most) {
        return MassPoint.of(figure(least, most), point3());
    }

    private Forces forces() {
        return coin()
                ? Forces.rigid(figure(0, 1e5), figure(0, 1e5), figure(0, 1e5), figure(0, 1e5))
                : Forces.of(
                        figure(0, 1e5),
                        figure(0, 1e5),
                        figure(0, 1e5),
                        figure(0, 1e5),
                        Breakaway.of(figure(0.001, 1e5), figure(0, 2)));
    }

    public Action action() {
        if (random.nextInt(4) == 0) {
            return Action.decline(text());
        }
        List<Phase> phases = some(8, this::phase);
        phases.add(phase());
        return Action.of(phases);
    }

    private Phase phase() {
        Phase.Builder b = Phase.named(text())
                .lasting(from(0, 600))
                .endingAt(point3())
                .in(PostureName.of(word()))
                .touching(List.of(Contact.FREE, Contact.CANOPY, Contact.SOIL).get(random.nextInt(3)));
        return coin() ? b.build() : b.treating(outline()).build();
    }

    public Engagement engagement() {
        return random.nextInt(4) == 0
                ? Engagement.decline(text())
                : Engagement.builder()
                        .engaged(outline())
                        .depth(from(0, 1))
                        .draft(from(0, 100_000))
                        .insertTime(from(0, 60))
                        .withdrawTime(from(0, 60))
                        .following(from(0, 10), from(0, 100))
                        .build();
    }

    public LatticeSpotTask spotTask() {
        return LatticeSpotTask.nearest(
                point3(),
                velocity(),
                PlantClass.of(word()),
                from(0, 0.5),
                from(0, 5),
                SoilClass.of(word()),
                from(0, 1));
    }

    public LatticeRowTask rowTask() {
        return LatticeRowTask.nearest(
                velocity(), SoilClass.of(word()), from(0, 5), from(0, 5), from(0, 100), from(0, 100));
    }

    private Velocity velocity() {
        return new Velocity(micrometres(), micrometres());
    }

    public SpotAnswer spotAnswer() {
        return coin() ? new SpotAnswer.Answered(action()) : new SpotAnswer.Failed(fault());
    }

    public RowAnswer rowAnswer() {
        return coin() ? new RowAnswer.Answered(engagement()) : new RowAnswer.Failed(fault());
    }

    public HeadFault fault() {
        HeadStage stage = List.of(HeadStage.values()).get(random.nextInt(HeadStage.values().length));
        return switch (random.nextInt(15)) {
            case 0 -> new HeadFault.StartFailed(text());
            case 1 -> new HeadFault.NoHead(text());
            case 2 -> new HeadFault.Exited(stage, random.nextInt());
            case 3 -> new HeadFault.TimedOut(stage, Duration.ofNanos(random.nextLong(1, Long.MAX_VALUE)));
            case 4 -> new HeadFault.OutOfMemory(stage);
            case 5 -> new HeadFault.StackOverflow(stage);
            case 6 -> new HeadFault.Threw(stage, text(), text());
            case 7 -> new HeadFault.ReturnedNull(stage);
            case 8 -> new HeadFault.OutputFlood(stage, random.nextLong());
            case 9 -> new HeadFault.BadFrame(stage, text());
            case 10 -> new HeadFault.LeftThread(stage, text());
            case 11 -> new HeadFault.WrongKind(stage);
            case 12 ->
                new HeadFault.TooSlow(stage, random.nextLong(), Duration.ofNanos(random.nextLong(1, Long.MAX_VALUE)));
            case 13 -> new HeadFault.OutOfProcessorTime(stage, Duration.ofNanos(random.nextLong(1, Long.MAX_VALUE)));
            default -> new HeadFault.NotRecorded(stage);
        };
    }
}
