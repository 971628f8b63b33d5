package headgate.runtime.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Jazzer, guided by coverage, on one target in a JVM of its own. Tells how often it ran the target. */
final class JazzerRun {

    private static final int SECONDS = Integer.getInteger("headgate.fuzz-seconds", 120);

    private JazzerRun() {}

    /**
     * Fuzzes for the time that the property {@code headgate.fuzz-seconds} sets.
     *
     * @param target class with the method that takes bytes
     * @param instrumented patterns of the classes whose coverage guides
     * @param seeds what to begin with
     * @param folder an empty folder
     */
    static void findsNothing(Class<?> target, String instrumented, List<byte[]> seeds, Path folder)
            throws IOException, InterruptedException {
        Path corpus = Files.createDirectory(folder.resolve("corpus"));
        int number = 0;
        for (byte[] seed : seeds) {
            Files.write(corpus.resolve("seed-" + number++), seed);
        }
        Path said = folder.resolve("said");
        Process fuzzer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "com.code_intelligence.jazzer.Jazzer",
                        "--target_class=" + target.getName(),
                        "--instrumentation_includes=" + instrumented,
                        "-max_total_time=" + SECONDS,
                        "-max_len=20000",
                        "-seed=1",
                        "-print_final_stats=1",
                        corpus.toString())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        boolean ended = fuzzer.waitFor(SECONDS + 300L, TimeUnit.SECONDS);
        fuzzer.destroyForcibly();
        List<String> lines = Files.readAllLines(said, StandardCharsets.ISO_8859_1);
        String last = String.join("\n", lines.subList(Math.max(0, lines.size() - 60), lines.size()));
        assertThat(ended).as(last).isTrue();
        assertThat(fuzzer.exitValue()).as(last).isZero();
        long runs = lines.stream()
                .filter(line -> line.startsWith("stat::number_of_executed_units:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                .sum();
        System.out.println(target.getSimpleName() + ": " + runs + " executions in " + SECONDS + " s, no finding");
        assertThat(runs).as(last).isGreaterThan(1000);
    }
}
