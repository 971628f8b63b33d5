package headgate.verifier.rules.pack;

import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.PackageProblem;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;
import java.util.stream.Collectors;

/** {@code package.self-contained}: the package needs nothing but the head API and a small part of the Java library. */
public final class SelfContained implements Rule {

    /** Problems that a message spells out; it gives the number of the others. */
    private static final int SHOWN = 3;

    private static final RuleInfo INFO = new RuleInfo(
            "package.self-contained",
            "The package holds only plain classes and refers to nothing that a head must not use",
            "Partner code runs on the carriage beside other heads. A head that opens files, starts threads, reads a clock"
                    + " or brings its own copy of a shared library may work on the desk and stop the machine in the field.",
            "Every entry of the archive and every constant, instruction and attribute of every class file is read; nothing"
                    + " is loaded. Allowed are the package's own classes, the head API, the annotation org.pf4j.Extension and"
                    + " a reviewed list of members of java.*. What cannot be read is refused.",
            "The Java Virtual Machine Specification, chapter 4 (class files); the list of members is this project's own",
            Severity.ERROR,
            "0.1.0",
            List.of());

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        List<Finding> findings =
                subject.heads().stream().map(SelfContained::check).toList();
        return findings.isEmpty()
                ? List.of(Finding.undecided(INFO, "all heads", "No arm carries a head: give at least one head."))
                : findings;
    }

    private static Finding check(HeadUnderTest head) {
        PackageFacts facts = head.facts();
        List<PackageProblem> problems = facts.problemsOf(
                PackageProblem.Kind.ARCHIVE,
                PackageProblem.Kind.CLASS_FILE,
                PackageProblem.Kind.BUNDLED,
                PackageProblem.Kind.REFERENCE);
        long examined = (long) facts.entries().size() + facts.classNames().size();
        if (!problems.isEmpty()) {
            return Finding.of(INFO, head.label())
                    .examined(Math.max(examined, problems.size()))
                    .end(Outcome.FAIL, message(problems));
        }
        if (facts.classNames().isEmpty()) {
            return Finding.undecided(
                    INFO, head.label(), "The package holds no class that could be read: put the head's class into it.");
        }
        return Finding.of(INFO, head.label())
                .examined(examined)
                .end(
                        Outcome.PASS,
                        "Classes: " + facts.classNames().size() + ", entries: "
                                + facts.entries().size() + "; all use only what a head may use.");
    }

    private static String message(List<PackageProblem> problems) {
        String first =
                problems.stream().limit(SHOWN).map(PackageProblem::sentence).collect(Collectors.joining(". "));
        int more = problems.size() - Math.min(SHOWN, problems.size());
        String count = problems.size() == 1 ? "1 problem. " : problems.size() + " problems. ";
        return count + first + "." + (more > 0 ? " And " + more + " more." : "");
    }
}
