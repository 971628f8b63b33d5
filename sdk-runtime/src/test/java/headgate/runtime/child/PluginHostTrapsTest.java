package headgate.runtime.child;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.answer.Action;
import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.pack.PackageProblem;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the plugin host (PF4J 3.15.0) does that a host of heads must not rely on, one test each. */
class PluginHostTrapsTest {

    private static final HeadLimits LIMITS = HeadLimits.STANDARD;

    private static Inspected inspected(byte[] jar) {
        Inspection inspection = HeadPackage.inspect(jar);
        assertThat(inspection).isInstanceOf(Inspected.class);
        return (Inspected) inspection;
    }

    private static List<String> sentences(byte[] jar) {
        return inspected(jar).facts().problems().stream()
                .map(PackageProblem::sentence)
                .toList();
    }

    private static byte[] withEntry(String name, String text) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("META-INF/MANIFEST.MF", Jars.manifestBytes(Jars.manifest()));
        entries.put("META-INF/extensions.idx", Heads.NAME.getBytes(StandardCharsets.UTF_8));
        entries.putAll(Jars.compile(Heads.NAME, Heads.spot("")));
        entries.put(name, text.getBytes(StandardCharsets.UTF_8));
        return Jars.zip(entries);
    }

    private static byte[] withAttribute(String name, String value) {
        SortedMap<String, String> manifest = Jars.manifest();
        manifest.put(name, value);
        return Jars.of(manifest, Heads.NAME, Jars.compile(Heads.NAME, Heads.spot("")));
    }

    /** The copy may be had although references in it are refused: these tests run what the gate would not. */
    private static CleanJar copy(String source) {
        return inspected(Jars.of(Heads.NAME, source)).clean().orElseThrow();
    }

    private static HeadStart start(String source) {
        return HeadProcess.start(copy(source), LIMITS);
    }

    private static HeadFault refused(String source) {
        HeadStart start = start(source);
        assertThat(start).isInstanceOf(HeadStart.Refused.class);
        return ((HeadStart.Refused) start).fault();
    }

    /** What a head declines with, if this is what it says of something. */
    private static String says(String members, String expression) {
        return says(copy(Heads.acting(members, "return Action.decline(String.valueOf(" + expression + "));")));
    }

    private static String says(CleanJar jar) {
        HeadStart start = HeadProcess.start(jar, LIMITS);
        assertThat(start).isInstanceOf(HeadStart.Running.class);
        LatticeSpotTask task = LatticeSpotTask.nearest(
                Point3.ofMetres(0, 0, -0.4),
                Velocity.ofMetresPerSecond(-0.5, 0),
                PlantClass.BROADLEAF,
                0.004,
                0.1,
                SoilClass.MEDIUM,
                0.25);
        try (HeadAnswers head = ((HeadStart.Running) start).head()) {
            List<SpotAnswer> answers = head.act(List.of(task, task));
            SpotAnswer last = answers.get(answers.size() - 1);
            assertThat(last).isInstanceOf(SpotAnswer.Answered.class);
            Action action = ((SpotAnswer.Answered) last).action();
            return action.declined().orElseThrow();
        }
    }

    @Nested
    class Description {

        @Test
        void aPropertiesFileInTheJarWouldBeatTheManifest() throws IOException {
            assertThat(sentences(withEntry("plugin.properties", "plugin.id=other\nplugin.version=9.9.9\n")))
                    .singleElement()
                    .asString()
                    .contains("plugin.properties", "the manifest describes");
        }

        @Test
        void aJarWithoutAManifestWouldBeANullPointer() {
            Map<String, byte[]> entries = new LinkedHashMap<>(Jars.compile(Heads.NAME, Heads.spot("")));
            entries.put("META-INF/extensions.idx", Heads.NAME.getBytes(StandardCharsets.UTF_8));
            assertThat(sentences(Jars.zip(entries))).singleElement().asString().contains("META-INF/MANIFEST.MF");
        }

        @Test
        void aVersionOfWordsWouldDo() {
            assertThat(sentences(withAttribute("Plugin-Version", "banana")))
                    .singleElement()
                    .asString()
                    .contains("Plugin-Version", "banana");
        }

        /** Some of these it takes, some it refuses, and some end its whole scan with an exception. */
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "^0.1",
                    "0.x",
                    "0.1 - 0.6",
                    "<0.1.0 | >=0.1.0",
                    "*",
                    "~0.1",
                    ">=0.1.0, <0.2.0",
                    "[0.1.0,0.2.0)",
                    "garbage",
                    "0.1.0",
                    ">=0.1 & <0.2",
                    ">=0.1.0-rc.1 & <0.2.0"
                })
        void aRangeHasOneFormOnly(String range) {
            assertThat(sentences(withAttribute("Plugin-Requires", range)))
                    .singleElement()
                    .asString()
                    .contains("Plugin-Requires", ">=a.b.c & <d.e.f", range);
        }

        @Test
        void aRangeWouldCountOnlyIfTheHostSaysItsVersion() {
            assertThat(sentences(withAttribute("Plugin-Requires", ">=7.0.0 & <8.0.0")))
                    .singleElement()
                    .asString()
                    .contains("must include 0.1.0");
            // Run all the same, the host itself says no: it was told which version it is.
            HeadStart start = HeadProcess.start(
                    inspected(withAttribute("Plugin-Requires", ">=7.0.0 & <8.0.0"))
                            .clean()
                            .orElseThrow(),
                    LIMITS);
            assertThat(start).isInstanceOf(HeadStart.Refused.class);
        }

        @Test
        void classPathWouldBeFollowed() throws IOException {
            assertThat(sentences(withAttribute("Class-Path", "../other.jar")))
                    .singleElement()
                    .asString()
                    .contains("Class-Path");
            // Whatever else a manifest says, the copy says five things.
            try (JarInputStream jar =
                    new JarInputStream(new ByteArrayInputStream(inspected(withAttribute("Automatic-Module-Name", "x"))
                            .clean()
                            .orElseThrow()
                            .bytes()))) {
                assertThat(jar.getManifest().getMainAttributes()).hasSize(5);
            }
        }

        @Test
        void aPluginClassWouldRunBeforeAnythingIsAsked() {
            assertThat(sentences(withAttribute("Plugin-Class", Heads.NAME)))
                    .singleElement()
                    .asString()
                    .contains("Plugin-Class", "before the head is asked");
        }
    }

    @Nested
    class Index {

        @Test
        void aMissingIndexWouldBeTakenFromTheHost() {
            assertThat(sentences(Jars.zip(new TreeMap<>(Map.of(
                            "META-INF/MANIFEST.MF",
                            Jars.manifestBytes(Jars.manifest()),
                            "partner/TestHead.class",
                            Jars.compile(Heads.NAME, Heads.spot("")).get("partner/TestHead.class"))))))
                    .singleElement()
                    .asString()
                    .contains("META-INF/extensions.idx");
        }

        @Test
        void aStaleIndexWouldListClassesThatAreGoneOrListThemTwice() throws IOException {
            assertThat(sentences(withEntry("META-INF/extensions.idx", "partner.Gone\npartner.TestHead\n")))
                    .singleElement()
                    .asString()
                    .contains("partner.Gone");
            byte[] twice = inspected(withEntry(
                            "META-INF/extensions.idx", "# made\npartner.TestHead\npartner . TestHead # again\n"))
                    .clean()
                    .map(CleanJar::bytes)
                    .orElse(new byte[0]);
            assertThat(twice).isEmpty();
            byte[] same = inspected(withEntry("META-INF/extensions.idx", "partner.TestHead\npartner.TestHead\n"))
                    .clean()
                    .orElseThrow()
                    .bytes();
            try (JarInputStream jar = new JarInputStream(new ByteArrayInputStream(same))) {
                JarEntry first = jar.getNextJarEntry();
                assertThat(first.getName()).isEqualTo("META-INF/extensions.idx");
                assertThat(new String(jar.readAllBytes(), StandardCharsets.UTF_8))
                        .isEqualTo("partner.TestHead\n");
            }
        }

        @Test
        void aServiceFileWouldBeASecondIndex() {
            assertThat(sentences(withEntry("META-INF/services/org.pf4j.ExtensionPoint", "partner.TestHead\n")))
                    .singleElement()
                    .asString()
                    .contains("a service");
        }
    }

    @Nested
    class ClassLoading {

        @Test
        void aBundledClassOfOursWouldShadowOursAndLoseTheHead() {
            SortedMap<String, byte[]> classes = new TreeMap<>(Jars.compile(Heads.NAME, Heads.spot("")));
            classes.putAll(Jars.compile(
                    "headgate.api.head.SpotHead", "package headgate.api.head; public interface SpotHead {}"));
            assertThat(sentences(Jars.of(Jars.manifest(), Heads.NAME, classes)))
                    .singleElement()
                    .asString()
                    .contains("headgate.api.head.SpotHead", "the host brings it");
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "headgate.runtime.child.HeadChild",
                    "headgate.runtime.pack.HeadPackage",
                    "org.pf4j.PluginManager",
                    "org.slf4j.Logger",
                    "com.fasterxml.jackson.core.JsonFactory"
                })
        void theInsideOfTheHostWouldBeSeen(String name) {
            String members = "static String find() { try { return Class.forName(\"" + name
                    + "\").getName(); } catch (ClassNotFoundException e) { return \"not there\"; } }";
            assertThat(says(members, "find()")).isEqualTo("not there");
        }

        @Test
        void theContextClassLoaderWouldBeTheHosts() {
            assertThat(says("", "Thread.currentThread().getContextClassLoader() == getClass().getClassLoader()"))
                    .isEqualTo("true");
        }
    }

    @Nested
    class Lifecycle {

        @Test
        void anErrorInTheConstructorWouldEscapeAndAnExceptionWouldBeLost() {
            for (String thrown : List.of("new AssertionError(\"why\")", "new IllegalStateException(\"why\")")) {
                HeadFault fault = refused(Heads.spot("public TestHead() { if (on()) { throw " + thrown + "; } }"));
                assertThat(fault).isInstanceOf(HeadFault.Threw.class);
                assertThat(((HeadFault.Threw) fault).stage()).isEqualTo(HeadStage.LOAD);
                assertThat(((HeadFault.Threw) fault).message()).isEqualTo("why");
            }
        }

        @Test
        void aStaticBlockThatFailsWouldHideItsCause() {
            HeadFault fault =
                    refused(Heads.spot("static { if (on()) { throw new IllegalStateException(\"the cause\"); } }"));
            assertThat(fault).isInstanceOf(HeadFault.Threw.class);
            assertThat(((HeadFault.Threw) fault).message()).isEqualTo("the cause");
        }

        @Test
        void endlessRecursionInTheConstructorWouldEndTheHost() {
            HeadFault fault = refused(Heads.spot("public TestHead() { new TestHead(); }"));
            assertThat(fault).isInstanceOf(HeadFault.StackOverflow.class);
        }

        @Test
        void everyQuestionWouldMakeANewInstance() {
            assertThat(says("static int made; public TestHead() { made++; }", "made"))
                    .isEqualTo("1");
        }

        @Test
        void filesInTheFolderOfPluginsWouldChangeWhatStarts() {
            String members =
                    "static String files() {" + " return String.join(\",\", new java.io.File(\".\").list()); }";
            assertThat(says(members, "files()"))
                    .doesNotContain("disabled")
                    .doesNotContain("enabled")
                    .doesNotContain("plugins");
        }

        @Test
        void aDevelopmentModeWouldLoadFromOtherFolders() {
            assertThat(says("", "System.getProperty(\"pf4j.mode\") + System.getProperty(\"pf4j.pluginsDir\")"))
                    .isEqualTo("nullnull");
        }
    }

    @Nested
    class PartnersFile {

        @Test
        void aZipWouldBeUnpackedBesideIt(@TempDir Path folder) throws IOException {
            Path zip = Files.write(folder.resolve("head.zip"), Jars.of(Heads.NAME, Heads.spot("")));
            assertThat(((Inspected) HeadPackage.inspect(zip)).facts().problems())
                    .isEmpty();
            try (Stream<Path> left = Files.list(folder)) {
                assertThat(left).containsExactly(zip);
            }
        }

        @Test
        void theFileWouldBeHeldOpenForAsLongAsTheHeadRuns(@TempDir Path folder) throws IOException {
            String source = Heads.acting("", "return Action.decline(\"still here\");");
            Path jar = Files.write(folder.resolve("head.jar"), Jars.of(Heads.NAME, source));
            CleanJar copy = ((Inspected) HeadPackage.inspect(jar)).clean().orElseThrow();
            Files.delete(jar);
            assertThat(says(copy)).isEqualTo("still here");
        }
    }
}
