package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.contact-labels}: the contact of each phase is not milder than its shape. */
public final class ContactLabels implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.contact-labels",
            "The contact that each phase names is not milder than its shape says",
            "Whether an arm may shift or lift is decided by contact. A phase that calls itself free"
                    + " with its fingers in the soil would be torn out.",
            "The lowest material of the posture at the tool point is compared with the ground: whatever reaches below it is in"
                    + " the soil, and the label must say so. The canopy is a matter of the crop plan, which a head does not know:"
                    + " clearance.work-height keeps the head over it.",
            "Contract of the head API",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.total"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return Examination.of(subject, INFO, Trait.HONEST_CONTACT);
    }
}
