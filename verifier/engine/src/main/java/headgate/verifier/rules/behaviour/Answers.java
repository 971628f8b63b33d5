package headgate.verifier.rules.behaviour;

import headgate.runtime.answers.HeadFault;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;
import java.util.Locale;

/** {@code behaviour.answers}: the head starts in a process of its own and gives its sheet. */
public final class Answers implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.answers",
            "The head starts and gives its sheet",
            "A head that does not start on the desk does not start in the field either, and without a sheet nothing else"
                    + " can be checked.",
            "The head runs in a process of its own, with bounds on time, memory, stack and output. It is loaded, and asked"
                    + " for its sheet. Whatever happens instead is one finding: an exit, an exception, no answer in time.",
            "Contract of the head API; the bounds are common practice, no source",
            Severity.ERROR,
            "0.1.0",
            List.of("package.manifest", "package.self-contained"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        List<Finding> findings = subject.heads().stream().map(Answers::check).toList();
        return findings.isEmpty()
                ? List.of(Finding.undecided(INFO, "all heads", "No arm carries a head: give at least one head."))
                : findings;
    }

    private static Finding check(HeadUnderTest head) {
        if (head.run() instanceof HeadUnderTest.Run.Broke broke) {
            return ofFault(head, broke.fault());
        }
        if (head.run() instanceof HeadUnderTest.Run.NotRun not) {
            return Finding.undecided(
                    INFO,
                    head.label(),
                    "The head was not run, because " + not.because() + ", so nobody knows its sheet.");
        }
        return Finding.of(INFO, head.label())
                .examined(1)
                .end(
                        Outcome.PASS,
                        "It started and gave the sheet of hardware revision "
                                + head.sheet().orElseThrow().hardwareRevision() + ".");
    }

    /** A process that did not come up says nothing of the head. */
    private static Finding ofFault(HeadUnderTest head, HeadFault fault) {
        String sentence = fault.sentence();
        String text = sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1) + ".";
        return fault instanceof HeadFault.StartFailed
                ? Finding.undecided(INFO, head.label(), text)
                : Finding.of(INFO, head.label()).examined(1).end(Outcome.FAIL, text);
    }
}
