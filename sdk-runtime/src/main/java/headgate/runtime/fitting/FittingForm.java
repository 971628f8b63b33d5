package headgate.runtime.fitting;

import headgate.runtime.form.CountForm;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.FlagForm;
import headgate.runtime.form.Forms;
import headgate.runtime.form.ListForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.Rules;
import headgate.runtime.form.TextForm;
import headgate.runtime.quantity.Kind;
import headgate.runtime.text.Node;
import java.util.List;

/** What a fitting file may hold. */
final class FittingForm {

    private static final ListForm LANES = Forms.list(new CountForm(1, 200, 3), 0, 3);

    private static final ObjectForm HEAD = ObjectForm.of("a head", "A head that the fitting uses.")
            .required("id", Forms.id("gripper"), "What this file calls it; arms refer to it.")
            .required("package", file("../heads/gripper.jar"), "The file of its package, relative to this file.")
            .optional(
                    "count",
                    new CountForm(1, 200, 4),
                    "How many of it are at hand. Left out, there is one for every arm.")
            .build();

    private static final ObjectForm ARM = ObjectForm.of("an arm", "An arm that carries a head.")
            .required("arm", Forms.id("front-1"), "The arm's id in the carriage file.")
            .required("head", Forms.id("gripper"), "What this file calls the head.")
            .optional(
                    "turned",
                    new FlagForm(true),
                    "True if the head is turned by 180 degrees about the vertical axis. Left out, it is not.")
            .optional(
                    "waits",
                    new FlagForm(true),
                    "True if it waits lifted. Left out, it works where that is best, or waits if it is not needed.")
            .optional(
                    "lanes",
                    LANES,
                    "The lanes that it serves, from 1 at the right-hand side. Left out, that is left to the program.")
            .optional(
                    "shares",
                    new FlagForm(true),
                    "True if an arm of another beam that says so too serves the same lanes. Left out, its lanes are its own.")
            .rule(List.of("shares"), (fields, complaint) -> {
                if (fields.flagOr("shares", false) && !fields.has("lanes")) {
                    complaint.at(
                            fields.node("shares"),
                            "an arm that shares lanes, without lanes",
                            "the lanes that it shares",
                            "add lanes, or leave shares out");
                }
            })
            .rule(List.of("waits", "lanes"), (fields, complaint) -> {
                if (fields.flagOr("waits", false) && !fields.items("lanes").isEmpty()) {
                    complaint.at(
                            fields.node("lanes"),
                            "lanes for an arm that waits",
                            "either lanes or waits",
                            "leave one of the two out");
                }
            })
            .rule(List.of("lanes"), (fields, complaint) -> {
                List<Node> lanes = fields.items("lanes");
                for (int i = 1; i < lanes.size(); i++) {
                    if (lane(lanes.get(i)) != lane(lanes.get(i - 1)) + 1) {
                        complaint.at(
                                lanes.get(i),
                                lanes.get(i).found(),
                                "the lane next to the one before",
                                "a head serves lanes that lie beside each other; name them from the right to the left");
                    }
                }
            })
            .build();

    static final ObjectForm.Builder FORM = FileKind.form(
                    "fitting",
                    1,
                    "a fitting",
                    "Which head is on which arm of a carriage, for a crop plan. Arms that it does not name are empty.")
            .required("name", Forms.text("Grippers in front, planters behind"), "What the integrator calls it.")
            .required("carriage", file("carriage.json"), "The carriage's file, relative to this file.")
            .required("cropPlan", file("celeriac-60-weeding.json"), "The crop plan's file, relative to this file.")
            .optional("policy", file("policy.json"), "The limits' file. Left out, the built-in limits hold.")
            .required("heads", Forms.list(HEAD, 1, 40), "The heads that it uses.")
            .required("arms", Forms.list(ARM, 0, 200), "The arms that carry a head. A search may begin with none.")
            .optional(
                    "spacings",
                    Forms.list(Forms.between(Kind.LENGTH, "50 mm", "5 m", "500 mm"), 0, 50),
                    "Other row spacings that it shall serve too. Left out, only that of the crop plan is looked at.")
            .rule(List.of(), FittingForm::checkNames);

    private FittingForm() {}

    private static TextForm file(String example) {
        return new TextForm("the name of a file", "^(?=.*\\S)[^\\x00-\\x1f]+$", 1000, example);
    }

    /** Arms and lanes are compared with the carriage and the plan later, so that all that is wrong with them is said at once. */
    private static void checkNames(Fields file, ObjectForm.Complaint complaint) {
        Rules.distinct(file, "heads", "id", complaint);
        Rules.known(file.column("arms", "head"), Rules.names(file, "heads", "id"), "the id of a head", complaint);
    }

    private static int lane(Node node) {
        return ((Node.Numeral) node).value().intValue();
    }
}
