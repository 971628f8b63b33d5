package headgate.verifier.rules.behaviour;

import headgate.runtime.answers.HeadAnswers;
import headgate.verifier.behaviour.Behaviour;
import headgate.verifier.behaviour.ProbeRun;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.RowBehaviour;
import headgate.verifier.behaviour.Tally;
import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** {@code behaviour.pure}: the same task gets the same answer, in any order and from any instance. */
public final class Pure implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "behaviour.pure",
            "The same task gets the same answer, in any order and from any instance",
            "What was checked on the desk must be what happens in the field: there another instance is asked other tasks"
                    + " before this one.",
            "Every task of behaviour.total is asked again, last first, of another instance in a process of its own, where"
                    + " unordered sets run the other way and language, time zone, assertions, heap and processors are"
                    + " others. Figures agree to a relative 1e-9 and coordinates to a micrometre, words exactly; the two"
                    + " sheets are equal.",
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
        return FittedHead.each(subject, INFO, Pure::check);
    }

    private static List<Finding> check(FittedHead fitted) {
        Optional<HeadAnswers> again = fitted.head().again();
        if (again.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    fitted.label(),
                    "No other instance of the head was run, so nobody knows whether it answers the" + " same."));
        }
        HeadAnswers answers = fitted.head().answers().orElseThrow();
        ProbeSetting setting = Examination.setting(fitted);
        // A remedy changes the sheet of the case, never what the head itself says.
        Tally sheets = Behaviour.sheetStays(answers.sheet(), again.get().sheet());
        Tally pure = Examination.isSpot(fitted)
                ? Behaviour.purity(ProbeRun.ask(fitted.sheet(), answers, setting), again.get())
                : RowBehaviour.examine(fitted.sheet(), answers, again.get(), setting).stream()
                        .filter(t -> t.trait() == Trait.PURE)
                        .findFirst()
                        .orElseThrow();
        return Examination.findings(INFO, fitted, EnumSet.of(Trait.PURE, Trait.SHEET_STAYS), List.of(pure, sheets));
    }
}
