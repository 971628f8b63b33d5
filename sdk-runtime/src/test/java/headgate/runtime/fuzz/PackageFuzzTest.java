package headgate.runtime.fuzz;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.runtime.fuzz.PackageTarget.Part;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fuzzes what reads a head's JAR: from explicit seeds in every build, by Jazzer in the deep tier. */
class PackageFuzzTest {

    private static List<byte[]> seeds() {
        byte[] head =
                Objects.requireNonNull(Jars.compile(Heads.NAME, Heads.spot("")).get(PackageTarget.NAME + ".class"));
        List<byte[]> seeds = new ArrayList<>();
        seeds.add(PackageTarget.input(Part.ARCHIVE, Jars.of(Heads.NAME, Heads.continuous())));
        seeds.add(PackageTarget.input(
                Part.ARCHIVE,
                PackageTarget.archive(
                        PackageTarget.good(Part.MANIFEST), PackageTarget.good(Part.INDEX), new byte[] {1, 2, 3})));
        seeds.add(PackageTarget.input(Part.HEAD, head));
        seeds.add(PackageTarget.input(Part.MANIFEST, PackageTarget.good(Part.MANIFEST)));
        seeds.add(PackageTarget.input(Part.INDEX, PackageTarget.good(Part.INDEX)));
        return seeds;
    }

    @Test
    void changedBytesAreLookedAtOrRefused() {
        Random random = new Random(12);
        for (byte[] seed : seeds()) {
            PackageTarget.fuzzerTestOneInput(seed);
            for (int i = 0; i < 400; i++) {
                byte[] changed = seed.clone();
                for (int n = random.nextInt(4); n >= 0; n--) {
                    changed[1 + random.nextInt(changed.length - 1)] = (byte) random.nextInt(256);
                }
                PackageTarget.fuzzerTestOneInput(changed);
            }
        }
    }

    @Test
    @Tag("deep")
    void jazzerFindsNothing(@TempDir Path folder) throws IOException, InterruptedException {
        JazzerRun.findsNothing(PackageTarget.class, "headgate.runtime.pack.**", seeds(), folder);
    }

    @Test
    void aBrokenSentenceComesOut() {
        assertThatThrownBy(() -> PackageTarget.checkText("two\nlines")).isInstanceOf(AssertionError.class);
    }
}
