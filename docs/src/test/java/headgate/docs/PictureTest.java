package headgate.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture that the README shows is the one that the program draws. */
class PictureTest {

    private static final String BEGIN = "<svg xmlns=\"http://www.w3.org/2000/svg\"";
    private static final String END = "</svg>";

    @Test
    void readmeShowsWhatTheProgramDraws(@TempDir Path folder) throws Exception {
        Path dist = Page.root().resolve("verifier/app/target/dist");
        Path demo = dist.resolve("demo");
        Path out = folder.resolve("report");
        Process check = new ProcessBuilder(
                        dist.resolve("bin/headgate").toString(),
                        "check",
                        demo.resolve("planter.jar").toString(),
                        "--carriage",
                        demo.resolve("carriage.json").toString(),
                        "--crop",
                        demo.resolve("lettuce-45-planting.json").toString(),
                        "--out",
                        out.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        assertThat(check.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(check.exitValue()).isEqualTo(1);
        String page = Files.readString(out.resolve("report.html"), StandardCharsets.UTF_8);
        int begin = page.indexOf(BEGIN);
        String drawn = page.substring(begin, page.indexOf(END, begin) + END.length()) + "\n";

        Path shown = Page.root().resolve("docs/images/planter-on-lettuce.svg");
        if (Boolean.getBoolean("headgate.docs.write")) {
            Files.writeString(shown, drawn, StandardCharsets.UTF_8);
        }

        assertThat(Files.readString(shown, StandardCharsets.UTF_8))
                .as("docs/images/planter-on-lettuce.svg; to draw it again run the tests of docs with"
                        + " -Dheadgate.docs.write=true")
                .isEqualTo(drawn);
    }
}
