package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class VersionTest {

    /** Semantic Versioning 2.0.0, section 11: the two chains of examples there, and numbers that are no words. */
    @Test
    void precedenceIsThatOfThePublishedExamples() {
        for (List<String> rising : List.of(
                List.of("1.0.0", "2.0.0", "2.1.0", "2.1.1"),
                List.of(
                        "1.0.0-alpha",
                        "1.0.0-alpha.1",
                        "1.0.0-alpha.beta",
                        "1.0.0-beta",
                        "1.0.0-beta.2",
                        "1.0.0-beta.11",
                        "1.0.0-rc.1",
                        "1.0.0"),
                List.of("0.1.0", "0.2.0", "0.10.0", "1.0.0", "2.1.1", "2.1.10"))) {
            for (int i = 0; i + 1 < rising.size(); i++) {
                assertThat(version(rising.get(i))).isLessThan(version(rising.get(i + 1)));
            }
        }
        assertThat(version("1.0.0+5")).isEqualByComparingTo(version("1.0.0+7")).isNotEqualTo(version("1.0.0+7"));
    }

    /** The forms of section 9 and 10 of the same text, and what they leave out. */
    @Test
    void theFormIsThatOfThePublishedText() {
        for (String text : List.of(
                "1.0.0-alpha",
                "1.0.0-alpha.1",
                "1.0.0-0.3.7",
                "1.0.0-x.7.z.92",
                "1.0.0-x-y-z.--",
                "1.0.0-alpha+001",
                "1.0.0+20130313144700",
                "1.0.0-beta+exp.sha.5114f85",
                "1.0.0+21AF26D3----117B344092BD",
                "1.2.3-SNAPSHOT")) {
            assertThat(version(text)).hasToString(text);
        }
        for (String text : List.of(
                "1",
                "1.2",
                "01.2.3",
                "1.2.3-",
                "1.2.3-01",
                "1.2.3-a..b",
                "1.2.3+",
                "1.2.3+a+b",
                "v1.2.3",
                " 1.2.3",
                "1.2.3-\u00E4",
                "1.2.3-" + "a".repeat(100))) {
            assertThat(Version.parse(text)).as(text).isEmpty();
        }
    }

    /** Against a library of other authors, which comes with the plugin host, on made-up versions. */
    @Test
    void orderAgreesWithAnotherLibrary() {
        Random random = new Random(5);
        List<String> parts = List.of("0", "2", "11", "100000000000", "alpha", "a-b", "-", "B", "b");
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String text = random.nextInt(2) + "." + random.nextInt(12) + "." + random.nextInt(2);
            String separator = "-";
            for (int n = random.nextInt(4); n > 0; n--) {
                text += separator + parts.get(random.nextInt(parts.size()));
                separator = ".";
            }
            texts.add(text);
        }
        int unlike = 0;
        for (String one : texts) {
            for (String other : texts) {
                int theirs = com.github.zafarkhaja.semver.Version.parse(one)
                        .compareTo(com.github.zafarkhaja.semver.Version.parse(other));
                assertThat(Integer.signum(version(one).compareTo(version(other))))
                        .as("%s and %s", one, other)
                        .isEqualTo(Integer.signum(theirs));
                unlike += theirs == 0 ? 0 : 1;
            }
        }
        assertThat(unlike).isGreaterThan(3000);
    }

    private static Version version(String text) {
        return Version.parse(text).orElseThrow();
    }

    /** A range is of releases: a pre-release as an end is another form, which other readers take for other things. */
    @Test
    void aRangeHasNoPreReleasesAsEnds() {
        assertThat(ApiRange.parse(">=0.1.0-rc.1 & <0.2.0")).isEmpty();
        assertThat(ApiRange.parse(">=0.1.0 & <0.2.0-alpha")).isEmpty();
        assertThat(ApiRange.parse("^0.1.0")).isEmpty();
        assertThat(ApiRange.parse("0.1.0 - 0.2.0")).isEmpty();
    }

    @Test
    void aRangeHoldsItsLowerEndAndNotItsUpper() {
        ApiRange range = ApiRange.parse(">=0.1.0 & <0.2.0").orElseThrow();
        assertThat(range.contains(new Version(0, 1, 0))).isTrue();
        assertThat(range.contains(new Version(0, 1, 99))).isTrue();
        assertThat(range.contains(new Version(0, 2, 0))).isFalse();
        assertThat(range.contains(new Version(0, 0, 9))).isFalse();
        assertThat(range).hasToString(">=0.1.0 & <0.2.0");
        assertThatThrownBy(() -> new ApiRange(new Version(1, 0, 0), new Version(1, 0, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theVersionOfTheApiIsThatOfTheBuild() throws IOException {
        Matcher m = Pattern.compile("<version>([0-9.]+)").matcher(Files.readString(Path.of("../pom.xml")));
        assertThat(m.find()).isTrue();
        assertThat(Version.OF_API).hasToString(m.group(1));
    }
}
