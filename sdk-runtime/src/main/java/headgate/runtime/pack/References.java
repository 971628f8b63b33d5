package headgate.runtime.pack;

import headgate.runtime.pack.ClassFile.Member;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which references of a package leave what a head may use: itself, the head API, one annotation, listed members. */
final class References {

    private static final String API = "headgate/api/";
    private static final String EXTENSION = "org/pf4j/Extension";
    private static final String RULE =
            "must use only its own classes, headgate.api, org.pf4j.Extension and the listed members of java.*";

    /** What javac emits for lambdas, string concatenation and record methods. */
    private static final Set<String> BOOTSTRAPS = Set.of(
            "java.lang.invoke.LambdaMetafactory.metafactory",
            "java.lang.invoke.StringConcatFactory.makeConcatWithConstants",
            "java.lang.runtime.ObjectMethods.bootstrap");

    private final Map<String, ClassFile> own;
    private final AllowedMembers allowed;
    private final Set<PackageProblem> problems = new TreeSet<>();

    private References(Map<String, ClassFile> own, AllowedMembers allowed) {
        this.own = own;
        this.allowed = allowed;
    }

    /**
     * Looks at every reference.
     *
     * @param files the classes of the package
     * @param allowed what may be used of {@code java.*}
     * @return what may not be used but is, sorted
     */
    static Set<PackageProblem> check(List<ClassFile> files, AllowedMembers allowed) {
        References references = new References(ClassFile.byName(files), allowed);
        files.forEach(references::check);
        return references.problems;
    }

    private void check(ClassFile file) {
        String where = "class " + file.name().replace('/', '.');
        for (String used : file.classes()) {
            if (!mayName(used)) {
                problem(where, used.replace('/', '.'), RULE);
            }
        }
        for (Member member : file.members()) {
            // A class that may not be named is one problem, not one for each of its members.
            if (mayName(element(member.owner())) && !mayUse(member)) {
                problem(where, member.toString(), RULE);
            }
        }
        for (Member bootstrap : file.bootstraps()) {
            if (!BOOTSTRAPS.contains(bootstrap.owner().replace('/', '.') + "." + bootstrap.name())) {
                problem(
                        where,
                        "a dynamic call linked by " + bootstrap,
                        "must have dynamic calls only as javac writes them for lambdas, string concatenation and records");
            }
        }
        for (String oddity : file.oddities()) {
            problem(where, oddity, "must have no native method, no finalizer and no dynamic constant");
        }
    }

    private void problem(String where, String found, String expected) {
        problems.add(new PackageProblem(
                PackageProblem.Kind.REFERENCE,
                MainAttributes.printable(where),
                MainAttributes.printable(found),
                expected));
    }

    private boolean mayName(String internalName) {
        return own.containsKey(internalName)
                || internalName.startsWith(API)
                || internalName.equals(EXTENSION)
                || allowed.holds(internalName);
    }

    private static String element(String owner) {
        String name = owner.replaceFirst("^\\[+", "");
        return name.equals(owner)
                ? owner
                : name.startsWith("L") ? name.substring(1, name.length() - 1) : "java/lang/Object";
    }

    private boolean mayUse(Member member) {
        if (member.owner().startsWith("[")) {
            return member.name().equals("clone");
        }
        if (!own.containsKey(member.owner())) {
            return member.owner().startsWith(API) || member.owner().equals(EXTENSION) || allowed.holds(member);
        }
        return inherits(member);
    }

    /**
     * A member named on an own class may be inherited. It is then allowed if some foreign ancestor allows it, and none
     * shuts it out by name.
     */
    private boolean inherits(Member member) {
        Deque<String> next = new ArrayDeque<>(List.of(member.owner()));
        Set<String> seen = new HashSet<>();
        boolean found = false;
        while (!next.isEmpty()) {
            String owner = next.remove();
            if (!seen.add(owner)) {
                continue;
            }
            ClassFile file = own.get(owner);
            if (file == null) {
                if (!owner.startsWith(API) && allowed.shutsOut(new Member(owner, member.name(), member.descriptor()))) {
                    return false;
                }
                found |= owner.startsWith(API) || allowed.holds(new Member(owner, member.name(), member.descriptor()));
            } else if (file.declares(member)) {
                return true;
            } else {
                next.addAll(file.parents());
            }
        }
        return found;
    }
}
