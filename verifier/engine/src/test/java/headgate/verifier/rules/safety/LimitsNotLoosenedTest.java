package headgate.verifier.rules.safety;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.policy.Policy;
import headgate.runtime.policy.PolicyReader;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Finding;
import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeverFinds(
        value = {Outcome.FAIL, Outcome.UNDECIDED},
        because = "a looser limit may be right, and every policy has every limit")
class LimitsNotLoosenedTest {

    @Test
    void passesTheBuiltInLimitsAndStricterOnes(@TempDir Path folder) throws IOException, InvalidFileException {
        // Exactly the built-in gap, and one that is stricter.
        for (String gap : List.of("25 mm", "30 mm")) {
            List<Finding> findings = check(folder, limit("armGap", gap));

            assertThat(findings).extracting(Finding::outcome).containsExactly(Outcome.PASS);
        }
    }

    @Test
    void cautionsAgainstEachLooserLimit(@TempDir Path folder) throws IOException, InvalidFileException {
        List<Finding> findings = check(folder, limit("armGap", "10 mm") + ",\n" + limit("massUse", "95 %"));

        assertThat(findings).extracting(Finding::outcome).containsOnly(Outcome.CAUTION);
        assertThat(findings)
                .extracting(Finding::field)
                .containsExactly(Optional.of("policy:limits.armGap.value"), Optional.of("policy:limits.massUse.value"));
        assertThat(findings.get(0).message())
                .isEqualTo(
                        "The verdict holds by a limit that is looser than the built-in one: 10 mm (we dare) instead of 25"
                                + " mm (common practice, no source).");
        assertThat(findings.get(1).message()).contains("95 % (we dare) instead of 90 %");
    }

    @Test
    void writesEveryLimitInAUnitOfItsOwn(@TempDir Path folder) throws IOException, InvalidFileException {
        List<Finding> findings = check(
                folder,
                "\"coverageFactor\": {\"value\": 1.5, \"source\": \"we dare\"},"
                        + "\"shockAtWork\": {\"value\": 1, \"source\": \"we dare\"},"
                        + limit("transportWidth", "3.5 m"));

        assertThat(findings)
                .extracting(Finding::message)
                .satisfiesExactly(
                        m -> assertThat(m).contains(": 1.5 (we dare) instead of 2 ("),
                        m -> assertThat(m).contains(": 1 (we dare) instead of "),
                        m -> assertThat(m).contains(": 3500 mm (we dare) instead of "));
    }

    private static String limit(String name, String value) {
        return "\"" + name + "\": {\"value\": \"" + value + "\", \"source\": \"we dare\"}";
    }

    private List<Finding> check(Path folder, String limits) throws IOException, InvalidFileException {
        Path file = folder.resolve("policy.json");
        Files.writeString(
                file, "{\"format\": \"headgate.policy/1\", \"name\": \"ours\", \"limits\": {" + limits + "}}");
        Loaded<Policy> policy = PolicyReader.read(file);
        Case built = Cases.weeding().policy(p -> policy.value()).build();
        return new LimitsNotLoosened().check(built);
    }
}
