package headgate.verifier.judge;

import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.setup.Setup;
import java.util.List;

/**
 * What a check of a case comes to.
 *
 * @param subject the case
 * @param setup the set-points that were chosen
 * @param findings all findings, in the order of the rule book
 * @param verdict the verdict
 * @param limits what must be kept during work; empty unless it fits
 * @param faults rules that broke; the verdict does not count if there is one
 */
public record Judgement(
        Case subject,
        Setup setup,
        List<JudgedFinding> findings,
        Verdict verdict,
        List<Limit> limits,
        List<RuleFault> faults) {

    /** Copies the lists. */
    public Judgement {
        findings = List.copyOf(findings);
        limits = List.copyOf(limits);
        faults = List.copyOf(faults);
    }

    /**
     * The findings of one rule.
     *
     * @param ruleId the rule
     * @return its findings, worst first
     */
    public List<Finding> of(String ruleId) {
        return findings.stream()
                .map(JudgedFinding::finding)
                .filter(f -> f.rule().id().equals(ruleId))
                .toList();
    }
}
