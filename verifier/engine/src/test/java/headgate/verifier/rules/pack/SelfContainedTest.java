package headgate.verifier.rules.pack;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.PackageProblem;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SelfContainedTest {

    @Test
    void passesWithTheNumberOfEntriesAndClasses() {
        Finding finding = only(Cases.facts());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        // Three entries, one of them a class.
        assertThat(finding.examined()).isEqualTo(4);
    }

    @Test
    void failsOnceWithTheFirstThreeProblemsAndTheNumberOfAll() {
        Finding finding = only(Cases.facts(IntStream.rangeClosed(1, 5)
                .mapToObj(i -> new PackageProblem(
                        PackageProblem.Kind.REFERENCE, "testing.Head line " + i, "java.io.File", "must not refer to"))
                .toList()));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .startsWith("5 problems. testing.Head line 1 must not refer to; found: java.io.File. ")
                .contains("line 3")
                .doesNotContain("line 4")
                .endsWith(" And 2 more.");
    }

    @Test
    void leavesProblemsOfTheManifestToTheOtherRule() {
        Finding finding = only(Cases.facts(
                List.of(new PackageProblem(PackageProblem.Kind.MANIFEST, "Plugin-Id", "missing", "must be given"))));

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
    }

    @Test
    void undecidedWithoutAClass() {
        PackageFacts none = new PackageFacts(
                "0".repeat(64),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of("META-INF/MANIFEST.MF"),
                List.of(),
                List.of());

        assertThat(only(none).outcome()).isEqualTo(Outcome.UNDECIDED);
    }

    private static Finding only(PackageFacts facts) {
        List<Finding> findings =
                new SelfContained().check(Cases.weeding().facts(f -> facts).build());
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
