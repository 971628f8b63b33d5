package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the program says to files that cannot be used: exit code 2, each problem with its place, nothing of ours. */
class BadInputTest {

    private static final String CROP = "lettuce-45-weeding.json";

    @Test
    void threeMistakesInOneFileAreSaidAtOnceWithTheirPlaces(@TempDir Path work) throws Exception {
        String good = Files.readString(Dist.demo("carriage.json"));
        String bad = replaceOnce(good, "\"mass\": \"25 kg\"", "\"mass\": \"-25 kg\"");
        bad = replaceOnce(bad, "\"speed\": \"0.5 m/s\"", "\"speed\": \"0.5 kg\"");
        bad = replaceOnce(bad, "\"serial\": \"LF-0001\"", "\"serial\": \"LF-0001\",\n  \"seriel\": \"LF-0001\"");
        Path carriage = Files.writeString(work.resolve("carriage.json"), bad);
        Call.Result result = Call.in(work).check(Dist.demo("gripper.jar"), carriage, Dist.demo(CROP));
        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err().lines()).hasSize(3).allMatch(line -> line.startsWith("headgate: "));
        assertThat(result.err())
                .contains(at(bad, "\"seriel\""), "seriel")
                .contains(at(bad, "\"0.5 kg\""), "speed")
                .contains(at(bad, "\"-25 kg\""), "mass")
                .doesNotContain("\tat ");
    }

    @Test
    void theSameMistakesAsADocument(@TempDir Path work) throws Exception {
        String bad = replaceOnce(Files.readString(Dist.demo("carriage.json")), "\"25 kg\"", "\"-25 kg\"");
        Path carriage = Files.writeString(work.resolve("carriage.json"), bad);
        Call.Result result = Call.in(work).check(Dist.demo("gripper.jar"), carriage, Dist.demo(CROP), "--json");
        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).isEmpty();
        String[] place = at(bad, "\"-25 kg\"").split(":", -1);
        assertThat(result.out())
                .contains("\"format\" : \"headgate.error/1\"", "\"exit\" : 2")
                .contains("\"line\" : " + place[1] + ",", "\"column\" : " + place[2] + ",")
                .contains("payload.mass\"");
    }

    @Test
    void whatIsNoJarIsSaidInOneLine(@TempDir Path work) throws Exception {
        Path text = Files.writeString(work.resolve("text.jar"), "not an archive, though its name says so");
        Path empty = Files.createFile(work.resolve("empty.jar"));
        Path folder = Files.createDirectory(work.resolve("folder.jar"));
        Path missing = work.resolve("missing.jar");
        for (Path head : List.of(text, empty, folder, missing)) {
            Call.Result result = Call.in(work).check(head, Dist.demo("carriage.json"), Dist.demo(CROP));
            assertThat(result.exit()).as(head.toString()).isEqualTo(2);
            assertThat(result.out()).isEmpty();
            assertThat(result.err()).startsWith("headgate: " + head).doesNotContain("\tat ");
            assertThat(result.err().lines()).hasSize(1);
        }
        assertThat(Call.in(work)
                        .check(folder, Dist.demo("carriage.json"), Dist.demo(CROP))
                        .err()
                        .strip())
                .isEqualTo("headgate: " + folder
                        + ": found a directory, expected the JAR of a head; name the JAR inside it");
    }

    @Test
    void whatIsNoFileOfItsKindIsSaidInOneLine(@TempDir Path work) throws Exception {
        Path empty = Files.createFile(work.resolve("empty.json"));
        Path folder = Files.createDirectory(work.resolve("folder.json"));
        Path missing = work.resolve("missing.json");
        Path otherKind = Dist.demo(CROP);
        for (Path carriage : List.of(empty, folder, missing, otherKind)) {
            Call.Result result = Call.in(work).check(Dist.demo("gripper.jar"), carriage, Dist.demo(CROP));
            assertThat(result.exit()).as(carriage.toString()).isEqualTo(2);
            assertThat(result.err()).startsWith("headgate: " + carriage).doesNotContain("\tat ");
            assertThat(result.err().lines()).as(result.err()).hasSize(1);
        }
    }

    @Test
    void fileNamesBeyondAsciiAreRead(@TempDir Path work) throws Exception {
        Path carriage = Files.copy(Dist.demo("carriage.json"), work.resolve("Möhre 45 cm.json"));
        assertThat(Call.in(work)
                        .check(Dist.demo("gripper.jar"), carriage, Dist.demo(CROP))
                        .exit())
                .isZero();
    }

    private static String replaceOnce(String text, String old, String changed) {
        assertThat(text).contains(old);
        int at = text.indexOf(old);
        return text.substring(0, at) + changed + text.substring(at + old.length());
    }

    /** The place of a text as "carriage.json:line:column". */
    private static String at(String text, String token) throws IOException {
        int offset = text.indexOf(token);
        int line = (int) text.substring(0, offset).lines().count();
        int column = offset - text.lastIndexOf('\n', offset);
        return "carriage.json:" + line + ":" + column;
    }
}
