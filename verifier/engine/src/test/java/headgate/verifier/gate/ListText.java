package headgate.verifier.gate;

import headgate.runtime.pack.HeadPackage;
import headgate.verifier.gate.JavaLibrary.JavaType;
import headgate.verifier.gate.JavaLibrary.Member;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.objectweb.asm.Opcodes;

/**
 * The list of allowed members, read a second time and applied to the class hierarchy of a real JDK: what the gate, which
 * has no JDK to look at, should find.
 */
final class ListText {

    private final JavaLibrary members;
    private final Set<String> nameable = new HashSet<>();
    private final Set<String> nameOnly = new HashSet<>();
    private final Map<String, Boolean> verdicts = new HashMap<>();

    ListText(JavaLibrary library) throws IOException {
        members = library;
        String type = "";
        for (String line : lines()) {
            String[] words = line.strip().split(" ", -1);
            if (line.startsWith(" ")) {
                for (int i = Math.min(2, words.length - 1); i < words.length; i++) {
                    String key = words[1] + (words.length == 2 ? "" : words[i]);
                    verdicts.put(type + "." + key, words[0].equals("allow"));
                }
            } else {
                boolean hidden = words[0].equals("hidden");
                type = words[hidden ? 2 : 1].replace('.', '/');
                if (!hidden) {
                    nameable.add(type);
                }
                if (words[0].equals("name")) {
                    nameOnly.add(type);
                }
            }
        }
    }

    private static List<String> lines() throws IOException {
        try (InputStream in = HeadPackage.class.getResourceAsStream("allowed-java-members.txt")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        }
    }

    /** Classes whose members a head may use, or that it may name. */
    Set<String> nameable() {
        return nameable;
    }

    /** Whether a head may use a member, named on the class that declares it. */
    boolean allows(Member member) {
        return mayNameAll(member) && onClass(member.owner(), member);
    }

    /** Whether a head may use a member, named on an own class that extends or implements the one that declares it. */
    boolean allowsInherited(Member member) {
        boolean viaObject = member.ofInterface() && !member.isField();
        return mayNameAll(member)
                && (viaObject
                        ? verdict("java/lang/Object", member).orElseGet(() -> onClass(member.owner(), member))
                        : onClass(member.owner(), member));
    }

    private boolean mayNameAll(Member member) {
        return nameable.contains(member.owner())
                && org.objectweb.asm.Type.getType(member.descriptor()) != null
                && types(member.descriptor()).stream().allMatch(nameable::contains);
    }

    private static List<String> types(String descriptor) {
        List<String> names = new ArrayList<>();
        for (int at = descriptor.indexOf('L'); at >= 0; at = descriptor.indexOf('L', at)) {
            int end = descriptor.indexOf(';', at);
            names.add(descriptor.substring(at + 1, end));
            at = end;
        }
        return names;
    }

    private Optional<Boolean> verdict(String type, Member member) {
        return Optional.ofNullable(verdicts.get(type + "." + member.name() + parameters(member.descriptor())));
    }

    private boolean onClass(String owner, Member member) {
        if (member.isConstructor()) {
            return verdict(owner, member).orElse(false);
        }
        Deque<String> interfaces = new ArrayDeque<>();
        for (String type = owner; type != null; ) {
            if (nameOnly.contains(type)) {
                return false;
            }
            Optional<Boolean> verdict = verdict(type, member);
            if (verdict.isPresent()) {
                return verdict.get();
            }
            JavaType known = members.type(type).orElseThrow();
            interfaces.addAll(known.interfaces());
            type = known.parent();
        }
        while (!interfaces.isEmpty()) {
            String type = interfaces.remove();
            Optional<Boolean> verdict = verdict(type, member);
            if (verdict.isPresent()) {
                return verdict.get();
            }
            interfaces.addAll(members.type(type).orElseThrow().interfaces());
        }
        return false;
    }

    private static String parameters(String descriptor) {
        if (!descriptor.startsWith("(")) {
            return "";
        }
        StringBuilder text = new StringBuilder("(");
        for (org.objectweb.asm.Type each : org.objectweb.asm.Type.getArgumentTypes(descriptor)) {
            String name = each.getClassName();
            boolean plain = name.startsWith("java.lang.") && name.lastIndexOf('.') == "java.lang".length();
            text.append(text.length() > 1 ? "," : "").append(plain ? name.substring("java.lang.".length()) : name);
        }
        return text.append(')').toString();
    }

    /** Members that classes which may be named inherit from others, on the class that inherits them. */
    List<Member> inherited() {
        List<Member> result = new ArrayList<>();
        for (String name : nameable.stream().sorted().toList()) {
            Optional<JavaType> type = members.type(name);
            if (type.isEmpty() || nameOnly.contains(name)) {
                continue;
            }
            Set<String> seen = new HashSet<>();
            type.get().members().forEach(each -> seen.add(each.name() + each.descriptor()));
            Deque<String> next = new ArrayDeque<>(parents(type.get()));
            while (!next.isEmpty()) {
                JavaType parent = members.type(next.remove()).orElseThrow();
                for (Member each : parent.members()) {
                    if (!each.isConstructor() && seen.add(each.name() + each.descriptor())) {
                        result.add(new Member(
                                name,
                                each.name(),
                                each.descriptor(),
                                each.access(),
                                (type.get().access() & Opcodes.ACC_INTERFACE) != 0));
                    }
                }
                next.addAll(parents(parent));
            }
        }
        return result;
    }

    private static List<String> parents(JavaType type) {
        List<String> parents = new ArrayList<>();
        if (type.parent() != null) {
            parents.add(type.parent());
        }
        parents.addAll(type.interfaces());
        return parents;
    }
}
