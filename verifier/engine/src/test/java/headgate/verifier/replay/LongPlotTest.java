package headgate.verifier.replay;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.evidence.Evidence;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A plot may be as long as a season: memory does not grow with it. */
class LongPlotTest {

    private static final String ID = "replay-long-plot";
    private static final long PLANTS = 5_000_000;
    private static final long SLICE = 20_000;
    private static final String HEAP = "256m";

    @Test
    @Tag("evidence")
    void replaysFiveMillionPlantsInASmallHeap() throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + HEAP,
                        "-cp",
                        System.getProperty("java.class.path"),
                        LongPlot.class.getName(),
                        String.valueOf(PLANTS))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String[] said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .strip()
                .split(" ", -1);
        assertThat(child.waitFor()).isZero();
        assertThat(Long.parseLong(said[0])).isEqualTo(PLANTS);
        Evidence.of(ID)
                .with("claim", "five million plants are replayed under four arms in a heap of 256 MB")
                .with("command", "mvn -B -ntp -Pevidence verify -pl verifier/engine -am")
                .with("heap option", "-Xmx" + HEAP)
                .with("plants", said[0])
                .with("reached", said[1])
                .with("slice plants", SLICE)
                .with("slice reached", LongPlot.run(SLICE, 256).reached())
                .write();
    }

    @Test
    void findsInASliceWhatTheEvidenceSays() throws IOException {
        Evidence evidence = Evidence.read(ID);
        assertThat(evidence.whole("plants")).isEqualTo(PLANTS);
        assertThat(evidence.fact("heap option")).isEqualTo("-Xmx" + HEAP);
        ReplayOutcome outcome = LongPlot.run(evidence.whole("slice plants"), 256);
        assertThat(outcome.reached()).isEqualTo(evidence.whole("slice reached"));
        double share = (double) evidence.whole("reached") / PLANTS;
        assertThat(outcome.coverage()).isBetween(share - 0.02, share + 0.02);
    }

    @Test
    void doesNotDependOnHowFarItReadsAhead() {
        assertThat(LongPlot.run(3000, 1)).isEqualTo(LongPlot.run(3000, 256)).isEqualTo(LongPlot.run(3000, 17));
    }
}
