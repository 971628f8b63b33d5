package headgate.verifier.rules.behaviour;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.verifier.behaviour.Behaviour;
import headgate.verifier.behaviour.Facing;
import headgate.verifier.behaviour.ProbeRun;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.RowBehaviour;
import headgate.verifier.behaviour.Tally;
import headgate.verifier.behaviour.Trait;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.RuleInfo;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** How rules on behaviour look at a head: the probes that the case calls for, and a finding for each trait broken. */
final class Examination {

    private Examination() {}

    /**
     * Looks for traits that one run of probes can show.
     *
     * @param subject the case
     * @param rule the rule that looks
     * @param first a trait
     * @param more more traits
     * @return for each head one finding a trait that is broken, or one that says that all are kept
     */
    static List<Finding> of(Case subject, RuleInfo rule, Trait first, Trait... more) {
        Set<Trait> traits = EnumSet.of(first, more);
        return FittedHead.each(
                subject,
                rule,
                fitted -> findings(rule, fitted, traits, Tallies.of(subject).about(fitted)));
    }

    /**
     * Turns tallies into findings.
     *
     * @param rule the rule that looked
     * @param fitted the head
     * @param traits the traits that the rule is about
     * @param tallies what was found, for these and perhaps other traits
     * @return one finding a trait that is broken, or one that says that all are kept
     */
    static List<Finding> findings(RuleInfo rule, FittedHead fitted, Set<Trait> traits, List<Tally> tallies) {
        List<Tally> ours =
                tallies.stream().filter(t -> traits.contains(t.trait())).toList();
        if (ours.isEmpty()) {
            return List.of(Finding.notApplicable(
                    rule, fitted.label(), "A " + kind(fitted) + " head owes nothing of the kind."));
        }
        List<Finding> broken = ours.stream()
                .filter(t -> t.broken() > 0)
                .map(t -> broken(rule, fitted, t))
                .toList();
        if (!broken.isEmpty()) {
            return broken;
        }
        long examined = ours.stream().mapToLong(Tally::examined).sum();
        if (examined == 0) {
            return List.of(Finding.undecided(
                    rule,
                    fitted.label(),
                    "Nothing could be looked at: the head acted on none of the tasks that lie in its own work range."));
        }
        return List.of(Finding.of(rule, fitted.label()).examined(examined).end(Outcome.PASS, kept(ours) + "."));
    }

    private static String kept(List<Tally> tallies) {
        String text = tallies.stream()
                .map(t -> t.trait().sentence() + " (looked at " + t.examined() + " times)")
                .collect(Collectors.joining("; "));
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static Finding broken(RuleInfo rule, FittedHead fitted, Tally tally) {
        return Finding.of(rule, fitted.label() + ", " + tally.trait().id())
                .examined(tally.examined())
                .end(
                        Outcome.FAIL,
                        "Broken " + tally.broken() + " times in " + tally.examined() + ": "
                                + tally.first().get(0).report() + ".");
    }

    private static String kind(FittedHead fitted) {
        return isSpot(fitted) ? "spot" : "continuous";
    }

    static boolean isSpot(FittedHead fitted) {
        return fitted.head().answers().orElseThrow().kind() == HeadKind.SPOT;
    }

    /** Probes a head and looks at what it answered. */
    static List<Tally> tallies(FittedHead fitted) {
        HeadAnswers answers = fitted.head().answers().orElseThrow();
        ProbeSetting setting = setting(fitted);
        Optional<HeadAnswers> again = fitted.head().again();
        // The other instance works while we look at the answers of this one.
        if (isSpot(fitted)) {
            ProbeRun run = ProbeRun.ask(fitted.sheet(), answers, setting);
            again.ifPresent(other -> Behaviour.announcePurity(run, other));
            return Behaviour.examine(run);
        }
        again.ifPresent(other -> RowBehaviour.announcePurity(fitted.sheet(), other, setting));
        return RowBehaviour.examine(fitted.sheet(), answers, answers, setting);
    }

    /**
     * Where a head is probed for its contract: where its own reach allows, turned as it is fitted. The contract holds over
     * the whole work range, of which a plan wants only a part, and a head knows nothing of the plan's canopy.
     */
    static ProbeSetting setting(FittedHead fitted) {
        return new ProbeSetting(
                ProbeSetting.alone(fitted.sheet()).ground(),
                0,
                List.of(fitted.turned() ? Facing.TURNED : Facing.FORWARD),
                ProbeSetting.USUAL_SEQUENCE);
    }
}
