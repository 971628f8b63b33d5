package headgate.runtime.policy;

import headgate.runtime.form.FileKind;
import headgate.runtime.form.Form;
import headgate.runtime.form.Forms;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.quantity.Kind;

/** What a policy file may hold. */
final class PolicyForm {

    private static final ObjectForm LIMITS = ObjectForm.of("the limits", "The limits that a case is held to.")
            .required("armGap", limit(length("25 mm")), "Least gap between two arms after all tolerances.")
            .required("canopyGap", limit(length("30 mm")), "Least gap from a lifted or ready head to the canopy.")
            .required(
                    "coverageFactor",
                    limit(new NumberForm("1", "6", "2")),
                    "The factor k that turns a standard deviation into a bound.")
            .required("massUse", limit(Forms.share("90 %")), "Largest share of an arm's payload that a head may use.")
            .required(
                    "momentUse",
                    limit(Forms.share("90 %")),
                    "Largest share of an arm's moment limits that a head may use.")
            .build();

    static final ObjectForm.Builder FORM = FileKind.form(
                    "policy", 1, "a policy", "The limits that a case is held to, each with its source.")
            .required("name", Forms.text("Lowfield workshop rules"), "What those who decided it call it.")
            .required("limits", LIMITS, "The limits.");

    private PolicyForm() {}

    private static Form length(String example) {
        return Forms.fromZero(Kind.LENGTH, "1 m", example);
    }

    private static ObjectForm limit(Form value) {
        return ObjectForm.of("a limit", "A limit, and where it comes from.")
                .required("value", value, "The limit.")
                .required(
                        "source",
                        Forms.text("common practice, no source"),
                        "Where it comes from: a published source, common practice, or who decided it.")
                .build();
    }
}
