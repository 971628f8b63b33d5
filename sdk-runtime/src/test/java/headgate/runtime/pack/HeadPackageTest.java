package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.pack.Inspection.NotAJar;
import headgate.runtime.pack.Inspection.Reason;
import headgate.runtime.pack.PackageProblem.Kind;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadPackageTest {

    private static final SortedMap<String, byte[]> GOOD = Jars.compile(Heads.NAME, Heads.spot(""));

    private static final byte[] HEAD = Objects.requireNonNull(GOOD.get("partner/TestHead.class"));

    private static Inspected inspected(byte[] jar) {
        Inspection inspection = HeadPackage.inspect(jar);
        assertThat(inspection).isInstanceOf(Inspected.class);
        return (Inspected) inspection;
    }

    private static Map<String, byte[]> entries() {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("META-INF/MANIFEST.MF", Jars.manifestBytes(Jars.manifest()));
        entries.put("META-INF/extensions.idx", Heads.NAME.getBytes(StandardCharsets.UTF_8));
        entries.putAll(GOOD);
        return entries;
    }

    private static Inspected with(String entry, byte[] content) {
        Map<String, byte[]> entries = entries();
        entries.put(entry, content);
        return inspected(Jars.zip(entries));
    }

    private static Inspected withAttribute(String name, String value) {
        SortedMap<String, String> manifest = Jars.manifest();
        manifest.put(name, value);
        return inspected(Jars.of(manifest, Heads.NAME, GOOD));
    }

    private static void assertOnly(Inspected inspected, Kind kind, String where) {
        assertThat(inspected.facts().problems()).singleElement().satisfies(p -> {
            assertThat(p.kind()).isEqualTo(kind);
            assertThat(p.where()).isEqualTo(where);
            assertThat(p.expected()).startsWith("must ");
        });
    }

    @Test
    void aGoodPackageHasFactsAndNoProblem() {
        byte[] jar = Jars.zip(entries());
        Inspected inspected = inspected(jar);
        PackageFacts facts = inspected.facts();
        assertThat(facts.problems()).isEmpty();
        assertThat(facts.id()).contains("test.head");
        assertThat(facts.version()).contains(new Version(1, 2, 3));
        assertThat(facts.provider()).contains("Test bench");
        assertThat(facts.apiRange()).contains(new ApiRange(new Version(0, 1, 0), new Version(0, 2, 0)));
        assertThat(facts.extension()).contains("partner.TestHead");
        assertThat(facts.classNames()).containsExactly("partner.TestHead");
        assertThat(facts.entries())
                .containsExactly("META-INF/MANIFEST.MF", "META-INF/extensions.idx", "partner/TestHead.class");
        assertThat(facts.size()).isEqualTo(jar.length);
        assertThat(facts.sha256()).hasSize(64);
        assertThat(inspected.clean()).isPresent();
    }

    /** FIPS 180-4 gives SHA-256; its value for the three letters is NIST's example "abc". The JDK reads it from a file. */
    @Test
    void theDigestIsThatOfTheFile(@TempDir Path folder) throws Exception {
        byte[] jar = Jars.zip(entries());
        Path file = Files.write(folder.resolve("head.jar"), jar);
        byte[] digest = java.security.MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
        assertThat(((Inspected) HeadPackage.inspect(file)).facts().sha256())
                .isEqualTo(java.util.HexFormat.of().formatHex(digest));
    }

    @Test
    void theCleanCopyIsTheSameForAnyPackingAndAnyJarReaderReadsIt() throws IOException {
        byte[] clean = inspected(Jars.zip(entries())).clean().orElseThrow().bytes();
        List<Map.Entry<String, byte[]>> order = new ArrayList<>(entries().entrySet());
        Collections.reverse(order);
        Map<String, byte[]> reversed = new LinkedHashMap<>();
        reversed.put("notes/readme.txt", "left out".getBytes(StandardCharsets.UTF_8));
        reversed.put("partner/", new byte[0]);
        order.forEach(e -> reversed.put(e.getKey(), e.getValue()));
        assertThat(inspected(Jars.zip(reversed)).clean().orElseThrow().bytes()).isEqualTo(clean);

        Map<String, byte[]> read = new TreeMap<>();
        try (JarInputStream jar = new JarInputStream(new ByteArrayInputStream(clean))) {
            assertThat(jar.getManifest().getMainAttributes().getValue("Plugin-Id"))
                    .isEqualTo("test.head");
            assertThat(jar.getManifest().getMainAttributes().getValue("Plugin-Requires"))
                    .isEqualTo(">=0.1.0 & <0.2.0");
            for (JarEntry e = jar.getNextJarEntry(); e != null; e = jar.getNextJarEntry()) {
                read.put(e.getName(), jar.readAllBytes());
            }
        }
        assertThat(read.keySet()).containsExactly("META-INF/extensions.idx", "partner/TestHead.class");
        assertThat(read.get("partner/TestHead.class")).isEqualTo(HEAD);
        assertThat(inspected(clean).facts().problems()).isEmpty();
        assertThat(inspected(clean).clean().orElseThrow().bytes()).isEqualTo(clean);
    }

    @Test
    void aLongProviderSurvivesTheLineLimitOfManifests() throws IOException {
        String provider = "Gärtnerei-Werkstatt für Köpfe und sonstige Anbaugeräte am langen Feld bei der großen Mühle";
        CleanJar clean = withAttribute("Plugin-Provider", "x").clean().orElseThrow();
        assertThat(clean.id()).isEqualTo("test.head");
        SortedMap<String, String> manifest = Jars.manifest();
        manifest.put("Plugin-Provider", provider.substring(0, 40) + "\r\n " + provider.substring(40));
        Inspected inspected = inspected(Jars.of(manifest, Heads.NAME, GOOD));
        assertThat(inspected.facts().provider()).contains(provider);
        try (JarInputStream jar = new JarInputStream(
                new ByteArrayInputStream(inspected.clean().orElseThrow().bytes()))) {
            assertThat(jar.getManifest().getMainAttributes().getValue("Plugin-Provider"))
                    .isEqualTo(provider);
        }
    }

    @Test
    void whatIsNoJarIsAnErrorOfTheInput(@TempDir Path folder) throws IOException {
        assertThat(reason(folder.resolve("none.jar"))).isEqualTo(Reason.MISSING);
        assertThat(reason(folder)).isEqualTo(Reason.NOT_A_FILE);
        assertThat(reason(Files.createFile(folder.resolve("empty.jar")))).isEqualTo(Reason.EMPTY);
        assertThat(reason(Files.writeString(folder.resolve("text.jar"), "this is a text")))
                .isEqualTo(Reason.NOT_AN_ARCHIVE);
        assertThat(reason(Files.write(folder.resolve("large.jar"), new byte[17 * 1024 * 1024])))
                .isEqualTo(Reason.TOO_LARGE);
        byte[] jar = Jars.zip(entries());
        assertThat(reason(Files.write(folder.resolve("cut.jar"), Arrays.copyOf(jar, jar.length - 30))))
                .isEqualTo(Reason.NOT_AN_ARCHIVE);
    }

    private static Reason reason(Path file) {
        Inspection inspection = HeadPackage.inspect(file);
        assertThat(inspection).isInstanceOf(NotAJar.class);
        NotAJar notAJar = (NotAJar) inspection;
        assertThat(notAJar.found()).isNotBlank().doesNotContain("\n");
        assertThat(notAJar.advice()).isNotBlank().doesNotContain("\n");
        return notAJar.reason();
    }

    /** Every damaged file is either told or harmless: nothing throws. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noDamageThrows(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        byte[] jar = Jars.zip(entries());
        for (int i = 0; i < 300; i++) {
            byte[] damaged = jar.clone();
            for (int n = random.nextInt(1, 4); n > 0; n--) {
                int at = random.nextBoolean()
                        ? random.nextInt(damaged.length)
                        : Math.max(0, damaged.length - 1 - random.nextInt(300));
                damaged[at] = (byte) random.nextInt();
            }
            Inspection inspection = HeadPackage.inspect(damaged);
            if (inspection instanceof Inspected in && in.clean().isPresent()) {
                assertThat(in.clean().orElseThrow().bytes()).isNotEmpty();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Plugin-Version, banana",
        "Plugin-Version, 1.2",
        "Plugin-Version, 01.2.3",
        "Plugin-Version, 1.2.3-01",
        "Plugin-Id, two words",
        "Plugin-Id, -x",
        "Plugin-Provider, ''",
        "Plugin-Requires, *",
        "Plugin-Requires, '[0.1.0,0.2.0)'",
        "Plugin-Requires, >=0.1.0",
        "Plugin-Requires, '>=0.2.0 & <0.1.0'",
        "Plugin-Requires, '>=0.1.0 &  <0.2.0'",
        "Class-Path, other.jar",
        "Multi-Release, true",
        "Launcher-Agent-Class, a.B",
        "Premain-Class, a.B",
        "Agent-Class, a.B",
        "Plugin-Class, a.B",
        "Plugin-Dependencies, other",
        "Enable-Native-Access, ALL-UNNAMED",
    })
    void aBadAttributeIsNamed(String attribute, String value) {
        Inspected inspected = withAttribute(attribute, value);
        assertOnly(inspected, Kind.MANIFEST, attribute);
        assertThat(inspected.clean()).isEmpty();
    }

    @Test
    void missingAttributesComeAllAtOnce() {
        Inspected inspected = inspected(Jars.of(Map.of("Manifest-Version", "1.0"), Heads.NAME, GOOD));
        assertThat(inspected.facts().problems().stream().map(PackageProblem::where))
                .containsExactly("Plugin-Id", "Plugin-Provider", "Plugin-Requires", "Plugin-Version");
        Map<String, byte[]> bare = entries();
        bare.remove("META-INF/MANIFEST.MF");
        assertThat(inspected(Jars.zip(bare)).facts().problems().stream().map(PackageProblem::where))
                .containsExactly("META-INF/MANIFEST.MF");
    }

    @Test
    void anAttributeGivenTwiceIsNotTheLastOnesWin() {
        byte[] manifest = (new String(Jars.manifestBytes(Jars.manifest()), StandardCharsets.UTF_8).strip()
                        + "\r\nplugin-id: other\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8);
        assertOnly(with("META-INF/MANIFEST.MF", manifest), Kind.MANIFEST, "plugin-id");
    }

    @Test
    void anApiRangeThatLeavesUsOutIsToldButMayBeLoaded() {
        Inspected inspected = withAttribute("Plugin-Requires", ">=0.2.0 & <0.3.0");
        assertOnly(inspected, Kind.API_RANGE, "Plugin-Requires");
        assertThat(inspected.facts().problems().get(0).sentence())
                .contains("0.1.0")
                .contains(">=0.2.0 & <0.3.0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lib/other.jar",
                "classes.zip",
                "native/libfast.so",
                "fast.DLL",
                "META-INF/versions/21/partner/TestHead.class",
                "META-INF/services/java.util.function.Supplier",
                "plugin.properties"
            })
    void anEntryThatAHeadMustNotHaveIsNamed(String entry) {
        Inspected inspected = with(entry, "x".getBytes(StandardCharsets.UTF_8));
        assertThat(inspected.facts().problems()).anySatisfy(p -> {
            assertThat(p.kind()).isEqualTo(Kind.ARCHIVE);
            assertThat(p.where()).isEqualTo("entry " + entry);
        });
        assertThat(inspected.clean()).isEmpty();
    }

    @Test
    void aDisguiseDoesNotHelp() {
        assertOnly(with("notes.txt", new byte[] {0x7f, 'E', 'L', 'F', 2}), Kind.ARCHIVE, "entry notes.txt");
        assertOnly(with("notes.txt", new byte[] {'P', 'K', 3, 4, 0}), Kind.ARCHIVE, "entry notes.txt");
        assertOnly(with("notes.txt", HEAD), Kind.CLASS_FILE, "entry notes.txt");
        assertOnly(with("partner/Other.class", HEAD), Kind.CLASS_FILE, "entry partner/Other.class");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../evil.txt", "/etc/evil.txt", "a/../../evil.txt", "a\\evil.txt", "c:evil.txt", "a//b.txt"})
    void aNameThatLeavesTheArchiveIsRefused(String name) {
        assertOnly(with(name, new byte[] {1}), Kind.ARCHIVE, "entry " + name);
    }

    @Test
    void namesThatDifferInCaseOnlyAreTwoOfOne() {
        assertOnly(
                with("meta-inf/Manifest.mf", Jars.manifestBytes(Jars.manifest())),
                Kind.ARCHIVE,
                "entry meta-inf/Manifest.mf");
    }

    /** The library that writes archives refuses two entries of one name, so the second is renamed in the bytes. */
    @Test
    void twoEntriesOfOneNameAreRefused() {
        Map<String, byte[]> entries = entries();
        entries.put("partner/TestHeaD.class", HEAD);
        byte[] jar = Jars.zip(entries);
        String text = new String(jar, StandardCharsets.ISO_8859_1).replace("TestHeaD.class", "TestHead.class");
        assertOnly(inspected(text.getBytes(StandardCharsets.ISO_8859_1)), Kind.ARCHIVE, "entry partner/TestHead.class");
    }

    @Test
    void twoHeadersThatDisagreeAreRefused() {
        byte[] jar = Jars.zip(entries());
        String text = new String(jar, StandardCharsets.ISO_8859_1).replaceFirst("TestHead.class", "BestHead.class");
        assertThat(inspected(text.getBytes(StandardCharsets.ISO_8859_1)).facts().problemsOf(Kind.ARCHIVE))
                .isNotEmpty();
    }

    @Test
    void limitsHold() {
        assertThat(with("big.txt", new byte[3 * 1024 * 1024]).facts().problems())
                .singleElement()
                .satisfies(p -> assertThat(p.expected()).contains("200-fold"));
        assertThat(with("big.txt", new byte[5 * 1024 * 1024]).facts().problems())
                .singleElement()
                .satisfies(p -> assertThat(p.expected()).contains("bytes"));
        Map<String, byte[]> many = entries();
        for (int i = 0; i < 2000; i++) {
            many.put("t/" + i, new byte[0]);
        }
        assertThat(inspected(Jars.zip(many)).facts().problemsOf(Kind.ARCHIVE))
                .singleElement()
                .satisfies(p -> assertThat(p.found()).isEqualTo("2003 entries"));
    }

    @Test
    void theIndexListsTheOneAnnotatedClass() {
        assertOnly(with("META-INF/extensions.idx", new byte[0]), Kind.EXTENSION, "META-INF/extensions.idx");
        assertOnly(
                with("META-INF/extensions.idx", "partner.TestHead\npartner.Gone\n".getBytes(StandardCharsets.UTF_8)),
                Kind.EXTENSION,
                "META-INF/extensions.idx");
        assertOnly(
                with("META-INF/extensions.idx", "partner.Gone\n".getBytes(StandardCharsets.UTF_8)),
                Kind.EXTENSION,
                "META-INF/extensions.idx");
        Inspected twice = with(
                "META-INF/extensions.idx",
                "#\npartner.TestHead\npartner.TestHead # again".getBytes(StandardCharsets.UTF_8));
        assertThat(twice.facts().extension()).isEqualTo(Optional.of("partner.TestHead"));
    }

    @Test
    void aTooNewOrBrokenClassFileIsNamed() {
        byte[] newer = HEAD.clone();
        newer[7] = 65;
        Inspected inspected = with("partner/TestHead.class", newer);
        assertThat(inspected.facts().problemsOf(Kind.CLASS_FILE))
                .singleElement()
                .satisfies(p -> assertThat(p.found()).isEqualTo("class file version 65.0"));
        byte[] cut = Arrays.copyOf(newer, newer.length - 1);
        cut[7] = 61;
        assertThat(with("partner/TestHead.class", cut).facts().problemsOf(Kind.CLASS_FILE))
                .hasSize(1);
        byte[] longer = Arrays.copyOf(HEAD, newer.length + 1);
        assertThat(with("partner/TestHead.class", longer).facts().problemsOf(Kind.CLASS_FILE))
                .singleElement()
                .satisfies(p -> assertThat(p.found()).isEqualTo("bytes after the end"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"headgate.api.head.Fake", "org.pf4j.Fake", "headgate.runtime.Fake"})
    void aBundledHostClassIsNamed(String name) {
        String pack = name.substring(0, name.lastIndexOf('.'));
        SortedMap<String, byte[]> fake = Jars.compile(name, "package " + pack + "; public class Fake {}");
        Inspected inspected = with(
                name.replace('.', '/') + ".class", Objects.requireNonNull(fake.get(name.replace('.', '/') + ".class")));
        assertOnly(inspected, Kind.BUNDLED, "class " + name);
        assertThat(inspected.clean()).isEmpty();
    }
}
