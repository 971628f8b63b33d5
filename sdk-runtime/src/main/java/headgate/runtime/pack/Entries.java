package headgate.runtime.pack;

import headgate.runtime.pack.PackageProblem.Kind;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Predicate;

/** Which entries a head's JAR must not have, by name and by the bytes that they begin with. */
final class Entries {

    private static final List<String> NESTED = List.of(
            ".jar", ".war", ".ear", ".zip", ".jmod", ".aar", ".apk", ".tar", ".gz", ".tgz", ".bz2", ".xz", ".zst",
            ".7z", ".rar");
    private static final List<String> NATIVE =
            List.of(".so", ".dll", ".dylib", ".jnilib", ".exe", ".a", ".o", ".lib", ".sys", ".node", ".wasm");
    private static final List<String> SIGNATURES = List.of(".sf", ".rsa", ".dsa", ".ec");

    /** How archives, native code and signatures begin, in hexadecimal. */
    private static final Map<String, List<String>> MAGIC = Map.of(
            "native code",
            List.of("7f454c46", "4d5a", "feedface", "feedfacf", "cffaedfe", "cefaedfe", "0061736d", "213c617263683e"),
            "a nested archive",
            List.of(
                    "504b0304",
                    "504b0506",
                    "4a4d0100",
                    "1f8b",
                    "425a68",
                    "fd377a585a00",
                    "28b52ffd",
                    "377abcaf271c",
                    "526172211a07"));

    private static final int LONGEST_MAGIC = 8;
    private static final String META = "meta-inf/";
    private static final String NOT_THERE = "must not be there; ";

    private record NameRule(Predicate<String> matches, String what, String why) {}

    private static final List<NameRule> BY_NAME = List.of(
            new NameRule(
                    name -> name.startsWith(META + "versions/"),
                    "a class for another version of Java",
                    "all carriages run the same classes"),
            new NameRule(
                    name -> name.startsWith(META + "services/") && !name.endsWith("/"),
                    "a service",
                    "a head offers one extension only"),
            new NameRule(
                    Entries::isSignature,
                    "a signature of the archive",
                    "nobody checks it, since only a copy of the classes is loaded; what vouches for a head is its fit"
                            + " record"),
            new NameRule(
                    name -> name.equals(META + "index.list"),
                    "a list of other archives",
                    "package the head's own classes only"),
            new NameRule(
                    name -> name.equals("plugin.properties"),
                    "a second description",
                    "the manifest describes the head"),
            new NameRule(
                    name -> NESTED.stream().anyMatch(name::endsWith),
                    "a nested archive",
                    "package the head's own classes only"),
            new NameRule(name -> NATIVE.stream().anyMatch(name::endsWith), "native code", "a head is Java only"));

    private Entries() {}

    private static boolean isSignature(String name) {
        return name.startsWith(META)
                && name.indexOf('/', META.length()) < 0
                && (name.startsWith(META + "sig-") || SIGNATURES.stream().anyMatch(name::endsWith));
    }

    /**
     * Looks at all entries.
     *
     * @param names names of all, directories included
     * @param files content of the files
     * @return what must not be there
     */
    static List<PackageProblem> check(List<String> names, SortedMap<String, byte[]> files) {
        List<PackageProblem> problems = new ArrayList<>();
        for (String name : names) {
            String lower = name.toLowerCase(Locale.ROOT);
            Optional<NameRule> broken =
                    BY_NAME.stream().filter(rule -> rule.matches().test(lower)).findFirst();
            if (broken.isPresent()) {
                problems.add(problem(
                        name, broken.get().what(), NOT_THERE + broken.get().why()));
            } else if (files.containsKey(name)) {
                byContent(files.get(name))
                        .ifPresent(what -> problems.add(problem(name, what, "must not be there, under any name")));
            }
        }
        return problems;
    }

    private static Optional<String> byContent(byte[] content) {
        String start = HexFormat.of().formatHex(content, 0, Math.min(LONGEST_MAGIC, content.length));
        return MAGIC.entrySet().stream()
                .filter(e -> e.getValue().stream().anyMatch(start::startsWith))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static PackageProblem problem(String name, String found, String expected) {
        return new PackageProblem(Kind.ARCHIVE, Printable.text("entry " + name), found, expected);
    }
}
