package headgate.runtime.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The members of {@code java.*} that a head may use: a text resource that a reviewer reads. */
final class AllowedMembers {

    private static final String RESOURCE = "allowed-java-members.txt";
    private static final String EVERY_CLASS = "*";

    private record Entry(boolean all, Set<String> named, List<String> except) {}

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
     * @param text one class a line, then its members; see the resource's head
     * @return the list
     */
    static AllowedMembers parse(String text) {
        AllowedMembers result = new AllowedMembers();
        for (String line : text.lines().toList()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] words = line.strip().split("\\s+", -1);
            Entry entry = new Entry(List.of(words).contains("*"), new TreeSet<>(), new ArrayList<>());
            for (int i = 1; i < words.length; i++) {
                if (words[i].startsWith("!")) {
                    entry.except().add(words[i].substring(1));
                } else {
                    entry.named().add(words[i]);
                }
            }
            if (result.byClass.put(words[0].replace('.', '/'), entry) != null) {
                throw new IllegalStateException(words[0] + " is listed twice");
            }
        }
        return result;
    }

    /**
     * Says whether a class may be named at all.
     *
     * @param internalName the class, with slashes
     * @return true if it may
     */
    boolean holds(String internalName) {
        return byClass.containsKey(internalName) && !internalName.equals(EVERY_CLASS);
    }

    /**
     * Says whether a member may be used.
     *
     * @param member the member, owner in {@code java.*}
     * @return true if it may
     */
    boolean holds(ClassFile.Member member) {
        Entry entry = byClass.get(member.owner());
        return entry != null
                && !shutsOut(member)
                && (entry.all() || entry.named().contains(member.name()));
    }

    /**
     * Says whether a member is left out by name from a class that is listed in full.
     *
     * @param member the member
     * @return true if it is
     */
    boolean shutsOut(ClassFile.Member member) {
        return shutsOut(byClass.get(EVERY_CLASS), member) || shutsOut(byClass.get(member.owner()), member);
    }

    private static boolean shutsOut(@Nullable Entry entry, ClassFile.Member member) {
        String full = member.name() + member.descriptor();
        return entry != null
                && entry.except().stream()
                        .anyMatch(e -> e.equals(member.name()) || (e.contains("(") && full.startsWith(e)));
    }

    /** {@return the classes listed, internal names} */
    Set<String> classes() {
        Set<String> classes = new TreeSet<>(byClass.keySet());
        classes.remove(EVERY_CLASS);
        return classes;
    }
}
