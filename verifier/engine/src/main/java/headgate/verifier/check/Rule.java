package headgate.verifier.check;

import java.util.List;

/** One rule: a pure function of a case. */
public interface Rule {

    /** {@return what is known about it without running it; always the same} */
    RuleInfo info();

    /**
     * Looks at a case.
     *
     * @param subject the case
     * @return what was found, worst first; never empty
     */
    List<Finding> check(Case subject);
}
