package headgate.verifier.report.csv;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.plot.Outcomes;
import headgate.verifier.replay.Miss;
import headgate.verifier.report.Replays;
import org.junit.jupiter.api.Test;

class ReplayCsvTest {

    /** The name is quoted as RFC 4180 asks, and led by a mark so that no spreadsheet takes it for a formula. */
    @Test
    void aRowForEachStandAndSpeed() {
        String table = ReplayCsv.rows(Replays.report(Outcomes.study()));

        assertThat(table.lines())
                .hasSize(1 + 3 + 2 + 2)
                .contains(
                        "\"'=row, \"\"one\"\".csv\",,0.15,200,200,200,189,189,0.945,2,7,50,3,4,9.5,0",
                        "seed 2,2,0.2,100,100,100,60,60,0.6,2,7,50,3,4,9.5,0");
        assertThat(table).endsWith("\n").doesNotContain("\r");
        int columns = table.lines().findFirst().orElseThrow().split(",", -1).length;
        assertThat(table.lines().filter(line -> line.startsWith("seed")))
                .allSatisfy(line -> assertThat(line.split(",", -1)).hasSize(columns));
    }

    @Test
    void aRowForEachReason() {
        String table = ReplayCsv.misses(Replays.report(Outcomes.study()));

        assertThat(table.lines())
                .hasSize(1 + 7 * Miss.values().length)
                .contains("seed 1,2,0.2,arm busy,45", "seed 1,2,0.2,unseen,0");
    }

    @Test
    void noCoverageWithoutPlants() {
        assertThat(ReplayCsv.rows(Replays.report(Outcomes.nothing())).lines())
                .contains("bare.csv,,0.2,0,0,0,0,0,,2,7,50,3,4,9.5,0");
    }
}
