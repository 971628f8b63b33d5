package headgate.runtime.pack;

import headgate.runtime.pack.ClassFile.Declared;
import headgate.runtime.pack.ClassFile.Signature;
import headgate.runtime.pack.PackageProblem.Kind;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The index of extensions, held against the classes: one head, of one kind, that can be made. */
final class ExtensionIndex {

    static final String NAME = "META-INF/extensions.idx";

    private static final String ANNOTATION = "Lorg/pf4j/Extension;";
    private static final Set<String> KINDS = Set.of("headgate/api/head/SpotHead", "headgate/api/head/ContinuousHead");

    private final List<PackageProblem> problems = new ArrayList<>();
    private Optional<String> extension = Optional.empty();

    /**
     * Reads the index.
     *
     * @param index its bytes; null if the archive has none
     * @param classes the classes of the package
     * @param unreadable binary names of classes that could not be read; that is told elsewhere
     */
    ExtensionIndex(byte @Nullable [] index, List<ClassFile> classes, Set<String> unreadable) {
        if (index != null && index.length > PackageLimits.TEXT) {
            problem(NAME, index.length + " bytes", "must have at most " + PackageLimits.TEXT + " bytes");
            return;
        }
        Set<String> listed = listed(index == null ? new byte[0] : index);
        Set<String> annotated = new TreeSet<>();
        classes.stream()
                .filter(c -> c.annotations().contains(ANNOTATION))
                .forEach(c -> annotated.add(c.name().replace('/', '.')));
        if (listed.size() != 1) {
            problem(
                    NAME,
                    index == null ? "nothing" : listed.size() + " classes " + listed,
                    "must list one class, the head; annotate it with @Extension and let the annotation processor of pf4j"
                            + " write this file");
        } else if (unreadable.containsAll(listed)) {
            extension = Optional.of(listed.iterator().next());
        } else if (!annotated.equals(listed)) {
            problem(
                    NAME,
                    "listed " + listed + ", annotated " + annotated,
                    "must list the class that has @Extension; build again from clean");
        } else {
            extension = Optional.of(listed.iterator().next());
            checkHead(ClassFile.byName(classes), extension.get());
        }
    }

    private static Set<String> listed(byte[] index) {
        Set<String> listed = new TreeSet<>();
        for (String line : new String(index, StandardCharsets.UTF_8).split("\r\n|\n|\r", -1)) {
            String name = line.replaceFirst("#.*", "").strip();
            if (!name.isEmpty()) {
                listed.add(name);
            }
        }
        return listed;
    }

    private void checkHead(Map<String, ClassFile> own, String name) {
        String internal = name.replace('.', '/');
        ClassFile head = own.get(internal);
        String where = "class " + name;
        if (head == null) {
            return;
        }
        Set<String> kinds = new TreeSet<>(new Resolution(own, AllowedMembers.list()).ancestors(internal));
        kinds.retainAll(KINDS);
        if (kinds.size() != 1) {
            problem(
                    where,
                    kinds.isEmpty() ? "neither" : "both",
                    "must implement one of headgate.api.head.SpotHead and headgate.api.head.ContinuousHead");
        }
        @Nullable Declared constructor = head.declared().get(new Signature("<init>", "()V"));
        if (!head.isPublicAndWhole() || constructor == null || !constructor.isPublic()) {
            problem(
                    where,
                    "a class that the host cannot make",
                    "must be a public class, not abstract, with a public constructor without parameters");
        }
    }

    private void problem(String where, String found, String expected) {
        problems.add(new PackageProblem(Kind.EXTENSION, Printable.text(where), Printable.text(found), expected));
    }

    /** {@return binary name of the head's class; empty unless the index names exactly one} */
    Optional<String> extension() {
        return extension;
    }

    /** {@return what is wrong} */
    List<PackageProblem> problems() {
        return problems;
    }
}
