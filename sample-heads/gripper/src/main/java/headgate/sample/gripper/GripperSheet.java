package headgate.sample.gripper;

import static headgate.api.sheet.Figure.assumed;
import static headgate.api.sheet.Figure.calculated;
import static headgate.api.sheet.Figure.measured;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Accuracy;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Breakaway;
import headgate.api.sheet.Connector;
import headgate.api.sheet.Drop;
import headgate.api.sheet.Forces;
import headgate.api.sheet.Hazard;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.MassPoint;
import headgate.api.sheet.PlateDesignation;
import headgate.api.sheet.Posture;
import headgate.api.sheet.PowerDraw;
import headgate.api.sheet.Range;
import headgate.api.sheet.Reach;
import headgate.api.sheet.WorkRange;
import headgate.api.vocabulary.ConnectorKind;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import headgate.api.vocabulary.SoilClass;

/** What the gripper says of itself. The figures are invented for the demo. */
final class GripperSheet {

    /** With a weed in the fingers, its root hanging down. */
    static final PostureName CARRYING = PostureName.of("carrying");

    /** Longest root that hangs from the fingers, micrometres. */
    static final long ROOT = 80_000;

    private static final Point3 READY = Point3.ofMetres(0.26, 0.0, -0.22);
    private static final Reach REACH =
            Reach.over(Outline.rectangle(0.09, 0.43, -0.13, 0.13), Interval.ofMetres(-0.60, -0.22));

    private GripperSheet() {}

    static HeadSheet make() {
        return HeadSheet.builder()
                .operation(Operation.PULL_WEEDS)
                .turnable(true)
                .plate(PlateDesignation.of("9409-1-50-4-M6"))
                .connectors(
                        Connector.of(ConnectorKind.ELECTRIC, "M12-L 5-pole 24 V"),
                        Connector.of(ConnectorKind.DATA, "M12-D 4-pole 100 Mbit/s"))
                .mass(
                        MassPoint.of(measured(5.2), Point3.ofMetres(0.20, 0.0, -0.14)),
                        MassPoint.of(measured(5.2), Point3.ofMetres(0.20, 0.0, -0.14)),
                        MassPoint.of(assumed(5.8), Point3.ofMetres(0.205, 0.0, -0.15)))
                .postures(
                        shape(PostureName.STOWED).region(Reach.at(READY)).build(),
                        shape(PostureName.READY).region(Reach.at(READY)).build(),
                        shape(PostureName.WORK).region(REACH).build(),
                        shape(CARRYING).carried(weed()).region(REACH).build())
                .actionTime(ActionTime.of(calculated(1.20), calculated(1.90), calculated(2.55)))
                .power(PowerDraw.of(measured(18), measured(95), measured(240)))
                .forces(Forces.of(
                        measured(120),
                        measured(40),
                        calculated(30),
                        calculated(30),
                        Breakaway.of(measured(60), measured(0.06))))
                .accuracy(Accuracy.of(measured(0.002), measured(0.008)))
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.0, 0.30))
                        .plantClasses(PlantClass.BROADLEAF, PlantClass.ROSETTE, PlantClass.GRASS)
                        .stemDiameter(Range.of(0.001, 0.012))
                        .plantHeight(Range.of(0.01, 0.20))
                        .soils(SoilClass.FINE, SoilClass.MEDIUM, SoilClass.COARSE)
                        .moisture(Range.of(0.08, 0.40))
                        .depth(Range.of(0.02, 0.03))
                        .build())
                .hazards(Hazard.of(HazardKind.CRUSHING, GuardKind.LIMITED_FORCE, measured(0.15)))
                .drops(fallen(0.08, 0.20), fallen(-0.20, -0.08))
                .withdrawTime(measured(0.22))
                .onPowerLoss(PowerLossState.WITHDRAWS)
                .hardwareRevision("B")
                .build();
    }

    private static Posture.Builder shape(PostureName name) {
        return Posture.named(name).fixed(frame()).moving(ram());
    }

    /** The bracket under the plate, and a box that holds the stage with its cross slide wherever it stands. */
    private static Body frame() {
        return Body.of(
                Prism.box(-0.06, 0.10, -0.05, 0.05, -0.12, 0.0), Prism.box(0.04, 0.48, -0.18, 0.18, -0.20, -0.09));
    }

    /** The ram and, at its lower end, the open fingers. The ram is one piece: raised, it stands out above the stage. */
    private static Body ram() {
        return Body.of(
                Prism.aroundCylinder(0.0, 0.0, 0.035, 0.0, 0.10), Prism.box(-0.025, 0.025, -0.025, 0.025, 0.09, 0.43));
    }

    /**
     * Where a weed comes down that is let go at the edge of the reach. The outer finger opens first, so the weed slides down the
     * inner one, its leaves folded together, and topples along the row.
     */
    private static Drop fallen(double right, double left) {
        return Drop.over(Outline.rectangle(0.02, 0.50, right, left), measured(0.06));
    }

    private static Body weed() {
        return Body.of(
                Prism.aroundCylinder(0.0, 0.0, 0.03, -ROOT / 1e6, 0.0),
                Prism.aroundCylinder(0.0, 0.0, 0.08, -0.01, 0.23));
    }
}
