package headgate.runtime.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The members of {@code java.*} that a head may use: a text resource that a reviewer reads. It names the parents of each
 * class, too, so that what a member is declared in does not depend on the Java that runs the check.
 */
final class AllowedMembers {

    private static final String RESOURCE = "allowed-java-members.txt";

    /** How a class stands in the list. */
    private enum Standing {
        /** Some of its members may be used. */
        CLASS,
        /** It may be named, and nothing of it used. */
        NAME,
        /** It must not be named. */
        HIDDEN
    }

    private record Entry(
            Standing standing,
            @Nullable String parent,
            List<String> interfaces,
            Set<String> allowed,
            Set<String> refused) {}

    private final Map<String, Entry> byClass = new HashMap<>();

    private AllowedMembers() {}

    private static final class Holder {
        static final AllowedMembers LIST = load();

        private static AllowedMembers load() {
            try (InputStream in = AllowedMembers.class.getResourceAsStream(RESOURCE)) {
                if (in == null) {
                    throw new IllegalStateException("the resource " + RESOURCE + " is missing from this program");
                }
                return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** {@return the list of this program} */
    static AllowedMembers list() {
        return Holder.LIST;
    }

    /**
     * Reads a list.
     *
     * @param text see the resource's head for its form
     * @return the list
     */
    static AllowedMembers parse(String text) {
        AllowedMembers result = new AllowedMembers();
        String name = "";
        for (String line : text.lines().toList()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] words = line.strip().split(" ", -1);
            switch (words[0]) {
                case "allow" -> addMember(result.entry(name).allowed(), words);
                case "refuse" -> addMember(result.entry(name).refused(), words);
                case "class", "interface", "name", "hidden" -> name = begin(words, result.byClass);
                default -> throw new IllegalStateException("no line of the list begins with " + words[0]);
            }
        }
        return result;
    }

    private static String begin(String[] words, Map<String, Entry> byClass) {
        boolean hidden = words[0].equals("hidden");
        int at = hidden ? 1 : 0;
        boolean isInterface = words[at].equals("interface");
        Standing standing = hidden ? Standing.HIDDEN : words[at].equals("name") ? Standing.NAME : Standing.CLASS;
        @Nullable String parent = null;
        List<String> interfaces = new ArrayList<>();
        for (int i = at + 2; i < words.length; i++) {
            if (!isInterface && words[i - 1].equals("extends")) {
                parent = internal(words[i]);
            } else if (!words[i].equals("extends") && !words[i].equals("implements")) {
                interfaces.add(internal(words[i]));
            }
        }
        Entry entry = new Entry(standing, parent, List.copyOf(interfaces), new HashSet<>(), new HashSet<>());
        String name = internal(words[at + 1]);
        if (byClass.put(name, entry) != null) {
            throw new IllegalStateException(words[at + 1] + " is listed twice");
        }
        return name;
    }

    private Entry entry(String internalName) {
        Entry entry = byClass.get(internalName);
        if (entry == null) {
            throw new IllegalStateException("the list begins with a member");
        }
        return entry;
    }

    private static void addMember(Set<String> members, String[] words) {
        if (words.length == 2) {
            members.add(words[1]);
        }
        for (int i = 2; i < words.length; i++) {
            members.add(words[1] + words[i]);
        }
    }

    private static String internal(String name) {
        return (name.contains(".") ? name : "java.lang." + name).replace('.', '/');
    }

    /**
     * Says whether a class may be named.
     *
     * @param internalName the class, with slashes
     * @return true if it may
     */
    boolean mayName(String internalName) {
        Entry entry = byClass.get(internalName);
        return entry != null && entry.standing() != Standing.HIDDEN;
    }

    /**
     * Says whether a class is a name and nothing else.
     *
     * @param internalName the class, with slashes
     * @return true if none of its members may be used, inherited ones included
     */
    boolean isNameOnly(String internalName) {
        Entry entry = byClass.get(internalName);
        return entry != null && entry.standing() == Standing.NAME;
    }

    /**
     * The class that a class extends.
     *
     * @param internalName the class, with slashes
     * @return its parent; none for Object, interfaces, and what the list does not hold
     */
    @Nullable
    String parent(String internalName) {
        Entry entry = byClass.get(internalName);
        return entry == null ? null : entry.parent();
    }

    /**
     * The interfaces of a class.
     *
     * @param internalName the class, with slashes
     * @return its own interfaces; none for what the list does not hold
     */
    List<String> interfaces(String internalName) {
        Entry entry = byClass.get(internalName);
        return entry == null ? List.of() : entry.interfaces();
    }

    /**
     * Says whether a member that a class itself declares may be used.
     *
     * @param internalName the class, with slashes
     * @param key name and parameters of the member
     * @return whether it may; empty if the class declares no such member
     */
    Optional<Boolean> declared(String internalName, String key) {
        Entry entry = byClass.get(internalName);
        if (entry == null) {
            return Optional.empty();
        }
        return entry.allowed().contains(key)
                ? Optional.of(true)
                : entry.refused().contains(key) ? Optional.of(false) : Optional.empty();
    }

    /** {@return internal names of the classes that may be named, sorted} */
    Set<String> classes() {
        Set<String> classes = new TreeSet<>(byClass.keySet());
        classes.removeIf(name -> !mayName(name));
        return classes;
    }
}
