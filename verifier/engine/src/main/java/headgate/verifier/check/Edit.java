package headgate.verifier.check;

import java.util.Map;

/**
 * A change to a case that would mend something: what a remedy consists of. It says what it changes in words, and it can
 * be applied, so that the changed case is judged by all rules before anybody is told of it.
 */
public interface Edit {

    /**
     * Applies the change.
     *
     * @param before the case
     * @return the changed case
     */
    Case apply(Case before);

    /** {@return what to do, in words with figures, beginning with a verb or a thing: "trim 14 mm at +y"} */
    String text();

    /** {@return the kind of change, in words joined by hyphens: "trim-head"} */
    String kind();

    /** {@return the change's figures for machine-readable reports, by name, SI, in the order of the names} */
    Map<String, Object> figures();
}
