package headgate.runtime.carriage;

import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.Forms;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.PairForm;
import headgate.runtime.form.QuantityForm;
import headgate.runtime.form.Rules;
import headgate.runtime.form.Shapes;
import headgate.runtime.form.TermForm;
import headgate.runtime.form.TextForm;
import headgate.runtime.quantity.Kind;
import java.util.List;

/** What a carriage file may hold. */
final class CarriageForm {

    /** Shorter vectors would lose their direction to rounding. */
    private static final double LEAST_VECTOR = 1e-6;

    private static final QuantityForm ANGLE =
            Forms.fromZero(Kind.ANGLE, "45 deg", "2 deg").usually("0 deg", "15 deg");
    private static final QuantityForm REACTION =
            Forms.fromZero(Kind.TIME, "10 s", "0.2 s").usually("0.01 s", "2 s");
    private static final PairForm RAIL = Forms.interval(Forms.coordinate("-1.6 m"), "-1.2 m");
    private static final PairForm LIFT =
            Forms.interval(Forms.fromZero(Kind.LENGTH, "5 m", "350 mm").usually("50 mm", "2 m"), "950 mm");

    private static final ObjectForm BEAM = ObjectForm.of("a beam", "A lateral bar that carries arms.")
            .required("id", Forms.id("front"), "Its id; arms refer to it.")
            .required(
                    "x",
                    Forms.coordinate("-1.4 m"),
                    "Where the mounts of its arms are along travel: 0 for the foremost beam, less for one behind it.")
            .build();

    private static final ObjectForm MOTION = ObjectForm.of(
                    "a motion", "How one axis moves from rest to rest: it speeds up, runs, and slows down.")
            .required(
                    "speed",
                    Forms.aboveZero(Kind.SPEED, "10 m/s", "0.5 m/s").usually("0.02 m/s", "3 m/s"),
                    "Highest speed.")
            .required(
                    "acceleration",
                    Forms.aboveZero(Kind.ACCELERATION, "100 m/s2", "2 m/s2").usually("0.1 m/s2", "20 m/s2"),
                    "While speeding up.")
            .required(
                    "deceleration",
                    Forms.aboveZero(Kind.ACCELERATION, "100 m/s2", "2 m/s2").usually("0.1 m/s2", "20 m/s2"),
                    "While slowing down; a positive figure.")
            .required(
                    "overshoot",
                    Forms.fromZero(Kind.LENGTH, "0.5 m", "2 mm").usually("0 mm", "30 mm"),
                    "How far it may run past its set-point.")
            .build();

    private static final ObjectForm TOLERANCE = ObjectForm.of(
                    "a tolerance", "How far the mount may be from where it is set, across travel.")
            .required("backlash", small("1 mm"), "Play of the side shift.")
            .required("tracking", small("2 mm"), "Largest difference of measured and set position.")
            .required("sigma", small("0.5 mm"), "Standard deviation of the position.")
            .required(
                    "angularPlay",
                    Forms.fromZero(Kind.ANGLE, "20 deg", "0.2 deg").usually("0 deg", "3 deg"),
                    "Play of the mount about its axes, to either side.")
            .required(
                    "stiffness",
                    Forms.aboveZero(Kind.STIFFNESS, "100000 kN/m", "80 N/mm").usually("1 N/mm", "5000 N/mm"),
                    "Sideways stiffness of arm and beam at the mount.")
            .build();

    private static final ObjectForm PAYLOAD = ObjectForm.of("a payload", "What an arm can carry.")
            .required(
                    "mass",
                    Forms.aboveZero(Kind.MASS, "1000 kg", "25 kg").usually("1 kg", "200 kg"),
                    "Largest mass of a head.")
            .required("momentX", moment(), "Largest static moment about the mount's x axis, which points forward.")
            .required("momentY", moment(), "Largest static moment about the mount's y axis, which points left.")
            .required("momentZ", moment(), "Largest moment about the mount's z axis, which points up.")
            .build();

    private static final ObjectForm CONNECTOR = ObjectForm.of(
                    "a connector", "A connection that the arm offers to a head.")
            .required(
                    "kind",
                    new TermForm("what it carries", List.of("electric", "data", "pneumatic", "hydraulic", "water")),
                    "What it carries.")
            .required(
                    "designation",
                    new TextForm("its form as the trade writes it", "^(?=.*\\S)[\\s\\S]+$", 60, "M12-L 5-pole 24 V"),
                    "Its form as the trade writes it. A head's connector fits if kind and designation are the same.")
            .build();

    private static final ObjectForm SUPPLY = ObjectForm.of(
                    "a supply", "The electric power that the arm gives to a head.")
            .required("continuous", power("150 W"), "Mean power that it can give for as long as needed.")
            .required("peak", power("300 W"), "Highest power, for a second or so.")
            .rule(List.of("continuous", "peak"), (fields, complaint) -> {
                if (fields.si("peak") < fields.si("continuous")) {
                    complaint.at(fields.node("peak"), fields.node("peak").found(), "at least the continuous power", "");
                }
            })
            .build();

    private static final ObjectForm LIFT_POINT = ObjectForm.of(
                    "a lift point",
                    "Where the mount of a lift that swings is at one height; straight between two of them.")
            .required("height", Forms.fromZero(Kind.LENGTH, "5 m", "350 mm"), "Height of the mount over level ground.")
            .required("forward", Forms.coordinate("40 mm"), "Forward of the beam's x.")
            .build();

    private static final ObjectForm FOLLOWING = ObjectForm.of(
                    "the following", "How a lift follows the ground by itself.")
            .required("error", small("8 mm"), "Largest difference from the height over the ground that it should hold.")
            .required(
                    "speed",
                    Forms.aboveZero(Kind.SPEED, "10 m/s", "0.3 m/s").usually("0.01 m/s", "3 m/s"),
                    "Highest vertical speed at which it follows.")
            .required(
                    "acceleration",
                    Forms.aboveZero(Kind.ACCELERATION, "100 m/s2", "2 m/s2").usually("0.1 m/s2", "20 m/s2"),
                    "Highest vertical acceleration at which it follows.")
            .required(
                    "force",
                    Forms.fromZero(Kind.FORCE, "100 kN", "150 N").usually("0 N", "5 kN"),
                    "Downward force on the head's support.")
            .build();

    private static final NumberForm SHARE_OF_VECTOR = new NumberForm("-1000", "1000", "0");

    private static final ObjectForm DIRECTION = ObjectForm.of("a direction", "A vector of any length but 0.")
            .required("x", SHARE_OF_VECTOR, "Its share forward.")
            .required("y", SHARE_OF_VECTOR, "Its share to the left.")
            .required("z", new NumberForm("-1000", "1000", "-1"), "Its share upward.")
            .rule(List.of("x", "y", "z"), (fields, complaint) -> {
                if (Math.abs(fields.si("x")) + Math.abs(fields.si("y")) + Math.abs(fields.si("z")) < LEAST_VECTOR) {
                    complaint.at(fields.node(), "a vector of no length", "at least one share that is not 0", "");
                }
            })
            .build();

    private static final ObjectForm ARM_TYPE = ObjectForm.of("an arm type", "What arms of one build have in common.")
            .required("id", Forms.id("standard"), "Its id; arms refer to it.")
            .required("lift", LIFT, "The lift: least and largest height of the mount over level ground.")
            .required("shiftMotion", MOTION, "How the side shift moves.")
            .required("liftMotion", MOTION, "How the lift moves.")
            .required("tolerance", TOLERANCE, "How far the mount may be from where it is set.")
            .required("payload", PAYLOAD, "What it can carry.")
            .required(
                    "plate",
                    new TextForm(
                            "a plate of ISO 9409-1",
                            "^9409-1-[1-9][0-9]{0,2}(\\.[0-9])?-([3-9]|[1-9][0-9])-M[1-9][0-9]?$",
                            30,
                            "9409-1-50-4-M6"),
                    "The plate at its mount, by its designation in ISO 9409-1: pitch circle in mm, number of holes, thread.")
            .required("connectors", Forms.list(CONNECTOR, 0, 20), "What it offers to a head.")
            .required("supply", SUPPLY, "The electric power that it gives.")
            .required(
                    "body",
                    Shapes.BODY,
                    "The arm's own material that moves with the mount, placed for a mount at x = y = z = 0.")
            .optional(
                    "column",
                    Shapes.BODY,
                    "The arm's own material that moves with the side shift but not with the lift, placed for a mount at"
                            + " y = 0 on a beam at x = 0. Left out, there is none.")
            .optional(
                    "liftPath",
                    Forms.list(LIFT_POINT, 2, 100),
                    "How the mount moves along travel as it is lifted, from low to high. Left out, straight up.")
            .optional(
                    "following", FOLLOWING, "How the lift follows the ground by itself. Left out, it holds its height.")
            .optional("plateNormal", DIRECTION, "Where the plate faces, in the head frame. Left out, straight down.")
            .rule(List.of("lift", "liftPath"), CarriageForm::checkLiftPath)
            .build();

    private static final ObjectForm ARM = ObjectForm.of("an arm", "A station on a beam.")
            .required("id", Forms.id("front-1"), "Its id; fittings and reports refer to it.")
            .required("beam", Forms.id("front"), "The id of its beam.")
            .required("type", Forms.id("standard"), "The id of its arm type.")
            .required("shift", RAIL, "The side shift's rail: rightmost and leftmost y of the mount.")
            .build();

    private static final ObjectForm GROUND = ObjectForm.of(
                    "the ground motion", "How the ground under an arm moves against the frame.")
            .required("roll", ANGLE, "Largest roll of the frame against the ground, to either side.")
            .required("pitch", ANGLE, "Largest pitch of the frame against the ground, to either side.")
            .required(
                    "wheelSink",
                    Forms.fromZero(Kind.LENGTH, "1 m", "10 mm").usually("0 mm", "150 mm"),
                    "How far the wheels sink.")
            .build();

    private static final ObjectForm STOPPING = ObjectForm.of("the stopping", "How the carriage stops.")
            .required("reactionTime", REACTION, "From the command to braking.")
            .required(
                    "deceleration",
                    Forms.aboveZero(Kind.ACCELERATION, "20 m/s2", "1.5 m/s2").usually("0.2 m/s2", "10 m/s2"),
                    "While braking; a positive figure.")
            .build();

    private static final ObjectForm TURNING = ObjectForm.of("the turning", "What a turn on the headland costs.")
            .required(
                    "turnTime",
                    Forms.fromZero(Kind.TIME, "1 h", "30 s").usually("5 s", "10 min"),
                    "One turn, from the last row worked to the next.")
            .required(
                    "liftTime",
                    Forms.fromZero(Kind.TIME, "1 h", "3 s").usually("0 s", "60 s"),
                    "Lifting and lowering that does not overlap the turn.")
            .build();

    static final ObjectForm.Builder FORM = FileKind.form(
                    "carriage",
                    1,
                    "a carriage",
                    "The machine that carries the arms. Axes: x forward in travel, y left, z up; origin on the ground under"
                            + " the middle of the foremost beam.")
            .required("name", Forms.text("Lowfield carrier"), "What its maker calls it.")
            .required("serial", Forms.text("LF-0001"), "Its serial number.")
            .required("beams", Forms.list(BEAM, 1, 20), "The lateral bars, front to rear.")
            .required("armTypes", Forms.list(ARM_TYPE, 1, 40), "What arms of one build have in common.")
            .required("arms", Forms.list(ARM, 1, 200), "The stations on the beams.")
            .optional(
                    "structure",
                    Forms.list(CarriagePartsForm.PART, 0, 200),
                    "Parts of the frame that do not move with an arm. Left out, whether arms clear the frame is undecided.")
            .required("ground", GROUND, "How the ground under an arm moves against the frame.")
            .required("stopping", STOPPING, "How the carriage stops.")
            .required("turning", TURNING, "What a turn on the headland costs.")
            .optional(
                    "wheels",
                    Forms.list(CarriagePartsForm.WHEEL, 1, 40),
                    "Its wheels. Left out, tyres are not checked against rows.")
            .optional(
                    "links",
                    Forms.list(CarriagePartsForm.LINK, 1, 100),
                    "Groups of arms that move as one. Left out, every arm moves by itself.")
            .optional(
                    "sensors",
                    Forms.list(CarriagePartsForm.SENSOR, 1, 100),
                    "What finds the plants. Left out, what depends on sensors is undecided.")
            .optional(
                    "errors",
                    CarriagePartsForm.ERRORS,
                    "How well it knows where its tools are. Left out, accuracy is undecided.")
            .optional(
                    "stances",
                    Forms.list(CarriagePartsForm.STANCE, 1, 20),
                    "The shapes that it takes beside plain work. Left out, the road is undecided.")
            .optional(
                    "stores",
                    Forms.list(CarriagePartsForm.STORE, 1, 40),
                    "What it carries for the heads. Left out, heads are refilled by hand, anywhere, one by one.")
            .optional("drive", CarriagePartsForm.DRIVE, "What moves it. Left out, traction is undecided.")
            .optional("energy", CarriagePartsForm.ENERGY, "Where its energy comes from. Left out, a day is undecided.")
            .rule(List.of(), CarriageForm::checkNames);

    private CarriageForm() {}

    private static QuantityForm small(String example) {
        return Forms.fromZero(Kind.LENGTH, "0.5 m", example).usually("0 mm", "30 mm");
    }

    private static QuantityForm moment() {
        return Forms.aboveZero(Kind.MOMENT, "100000 N m", "60 N m").usually("2 N m", "5000 N m");
    }

    private static QuantityForm power(String example) {
        return Forms.fromZero(Kind.POWER, "100 kW", example).usually("10 W", "10 kW");
    }

    private static void checkNames(Fields file, ObjectForm.Complaint complaint) {
        Rules.distinct(file, "beams", "id", complaint);
        Rules.distinct(file, "armTypes", "id", complaint);
        Rules.distinct(file, "arms", "id", complaint);
        Rules.known(file.column("arms", "beam"), Rules.names(file, "beams", "id"), "the id of a beam", complaint);
        Rules.known(
                file.column("arms", "type"), Rules.names(file, "armTypes", "id"), "the id of an arm type", complaint);
        Rules.distinct(file, "links", "id", complaint);
        Rules.distinct(file, "sensors", "id", complaint);
        Rules.distinct(file, "stances", "name", complaint);
        Rules.known(CarriagePartsForm.armNames(file), Rules.names(file, "arms", "id"), "the id of an arm", complaint);
        Rules.known(
                CarriagePartsForm.partNames(file),
                Rules.names(file, "structure", "name"),
                "the name of a part of the structure",
                complaint);
        Rules.known(
                CarriagePartsForm.wheelNames(file),
                Rules.names(file, "wheels", "name"),
                "the name of a wheel",
                complaint);
        Rules.known(
                file.deepItems("sensors", "beams"), Rules.names(file, "beams", "id"), "the id of a beam", complaint);
    }

    private static void checkLiftPath(Fields type, ObjectForm.Complaint complaint) {
        List<Fields> path = type.objects("liftPath");
        for (int i = 1; i < path.size(); i++) {
            if (path.get(i).si("height") <= path.get(i - 1).si("height")) {
                complaint.at(
                        path.get(i).node("height"),
                        path.get(i).node("height").found(),
                        "more than the height before it",
                        "put the points in order, from low to high");
            }
        }
        List<Double> lift = type.pair("lift");
        if (path.get(0).si("height") > lift.get(0) || path.get(path.size() - 1).si("height") < lift.get(1)) {
            complaint.at(
                    type.node("liftPath"),
                    "points that do not span the lift",
                    "a path from the lift's bottom to its top",
                    "");
        }
    }
}
