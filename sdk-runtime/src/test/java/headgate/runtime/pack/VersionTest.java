package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class VersionTest {

    /** Precedence as in Semantic Versioning 2.0.0, section 11: 1.0.0 < 2.0.0 < 2.1.0 < 2.1.1. */
    @Test
    void numbersCompareAsNumbers() {
        List<String> rising = List.of("0.1.0", "0.2.0", "0.10.0", "1.0.0", "2.0.0", "2.1.0", "2.1.1", "2.1.10");
        for (int i = 0; i + 1 < rising.size(); i++) {
            assertThat(Version.parse(rising.get(i)).orElseThrow())
                    .isLessThan(Version.parse(rising.get(i + 1)).orElseThrow());
        }
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
