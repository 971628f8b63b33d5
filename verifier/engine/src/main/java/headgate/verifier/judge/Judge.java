package headgate.verifier.judge;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Runs a rule book over a case and comes to a verdict. */
public final class Judge {

    /** Most remedies that a finding keeps. */
    private static final int MOST_REMEDIES = 3;

    private final List<Rule> rules;

    /**
     * Makes a judge.
     *
     * @param rules the rule book; a rule stands after those that it needs
     * @throws IllegalArgumentException if a rule needs one that does not stand before it, or two have one id
     */
    public Judge(List<Rule> rules) {
        Set<String> before = new HashSet<>();
        for (Rule rule : rules) {
            RuleInfo info = rule.info();
            if (!before.containsAll(info.needs())) {
                throw new IllegalArgumentException(
                        info.id() + " needs " + info.needs() + ", which must stand before it");
            }
            if (!before.add(info.id())) {
                throw new IllegalArgumentException("two rules have the id " + info.id());
            }
        }
        this.rules = List.copyOf(rules);
    }

    /** What one run of the book found, before remedies. */
    private record Run(List<Finding> findings, List<RuleFault> faults) {}

    /**
     * Judges a case, and each remedy that its findings propose.
     *
     * @param subject the case
     * @return the judgement
     */
    public Judgement judge(Case subject) {
        Run run = run(subject);
        List<JudgedFinding> judged = new ArrayList<>();
        for (Finding finding : run.findings()) {
            judged.add(new JudgedFinding(finding, remedies(subject, run, finding)));
        }
        Setup setup = Setup.of(subject);
        Verdict plain = verdict(run.findings());
        List<Limit> limits = plain.isFit() ? limits(subject) : List.of();
        Verdict verdict = plain == Verdict.FITS && !limits.isEmpty() ? Verdict.FITS_WITHIN_LIMITS : plain;
        return new Judgement(subject, setup, judged, verdict, limits, run.faults());
    }

    private Run run(Case subject) {
        List<Finding> findings = new ArrayList<>();
        List<RuleFault> faults = new ArrayList<>();
        Set<String> blocked = new TreeSet<>();
        for (Rule rule : rules) {
            RuleInfo info = rule.info();
            Optional<String> blocker =
                    info.needs().stream().filter(blocked::contains).findFirst();
            List<Finding> found;
            if (blocker.isPresent()) {
                found = List.of(Finding.notApplicable(
                        info, "all", "Needs " + blocker.get() + ", which did not hold, to mean anything."));
            } else {
                found = guarded(rule, subject, faults);
            }
            boolean failed = found.stream().anyMatch(f -> f.outcome() == Outcome.FAIL);
            if (failed || blocker.isPresent()) {
                blocked.add(info.id());
            }
            findings.addAll(found);
        }
        return new Run(findings, faults);
    }

    private static List<Finding> guarded(Rule rule, Case subject, List<RuleFault> faults) {
        try {
            List<Finding> found = rule.check(subject);
            if (found.isEmpty()) {
                throw new IllegalStateException("the rule found nothing, not even that it does not apply");
            }
            return found;
        } catch (RuntimeException e) {
            // A rule that breaks is a fault of this program; the others still have their say.
            faults.add(new RuleFault(rule.info().id(), e));
            return List.of(Finding.undecided(
                    rule.info(), "all", "The rule broke down: this is a fault of the program, not of the head."));
        }
    }

    private static Verdict verdict(List<Finding> findings) {
        if (findings.stream().anyMatch(Finding::breaksFit)) {
            return Verdict.DOES_NOT_FIT;
        }
        boolean open = findings.stream()
                .anyMatch(f -> f.outcome() == Outcome.UNDECIDED && f.rule().severity() == Severity.ERROR);
        return open ? Verdict.UNDECIDED : Verdict.FITS;
    }

    private List<Remedy> remedies(Case subject, Run before, Finding finding) {
        List<Remedy> kept = new ArrayList<>();
        Set<String> failing = failing(before.findings());
        for (Edit edit : finding.proposals()) {
            if (kept.size() == MOST_REMEDIES) {
                break;
            }
            Case changed = edit.apply(subject);
            Run after = run(changed);
            Set<String> failingAfter = failing(after.findings());
            if (after.faults().isEmpty()
                    && !failingAfter.contains(finding.rule().id())) {
                Set<String> broken = new TreeSet<>(failingAfter);
                broken.removeAll(failing);
                Verdict plain = verdict(after.findings());
                boolean limited = plain == Verdict.FITS && !limits(changed).isEmpty();
                kept.add(new Remedy(edit, limited ? Verdict.FITS_WITHIN_LIMITS : plain, List.copyOf(broken)));
            }
        }
        return kept;
    }

    private static Set<String> failing(List<Finding> findings) {
        Set<String> ids = new TreeSet<>();
        findings.stream()
                .filter(Finding::breaksFit)
                .forEach(f -> ids.add(f.rule().id()));
        return ids;
    }

    /**
     * A height interval narrower than the lift's must be kept during work, and so must every interlock; the set-points
     * across travel are free.
     */
    private static List<Limit> limits(Case subject) {
        List<Limit> limits = new ArrayList<>();
        for (Station station : Setup.of(subject).stations()) {
            Interval heights = station.workHeights();
            if (!heights.equals(station.arm().lift())) {
                limits.add(new Limit.Kept(
                        station.label(),
                        "mount height over the ground at work",
                        Micrometres.toMetres(heights.least()),
                        Micrometres.toMetres(heights.most()),
                        Dimension.LENGTH));
            }
        }
        for (Interlock interlock : Interlocks.of(subject).all()) {
            limits.add(new Limit.Apart("arms " + interlock.first() + " and " + interlock.second(), interlock));
        }
        return limits;
    }
}
