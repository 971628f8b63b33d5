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
import java.util.Locale;
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
    private static final String INDEX = "META-INF/extensions.idx";
    private static final String EXTENSION = "Lorg/pf4j/Extension;";
    private static final String ID_FORM = "[A-Za-z][A-Za-z0-9]*([._-][A-Za-z0-9]+)*";
    private static final int LONGEST_ID = 100;

    /** Attributes that make a virtual machine or the plugin host do more than load the head. */
    private static final Map<String, String> FORBIDDEN = new TreeMap<>(Map.of(
            "Class-Path", "loads other files",
            "Multi-Release", "has other classes for other versions of Java",
            "Launcher-Agent-Class", "starts an agent",
            "Premain-Class", "starts an agent",
            "Agent-Class", "starts an agent",
            "Plugin-Class", "runs code of the package before the head is asked",
            "Plugin-Dependencies", "needs other packages",
            "Add-Opens", "opens modules",
            "Add-Exports", "opens modules",
            "Enable-Native-Access", "allows native code"));

    private static final List<String> NESTED = List.of(".jar", ".war", ".ear", ".zip", ".jmod");
    private static final List<String> NATIVE = List.of(".so", ".dll", ".dylib", ".jnilib", ".exe", ".a", ".o");
    private static final Map<String, List<String>> MAGIC = Map.of(
            "native code", List.of("7f454c46", "4d5a", "feedface", "feedfacf", "cffaedfe", "cefaedfe"),
            "a nested archive", List.of("504b0304"));

    /** Packages that the host brings: a copy in the head's JAR would be a second class of the same name. */
    private static final List<String> BUNDLED = List.of(
            "headgate/api/",
            "headgate/runtime/",
            "headgate/verifier/",
            "org/pf4j/",
            "org/slf4j/",
            "java/",
            "javax/",
            "jdk/",
            "sun/");

    /** Kinds of problem that forbid a clean copy: what is copied would not be what the partner meant. */
    private static final Set<Kind> BLOCKING =
            EnumSet.of(Kind.ARCHIVE, Kind.MANIFEST, Kind.EXTENSION, Kind.CLASS_FILE, Kind.BUNDLED);

    private final Set<PackageProblem> problems = new TreeSet<>();
    private final SortedMap<String, byte[]> files;
    private final SortedMap<String, byte[]> classBytes = new TreeMap<>();
    private final List<ClassFile> classes = new ArrayList<>();

    private HeadPackage(ZipArchive archive) {
        this.files = archive.files();
        problems.addAll(archive.problems());
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
        return new HeadPackage(archive.get()).inspected(archive.get().names(), bytes);
    }

    private void problem(Kind kind, String where, String found, String expected) {
        problems.add(new PackageProblem(kind, where, MainAttributes.printable(found), expected));
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
        checkEntries(names);
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
                text -> !text.isBlank()
                                && text.length() <= LONGEST_ID
                                && text.chars().noneMatch(Character::isISOControl)
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
        Optional<String> extension = extension();

        String digest = sha256(bytes);
        PackageFacts facts = new PackageFacts(
                digest,
                bytes.length,
                id,
                version,
                provider,
                range,
                extension,
                names.stream().map(MainAttributes::printable).sorted().toList(),
                classes.stream().map(c -> c.name().replace('/', '.')).sorted().toList(),
                List.copyOf(problems));
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

    private <T> Optional<T> attribute(
            MainAttributes manifest, String name, String expected, Function<String, Optional<T>> parser) {
        Optional<String> text = manifest.get(name);
        Optional<T> value = text.flatMap(parser);
        if (value.isEmpty()) {
            problem(Kind.MANIFEST, name, text.map(t -> '"' + t + '"').orElse("nothing"), expected);
        }
        return value;
    }

    private void checkEntries(List<String> names) {
        for (String name : names) {
            String lower = name.toLowerCase(Locale.ROOT);
            if (lower.startsWith("meta-inf/versions/")) {
                problem(Kind.ARCHIVE, "entry " + name, "a class for another version of Java", "must not be there");
            } else if (lower.startsWith("meta-inf/services/") && !name.endsWith("/")) {
                problem(
                        Kind.ARCHIVE,
                        "entry " + name,
                        "a service",
                        "must not be there; a head offers one extension only");
            } else if (lower.equals("plugin.properties")) {
                problem(
                        Kind.ARCHIVE,
                        "entry " + name,
                        "a second description",
                        "must not be there; the manifest describes");
            } else if (NESTED.stream().anyMatch(lower::endsWith)) {
                problem(
                        Kind.ARCHIVE,
                        "entry " + name,
                        "a nested archive",
                        "must not be there; package own classes only");
            } else if (NATIVE.stream().anyMatch(lower::endsWith)) {
                problem(Kind.ARCHIVE, "entry " + name, "native code", "must not be there; a head is Java only");
            }
        }
        files.forEach((name, content) -> MAGIC.forEach((what, marks) -> {
            String start = HexFormat.of().formatHex(content, 0, Math.min(4, content.length));
            if (marks.stream().anyMatch(start::startsWith)) {
                problem(Kind.ARCHIVE, "entry " + name, what, "must not be there, under any name");
            }
        }));
    }

    private void readClasses() {
        files.forEach((entry, content) -> {
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
                    return;
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
                problem(
                        Kind.CLASS_FILE,
                        "entry " + entry,
                        String.valueOf(e.getMessage()),
                        "must be a class file of Java 17 or older");
            }
        });
    }

    private Optional<String> extension() {
        byte[] index = files.get(INDEX);
        Set<String> listed = new TreeSet<>();
        if (index != null) {
            for (String line : new String(index, StandardCharsets.UTF_8).split("\r\n|\n|\r", -1)) {
                String name = line.replaceFirst("#.*", "").strip();
                if (!name.isEmpty()) {
                    listed.add(name);
                }
            }
        }
        Set<String> annotated = new TreeSet<>();
        classes.stream()
                .filter(c -> c.annotations().contains(EXTENSION))
                .forEach(c -> annotated.add(c.name().replace('/', '.')));
        if (listed.size() != 1) {
            problem(
                    Kind.EXTENSION,
                    INDEX,
                    index == null ? "nothing" : listed.size() + " classes " + listed,
                    "must list one class, the head; annotate it with @Extension and let the annotation processor of pf4j"
                            + " write this file");
            return Optional.empty();
        }
        if (!annotated.equals(listed)) {
            problem(
                    Kind.EXTENSION,
                    INDEX,
                    "listed " + listed + ", annotated " + annotated,
                    "must list the class that has @Extension; build again from clean");
            return Optional.empty();
        }
        return Optional.of(listed.iterator().next());
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
        content.put(INDEX, (extension + "\n").getBytes(StandardCharsets.UTF_8));
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
