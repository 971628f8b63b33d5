package headgate.verifier.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.plot.Outcomes;
import headgate.verifier.report.Replays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReplayPageTest {

    private final String page = ReplayPage.of(Replays.report(Outcomes.study()));

    @Test
    void showsWhatTheReplaySays() {
        assertThat(page)
                .contains("<title>Head x.y 1.0.0 on a carriage: a plan: does not keep pace</title>")
                .contains("<h1>Head x.y 1.0.0")
                .contains("At 0.2 m/s a density of up to 1 1/m2 can be borne.")
                .contains("Drive at up to 0.15 m/s: 90 % are treated, at least 85 %.")
                .contains("missed: arm busy")
                .contains("nobody says how many weeds are seen")
                .contains("=row, &quot;one&quot;.csv");
    }

    /** Reasons are told apart in grey: each part of a bar has lines of its own, and a letter that the legend explains. */
    @Test
    void everyFillingThatIsUsedIsDefinedOnce() {
        Matcher used = Pattern.compile("url\\(#([a-z-]+)\\)").matcher(page);
        int count = 0;
        while (used.find()) {
            assertThat(page.split("id=\"" + used.group(1) + "\"", -1))
                    .as(used.group(1))
                    .hasSize(2);
            count++;
        }
        assertThat(count).isPositive();
    }

    @Test
    void aBareStandShowsNoCoverage() {
        assertThat(ReplayPage.of(Replays.report(Outcomes.nothing())))
                .contains(": undecided</title>", "no plants", "nothing stands there that is to be treated")
                .doesNotContain("100 % of");
    }
}
