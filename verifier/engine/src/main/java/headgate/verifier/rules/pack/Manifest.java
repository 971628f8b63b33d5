package headgate.verifier.rules.pack;

import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.PackageProblem;
import headgate.runtime.pack.Version;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code package.manifest}: the package says which head it is and which version of the head API it is made for. */
public final class Manifest implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "package.manifest",
            "The package says what it is, and is made for this version of the head API",
            "A fit record names one head by id and version. A head made for another version of the API may fail in the"
                    + " middle of a row, on a method that is no longer there.",
            "Five things are read from the manifest and the index of extensions: Plugin-Id, Plugin-Version"
                    + " (Semantic Versioning), Plugin-Provider, Plugin-Requires (>=a.b.c & <d.e.f, holding "
                    + Version.OF_API
                    + "), and exactly one class in META-INF/extensions.idx. That class must implement one of SpotHead and"
                    + " ContinuousHead, and be public with a public constructor without parameters.",
            "JAR File Specification (manifest attributes); Semantic Versioning 2.0.0, sections 2, 9 to 11 (form and order of"
                    + " versions); PF4J (names of the attributes and of the index)",
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
                subject.heads().stream().flatMap(head -> check(head).stream()).toList();
        return findings.isEmpty()
                ? List.of(Finding.undecided(INFO, "all heads", "No arm carries a head: give at least one head."))
                : findings;
    }

    private static List<Finding> check(HeadUnderTest head) {
        PackageFacts facts = head.facts();
        Map<String, Boolean> said = said(facts);
        List<String> wrong = new ArrayList<>();
        facts.problemsOf(PackageProblem.Kind.MANIFEST, PackageProblem.Kind.API_RANGE, PackageProblem.Kind.EXTENSION)
                .forEach(problem -> wrong.add(problem.sentence() + "."));
        boolean nothingRead = !said.containsValue(true)
                && wrong.isEmpty()
                && !facts.problemsOf(PackageProblem.Kind.ARCHIVE).isEmpty();
        if (nothingRead) {
            return List.of(Finding.notApplicable(
                    INFO, head.label(), "The archive could not be unpacked; see package.self-contained."));
        }
        if (wrong.isEmpty()) {
            said.forEach((what, present) -> {
                if (!present) {
                    wrong.add(what + " is missing or does not have its form.");
                }
            });
        }
        if (wrong.isEmpty()) {
            return List.of(Finding.of(INFO, head.label())
                    .examined(said.size())
                    .end(
                            Outcome.PASS,
                            "It is made for " + facts.apiRange().orElseThrow() + " of the head API, which holds "
                                    + Version.OF_API + ", and names one extension, "
                                    + facts.extension().orElseThrow() + "."));
        }
        return wrong.stream()
                .map(text ->
                        Finding.of(INFO, head.label()).examined(said.size()).end(Outcome.FAIL, text))
                .toList();
    }

    private static Map<String, Boolean> said(PackageFacts facts) {
        Map<String, Boolean> said = new LinkedHashMap<>();
        said.put("Plugin-Id", facts.id().isPresent());
        said.put("Plugin-Version", facts.version().isPresent());
        said.put("Plugin-Provider", facts.provider().isPresent());
        said.put(
                "Plugin-Requires with a range that holds " + Version.OF_API,
                facts.apiRange().filter(r -> r.contains(Version.OF_API)).isPresent());
        said.put("The one entry of META-INF/extensions.idx", facts.extension().isPresent());
        return said;
    }
}
