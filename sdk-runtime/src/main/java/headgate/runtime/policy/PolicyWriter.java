package headgate.runtime.policy;

import headgate.runtime.form.JsonText;
import headgate.runtime.form.QuantityForm;

/** Writes policy files, with every limit. What is written reads back as an equal policy. */
public final class PolicyWriter {

    private PolicyWriter() {}

    /**
     * Writes a policy.
     *
     * @param name what those who decided it call it
     * @param policy the policy
     * @return the text of its file
     */
    public static String text(String name, Policy policy) {
        JsonText limits = new JsonText();
        for (String limitName : Policy.names()) {
            Policy.Limit limit = policy.limit(limitName);
            JsonText object = new JsonText();
            if (PolicyForm.valueOf(limitName) instanceof QuantityForm quantity) {
                object.quantity("value", limit.value(), quantity.kind());
            } else {
                object.number("value", limit.value());
            }
            limits.object(limitName, object.text("source", limit.source()));
        }
        return JsonText.file("headgate.policy/1")
                .text("name", name)
                .object("limits", limits)
                .toString();
    }
}
