package headgate.verifier.rules.safety;

import headgate.api.sheet.Hazard;
import headgate.api.vocabulary.GuardKind;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** {@code safety.hazards}: every hazard of the head is guarded, and it is known how long it takes to stop. */
public final class HazardsGuarded implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "safety.hazards",
            "Every hazard that the head declares has a guard and a stop time",
            "Whoever walks up to a stopped carriage trusts that nothing on it still moves.",
            "Each hazard on the sheet names a guard other than \"none\" and the longest time from a stop command to rest. A"
                    + " head that names no hazard at all is undecided, since a tool that moves, cuts or holds tension always has"
                    + " one. This looks at what is declared; it does not judge whether a guard is good enough.",
            "Order of measures (safe design, guards, information) after ISO 12100:2010, clause 6, from memory; the scope of"
                    + " ISO 4254-1:2013 leaves working tools out, so that each head needs a list of its own",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, HazardsGuarded::check);
    }

    private static List<Finding> check(FittedHead fitted) {
        List<Hazard> hazards = fitted.sheet().hazards();
        if (hazards.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    fitted.label(),
                    "The sheet names no hazard: name each way in which the head can hurt somebody, with its guard and its"
                            + " stop time."));
        }
        List<Finding> unguarded = new ArrayList<>();
        List<Finding> unknown = new ArrayList<>();
        for (Hazard hazard : hazards) {
            String subject = fitted.label() + ", " + hazard.kind();
            if (hazard.guard().equals(GuardKind.NONE)) {
                unguarded.add(Finding.of(INFO, subject)
                        .examined(hazards.size())
                        .end(Outcome.FAIL, "Nothing keeps people from the hazard " + hazard.kind() + "."));
            } else if (hazard.stopTime().isEmpty()) {
                unknown.add(Finding.undecided(
                        INFO,
                        subject,
                        "Nobody has determined how long the hazard " + hazard.kind()
                                + " lasts after a stop command: measure it and give it on the sheet."));
            }
        }
        unguarded.addAll(unknown);
        return unguarded.isEmpty()
                ? List.of(Finding.of(INFO, fitted.label())
                        .examined(hazards.size())
                        .end(
                                Outcome.PASS,
                                "Guarded and with a stop time: "
                                        + hazards.stream()
                                                .map(HazardsGuarded::words)
                                                .collect(Collectors.joining("; "))
                                        + "."))
                : unguarded;
    }

    private static String words(Hazard hazard) {
        return hazard.kind() + " (" + hazard.guard() + ", at rest after "
                + Dimension.TIME.text(hazard.stopTime().orElseThrow().value()) + ")";
    }
}
