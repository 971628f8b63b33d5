package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo, the rule book and the doctor, as the packaged program shows them. */
class DemoProgramTest {

    @Test
    void theDemoShowsAHeadThatFitsAndOneThatDoesNot(@TempDir Path work) throws Exception {
        Call.Result result = Call.in(work).run("demo");
        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).contains("Fits", "Does not fit", "mend", "invented");
        assertThat(work.resolve("headgate-demo/gripper-lettuce/report.html")).isNotEmptyFile();
        assertThat(work.resolve("headgate-demo/planter-lettuce/report.json")).isNotEmptyFile();
        assertThat(work.resolve("headgate-demo/files/carriage.json"))
                .hasSameBinaryContentAs(Dist.demo("carriage.json"));
    }

    @Test
    void theDemoRunsAgainAndKeepsWhatTheUserChanged(@TempDir Path work) throws Exception {
        Call.in(work).run("demo");
        Path changed = Files.writeString(work.resolve("headgate-demo/files/carriage.json"), "{}");
        Call.Result again = Call.in(work).run("demo", "--json");
        assertThat(again.exit()).as(again.err()).isZero();
        assertThat(again.out()).startsWith("{\n  \"format\" : \"headgate.demo/1\",\n  \"exit\" : 0,");
        assertThat(changed).hasContent("{}");
    }

    @Test
    void everyRuleIsListedAndExplained(@TempDir Path work) throws Exception {
        Call.Result list = Call.in(work).run("rules");
        assertThat(list.exit()).isZero();
        assertThat(list.out()).contains("clearance.arm-to-arm", "mount.", "throughput.", "safety.");
        Call.Result one = Call.in(work).run("rules", "clearance.arm-to-arm");
        assertThat(one.out()).contains("Why:", "How:", "Source:");
    }

    @Test
    void theDoctorFindsThisMachineUsable(@TempDir Path work) throws Exception {
        Call.Result result = Call.in(work).run("doctor");
        assertThat(result.exit()).as(result.out()).isZero();
        assertThat(result.out()).contains("java", "memory", "cache", "wall by").doesNotContain("\u001b");
    }

    @Test
    void anInterruptEndsWith130AndLeavesNoReport(@TempDir Path work) throws Exception {
        Path out = work.resolve("out.txt");
        Process process = Call.in(work).start(out, work.resolve("err.txt"), List.of("demo", "--out", "shown"));
        // In the midst of it: the samples are copied, the first report is not there yet, or just so.
        while (!Files.exists(work.resolve("shown/files/planter.jar")) && process.isAlive()) {
            Thread.sleep(5);
        }
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(130);
        try (var left = Files.list(work.resolve("shown"))) {
            assertThat(left.map(each -> each.getFileName().toString()))
                    .noneMatch(name -> name.startsWith(".headgate-new"));
        }
    }
}
