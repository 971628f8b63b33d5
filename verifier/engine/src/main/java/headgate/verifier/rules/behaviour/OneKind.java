package headgate.verifier.rules.behaviour;

import headgate.runtime.answers.HeadKind;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code behaviour.one-kind}: the head is a spot head or a continuous head, and its sheet says the same. */
public final class OneKind implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.one-kind",
            "The head is either a spot head or a continuous head",
            "The carriage must know whether to hand it one plant at a time or to lower it into the row.",
            "The head's class implements exactly one of SpotHead and ContinuousHead; a spot head's sheet gives an action"
                    + " time, a continuous head's gives none.",
            "Contract of the head API",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> List.of(check(fitted)));
    }

    private static Finding check(FittedHead fitted) {
        HeadKind kind = fitted.head().answers().orElseThrow().kind();
        boolean timed = fitted.sheet().actionTime().isPresent();
        Finding.Builder finding = Finding.of(INFO, fitted.label()).examined(1);
        return switch (kind) {
            case BOTH ->
                finding.end(
                        Outcome.FAIL, "Its class implements SpotHead and ContinuousHead, but must implement only one.");
            case NEITHER ->
                finding.end(
                        Outcome.FAIL,
                        "Its class implements neither SpotHead nor ContinuousHead, but must implement one.");
            case SPOT ->
                timed
                        ? finding.end(Outcome.PASS, "It is a spot head, and its sheet gives an action time.")
                        : finding.end(
                                Outcome.FAIL,
                                "It is a spot head, but its sheet gives no action time: add the action time.");
            case CONTINUOUS ->
                timed
                        ? finding.end(
                                Outcome.FAIL,
                                "It is a continuous head, but its sheet gives an action time: leave it out.")
                        : finding.end(Outcome.PASS, "It is a continuous head, and its sheet gives no action time.");
        };
    }
}
