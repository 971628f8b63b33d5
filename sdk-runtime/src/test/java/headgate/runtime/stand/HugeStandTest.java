package headgate.runtime.stand;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.origin.InvalidFileException;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Five million plants pass through a JVM of 256 MB. */
@Tag("deep")
class HugeStandTest {

    private static final int PLANTS = 5_000_000;

    /** Run in a JVM of its own with a small heap: reads the stand that it is given. */
    public static final class Reading {

        private Reading() {}

        /** Reads a stand and says how many plants it has. */
        public static void main(String[] arguments) throws InvalidFileException {
            long[] sum = new long[1];
            StandSummary summary = StandReader.read(
                    Path.of(arguments[0]), plant -> sum[0] += plant.position().x());
            System.out.println(summary.plants() + " " + sum[0]);
        }
    }

    @ParameterizedTest
    @EnumSource(StandWriter.Form.class)
    void fiveMillionPlantsStream(StandWriter.Form form, @TempDir Path folder) throws IOException, InterruptedException {
        Path stand = folder.resolve("stand");
        Random random = new Random(1);
        long sum = 0;
        try (BufferedWriter out = Files.newBufferedWriter(stand, StandardCharsets.UTF_8);
                StandWriter writer = new StandWriter(out, form)) {
            for (int i = 0; i < PLANTS; i++) {
                long x = random.nextInt(1_000_000_000);
                sum += x;
                writer.write(new Plant(new Plant.Position(x, random.nextInt(4_000_000)), Plant.CROP, 0.004, 0.12, 0));
            }
        }
        Path said = folder.resolve("said");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Reading.class.getName(),
                        stand.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(20, TimeUnit.MINUTES)).isTrue();
        assertThat(Files.readString(said)).isEqualTo(PLANTS + " " + sum + System.lineSeparator());
    }
}
