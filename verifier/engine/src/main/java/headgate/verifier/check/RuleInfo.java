package headgate.verifier.check;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What is known about a rule without running it.
 *
 * @param id {@code family.name}, never used again for another rule
 * @param title what must hold, as a statement, without full stop
 * @param why why it matters to whoever fits the head
 * @param how how it is decided, with the formula in words or symbols
 * @param source where the limit or the model comes from, or "common practice, no source"
 * @param severity what a failure means
 * @param since the first version of the rule book that has it
 * @param needs ids of rules that must not have failed for this one to mean anything
 */
public record RuleInfo(
        String id,
        String title,
        String why,
        String how,
        String source,
        Severity severity,
        String since,
        List<String> needs) {

    private static final Pattern FORM = Pattern.compile("[a-z]+\\.[a-z][a-z0-9]*(-[a-z0-9]+)*");

    /**
     * Checks the id's form and copies the list.
     *
     * @throws IllegalArgumentException if the id has another form or names no family
     */
    public RuleInfo {
        if (!FORM.matcher(id).matches()) {
            throw new IllegalArgumentException("a rule's id must have the form family.name, but is " + id);
        }
        familyOf(id);
        needs = List.copyOf(needs);
    }

    /** {@return the family that the rule belongs to} */
    public Family family() {
        return familyOf(id);
    }

    private static Family familyOf(String id) {
        String prefix = id.substring(0, id.indexOf('.'));
        return Arrays.stream(Family.values())
                .filter(f -> f.id().equals(prefix))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no family named " + prefix));
    }
}
