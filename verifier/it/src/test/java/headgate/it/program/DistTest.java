package headgate.it.program;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.it.Checkout;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is in the folder that the build puts together. */
class DistTest {

    /** The project's one time stamp: same sources, same bytes. */
    private static final Instant STAMP = Instant.parse("2026-01-01T00:00:00Z");

    static List<Path> ownJars() throws IOException {
        try (Stream<Path> all = Files.walk(Dist.folder())) {
            return all.filter(each -> each.toString().endsWith(".jar"))
                    .filter(each -> each.getFileName().toString().startsWith("headgate-")
                            || each.startsWith(Dist.folder().resolve("demo")))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void theFolderHoldsWhatItShouldAndNothingElse() throws IOException {
        try (Stream<Path> all = Files.list(Dist.folder())) {
            assertThat(all.map(each -> each.getFileName().toString()))
                    .containsExactlyInAnyOrder("LICENSE", "bin", "lib", "demo", "schemas", "repo");
        }
        assertThat(ownJars()).hasSizeGreaterThanOrEqualTo(10);
    }

    @ParameterizedTest
    @MethodSource("ownJars")
    void everyJarOfOursHoldsTheLicenceAndOneTimeStamp(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            ZipEntry licence = zip.getEntry("META-INF/LICENSE");
            assertThat(licence).as("META-INF/LICENSE in %s", jar.getFileName()).isNotNull();
            assertThat(new String(zip.getInputStream(licence).readAllBytes(), StandardCharsets.UTF_8))
                    .isEqualTo(Checkout.text(".licence/LICENSE"));
            assertThat(zip.stream().map(ZipEntry::getTimeLocal))
                    .containsOnly(java.time.LocalDateTime.ofInstant(STAMP, java.time.ZoneOffset.UTC));
        }
    }

    @Test
    void everyFileHasTheOneTimeStamp() throws IOException {
        try (Stream<Path> all = Files.walk(Dist.folder())) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                assertThat(Files.getLastModifiedTime(each).toInstant())
                        .as(each.toString())
                        .isEqualTo(STAMP);
            }
        }
    }

    @Test
    void theClassPathNamesEveryLibrary() throws IOException {
        List<String> contents = Files.readAllLines(Dist.folder().resolve("lib/contents"));
        assertThat(contents).hasSize(2);
        assertThat(contents.get(0)).matches("[0-9a-f]{64}");
        try (Stream<Path> all = Files.list(Dist.folder().resolve("lib"))) {
            assertThat(contents.get(1).split(" ", -1))
                    .containsExactlyElementsOf(
                            all.map(each -> each.getFileName().toString())
                                    .filter(name -> name.endsWith(".jar"))
                                    .sorted()
                                    .toList());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"headgate-sdk-api", "headgate-sdk-runtime", "headgate-engine", "headgate-testkit"})
    void partnersFindThePartsThatTheyBuildAgainst(String artifact) {
        Path version = Dist.folder().resolve("repo/headgate").resolve(artifact).resolve("0.1.0");
        assertThat(version.resolve(artifact + "-0.1.0.jar")).isRegularFile();
        assertThat(version.resolve(artifact + "-0.1.0.pom")).content().contains("<artifactId>" + artifact);
    }

    @ParameterizedTest
    @ValueSource(strings = {"carriage", "crop-plan", "policy", "stand", "fitting", "report", "replay"})
    void editorsFindTheSchemas(String kind) {
        assertThat(Dist.folder().resolve("schemas/" + kind + ".schema.json"))
                .content()
                .contains("headgate." + kind + "/1");
    }
}
