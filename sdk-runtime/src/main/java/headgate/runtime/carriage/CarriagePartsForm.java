package headgate.runtime.carriage;

import headgate.runtime.form.CountForm;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FlagForm;
import headgate.runtime.form.Forms;
import headgate.runtime.form.ListForm;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.PairForm;
import headgate.runtime.form.QuantityForm;
import headgate.runtime.form.Shapes;
import headgate.runtime.form.TermForm;
import headgate.runtime.form.WordForm;
import headgate.runtime.quantity.Kind;
import headgate.runtime.text.Node;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What a carriage file may say beside its beams and arms: wheels, links, sensors, stances, stores, drive, energy. */
final class CarriagePartsForm {

    private static final PairForm EXTENT = Forms.interval(Forms.coordinate("-2 m"), "2 m");

    private static final ObjectForm POINT = ObjectForm.of("a point", "A point in the carriage frame.")
            .required("x", Forms.coordinate("0.4 m"), "Forward of the foremost beam's middle.")
            .required("y", Forms.coordinate("0 m"), "Left of the middle.")
            .required("z", Forms.coordinate("1.4 m"), "Over the ground.")
            .build();

    static final ObjectForm WHEEL = ObjectForm.of("a wheel", "A wheel and where it runs.")
            .required("name", Forms.text("left front"), "What it is.")
            .required("x", Forms.coordinate("0.95 m"), "Where its axle is along travel.")
            .required(
                    "y",
                    Forms.interval(Forms.coordinate("1.8 m"), "1.9 m"),
                    "Where the middle of its tyre may be set across travel, right-hand end first; twice the same if it"
                            + " cannot be moved.")
            .required(
                    "tyreWidth",
                    Forms.aboveZero(Kind.LENGTH, "2 m", "200 mm").usually("50 mm", "1 m"),
                    "Width of the tyre where it stands on the ground.")
            .required(
                    "fromSteeredPoint",
                    Forms.fromZero(Kind.LENGTH, "20 m", "1.6 m"),
                    "Distance along travel from the point that is steered along the row.")
            .optional(
                    "diameter",
                    Forms.aboveZero(Kind.LENGTH, "5 m", "700 mm").usually("200 mm", "2.5 m"),
                    "Outer diameter of the tyre. Left out, whether arms clear the wheel is undecided.")
            .optional(
                    "steering",
                    Forms.fromZero(Kind.ANGLE, "90 deg", "30 deg").usually("0 deg", "60 deg"),
                    "Largest angle to either side to which it is steered, about the middle of its tyre. Left out, it is not.")
            .build();

    private static final ObjectForm MEMBER = ObjectForm.of("a member", "An arm of a link group.")
            .required("arm", Forms.id("front-1"), "The arm's id.")
            .required("offset", Forms.coordinate("450 mm"), "Left of the group's set-point.")
            .build();

    static final ObjectForm LINK = ObjectForm.of(
                    "a link group",
                    "Arms that move as one: one set-point for all, locked while any of them is in contact.")
            .required("id", Forms.id("front-pair"), "Its id.")
            .required("members", Forms.list(MEMBER, 2, 50), "The arms.")
            .build();

    static final ObjectForm SENSOR = ObjectForm.of("a sensor", "A camera or another sensor that finds plants.")
            .required("id", Forms.id("camera-1"), "Its id.")
            .required("position", POINT, "Where it is.")
            .required("bandX", EXTENT, "The band that it sees on level ground along travel, rear end first.")
            .required("bandY", EXTENT, "The band that it sees on level ground across travel, right-hand end first.")
            .required(
                    "beams",
                    Forms.list(Forms.id("front"), 1, 20),
                    "The ids of the beams whose arms work on what it finds.")
            .required(
                    "frameRate",
                    Forms.aboveZero(Kind.FREQUENCY, "10000 Hz", "20 Hz").usually("0.5 Hz", "500 Hz"),
                    "Images a second.")
            .required(
                    "latency",
                    Forms.fromZero(Kind.TIME, "60 s", "120 ms").usually("1 ms", "5 s"),
                    "From an image to the plants in it.")
            .required(
                    "resolution",
                    Forms.fromZero(Kind.LENGTH, "1 m", "12 mm").usually("0.5 mm", "100 mm"),
                    "Distance below which two plants are seen as one.")
            .required(
                    "sigma",
                    Forms.fromZero(Kind.LENGTH, "1 m", "2 mm").usually("0.1 mm", "30 mm"),
                    "Standard deviation of a plant's position in the image, on the ground.")
            .build();

    static final ObjectForm ERRORS = ObjectForm.of(
                    "the position errors",
                    "How well the carriage knows where its tools are when a plant comes from the sensor to the tool:"
                            + " standard uncertainties.")
            .required(
                    "clock",
                    Forms.fromZero(Kind.TIME, "10 s", "3 ms").usually("0 s", "0.2 s"),
                    "Of the time between image and action.")
            .required("slip", Forms.share("1 %").usually("0 %", "20 %"), "Of the distance travelled, as a share of it.")
            .required("heading", angle("0.2 deg"), "Of the heading.")
            .required("pitch", angle("0.2 deg"), "Of the pitch.")
            .required("roll", angle("0.2 deg"), "Of the roll.")
            .optional(
                    "absolute",
                    Forms.fromZero(Kind.LENGTH, "100 m", "15 mm").usually("1 mm", "5 m"),
                    "Of the position on the ground. Left out, the carriage works by what it sees, not on a grid.")
            .build();

    private static final ObjectForm TURN = ObjectForm.of("a turn", "A turn by whole quarters about one axis.")
            .required("axis", WordForm.of("x", "y", "z"), "The axis: x forward, y left, z up.")
            .required("quarters", new CountForm(1, 3, 1), "Quarters of a full turn, right-handed.")
            .build();

    private static final ObjectForm POSE = ObjectForm.of("a pose", "Where an arm's mount is: first turned, then moved.")
            .required("arm", Forms.id("front-1"), "The arm's id.")
            .required("mount", POINT, "Where the mount's origin is.")
            .optional("turns", Forms.list(TURN, 0, 6), "Turns, in order. Left out, it only moves.")
            .optional(
                    "latched",
                    new FlagForm(true),
                    "True if the head's moving parts are held there. Left out, they are not.")
            .optional(
                    "way",
                    Forms.list(WordForm.of("x", "y", "z", "turn"), 0, 4),
                    "How the arm gets there from the shape before, one move after the other: along an axis, or turning where it"
                            + " stands. What is not named happens last, at once. Left out, all of it does: the mount goes"
                            + " straight, and turns as it goes.")
            .rule(List.of("way"), CarriagePartsForm::checkWay)
            .rule(List.of("way", "turns"), (pose, complaint) -> {
                if (pose.objects("turns").isEmpty()) {
                    checkNoTurn(pose, complaint);
                }
            })
            .build();

    private static final ListForm POSES = Forms.list(POSE, 1, 200);

    private static final ObjectForm RAIL = ObjectForm.of(
                    "a rail", "A rail that differs from the arm's own in a stance.")
            .required("arm", Forms.id("front-1"), "The arm's id.")
            .required("shift", EXTENT, "Rightmost and leftmost y of the mount.")
            .build();

    static final ObjectForm PART = ObjectForm.of("a part", "A part of the frame that does not move with an arm.")
            .required("name", Forms.text("left front leg"), "What it is.")
            .required("body", Shapes.BODY, "Its material, in the carriage frame.")
            .build();

    private static final ListForm MOVED_PARTS = Forms.list(PART, 1, 200);

    private static final ObjectForm STEP = ObjectForm.of("a step", "A shape between work and a stance.")
            .required("name", Forms.text("lift the outer arms"), "What happens.")
            .required("poses", POSES, "Where the arms are that have moved by then.")
            .optional(
                    "structure",
                    MOVED_PARTS,
                    "Parts of the frame, by their names at work, that are elsewhere by then. Left out, none is.")
            .build();

    private static final ObjectForm WHEEL_PLACE = ObjectForm.of("a wheel's place", "Where a wheel is in a stance.")
            .required("wheel", Forms.text("left front"), "The wheel's name.")
            .required("y", Forms.coordinate("1.35 m"), "Where the middle of its tyre is across travel.")
            .build();

    static final ObjectForm STANCE = ObjectForm.of(
                    "a stance", "A shape that the carriage takes, such as spread wide for work or folded for the road.")
            .required("name", Forms.text("road"), "What its maker calls it.")
            .required("use", WordForm.of("transport", "work"), "Whether it travels or works in it.")
            .optional("rails", Forms.list(RAIL, 1, 200), "Rails that differ from the arms' own. Left out, none does.")
            .optional(
                    "poses",
                    POSES,
                    "Where arms are that are not at their work place. Left out, all stay there, lifted.")
            .optional("steps", Forms.list(STEP, 1, 100), "The shapes between work and this stance, in order.")
            .optional(
                    "structure",
                    MOVED_PARTS,
                    "Parts of the frame, by their names at work, that are elsewhere in this stance, such as drawn in. Left"
                            + " out, none is.")
            .optional(
                    "wheels",
                    Forms.list(WHEEL_PLACE, 1, 40),
                    "Where wheels are that are not set as for work. Left out, all are.")
            .optional(
                    "suspensionTravel",
                    Forms.fromZero(Kind.LENGTH, "2 m", "60 mm").usually("0 mm", "500 mm"),
                    "How far the frame may come down on its suspension. Left out, it does not.")
            .build();

    static final ObjectForm STORE = ObjectForm.of(
                    "a store", "What the carriage carries for the heads and refills them from.")
            .required(
                    "kind",
                    new TermForm("what it holds", List.of("plugs", "water", "collected-weeds")),
                    "What it holds.")
            .required(
                    "capacity",
                    new NumberForm("0", "1000000", "2000"),
                    "How much it holds when full: a count, or litres for liquids.")
            .required("where", WordForm.of("anywhere", "headland"), "Where heads are refilled.")
            .required("allAtOnce", new FlagForm(false), "True if all heads are refilled at once, false if one by one.")
            .build();

    static final ObjectForm DRIVE = ObjectForm.of("the drive", "What moves the carriage.")
            .required(
                    "mass",
                    Forms.aboveZero(Kind.MASS, "100000 kg", "1400 kg").usually("30 kg", "30000 kg"),
                    "Mass ready for work, without heads.")
            .required("centre", POINT, "Its centre of mass.")
            .required(
                    "rollingResistance",
                    new NumberForm("0", "1", "0.08"),
                    "Resistance over weight on the field's ground.")
            .required("grip", new NumberForm("0.01", "2", "0.5"), "Largest pull over weight on the driven wheels.")
            .optional(
                    "drivenShare",
                    Forms.share("100 %"),
                    "Share of the weight on driven wheels. Left out, all wheels are driven.")
            .required(
                    "efficiency",
                    Forms.between(Kind.SHARE, "1 %", "100 %", "75 %"),
                    "Share of the motors' electric power that moves the carriage.")
            .required(
                    "power",
                    Forms.aboveZero(Kind.POWER, "1000 kW", "6 kW").usually("100 W", "300 kW"),
                    "Highest electric power of the motors.")
            .build();

    private static final ObjectForm PANELS = ObjectForm.of(
                    "the panels", "Panels that turn sunlight into electric energy.")
            .required("area", Forms.aboveZero(Kind.AREA, "1000 m2", "8 m2").usually("0.2 m2", "100 m2"), "Their area.")
            .required(
                    "efficiency",
                    Forms.share("16 %").usually("3 %", "30 %"),
                    "Share of the sun's energy that reaches the pack.")
            .build();

    static final ObjectForm ENERGY = ObjectForm.of("the energy", "Where the energy for a day comes from.")
            .required(
                    "capacity",
                    Forms.aboveZero(Kind.ENERGY, "10000 kWh", "20 kWh").usually("0.5 kWh", "1000 kWh"),
                    "Energy in the full pack.")
            .required("usableShare", Forms.share("80 %").usually("20 %", "100 %"), "Share of it that may be used.")
            .required(
                    "baseLoad",
                    Forms.fromZero(Kind.POWER, "100 kW", "180 W").usually("5 W", "10 kW"),
                    "Power that computers, lights and cooling take all the time.")
            .required("chargedAtNight", new FlagForm(true), "True if the pack is full every morning.")
            .optional("panels", PANELS, "Panels on the carriage. Left out, there are none.")
            .build();

    private CarriagePartsForm() {}

    private static QuantityForm angle(String example) {
        return Forms.fromZero(Kind.ANGLE, "20 deg", example).usually("0 deg", "5 deg");
    }

    /** The nodes that name parts of the frame in stances and their steps. */
    static List<Node> partNames(Fields file) {
        return file.deep("stances", "name").stream()
                .filter(name -> name.path().contains(".structure["))
                .toList();
    }

    /** The nodes that name wheels in stances. */
    static List<Node> wheelNames(Fields file) {
        return file.deep("stances", "wheel");
    }

    /** The nodes that name arms anywhere in links and stances. */
    static List<Node> armNames(Fields file) {
        return Stream.of("links", "stances")
                .flatMap(list -> file.deep(list, "arm").stream())
                .toList();
    }

    private static void checkWay(Fields pose, ObjectForm.Complaint complaint) {
        Set<String> moves = new HashSet<>();
        for (String move : pose.texts("way")) {
            if (!moves.add(move)) {
                complaint.at(
                        pose.node("way"), "\"" + move + "\" a second time", "each move once", "leave one of them out");
            }
        }
        if (!pose.has("turns")) {
            checkNoTurn(pose, complaint);
        }
    }

    private static void checkNoTurn(Fields pose, ObjectForm.Complaint complaint) {
        if (pose.texts("way").contains("turn")) {
            complaint.at(
                    pose.node("way"),
                    "\"turn\", where the pose has no turns",
                    "a turn only where \"turns\" names some",
                    "leave \"turn\" out, or add \"turns\"");
        }
    }
}
