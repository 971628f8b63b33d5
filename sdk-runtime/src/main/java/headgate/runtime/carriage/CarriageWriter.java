package headgate.runtime.carriage;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.runtime.form.JsonText;
import headgate.runtime.quantity.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Writes carriage files. What is written reads back as an equal carriage; notes of the file it came from are gone. */
public final class CarriageWriter {

    private CarriageWriter() {}

    /**
     * Writes a carriage.
     *
     * @param carriage the carriage
     * @return the text of its file; arms that differ only in place share an arm type
     */
    public static String text(Carriage carriage) {
        Map<Arm, String> types = new LinkedHashMap<>();
        for (Arm arm : carriage.arms()) {
            types.putIfAbsent(placeless(arm), "type-" + (types.size() + 1));
        }
        return JsonText.file("headgate.carriage/1")
                .text("name", carriage.name())
                .text("serial", carriage.serial())
                .objects(
                        "beams",
                        carriage.beams().stream()
                                .map(b -> new JsonText().text("id", b.id()).length("x", b.x()))
                                .toList())
                .objects(
                        "armTypes",
                        types.entrySet().stream()
                                .map(e -> armType(e.getKey(), e.getValue()))
                                .toList())
                .objects(
                        "arms",
                        carriage.arms().stream()
                                .map(a -> new JsonText()
                                        .text("id", a.id())
                                        .text("beam", a.beam())
                                        .text("type", Objects.requireNonNull(types.get(placeless(a))))
                                        .interval("shift", a.shift()))
                                .toList())
                .objects("structure", parts(carriage.structure()))
                .object(
                        "ground",
                        new JsonText()
                                .quantity("roll", carriage.ground().roll(), Kind.ANGLE)
                                .quantity("pitch", carriage.ground().pitch(), Kind.ANGLE)
                                .quantity("wheelSink", carriage.ground().wheelSink(), Kind.LENGTH))
                .object(
                        "stopping",
                        new JsonText()
                                .quantity("reactionTime", carriage.stopping().reactionTime(), Kind.TIME)
                                .quantity("deceleration", carriage.stopping().deceleration(), Kind.ACCELERATION))
                .object(
                        "turning",
                        new JsonText()
                                .quantity("turnTime", carriage.turning().turnTime(), Kind.TIME)
                                .quantity("liftTime", carriage.turning().liftTime(), Kind.TIME))
                .objects(
                        "wheels",
                        carriage.wheels().stream().map(CarriageWriter::wheel).toList())
                .objects(
                        "links",
                        carriage.links().stream().map(CarriageWriter::link).toList())
                .objects(
                        "sensors",
                        carriage.sensors().stream().map(CarriageWriter::sensor).toList())
                .object("errors", carriage.errors().map(CarriageWriter::errors))
                .objects(
                        "stances",
                        carriage.stances().stream().map(CarriageWriter::stance).toList())
                .objects(
                        "stores",
                        carriage.stores().stream().map(CarriageWriter::store).toList())
                .object("drive", carriage.drive().map(CarriageWriter::drive))
                .object("energy", carriage.energy().map(CarriageWriter::energy))
                .toString();
    }

    /** The arm as it is wherever it stands: what arms of one type share. */
    private static Arm placeless(Arm arm) {
        return new Arm(
                "any",
                "any",
                Interval.at(0),
                arm.lift(),
                arm.shiftMotion(),
                arm.liftMotion(),
                arm.tolerance(),
                arm.payload(),
                arm.plate(),
                arm.connectors(),
                arm.supply(),
                arm.body(),
                arm.column(),
                arm.liftPath(),
                arm.following(),
                arm.plateNormal());
    }

    private static JsonText armType(Arm arm, String id) {
        JsonText type = new JsonText()
                .text("id", id)
                .interval("lift", arm.lift())
                .object("shiftMotion", motion(arm.shiftMotion()))
                .object("liftMotion", motion(arm.liftMotion()))
                .object(
                        "tolerance",
                        new JsonText()
                                .quantity("backlash", arm.tolerance().backlash(), Kind.LENGTH)
                                .quantity("tracking", arm.tolerance().tracking(), Kind.LENGTH)
                                .quantity("sigma", arm.tolerance().sigma(), Kind.LENGTH)
                                .quantity("angularPlay", arm.tolerance().angularPlay(), Kind.ANGLE)
                                .quantity("stiffness", arm.tolerance().stiffness(), Kind.STIFFNESS))
                .object(
                        "payload",
                        new JsonText()
                                .quantity("mass", arm.payload().mass(), Kind.MASS)
                                .quantity("momentX", arm.payload().momentX(), Kind.MOMENT)
                                .quantity("momentY", arm.payload().momentY(), Kind.MOMENT)
                                .quantity("momentZ", arm.payload().momentZ(), Kind.MOMENT))
                .text("plate", arm.plate().toString())
                .objectsEvenIfNone(
                        "connectors",
                        arm.connectors().stream()
                                .map(c -> new JsonText()
                                        .text("kind", c.kind().name())
                                        .text("designation", c.designation()))
                                .toList())
                .object(
                        "supply",
                        new JsonText()
                                .quantity("continuous", arm.supply().continuous(), Kind.POWER)
                                .quantity("peak", arm.supply().peak(), Kind.POWER))
                .body("body", arm.body())
                .body("column", arm.column())
                .objects(
                        "liftPath",
                        arm.liftPath().stream()
                                .map(p -> new JsonText()
                                        .length("height", p.height())
                                        .length("forward", p.forward()))
                                .toList())
                .object("following", arm.following().map(CarriageWriter::following));
        Arm.Direction normal = arm.plateNormal();
        return normal.equals(Arm.Direction.DOWN)
                ? type
                : type.object(
                        "plateNormal",
                        new JsonText()
                                .number("x", normal.x())
                                .number("y", normal.y())
                                .number("z", normal.z()));
    }

    private static JsonText motion(Arm.AxisMotion motion) {
        return new JsonText()
                .quantity("speed", motion.speed(), Kind.SPEED)
                .quantity("acceleration", motion.acceleration(), Kind.ACCELERATION)
                .quantity("deceleration", motion.deceleration(), Kind.ACCELERATION)
                .quantity("overshoot", motion.overshoot(), Kind.LENGTH);
    }

    private static JsonText following(Arm.Following following) {
        return new JsonText()
                .quantity("error", following.error(), Kind.LENGTH)
                .quantity("speed", following.speed(), Kind.SPEED)
                .quantity("acceleration", following.acceleration(), Kind.ACCELERATION)
                .quantity("force", following.force(), Kind.FORCE);
    }

    private static JsonText wheel(Carriage.Wheel wheel) {
        return new JsonText()
                .text("name", wheel.name())
                .length("x", wheel.x())
                .interval("y", wheel.y())
                .quantity("tyreWidth", wheel.tyreWidth(), Kind.LENGTH)
                .quantity("fromSteeredPoint", wheel.fromSteeredPoint(), Kind.LENGTH)
                .quantity("diameter", wheel.diameter(), Kind.LENGTH)
                .quantity("steering", wheel.steering(), Kind.ANGLE);
    }

    private static JsonText link(Carriage.Link link) {
        return new JsonText()
                .text("id", link.id())
                .objects(
                        "members",
                        link.members().stream()
                                .map(m -> new JsonText().text("arm", m.arm()).length("offset", m.offset()))
                                .toList());
    }

    private static JsonText point(Point3 point) {
        return new JsonText().length("x", point.x()).length("y", point.y()).length("z", point.z());
    }

    private static JsonText sensor(Sensor sensor) {
        return new JsonText()
                .text("id", sensor.id())
                .object("position", point(sensor.position()))
                .interval("bandX", sensor.bandX())
                .interval("bandY", sensor.bandY())
                .texts("beams", sensor.beams())
                .quantity("frameRate", sensor.frameRate(), Kind.FREQUENCY)
                .quantity("latency", sensor.latency(), Kind.TIME)
                .quantity("resolution", sensor.resolution(), Kind.LENGTH)
                .quantity("sigma", sensor.sigma(), Kind.LENGTH);
    }

    private static JsonText errors(PositionErrors errors) {
        return new JsonText()
                .quantity("clock", errors.clock(), Kind.TIME)
                .quantity("slip", errors.slip(), Kind.SHARE)
                .quantity("heading", errors.heading(), Kind.ANGLE)
                .quantity("pitch", errors.pitch(), Kind.ANGLE)
                .quantity("roll", errors.roll(), Kind.ANGLE)
                .quantity("absolute", errors.absolute(), Kind.LENGTH);
    }

    private static JsonText stance(Stance stance) {
        return new JsonText()
                .text("name", stance.name())
                .text("use", stance.use().name().toLowerCase(Locale.ROOT))
                .objects(
                        "rails",
                        stance.rails().entrySet().stream()
                                .map(r -> new JsonText().text("arm", r.getKey()).interval("shift", r.getValue()))
                                .toList())
                .objects("poses", poses(stance.poses()))
                .objects(
                        "steps",
                        stance.steps().stream()
                                .map(s -> new JsonText()
                                        .text("name", s.name())
                                        .objects("poses", poses(s.poses()))
                                        .objects("structure", parts(s.structure())))
                                .toList())
                .objects("structure", parts(stance.structure()))
                .objects(
                        "wheels",
                        stance.wheels().entrySet().stream()
                                .map(w ->
                                        new JsonText().text("wheel", w.getKey()).length("y", w.getValue()))
                                .toList())
                .quantity("suspensionTravel", stance.suspensionTravel(), Kind.LENGTH);
    }

    private static List<JsonText> parts(List<Carriage.Part> parts) {
        return parts.stream()
                .map(p -> new JsonText().text("name", p.name()).body("body", p.body()))
                .toList();
    }

    private static List<JsonText> poses(List<Stance.Pose> poses) {
        return poses.stream()
                .map(p -> new JsonText()
                        .text("arm", p.arm())
                        .object("mount", point(p.mount()))
                        .objects(
                                "turns",
                                p.turns().stream()
                                        .map(t -> new JsonText()
                                                .text("axis", t.axis().name().toLowerCase(Locale.ROOT))
                                                .count("quarters", t.quarters()))
                                        .toList())
                        .flag("latched", p.latched())
                        .texts(
                                "way",
                                p.way().stream()
                                        .map(m -> m.name().toLowerCase(Locale.ROOT))
                                        .toList()))
                .toList();
    }

    private static JsonText store(Store store) {
        return new JsonText()
                .text("kind", store.kind().name())
                .number("capacity", store.capacity())
                .text("where", store.onHeadlandOnly() ? "headland" : "anywhere")
                .flag("allAtOnce", store.allAtOnce());
    }

    private static JsonText drive(Drive drive) {
        return new JsonText()
                .quantity("mass", drive.mass(), Kind.MASS)
                .object("centre", point(drive.centre()))
                .number("rollingResistance", drive.rollingResistance())
                .number("grip", drive.grip())
                .quantity("drivenShare", drive.drivenShare(), Kind.SHARE)
                .quantity("efficiency", drive.efficiency(), Kind.SHARE)
                .quantity("power", drive.power(), Kind.POWER);
    }

    private static JsonText energy(Carriage.Energy energy) {
        return new JsonText()
                .quantity("capacity", energy.capacity(), Kind.ENERGY)
                .quantity("usableShare", energy.usableShare(), Kind.SHARE)
                .quantity("baseLoad", energy.baseLoad(), Kind.POWER)
                .flag("chargedAtNight", energy.chargedAtNight())
                .object("panels", energy.sun().map(p -> new JsonText()
                        .quantity("area", p.area(), Kind.AREA)
                        .quantity("efficiency", p.efficiency(), Kind.SHARE)));
    }
}
