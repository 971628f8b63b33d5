package headgate.runtime.pack;

import java.util.List;
import java.util.Optional;

/**
 * What a head's JAR says and holds.
 *
 * @param sha256 digest of the partner's file, lower-case hexadecimal: what a fit record names
 * @param size size of the file, bytes
 * @param id {@code Plugin-Id}; empty if missing or malformed
 * @param version {@code Plugin-Version}; empty if missing or malformed
 * @param provider {@code Plugin-Provider}; empty if missing or malformed
 * @param apiRange {@code Plugin-Requires}; empty if missing or malformed
 * @param extension the class in the index of extensions; empty unless there is exactly one
 * @param entries names of all entries, sorted
 * @param classNames binary names of all classes, sorted
 * @param problems everything that is wrong, sorted; empty if nothing is
 */
public record PackageFacts(
        String sha256,
        long size,
        Optional<String> id,
        Optional<Version> version,
        Optional<String> provider,
        Optional<ApiRange> apiRange,
        Optional<String> extension,
        List<String> entries,
        List<String> classNames,
        List<PackageProblem> problems) {

    /** Takes copies of the lists. */
    public PackageFacts {
        entries = List.copyOf(entries);
        classNames = List.copyOf(classNames);
        problems = List.copyOf(problems);
    }

    /**
     * The problems of some kinds.
     *
     * @param kinds the kinds
     * @return those problems, in order
     */
    public List<PackageProblem> problemsOf(PackageProblem.Kind... kinds) {
        List<PackageProblem.Kind> wanted = List.of(kinds);
        return problems.stream().filter(p -> wanted.contains(p.kind())).toList();
    }
}
