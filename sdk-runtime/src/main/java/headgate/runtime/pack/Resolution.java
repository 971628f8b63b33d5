package headgate.runtime.pack;

import headgate.runtime.pack.ClassFile.Declared;
import headgate.runtime.pack.ClassFile.Signature;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the class that declares a member (JVM Specification 17, sections 5.4.3 and 5.4.6) among the package's own
 * classes, the head API and the listed classes of {@code java.*}, and says whether a head may use it.
 */
final class Resolution {

    /** More look-ups than any honest package needs, some tenths of a second of work. */
    static final long MOST_STEPS = 2_000_000;

    /**
     * Where a member is declared.
     *
     * @param owner internal name of the class that declares it
     * @param allowed whether a head may use it there
     */
    record Found(String owner, boolean allowed) {}

    /** The package is made so that looking up its members takes too long. */
    static final class TooIntricate extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final Map<String, ClassFile> own;
    private final AllowedMembers platform;
    private final Map<String, String> parameters = new HashMap<>();
    private long steps;

    /**
     * Makes one.
     *
     * @param own the package's classes by internal name
     * @param platform what may be used of {@code java.*}
     */
    Resolution(Map<String, ClassFile> own, AllowedMembers platform) {
        this.own = own;
        this.platform = platform;
    }

    /**
     * Resolves a field or method as a virtual machine does when it links one.
     *
     * @param owner internal name of the class that it is named on
     * @param signature name and type
     * @return where it is declared; empty if nowhere
     */
    Optional<Found> resolve(String owner, Signature signature) {
        if (!signature.descriptor().startsWith("(")) {
            return field(owner, signature);
        }
        // Constructors are not inherited.
        return signature.name().startsWith("<") ? declared(owner, signature) : method(owner, signature);
    }

    private Optional<Found> field(String owner, Signature signature) {
        Deque<String> next = new ArrayDeque<>(List.of(owner));
        Set<String> seen = new LinkedHashSet<>();
        while (!next.isEmpty()) {
            String type = next.pop();
            if (!seen.add(type)) {
                continue;
            }
            Optional<Found> found = declared(type, signature);
            if (found.isPresent()) {
                return found;
            }
            String parent = parent(type);
            if (parent != null) {
                next.push(parent);
            }
            List<String> interfaces = new ArrayList<>(interfaces(type));
            Collections.reverse(interfaces);
            interfaces.forEach(next::push);
        }
        return Optional.empty();
    }

    /**
     * The class that it is named on and those that it extends come first, then all interfaces. Of several interfaces that
     * declare it, one that refuses it decides: which of them is taken may depend on the receiver.
     */
    private Optional<Found> method(String owner, Signature signature) {
        List<String> interfaces = new ArrayList<>();
        Set<String> chain = new LinkedHashSet<>();
        for (String type = owner; type != null && chain.add(type); type = parent(type)) {
            Optional<Found> found = declared(type, signature);
            if (found.isPresent() || platform.isNameOnly(type)) {
                return found;
            }
            interfaces.addAll(interfaces(type));
        }
        Optional<Found> allowed = Optional.empty();
        Deque<String> next = new ArrayDeque<>(interfaces);
        Set<String> seen = new LinkedHashSet<>();
        while (!next.isEmpty()) {
            String type = next.remove();
            if (!seen.add(type)) {
                continue;
            }
            Optional<Found> found = declared(type, signature);
            if (found.isEmpty()) {
                next.addAll(interfaces(type));
            } else if (!found.get().allowed()) {
                return found;
            } else if (allowed.isEmpty()) {
                allowed = found;
            }
        }
        // An interface has the public methods of Object, too.
        return allowed.isPresent() ? allowed : declared("java/lang/Object", signature);
    }

    private Optional<Found> declared(String type, Signature signature) {
        steps++;
        if (steps > MOST_STEPS) {
            throw new TooIntricate();
        }
        ClassFile file = own.get(type);
        if (file != null) {
            return file.declared().containsKey(signature) ? Optional.of(new Found(type, true)) : Optional.empty();
        }
        Optional<ClassFile> api = ApiClasses.find(type);
        if (api.isPresent()) {
            @Nullable Declared member = api.get().declared().get(signature);
            return member == null ? Optional.empty() : Optional.of(new Found(type, member.isForOthers()));
        }
        String key = signature.name() + parameters.computeIfAbsent(signature.descriptor(), Descriptor::parameters);
        return platform.declared(type, key).map(allowed -> new Found(type, allowed));
    }

    private @Nullable String parent(String type) {
        ClassFile file = own.get(type);
        if (file != null) {
            return file.parent();
        }
        Optional<ClassFile> api = ApiClasses.find(type);
        return api.isPresent() ? api.get().parent() : platform.parent(type);
    }

    private List<String> interfaces(String type) {
        ClassFile file = own.get(type);
        if (file != null) {
            return file.interfaces();
        }
        Optional<ClassFile> api = ApiClasses.find(type);
        return api.isPresent() ? api.get().interfaces() : platform.interfaces(type);
    }

    /**
     * Finds all that a class inherits from.
     *
     * @param type internal name of the class
     * @return internal names of its parents and theirs, without itself unless it inherits from itself
     */
    Set<String> ancestors(String type) {
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(type));
        while (!next.isEmpty()) {
            steps++;
            if (steps > MOST_STEPS) {
                throw new TooIntricate();
            }
            String each = next.remove();
            List<String> parents = new ArrayList<>(interfaces(each));
            String parent = parent(each);
            if (parent != null) {
                parents.add(parent);
            }
            parents.stream().filter(seen::add).forEach(next::add);
        }
        return seen;
    }
}
