package headgate.sample.planter;

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

/** What the planter says of itself. The figures are invented for the demo. */
final class PlanterSheet {

    /** With the beak open: the plug is in the soil, or the next one is still to come. */
    static final PostureName OPEN = PostureName.of("beak-open");

    private static final Point3 READY = Point3.ofMetres(0.06, 0.0, -0.38);
    private static final Reach REACH =
            Reach.over(Outline.rectangle(-0.06, 0.18, -0.04, 0.04), Interval.ofMetres(-0.70, -0.38));

    private PlanterSheet() {}

    static HeadSheet make() {
        return HeadSheet.builder()
                .operation(Operation.SET_PLUGS)
                .plate(PlateDesignation.of("9409-1-50-4-M6"))
                .connectors(
                        Connector.of(ConnectorKind.ELECTRIC, "M12-L 5-pole 24 V"),
                        Connector.of(ConnectorKind.DATA, "M12-D 4-pole 100 Mbit/s"))
                .mass(
                        MassPoint.of(measured(11.5), Point3.ofMetres(0.0, 0.03, -0.20)),
                        MassPoint.of(measured(14.2), Point3.ofMetres(0.0, 0.02, -0.21)),
                        MassPoint.of(assumed(15.0), Point3.ofMetres(0.005, 0.02, -0.22)))
                .postures(
                        closed(PostureName.STOWED).region(Reach.at(READY)).build(),
                        closed(PostureName.READY).region(Reach.at(READY)).build(),
                        closed(PostureName.WORK).region(REACH).build(),
                        Posture.named(OPEN)
                                .fixed(frame())
                                .moving(beak(0.055))
                                .region(REACH)
                                .build())
                .actionTime(ActionTime.of(calculated(0.95), calculated(1.40), calculated(1.60)))
                .power(PowerDraw.of(measured(22), measured(110), measured(280)))
                .forces(Forces.of(
                        calculated(20),
                        measured(180),
                        calculated(40),
                        calculated(60),
                        Breakaway.of(measured(120), measured(0.05))))
                .accuracy(Accuracy.of(measured(0.003), measured(0.010)))
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0.05, 0.20))
                        .plantClasses(PlantClass.PLUG)
                        .stemDiameter(Range.of(0.020, 0.045))
                        .plantHeight(Range.of(0.04, 0.12))
                        .soils(SoilClass.FINE, SoilClass.MEDIUM, SoilClass.COARSE)
                        .moisture(Range.of(0.08, 0.35))
                        .depth(Range.of(0.04, 0.06))
                        .build())
                .supplies(Supply.of(SupplyKind.PLUGS, 108, 1, measured(45)))
                .hazards(
                        Hazard.of(HazardKind.CRUSHING, GuardKind.INTERLOCKED, measured(0.20)),
                        Hazard.of(HazardKind.PIERCING, GuardKind.FIXED, measured(0.20)))
                .withdrawTime(measured(0.25))
                .onPowerLoss(PowerLossState.WITHDRAWS)
                .hardwareRevision("A2")
                .build();
    }

    /** The beak shut around a plug. Stowed, it may still hold one. */
    private static Posture.Builder closed(PostureName name) {
        return Posture.named(name).fixed(frame()).moving(beak(0.035)).carried(plug());
    }

    /**
     * The feed unit under the plate, the magazine with the tray of 9 x 12 cells that steps across under the feed, and the
     * outrigger: two rails on the left on which the empty tray slides out.
     */
    private static Body frame() {
        return Body.of(
                Prism.box(-0.045, 0.045, -0.045, 0.045, -0.03, 0.0),
                Prism.box(-0.14, 0.26, -0.12, 0.12, -0.34, -0.02),
                Prism.box(-0.24, 0.20, -0.29, 0.27, -0.30, -0.12),
                Prism.box(-0.20, -0.17, 0.27, 0.60, -0.30, -0.27),
                Prism.box(0.13, 0.16, 0.27, 0.60, -0.30, -0.27),
                Prism.box(-0.22, 0.18, 0.25, 0.59, -0.27, -0.21));
    }

    /** The beak and the ram that carries it. */
    private static Body beak(double radius) {
        return Body.of(
                Prism.aroundCylinder(0.0, 0.0, radius, 0.0, 0.14), Prism.box(-0.025, 0.025, -0.025, 0.025, 0.13, 0.38));
    }

    private static Body plug() {
        return Body.of(Prism.aroundCylinder(0.0, 0.0, 0.03, 0.0, 0.20));
    }
}
