package headgate.runtime.carriage;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.sheet.Connector;
import headgate.api.sheet.PlateDesignation;
import headgate.api.vocabulary.ConnectorKind;
import headgate.api.vocabulary.SupplyKind;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.Shapes;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.text.SourceFile;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Reads carriage files. */
public final class CarriageReader {

    /** The kind of file, with all that it may hold. */
    public static final FileKind<Carriage> KIND =
            new FileKind<>("carriage", 1, CarriageForm.FORM, CarriageReader::carriage, CarriageReader::typesOfArms);

    private CarriageReader() {}

    /**
     * Reads a carriage file.
     *
     * @param path the file
     * @return the carriage, where its fields stand, and notes
     * @throws InvalidFileException if the file cannot be read or is not a carriage; it holds every problem
     */
    public static Loaded<Carriage> read(Path path) throws InvalidFileException {
        return read(SourceFile.read(path));
    }

    /**
     * Reads a carriage from a text at hand.
     *
     * @param file the text
     * @return the carriage, where its fields stand, and notes
     * @throws InvalidFileException if the text is not a carriage; it holds every problem
     */
    public static Loaded<Carriage> read(SourceFile file) throws InvalidFileException {
        return KIND.read(file);
    }

    private static Map<String, String> typesOfArms(Fields file) {
        List<String> types =
                file.objects("armTypes").stream().map(t -> t.text("id")).toList();
        List<Fields> arms = file.objects("arms");
        Map<String, String> lenders = new LinkedHashMap<>();
        for (int i = 0; i < arms.size(); i++) {
            lenders.put(
                    "arms[" + i + "]", "armTypes[" + types.indexOf(arms.get(i).text("type")) + "]");
        }
        return lenders;
    }

    private static Carriage carriage(Fields file) {
        Map<String, Fields> types = new LinkedHashMap<>();
        file.objects("armTypes").forEach(t -> types.put(t.text("id"), t));
        return new Carriage(
                file.text("name"),
                file.text("serial"),
                file.objects("beams").stream()
                        .map(b -> new Carriage.Beam(b.text("id"), b.micrometres("x")))
                        .toList(),
                file.objects("arms").stream()
                        .map(a -> arm(a, Objects.requireNonNull(types.get(a.text("type")))))
                        .toList(),
                parts(file),
                ground(file.object("ground")),
                stopping(file.object("stopping")),
                turning(file.object("turning")),
                file.objects("wheels").stream().map(CarriageReader::wheel).toList(),
                file.objects("links").stream().map(CarriageReader::link).toList(),
                file.objects("sensors").stream().map(CarriageReader::sensor).toList(),
                file.objectIfGiven("errors").map(CarriageReader::errors),
                file.objects("stances").stream().map(CarriageReader::stance).toList(),
                file.objects("stores").stream().map(CarriageReader::store).toList(),
                file.objectIfGiven("drive").map(CarriageReader::drive),
                file.objectIfGiven("energy").map(CarriageReader::energy));
    }

    private static Arm arm(Fields arm, Fields type) {
        return new Arm(
                arm.text("id"),
                arm.text("beam"),
                arm.interval("shift"),
                type.interval("lift"),
                motion(type.object("shiftMotion")),
                motion(type.object("liftMotion")),
                tolerance(type.object("tolerance")),
                payload(type.object("payload")),
                PlateDesignation.of(type.text("plate")),
                type.objects("connectors").stream()
                        .map(c -> Connector.of(ConnectorKind.of(c.text("kind")), c.text("designation")))
                        .toList(),
                supply(type.object("supply")),
                Shapes.body(type, "body"),
                Shapes.body(type, "column"),
                type.objects("liftPath").stream()
                        .map(p -> new Arm.LiftPoint(p.micrometres("height"), p.micrometres("forward")))
                        .toList(),
                type.objectIfGiven("following")
                        .map(f -> new Arm.Following(f.si("error"), f.si("speed"), f.si("acceleration"), f.si("force"))),
                type.objectIfGiven("plateNormal")
                        .map(n -> Arm.Direction.of(n.si("x"), n.si("y"), n.si("z")))
                        .orElse(Arm.Direction.DOWN));
    }

    private static Arm.AxisMotion motion(Fields motion) {
        return new Arm.AxisMotion(
                motion.si("speed"), motion.si("acceleration"), motion.si("deceleration"), motion.si("overshoot"));
    }

    private static Arm.Tolerance tolerance(Fields tolerance) {
        return new Arm.Tolerance(
                tolerance.si("backlash"),
                tolerance.si("tracking"),
                tolerance.si("sigma"),
                tolerance.si("angularPlay"),
                tolerance.si("stiffness"));
    }

    private static Arm.Payload payload(Fields payload) {
        return new Arm.Payload(payload.si("mass"), payload.si("momentX"), payload.si("momentY"), payload.si("momentZ"));
    }

    private static Arm.PowerSupply supply(Fields supply) {
        return new Arm.PowerSupply(supply.si("continuous"), supply.si("peak"));
    }

    private static Carriage.GroundMotion ground(Fields ground) {
        return new Carriage.GroundMotion(ground.si("roll"), ground.si("pitch"), ground.si("wheelSink"));
    }

    private static Carriage.Stopping stopping(Fields stopping) {
        return new Carriage.Stopping(stopping.si("reactionTime"), stopping.si("deceleration"));
    }

    private static Carriage.Turning turning(Fields turning) {
        return new Carriage.Turning(turning.si("turnTime"), turning.si("liftTime"));
    }

    private static Carriage.Wheel wheel(Fields wheel) {
        return new Carriage.Wheel(
                wheel.text("name"),
                wheel.micrometres("x"),
                wheel.interval("y"),
                wheel.si("tyreWidth"),
                wheel.si("fromSteeredPoint"),
                wheel.siIfGiven("diameter"),
                wheel.siOr("steering", 0.0));
    }

    private static Carriage.Link link(Fields link) {
        return new Carriage.Link(
                link.text("id"),
                link.objects("members").stream()
                        .map(m -> new Carriage.Link.Member(m.text("arm"), m.micrometres("offset")))
                        .toList());
    }

    private static Point3 point(Fields point) {
        return new Point3(point.micrometres("x"), point.micrometres("y"), point.micrometres("z"));
    }

    private static Sensor sensor(Fields sensor) {
        return new Sensor(
                sensor.text("id"),
                point(sensor.object("position")),
                sensor.interval("bandX"),
                sensor.interval("bandY"),
                sensor.texts("beams"),
                sensor.si("frameRate"),
                sensor.si("latency"),
                sensor.si("resolution"),
                sensor.si("sigma"));
    }

    private static PositionErrors errors(Fields errors) {
        return new PositionErrors(
                errors.si("clock"),
                errors.si("slip"),
                errors.si("heading"),
                errors.si("pitch"),
                errors.si("roll"),
                errors.siIfGiven("absolute"));
    }

    private static Stance stance(Fields stance) {
        Map<String, Interval> rails = new TreeMap<>();
        stance.objects("rails").forEach(r -> rails.put(r.text("arm"), r.interval("shift")));
        Map<String, Long> wheels = new TreeMap<>();
        stance.objects("wheels").forEach(w -> wheels.put(w.text("wheel"), w.micrometres("y")));
        return new Stance(
                stance.text("name"),
                stance.text("use").equals("work") ? Stance.Use.WORK : Stance.Use.TRANSPORT,
                rails,
                poses(stance),
                stance.objects("steps").stream()
                        .map(s -> new Stance.Step(s.text("name"), poses(s), parts(s)))
                        .toList(),
                parts(stance),
                wheels,
                stance.siOr("suspensionTravel", 0.0));
    }

    private static List<Carriage.Part> parts(Fields holder) {
        return holder.objects("structure").stream()
                .map(p -> new Carriage.Part(p.text("name"), Shapes.body(p, "body")))
                .toList();
    }

    private static List<Stance.Pose> poses(Fields holder) {
        return holder.objects("poses").stream()
                .map(p -> new Stance.Pose(
                        p.text("arm"),
                        point(p.object("mount")),
                        p.objects("turns").stream()
                                .map(t -> new Stance.Turn(
                                        Stance.Axis.valueOf(t.text("axis").toUpperCase(Locale.ROOT)),
                                        t.count("quarters")))
                                .toList(),
                        p.flagOr("latched", false),
                        p.texts("way").stream()
                                .map(w -> Stance.Move.valueOf(w.toUpperCase(Locale.ROOT)))
                                .toList()))
                .toList();
    }

    private static Store store(Fields store) {
        return new Store(
                SupplyKind.of(store.text("kind")),
                store.si("capacity"),
                store.text("where").equals("headland"),
                store.flagOr("allAtOnce", false));
    }

    private static Drive drive(Fields drive) {
        return new Drive(
                drive.si("mass"),
                point(drive.object("centre")),
                drive.si("rollingResistance"),
                drive.si("grip"),
                drive.siOr("drivenShare", 1.0),
                drive.si("efficiency"),
                drive.si("power"));
    }

    private static Carriage.Energy energy(Fields energy) {
        return new Carriage.Energy(
                energy.si("capacity"),
                energy.si("usableShare"),
                energy.si("baseLoad"),
                energy.flagOr("chargedAtNight", false),
                energy.objectIfGiven("panels").map(p -> new Carriage.Panels(p.si("area"), p.si("efficiency"))));
    }
}
