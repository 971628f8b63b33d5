package headgate.runtime.policy;

import headgate.runtime.form.CountForm;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.Form;
import headgate.runtime.form.Forms;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.quantity.Kind;

/** What a policy file may hold. */
final class PolicyForm {

    private static final ObjectForm LIMITS = ObjectForm.of(
                    "the limits",
                    "The limits that differ from the built-in policy. A limit left out is the built-in one.")
            .optional("armGap", limit("armGap", length("25 mm")), "Least gap between two arms after all tolerances.")
            .optional(
                    "canopyGap",
                    limit("canopyGap", length("30 mm")),
                    "Least gap from a lifted or ready head to the canopy.")
            .optional(
                    "coverageFactor",
                    limit("coverageFactor", new NumberForm("1", "6", "2")),
                    "The factor k that turns a standard deviation into a bound.")
            .optional(
                    "massUse",
                    limit("massUse", Forms.share("90 %")),
                    "Largest share of an arm's payload that a head may use.")
            .optional(
                    "momentUse",
                    limit("momentUse", Forms.share("90 %")),
                    "Largest share of an arm's moment limits that a head may use.")
            .optional(
                    "frameGap",
                    limit("frameGap", length("25 mm")),
                    "Least gap from an arm or a head to the frame after all tolerances.")
            .optional("groundGap", limit("groundGap", length("50 mm")), "Least gap from a lifted head to the ground.")
            .optional("wheelGap", limit("wheelGap", length("40 mm")), "Least gap from a tyre to the canopy.")
            .optional(
                    "shockAtWork",
                    limit("shockAtWork", new NumberForm("1", "20", "1.5")),
                    "Factor on weight for shocks at work.")
            .optional(
                    "shockInTransport",
                    limit("shockInTransport", new NumberForm("1", "20", "3")),
                    "Factor on weight for shocks on the road.")
            .optional(
                    "boltUse",
                    limit("boltUse", Forms.share("50 %")),
                    "Largest share of a bolt's proof load that may be used.")
            .optional(
                    "powerUse",
                    limit("powerUse", Forms.share("90 %")),
                    "Largest share of an arm's electric supply that a head may use.")
            .optional(
                    "sensorShadow",
                    limit("sensorShadow", Forms.share("5 %")),
                    "Largest share of a sensor's band that a head may hide.")
            .optional(
                    "cropLoss",
                    limit("cropLoss", Forms.share("2 %")),
                    "Largest share of crop plants that may be lost, if the crop plan does not say.")
            .optional(
                    "confidence",
                    limit("confidence", Forms.between(Kind.SHARE, "50 %", "99.99 %", "95 %")),
                    "Level of confidence of a bound over seeds.")
            .optional(
                    "transportWidth",
                    limit("transportWidth", Forms.aboveZero(Kind.LENGTH, "20 m", "3 m")),
                    "Largest width on the road.")
            .optional(
                    "transportHeight",
                    limit("transportHeight", Forms.aboveZero(Kind.LENGTH, "20 m", "4 m")),
                    "Largest height on the road.")
            .optional(
                    "transportGroundGap",
                    limit("transportGroundGap", length("250 mm")),
                    "Least gap to the ground on the road.")
            .optional(
                    "armsInTurn",
                    limit("armsInTurn", new CountForm(1, 100, 2)),
                    "Most arms that may have to wait for one another so as not to meet; 1 allows no interlocks.")
            .build();

    static final ObjectForm.Builder FORM = FileKind.form(
                    "policy", 1, "a policy", "The limits that a case is held to, each with its source.")
            .required("name", Forms.text("Lowfield workshop rules"), "What those who decided it call it.")
            .required("limits", LIMITS, "The limits.");

    private PolicyForm() {}

    /** What the value of a limit may be. */
    static Form valueOf(String limit) {
        return field((ObjectForm) field(LIMITS, limit), "value");
    }

    private static Form field(ObjectForm object, String name) {
        return object.fields().stream()
                .filter(field -> field.name().equals(name))
                .findFirst()
                .orElseThrow()
                .form();
    }

    private static Form length(String example) {
        return Forms.fromZero(Kind.LENGTH, "1 m", example);
    }

    private static ObjectForm limit(String name, Form value) {
        return ObjectForm.of("the limit " + name, "A limit, and where it comes from.")
                .required("value", value, "The limit.")
                .required(
                        "source",
                        Forms.text("common practice, no source"),
                        "Where it comes from: a published source, common practice, or who decided it.")
                .build();
    }
}
