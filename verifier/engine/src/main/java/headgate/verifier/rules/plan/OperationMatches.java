package headgate.verifier.rules.plan;

import headgate.api.vocabulary.Operation;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.setup.Working;
import java.util.List;

/** {@code plan.operation}: the head does what the plan wants done. */
public final class OperationMatches implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "plan.operation",
            "The head does the operation that the crop plan wants",
            "Every other figure of the plan is about that operation: checked against another one it means nothing.",
            "The operation on the head's sheet and the one that the plan wants are the same term.",
            "Definition of the terms in the head API",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> List.of(check(subject, fitted)));
    }

    private static Finding check(Case subject, FittedHead fitted) {
        CropPlan plan = subject.plan().value();
        Operation does = fitted.sheet().operation();
        Operation wanted = plan.wanted().operation();
        String start = "The plan \"" + plan.name() + "\" wants " + wanted;
        if (!Working.includes(subject, fitted)) {
            return Finding.notApplicable(
                    INFO, fitted.label(), start + ": this head does " + does + ", so it waits lifted meanwhile.");
        }
        Finding.Builder finding = Finding.of(INFO, fitted.label())
                .field("crop-plan:wanted.operation")
                .examined(1);
        return does.equals(wanted)
                ? finding.end(Outcome.PASS, start + ", which is what the head does.")
                : finding.end(Outcome.FAIL, start + ", but the head does " + does + ".");
    }
}
