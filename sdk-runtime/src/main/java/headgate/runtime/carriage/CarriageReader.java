package headgate.runtime.carriage;

import headgate.api.sheet.Connector;
import headgate.api.sheet.PlateDesignation;
import headgate.api.vocabulary.ConnectorKind;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.Shapes;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.text.SourceFile;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** Reads carriage files. */
public final class CarriageReader {

    /** The kind of file, with all that it may hold. */
    public static final FileKind<Carriage> KIND =
            new FileKind<>("carriage", 1, CarriageForm.FORM, CarriageReader::carriage);

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
                file.objects("structure").stream()
                        .map(p -> new Carriage.Part(p.text("name"), Shapes.body(p, "body")))
                        .toList(),
                ground(file.object("ground")),
                stopping(file.object("stopping")),
                turning(file.object("turning")));
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
                Shapes.body(type, "body"));
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
}
