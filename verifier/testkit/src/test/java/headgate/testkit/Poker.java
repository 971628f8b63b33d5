package headgate.testkit;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.head.SpotHead;
import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Accuracy;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Breakaway;
import headgate.api.sheet.Figure;
import headgate.api.sheet.Forces;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.MassPoint;
import headgate.api.sheet.PlateDesignation;
import headgate.api.sheet.Posture;
import headgate.api.sheet.PowerDraw;
import headgate.api.sheet.Range;
import headgate.api.sheet.Reach;
import headgate.api.sheet.WorkRange;
import headgate.api.task.SpotTask;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import headgate.api.vocabulary.SoilClass;
import java.util.List;

/** The smallest head that keeps its contract: a rod that pokes a weed. Broken heads are made from it, one flaw each. */
class Poker implements SpotHead {

    static final Outline REACH = Outline.rectangle(-0.20, 0.20, -0.10, 0.10);
    static final Point3 READY = Point3.ofMetres(0, 0, -0.35);
    static final Outline TREATED = Outline.insideDisc(Point.ORIGIN, 0.02, 16);

    private static final double APPROACH = 0.4;
    private static final double POKE = 0.3;
    private static final double WITHDRAW = 0.1;

    @Override
    public HeadSheet sheet() {
        return sheetBuilder().build();
    }

    static HeadSheet.Builder sheetBuilder() {
        Figure mass = Figure.measured(3);
        MassPoint point = MassPoint.of(mass, Point3.ofMetres(0, 0, -0.1));
        Figure small = Figure.measured(10);
        return HeadSheet.builder()
                .operation(Operation.PULL_WEEDS)
                .turnable(true)
                .plate(PlateDesignation.of("9409-1-50-4-M6"))
                .mass(point, point, point)
                .postures(
                        shape(PostureName.STOWED).region(Reach.at(READY)).build(),
                        shape(PostureName.READY).region(Reach.at(READY)).build(),
                        shape(PostureName.WORK)
                                .region(Reach.over(REACH, Interval.ofMetres(-0.60, -0.35)))
                                .build())
                .actionTime(ActionTime.of(Figure.calculated(1.0), Figure.calculated(1.1), Figure.calculated(1.2)))
                .power(PowerDraw.of(small, small, small))
                .forces(Forces.of(small, small, small, small, Breakaway.of(small, Figure.measured(0.05))))
                .accuracy(Accuracy.of(Figure.measured(0.002), Figure.measured(0.010)))
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.0, 0.3))
                        .plantClasses(PlantClass.BROADLEAF)
                        .stemDiameter(Range.of(0.001, 0.010))
                        .plantHeight(Range.of(0.01, 0.10))
                        .soils(SoilClass.FINE, SoilClass.COARSE)
                        .moisture(Range.of(0.10, 0.30))
                        .depth(Range.of(0.02, 0.02))
                        .build())
                .withdrawTime(Figure.measured(0.2))
                .onPowerLoss(PowerLossState.WITHDRAWS)
                .hardwareRevision("A");
    }

    private static Posture.Builder shape(PostureName name) {
        return Posture.named(name)
                .fixed(Body.of(Prism.box(-0.25, 0.25, -0.15, 0.15, -0.20, 0.0)))
                .moving(Body.of(Prism.box(-0.01, 0.01, -0.01, 0.01, 0.0, 0.45)));
    }

    @Override
    public Action act(SpotTask task) {
        Point3 entry = plant(task, APPROACH);
        Point3 exit = plant(task, APPROACH + POKE + WITHDRAW);
        if (!REACH.contains(entry.plan()) || !REACH.contains(exit.plan())) {
            return Action.decline("out of reach");
        }
        return Action.of(phases(task));
    }

    /** Over the plant, into the soil and out again with the ground, back. */
    List<Phase> phases(SpotTask task) {
        Point3 over = plant(task, APPROACH);
        Point3 left = plant(task, APPROACH + POKE);
        Point3 off = plant(task, APPROACH + POKE + WITHDRAW);
        return List.of(
                Phase.named("approach")
                        .lasting(APPROACH)
                        .endingAt(new Point3(over.x(), over.y(), task.position().z() + 10_000))
                        .in(PostureName.WORK)
                        .touching(Contact.CANOPY)
                        .build(),
                Phase.named("poke")
                        .lasting(POKE)
                        .endingAt(new Point3(left.x(), left.y(), task.position().z() - 20_000))
                        .in(PostureName.WORK)
                        .touching(Contact.SOIL)
                        .treating(TREATED)
                        .build(),
                Phase.named("withdraw")
                        .lasting(WITHDRAW)
                        .endingAt(new Point3(off.x(), off.y(), task.position().z() + 10_000))
                        .in(PostureName.WORK)
                        .touching(Contact.SOIL)
                        .build(),
                Phase.named("return")
                        .lasting(0.3)
                        .endingAt(READY)
                        .in(PostureName.WORK)
                        .touching(Contact.CANOPY)
                        .build());
    }

    static Point3 plant(SpotTask task, double time) {
        return new Point3(
                task.position().x() + Micrometres.nearest(task.groundVelocity().xMetresPerSecond() * time),
                task.position().y(),
                task.position().z());
    }
}
