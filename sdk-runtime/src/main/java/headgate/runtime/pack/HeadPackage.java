package headgate.runtime.pack;

import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.pack.Inspection.NotAJar;
import headgate.runtime.pack.Inspection.Reason;
import headgate.runtime.pack.PackageProblem.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Looks at a head's JAR without running any of it. All problems are collected; the file is read once, so that what was
 * looked at is what is digested and what is copied.
 */
public final class HeadPackage {

    private static final String MANIFEST = "META-INF/MANIFEST.MF";
    private static final String MODULE = "module-info.class";
    private static final String ID_FORM = "[A-Za-z][A-Za-z0-9]*([._-][A-Za-z0-9]+)*";
    private static final int LONGEST_ID = 100;

    /** Attributes that make a virtual machine or the plugin host do more than load the head. */
    private static final Map<String, String> FORBIDDEN = new TreeMap<>(Map.ofEntries(
            Map.entry("Class-Path", "loads other files"),
            Map.entry("Extension-List", "loads other files"),
            Map.entry("Multi-Release", "has other classes for other versions of Java"),
            Map.entry("Launcher-Agent-Class", "starts an agent"),
            Map.entry("Premain-Class", "starts an agent"),
            Map.entry("Agent-Class", "starts an agent"),
            Map.entry("Boot-Class-Path", "starts an agent"),
            Map.entry("Plugin-Class", "runs code of the package before the head is asked"),
            Map.entry("Plugin-Dependencies", "needs other packages"),
            Map.entry("Add-Opens", "opens modules"),
            Map.entry("Add-Exports", "opens modules"),
            Map.entry("Enable-Native-Access", "allows native code")));

    /** Packages that the host brings: a copy in the head's JAR would be a second class of the same name. */
    private static final List<String> BUNDLED = List.of(
            "headgate/api/",
            "headgate/runtime/",
            "headgate/verifier/",
            "headgate/testkit/",
            "headgate/app/",
            "org/pf4j/",
            "org/slf4j/",
            "java/",
            "javax/",
            "jdk/",
            "sun/",
            "com/sun/",
            "netscape/javascript/",
            "org/ietf/jgss/",
            "org/w3c/dom/",
            "org/xml/sax/");

    /** Kinds of problem that forbid a clean copy: what is copied would not be what the partner meant. */
    private static final Set<Kind> BLOCKING =
            EnumSet.of(Kind.ARCHIVE, Kind.MANIFEST, Kind.EXTENSION, Kind.CLASS_FILE, Kind.BUNDLED);

    private final Set<PackageProblem> problems = new TreeSet<>();
    private final SortedMap<String, byte[]> files;
    private final SortedMap<String, byte[]> classBytes = new TreeMap<>();
    private final List<ClassFile> classes = new ArrayList<>();
    private final Set<String> unreadable = new TreeSet<>();

    private HeadPackage(ZipArchive archive) {
        this.files = archive.files();
        problems.addAll(archive.problems());
    }

    /** {@return attributes of the manifest that a head's package must not have, sorted} */
    static Set<String> forbiddenAttributes() {
        return FORBIDDEN.keySet();
    }

    /**
     * Looks at a file.
     *
     * @param file where it is
     * @return what it is
     */
    public static Inspection inspect(Path file) {
        if (!Files.exists(file)) {
            return new NotAJar(Reason.MISSING, "no such file", "check the name and the folder");
        }
        if (Files.isDirectory(file)) {
            return new NotAJar(Reason.NOT_A_FILE, "a directory", "name the JAR inside it");
        }
        if (!Files.isRegularFile(file)) {
            return new NotAJar(Reason.NOT_A_FILE, "something that is no plain file", "name a JAR");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(PackageLimits.FILE + 1);
        } catch (IOException e) {
            return new NotAJar(Reason.UNREADABLE, "a file that cannot be read", "check its permissions");
        }
        return inspect(bytes);
    }

    /**
     * Looks at bytes.
     *
     * @param bytes the whole file
     * @return what it is
     */
    public static Inspection inspect(byte[] bytes) {
        if (bytes.length == 0) {
            return new NotAJar(Reason.EMPTY, "an empty file", "build the head's JAR again");
        }
        if (bytes.length > PackageLimits.FILE) {
            return new NotAJar(
                    Reason.TOO_LARGE, "more than " + PackageLimits.FILE + " bytes", "pack the head's own classes only");
        }
        Optional<ZipArchive> archive = ZipArchive.read(bytes);
        if (archive.isEmpty()) {
            return new NotAJar(Reason.NOT_AN_ARCHIVE, "no JAR, or a damaged one", "build the head's JAR again");
        }
        HeadPackage looked = new HeadPackage(archive.get());
        return archive.get().isWhole()
                ? looked.inspected(archive.get().names(), bytes)
                : looked.notUnpacked(archive.get().names(), bytes);
    }

    private void problem(Kind kind, String where, String found, String expected) {
        problems.add(new PackageProblem(kind, Printable.text(where), Printable.text(found), expected));
    }

    /** What is not known is not looked at: every further problem would only follow from the first. */
    private Inspected notUnpacked(List<String> names, byte[] bytes) {
        PackageFacts facts = new PackageFacts(
                sha256(bytes),
                bytes.length,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                shown(names),
                List.of(),
                told());
        return new Inspected(facts, Optional.empty());
    }

    private static List<String> shown(List<String> names) {
        return names.stream().map(Printable::text).sorted().toList();
    }

    private Inspected inspected(List<String> names, byte[] bytes) {
        byte[] manifestBytes = files.get(MANIFEST);
        if (manifestBytes == null) {
            problem(
                    Kind.MANIFEST,
                    MANIFEST,
                    "nothing",
                    "must be in the JAR; an archive without it is no head's package");
        }
        MainAttributes manifest = MainAttributes.read(manifestBytes == null ? new byte[0] : manifestBytes);
        problems.addAll(manifest.problems());
        problems.addAll(Entries.check(names, files));
        readClasses();
        problems.addAll(References.check(classes, AllowedMembers.list()));

        FORBIDDEN.forEach((attribute, effect) -> manifest.get(attribute)
                .ifPresent(value -> problem(
                        Kind.MANIFEST,
                        attribute,
                        '"' + value + '"',
                        "must not be in the manifest, since it " + effect)));
        Optional<String> id = attribute(
                manifest,
                "Plugin-Id",
                "must be letters and digits in groups joined by dots, hyphens or underscores, at most " + LONGEST_ID
                        + " characters",
                text -> text.length() <= LONGEST_ID && text.matches(ID_FORM) ? Optional.of(text) : Optional.empty());
        Optional<Version> version =
                attribute(manifest, "Plugin-Version", "must have the form " + Version.FORM, Version::parse);
        Optional<String> provider = attribute(
                manifest,
                "Plugin-Provider",
                "must have 1 to " + LONGEST_ID + " printable characters",
                text -> !text.isBlank() && text.length() <= LONGEST_ID && Printable.isSeen(text)
                        ? Optional.of(text)
                        : Optional.empty());
        Optional<ApiRange> range =
                attribute(manifest, "Plugin-Requires", "must have the form " + ApiRange.FORM, ApiRange::parse);
        range.filter(r -> !r.contains(Version.OF_API))
                .ifPresent(r -> problem(
                        Kind.API_RANGE,
                        "Plugin-Requires",
                        r.toString(),
                        "must include " + Version.OF_API + ", the version of the head API here"));
        ExtensionIndex index = new ExtensionIndex(files.get(ExtensionIndex.NAME), classes, unreadable);
        problems.addAll(index.problems());
        Optional<String> extension = index.extension();

        String digest = sha256(bytes);
        PackageFacts facts = new PackageFacts(
                digest,
                bytes.length,
                id,
                version,
                provider,
                range,
                extension,
                shown(names),
                classes.stream().map(c -> c.name().replace('/', '.')).sorted().toList(),
                told());
        boolean blocked = problems.stream().anyMatch(p -> BLOCKING.contains(p.kind()));
        return new Inspected(
                facts,
                blocked
                        ? Optional.empty()
                        : Optional.of(clean(
                                id.orElseThrow(),
                                version.orElseThrow(),
                                provider.orElseThrow(),
                                range.orElseThrow(),
                                extension.orElseThrow(),
                                digest)));
    }

    /** The first problems, and how many they are if there are too many to tell. */
    private List<PackageProblem> told() {
        if (problems.size() <= PackageLimits.PROBLEMS) {
            return List.copyOf(problems);
        }
        List<PackageProblem> told =
                new ArrayList<>(problems.stream().limit(PackageLimits.PROBLEMS).toList());
        told.add(new PackageProblem(
                Kind.REFERENCE,
                "package",
                "more than " + PackageLimits.PROBLEMS + " problems",
                "must have none; the others are not listed"));
        return told;
    }

    private <T> Optional<T> attribute(
            MainAttributes manifest, String name, String expected, Function<String, Optional<T>> parser) {
        Optional<String> text = manifest.get(name);
        Optional<T> value = text.flatMap(parser);
        if (value.isEmpty() && manifest.isReadable() && files.containsKey(MANIFEST)) {
            problem(Kind.MANIFEST, name, text.map(t -> '"' + t + '"').orElse("nothing"), expected);
        }
        return value;
    }

    private void readClasses() {
        files.forEach((entry, content) -> {
            if (entry.equals(MODULE)) {
                // A description for a module path. The copy has none, and nobody reads this one.
                return;
            }
            boolean named = entry.endsWith(".class");
            if (!named) {
                if (content.length >= 4
                        && Arrays.equals(
                                content, 0, 4, new byte[] {(byte) 0xCA, (byte) 0xFE, (byte) 0xBA, (byte) 0xBE}, 0, 4)) {
                    problem(Kind.CLASS_FILE, "entry " + entry, "a class under another name", "must end with .class");
                }
                return;
            }
            String expected = entry.substring(0, entry.length() - ".class".length());
            try {
                ClassFile file = new ClassFile(content);
                if (file.isModule()) {
                    throw new IOException("a module under another name");
                }
                if (!file.name().equals(expected)) {
                    problem(
                            Kind.CLASS_FILE,
                            "entry " + entry,
                            "class " + file.name().replace('/', '.'),
                            "must hold the class that it is named after");
                    return;
                }
                if (BUNDLED.stream().anyMatch(expected::startsWith)) {
                    problem(
                            Kind.BUNDLED,
                            "class " + expected.replace('/', '.'),
                            "a copy in this JAR",
                            "must not be in a head's JAR; the host brings it (scope provided)");
                }
                classes.add(file);
                classBytes.put(entry, content);
            } catch (IOException e) {
                unreadable.add(expected.replace('/', '.'));
                problem(
                        Kind.CLASS_FILE,
                        "entry " + entry,
                        String.valueOf(e.getMessage()),
                        "must be a class file of Java 8 to 17");
            }
        });
    }

    private CleanJar clean(
            String id, Version version, String provider, ApiRange range, String extension, String digest) {
        SortedMap<String, byte[]> content = new TreeMap<>(classBytes);
        content.put(
                MANIFEST,
                wrapped(List.of(
                        "Manifest-Version: 1.0",
                        "Plugin-Id: " + id,
                        "Plugin-Version: " + version,
                        "Plugin-Provider: " + provider,
                        "Plugin-Requires: " + range)));
        content.put(ExtensionIndex.NAME, (extension + "\n").getBytes(StandardCharsets.UTF_8));
        return new CleanJar(id, extension, digest, StoredZip.write(content, MANIFEST));
    }

    /** Lines of a manifest have at most 72 bytes; a longer one goes on after a line break and a space. */
    private static byte[] wrapped(List<String> lines) {
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            int bytes = 0;
            for (int i = 0; i < line.length(); ) {
                String symbol = Character.toString(line.codePointAt(i));
                int width = symbol.getBytes(StandardCharsets.UTF_8).length;
                if (bytes + width > 70) {
                    text.append("\r\n ");
                    bytes = 1;
                }
                text.append(symbol);
                bytes += width;
                i += symbol.length();
            }
            text.append("\r\n");
        }
        return text.append("\r\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
