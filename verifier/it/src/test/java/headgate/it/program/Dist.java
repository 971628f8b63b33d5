package headgate.it.program;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The folder with the packaged program, and the Javas to run it with. */
final class Dist {

    private Dist() {}

    static Path folder() {
        Path folder = Path.of(System.getProperty("headgate.dist", ""))
                .toAbsolutePath()
                .normalize();
        if (!Files.isExecutable(folder.resolve("bin/headgate"))) {
            throw new IllegalStateException(folder + " holds no program; build the module before this one");
        }
        return folder;
    }

    /** A cache that all tests share, so that class-data archives are made once. */
    static Path cache() {
        return Path.of(System.getProperty("headgate.cache", ""))
                .toAbsolutePath()
                .normalize();
    }

    static Path demo(String name) {
        return folder().resolve("demo").resolve(name);
    }

    /** The Java that runs these tests. */
    static Path java() {
        return Path.of(System.getProperty("java.home"));
    }

    /** Another JDK, from 17 on: the one that HEADGATE_OTHER_JDK names, or the newest that the machine has. */
    static Optional<Path> otherJava() {
        String given = System.getenv().getOrDefault("HEADGATE_OTHER_JDK", "");
        if (!given.isEmpty()) {
            return Optional.of(Path.of(given));
        }
        Path usual = Path.of("/usr/lib/jvm");
        if (!Files.isDirectory(usual)) {
            return Optional.empty();
        }
        try (Stream<Path> found = Files.list(usual)) {
            List<Path> others = found.filter(each -> feature(each) >= 17
                            && feature(each) != Runtime.version().feature())
                    .sorted((a, b) -> Integer.compare(feature(b), feature(a)))
                    .toList();
            return others.stream().findFirst();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The feature release of a JDK by its own word, 0 if the folder is none. */
    private static int feature(Path jdk) {
        Path release = jdk.resolve("release");
        if (!Files.isExecutable(jdk.resolve("bin/java")) || !Files.isRegularFile(release)) {
            return 0;
        }
        try (Stream<String> lines = Files.lines(release)) {
            return lines.filter(line -> line.startsWith("JAVA_VERSION="))
                    .map(line -> line.replaceAll("[^0-9]*([0-9]+).*", "$1"))
                    .mapToInt(Integer::parseInt)
                    .findFirst()
                    .orElse(0);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
