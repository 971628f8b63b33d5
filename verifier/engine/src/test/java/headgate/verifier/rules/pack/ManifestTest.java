package headgate.verifier.rules.pack;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.pack.ApiRange;
import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.PackageProblem;
import headgate.runtime.pack.Version;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ManifestTest {

    @Test
    void passesWhatSaysEverything() {
        Finding finding = only(Cases.weeding());

        assertThat(finding.outcome()).isEqualTo(Outcome.PASS);
        assertThat(finding.examined()).isEqualTo(5);
        assertThat(finding.message())
                .isEqualTo(
                        "It is made for >=0.1.0 & <0.2.0 of the head API, which holds 0.1.0, and names one extension,"
                                + " testing.Head.");
    }

    @Test
    void holdsAtTheLowerEndOfTheRangeAndNotAtTheUpper() {
        assertThat(only(Cases.weeding().facts(f -> madeFor(">=0.1.0 & <0.1.1"))).outcome())
                .isEqualTo(Outcome.PASS);
        Finding finding = only(Cases.weeding().facts(f -> madeFor(">=0.0.9 & <0.1.0")));

        assertThat(finding.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(finding.message())
                .isEqualTo("Plugin-Requires with a range that holds 0.1.0 is missing or does not have its form.");
    }

    @Test
    void failsOnceForEachProblem() {
        List<Finding> findings = new Manifest()
                .check(Cases.weeding()
                        .facts(f -> Cases.facts(List.of(
                                new PackageProblem(
                                        PackageProblem.Kind.MANIFEST, "Plugin-Id", "missing", "must be given"),
                                new PackageProblem(
                                        PackageProblem.Kind.EXTENSION,
                                        "META-INF/extensions.idx",
                                        "2 classes",
                                        "must name one class"),
                                // Another rule looks at this one.
                                new PackageProblem(
                                        PackageProblem.Kind.REFERENCE, "testing.Head", "java.io.File", "must not"))))
                        .build());

        assertThat(findings).allSatisfy(f -> assertThat(f.breaksFit()).isTrue());
        assertThat(findings)
                .extracting(Finding::message)
                .containsExactly(
                        "Plugin-Id must be given; found: missing.",
                        "META-INF/extensions.idx must name one class; found: 2 classes.");
    }

    @Test
    void undecidedWithoutAHead() {
        Case some = Cases.weeding().build();
        Case none = new Case(some.carriage(), some.plan(), some.policy(), List.of());

        assertThat(new Manifest().check(none)).extracting(Finding::outcome).containsExactly(Outcome.UNDECIDED);
    }

    private static PackageFacts madeFor(String range) {
        return new PackageFacts(
                "0".repeat(64),
                1,
                Optional.of("test-head"),
                Optional.of(new Version(1, 0, 0)),
                Optional.of("Testing"),
                ApiRange.parse(range),
                Optional.of("testing.Head"),
                List.of("testing/Head.class"),
                List.of("testing.Head"),
                List.of());
    }

    private static Finding only(Cases cases) {
        List<Finding> findings = new Manifest().check(cases.build());
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}
