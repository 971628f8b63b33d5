package headgate.runtime.wire;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
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
import headgate.api.vocabulary.ConnectorKind;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import headgate.api.vocabulary.SoilClass;
import headgate.api.vocabulary.SupplyKind;
import headgate.api.vocabulary.Term;
import java.util.List;
import java.util.Optional;

/** A head's sheet as bytes, field after field in the order of its accessors. */
public final class SheetCodec {

    private SheetCodec() {}

    /**
     * Writes a sheet.
     *
     * @param out where to
     * @param s the sheet
     */
    public static void write(WireWriter out, HeadSheet s) {
        term(out, s.operation());
        out.flag(s.turnable());
        out.text(s.plate().toString());
        out.list(s.connectors(), (o, c) -> {
            term(o, c.kind());
            o.text(c.designation());
        });
        mass(out, s.empty());
        mass(out, s.full());
        mass(out, s.soiled());
        out.list(s.postures(), SheetCodec::posture);
        out.list(s.transitions(), (o, t) -> {
            term(o, t.from());
            term(o, t.to());
            ShapeCodec.body(o, t.swept());
        });
        out.maybe(s.actionTime(), (o, t) -> {
            figure(o, t.least());
            figure(o, t.typical());
            figure(o, t.most());
        });
        figure(out, s.power().idle());
        figure(out, s.power().working());
        figure(out, s.power().peak());
        forces(out, s.forces());
        figure(out, s.accuracy().standardUncertainty());
        figure(out, s.accuracy().aimTolerance());
        workRange(out, s.workRange());
        out.list(s.supplies(), (o, p) -> {
            term(o, p.kind());
            o.figure(p.capacity());
            o.figure(p.perAction());
            figure(o, p.refillTime());
        });
        out.list(s.hazards(), (o, h) -> {
            term(o, h.kind());
            term(o, h.guard());
            o.maybe(h.stopTime(), SheetCodec::figure);
        });
        out.maybe(
                s.drops(),
                (o, drops) -> o.list(drops, (each, d) -> {
                    ShapeCodec.outline(each, d.outline());
                    figure(each, d.height());
                }));
        figure(out, s.withdrawTime());
        term(out, s.onPowerLoss());
        out.text(s.hardwareRevision());
    }

    /**
     * Reads a sheet.
     *
     * @param in where from
     * @return the sheet
     */
    public static HeadSheet read(WireReader in) {
        HeadSheet.Builder b = HeadSheet.builder()
                .operation(Operation.of(in.text()))
                .turnable(in.flag())
                .plate(PlateDesignation.of(in.text()))
                .connectors(in.list(i -> Connector.of(ConnectorKind.of(i.text()), i.text()))
                        .toArray(Connector[]::new));
        MassPoint empty = mass(in);
        MassPoint full = mass(in);
        b.mass(empty, full, mass(in));
        b.postures(in.list(SheetCodec::posture));
        b.transitions(in.list(
                i -> Transition.between(PostureName.of(i.text()), PostureName.of(i.text()), ShapeCodec.body(i))));
        in.maybe(i -> ActionTime.of(figure(i), figure(i), figure(i))).ifPresent(b::actionTime);
        b.power(PowerDraw.of(figure(in), figure(in), figure(in)));
        b.forces(forces(in));
        b.accuracy(Accuracy.of(figure(in), figure(in)));
        b.workRange(workRange(in));
        b.supplies(in.list(i -> Supply.of(SupplyKind.of(i.text()), i.figure(), i.figure(), figure(i)))
                .toArray(Supply[]::new));
        b.hazards(in.list(SheetCodec::hazard).toArray(Hazard[]::new));
        in.maybe(i -> i.list(each -> Drop.over(ShapeCodec.outline(each), figure(each))))
                .ifPresent(b::drops);
        b.withdrawTime(figure(in));
        b.onPowerLoss(PowerLossState.of(in.text()));
        b.hardwareRevision(in.text());
        return b.build();
    }

    private static void term(WireWriter out, Term term) {
        out.text(term.name());
    }

    private static void figure(WireWriter out, Figure figure) {
        out.figure(figure.value());
        out.text(figure.basis().name());
    }

    private static Figure figure(WireReader in) {
        double value = in.figure();
        String basis = in.text();
        return Figure.of(
                value, Basis.named(basis).orElseThrow(() -> new WireFormatException("no figure is \"" + basis + '"')));
    }

    private static void mass(WireWriter out, MassPoint m) {
        figure(out, m.mass());
        ShapeCodec.point3(out, m.centre());
    }

    private static MassPoint mass(WireReader in) {
        return MassPoint.of(figure(in), ShapeCodec.point3(in));
    }

    private static void posture(WireWriter out, Posture p) {
        term(out, p.name());
        ShapeCodec.body(out, p.fixed());
        ShapeCodec.body(out, p.moving());
        ShapeCodec.body(out, p.carried());
        out.maybe(p.region().outline(), ShapeCodec::outline);
        ShapeCodec.point(out, p.region().corners().get(0));
        ShapeCodec.interval(out, p.region().height());
    }

    private static Posture posture(WireReader in) {
        Posture.Builder b = Posture.named(PostureName.of(in.text()))
                .fixed(ShapeCodec.body(in))
                .moving(ShapeCodec.body(in))
                .carried(ShapeCodec.body(in));
        Optional<Outline> outline = in.maybe(ShapeCodec::outline);
        long x = in.longNumber();
        long y = in.longNumber();
        Interval height = ShapeCodec.interval(in);
        if (outline.isEmpty() && height.length() != 0) {
            throw new WireFormatException("a reach of one point must have one height");
        }
        return b.region(outline.map(o -> Reach.over(o, height))
                        .orElseGet(() -> Reach.at(new Point3(x, y, height.least()))))
                .build();
    }

    private static void forces(WireWriter out, Forces f) {
        figure(out, f.pull());
        figure(out, f.press());
        figure(out, f.side());
        figure(out, f.draft());
        out.maybe(f.breakaway(), (o, b) -> {
            figure(o, b.force());
            figure(o, b.stroke());
        });
    }

    private static Forces forces(WireReader in) {
        Figure pull = figure(in);
        Figure press = figure(in);
        Figure side = figure(in);
        Figure draft = figure(in);
        return in.maybe(i -> Breakaway.of(figure(i), figure(i)))
                .map(b -> Forces.of(pull, press, side, draft, b))
                .orElseGet(() -> Forces.rigid(pull, press, side, draft));
    }

    private static void range(WireWriter out, Range r) {
        out.figure(r.least());
        out.figure(r.most());
    }

    private static Range range(WireReader in) {
        return Range.of(in.figure(), in.figure());
    }

    private static void workRange(WireWriter out, WorkRange w) {
        range(out, w.groundSpeed());
        out.list(List.copyOf(w.plantClasses()), SheetCodec::term);
        range(out, w.stemDiameter());
        range(out, w.plantHeight());
        out.list(List.copyOf(w.soils()), SheetCodec::term);
        range(out, w.moisture());
        range(out, w.depth());
    }

    private static WorkRange workRange(WireReader in) {
        return WorkRange.builder()
                .groundSpeed(range(in))
                .plantClasses(in.list(i -> PlantClass.of(i.text())).toArray(PlantClass[]::new))
                .stemDiameter(range(in))
                .plantHeight(range(in))
                .soils(in.list(i -> SoilClass.of(i.text())).toArray(SoilClass[]::new))
                .moisture(range(in))
                .depth(range(in))
                .build();
    }

    private static Hazard hazard(WireReader in) {
        HazardKind kind = HazardKind.of(in.text());
        GuardKind guard = GuardKind.of(in.text());
        return in.maybe(SheetCodec::figure)
                .map(stop -> Hazard.of(kind, guard, stop))
                .orElseGet(() -> Hazard.withUnknownStop(kind, guard));
    }
}
