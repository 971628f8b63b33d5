package headgate.it.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** The real patterns have a licence of their own: they stay where the tests are. */
class ShippedTest {

    /** Lines of the two files, by which they would be known under any name. */
    private static final List<String> LINES = List.of("6.084000,0.198000", "1.653000,0.114000");

    /** The name of the licence that the patterns are under. */
    private static final String LICENCE = "GNU GENERAL PUBLIC LICENSE";

    @Test
    void theLinesAreThoseOfTheFiles() {
        assertThat(Pattern.read("bramble-canes.csv", 9).places()).contains(new Pattern.Place(6.084, 0.198));
        assertThat(Pattern.read("japanese-pines.csv", 5.7).places()).contains(new Pattern.Place(1.653, 0.114));
    }

    @Test
    void nothingThatIsHandedOutHoldsThem() throws IOException {
        Path dist = Path.of(System.getProperty("headgate.dist", ""));
        List<Path> files;
        try (Stream<Path> all = Files.walk(dist)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        List<String> looked = new ArrayList<>();
        for (Path file : files) {
            boolean own = file.startsWith(dist.resolve("demo"))
                    || file.startsWith(dist.resolve("repo"))
                    || file.getFileName().toString().startsWith("headgate-")
                    || !file.toString().endsWith(".jar");
            if (own) {
                look(file.toString(), Files.readAllBytes(file), looked);
            }
        }
        assertThat(looked).hasSizeGreaterThan(500);
    }

    /** Looks into a file, and into each entry if it is an archive. */
    private static void look(String name, byte[] content, List<String> looked) throws IOException {
        looked.add(name);
        String text = new String(content, StandardCharsets.ISO_8859_1);
        assertThat(LINES.stream().filter(text::contains)).as(name).isEmpty();
        assertThat(text.contains(LICENCE)).as(name).isFalse();
        if (!name.endsWith(".jar")) {
            return;
        }
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(content))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                look(name + "!" + entry.getName(), zip.readAllBytes(), looked);
            }
        }
    }
}
