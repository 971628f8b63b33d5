package headgate.runtime.pack;

import headgate.runtime.pack.ClassFile.Declared;
import headgate.runtime.pack.ClassFile.Oddity;
import headgate.runtime.pack.ClassFile.Signature;
import headgate.runtime.pack.Resolution.Found;
import headgate.runtime.pack.Resolution.TooIntricate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Which references of a package leave what a head may use: itself, the head API, one annotation, listed members. */
final class References {

    private static final String API = "headgate/api/";
    private static final String EXTENSION = "org/pf4j/Extension";
    private static final String RULE = "must use only what a head may use; instead: ";

    private static final String LOOKUP_NAME_TYPE =
            "Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/MethodType;";

    /** What javac emits for lambdas, string concatenation and record methods. */
    private static final Set<Member> BOOTSTRAPS = Set.of(
            new Member(
                    "java/lang/invoke/LambdaMetafactory",
                    "metafactory",
                    "(" + LOOKUP_NAME_TYPE + "Ljava/lang/invoke/MethodType;Ljava/lang/invoke/MethodHandle;"
                            + "Ljava/lang/invoke/MethodType;)Ljava/lang/invoke/CallSite;"),
            new Member(
                    "java/lang/invoke/StringConcatFactory",
                    "makeConcatWithConstants",
                    "(" + LOOKUP_NAME_TYPE + "Ljava/lang/String;[Ljava/lang/Object;)Ljava/lang/invoke/CallSite;"),
            new Member(
                    "java/lang/runtime/ObjectMethods",
                    "bootstrap",
                    "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/TypeDescriptor;"
                            + "Ljava/lang/Class;Ljava/lang/String;[Ljava/lang/invoke/MethodHandle;)Ljava/lang/Object;"));

    /** There are more problems than are told. */
    private static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final Map<String, ClassFile> own;
    private final AllowedMembers platform;
    private final Resolution resolution;
    private final Set<PackageProblem> problems = new TreeSet<>();

    private References(Map<String, ClassFile> own, AllowedMembers platform) {
        this.own = own;
        this.platform = platform;
        this.resolution = new Resolution(own, platform);
    }

    /**
     * Looks at every reference.
     *
     * @param files the classes of the package
     * @param platform what may be used of {@code java.*}
     * @return what may not be used but is, sorted
     */
    static Set<PackageProblem> check(List<ClassFile> files, AllowedMembers platform) {
        References references = new References(ClassFile.byName(files), platform);
        try {
            for (ClassFile file : files) {
                references.check(file);
            }
        } catch (Enough e) {
            // Whoever reads the problems says that there are more.
        } catch (TooIntricate e) {
            references.problem(
                    "archive",
                    "more than " + Resolution.MOST_STEPS + " steps to find what its members are",
                    "must have fewer classes that inherit from each other");
        }
        return references.problems;
    }

    private void check(ClassFile file) {
        String className = file.name().replace('/', '.');
        Set<String> told = new HashSet<>();
        file.members().forEach((member, place) -> {
            String element = element(member.owner());
            if (!mayName(element)) {
                told.add(element);
                refuse(place.in(className), member.toString(), member.toString());
            } else {
                use(member, place.in(className));
            }
        });
        file.classes().forEach((used, place) -> {
            // A class that may not be named is told by its members, if any is used.
            if (!mayName(used) && told.add(used)) {
                String name = used.replace('/', '.');
                refuse(place.in(className), name, name);
            }
        });
        for (Member bootstrap : file.bootstraps()) {
            if (!BOOTSTRAPS.contains(bootstrap)) {
                problem(
                        "class " + className,
                        "a dynamic call linked by " + bootstrap,
                        "must have dynamic calls only as javac writes them for lambdas, string concatenation and"
                                + " records");
            }
        }
        for (Oddity oddity : file.oddities()) {
            problem(oddity.place().in(className), oddity.what(), "must have none; instead: " + oddity.instead());
        }
        checkInherited(file, className);
    }

    private void problem(String where, String found, String expected) {
        problems.add(new PackageProblem(
                PackageProblem.Kind.REFERENCE, Printable.text(where), Printable.text(found), expected));
        if (problems.size() > PackageLimits.PROBLEMS) {
            throw new Enough();
        }
    }

    private void refuse(String where, String found, String refused) {
        problem(where, found, RULE + Instead.of(refused));
    }

    private boolean mayName(String internalName) {
        return own.containsKey(internalName)
                || internalName.equals(EXTENSION)
                || platform.mayName(internalName)
                || ApiClasses.find(internalName).isPresent();
    }

    private static String element(String owner) {
        String name = owner.replaceFirst("^\\[+", "");
        return name.equals(owner)
                ? owner
                : name.startsWith("L") ? name.substring(1, name.length() - 1) : "java/lang/Object";
    }

    private void use(Member member, String where) {
        Signature signature = new Signature(member.name(), member.descriptor());
        if (member.owner().startsWith("[")) {
            if (!signature.equals(new Signature("clone", "()Ljava/lang/Object;"))) {
                refuse(where, member.toString(), member.toString());
            }
            return;
        }
        Optional<Found> found = resolution.resolve(member.owner(), signature);
        if (found.isEmpty()) {
            refuse(where, member + ", which " + whoHasNot(member.owner()), member.toString());
        } else if (!found.get().allowed()) {
            String declared = member.on(found.get().owner()).toString();
            boolean elsewhere = !found.get().owner().equals(member.owner());
            refuse(where, elsewhere ? member + ", which is " + declared : declared, declared);
        }
    }

    private static String whoHasNot(String owner) {
        return owner.startsWith("java/")
                ? "Java 17 does not have"
                : owner.startsWith(API) ? "the head API does not have" : "no class declares";
    }

    /**
     * A method may be called through an own parent that only declares it, and run as one of {@code java.*} that the class
     * inherits from another parent. So each method that a class gets from an own parent is looked at once more, as the
     * class has it.
     */
    private void checkInherited(ClassFile file, String className) {
        Set<String> ancestors = resolution.ancestors(file.name());
        if (ancestors.contains(file.name())) {
            problem("class " + className, "itself among its parents", "must not inherit from itself");
            return;
        }
        if (file.isInterface()) {
            return;
        }
        Set<Signature> seen = new HashSet<>();
        for (String ancestor : ancestors) {
            ClassFile parent = own.get(ancestor);
            if (parent == null) {
                continue;
            }
            for (Declared method : parent.declared().values()) {
                Signature signature = method.signature();
                boolean inherited = method.isMethod()
                        && !method.isPrivate()
                        && !method.isStatic()
                        && !signature.name().startsWith("<");
                if (inherited && seen.add(signature)) {
                    resolution
                            .resolve(file.name(), signature)
                            .filter(found -> !found.allowed())
                            .ifPresent(found -> {
                                Member runs = new Member(found.owner(), signature.name(), signature.descriptor());
                                refuse(
                                        "class " + className,
                                        runs.on(ancestor) + ", which is " + runs + " here",
                                        runs.toString());
                            });
                }
            }
        }
    }
}
