package headgate.verifier.rules.safety;

import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code safety.standing-caution}: says with every verdict what it is not. */
public final class StandingCaution implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "safety.standing-caution",
            "A verdict is evidence for the people who decide, and decides nothing about safety",
            "A list of passes looks like a permission. It is a calculation on declared figures, and no more.",
            "Stands with every verdict, whatever the other rules find.",
            "Common practice, no source",
            Severity.CAUTION,
            "0.1.0",
            List.of());

    private static final String TEXT =
            "A pass holds in the declared model and its tolerances only; it is evidence for a licensed engineer and the local"
                    + " authority, and replaces neither. Before anybody works on a head: isolate the supply and keep it isolated,"
                    + " block raised arms, let stored energy run down, keep people away from arms that can move. A competent"
                    + " person assesses the risks of head and carriage together before first use and after each change.";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return List.of(Finding.of(INFO, "the whole case")
                .examined(Math.max(1, subject.heads().size()))
                .end(Outcome.CAUTION, TEXT));
    }
}
