package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** The list against the Java that it describes. */
class AllowedMembersTest {

    private static List<String> lines() throws Exception {
        try (InputStream in = AllowedMembers.class.getResourceAsStream("allowed-java-members.txt")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        }
    }

    /** One way or the other, every member that a listed class declares for others is decided, and no other is. */
    @Test
    void everyListedClassStandsThereAsJava17DeclaresIt() throws Exception {
        Assumptions.assumeTrue(Runtime.version().feature() == 17, "the list describes Java 17");
        List<String> expected = new ArrayList<>();
        List<String> found = new ArrayList<>();
        int members = 0;
        List<String> lines = lines();
        for (int i = 0; i < lines.size(); ) {
            String header = lines.get(i++);
            SortedSet<String> listed = new TreeSet<>();
            while (i < lines.size() && lines.get(i).startsWith(" ")) {
                String[] words = lines.get(i++).strip().split(" ", -1);
                for (int n = 2; n < words.length; n++) {
                    listed.add(words[1] + words[n]);
                }
                if (words.length == 2) {
                    listed.add(words[1]);
                }
            }
            if (header.startsWith("name ")) {
                Class.forName(header.substring("name ".length()), false, null);
                assertThat(listed).isEmpty();
                continue;
            }
            String plain = header.replaceFirst("^hidden ", "");
            Class<?> type = Class.forName(plain.split(" ", -1)[1], false, null);
            expected.add(header(type));
            found.add(plain);
            SortedSet<String> declared = declared(type);
            declared.forEach(member -> expected.add(type.getName() + " " + member));
            listed.forEach(member -> found.add(type.getName() + " " + member));
            members += declared.size();
        }
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(members).isGreaterThan(2000);
    }

    private static String header(Class<?> type) {
        String text = (type.isInterface() ? "interface " : "class ") + type.getName();
        if (type.getSuperclass() != null) {
            text += " extends " + name(type.getSuperclass());
        }
        String interfaces = Arrays.stream(type.getInterfaces())
                .map(AllowedMembersTest::name)
                .collect(Collectors.joining(" "));
        return interfaces.isEmpty() ? text : text + (type.isInterface() ? " extends " : " implements ") + interfaces;
    }

    private static SortedSet<String> declared(Class<?> type) {
        SortedSet<String> members = new TreeSet<>();
        for (Field field : type.getDeclaredFields()) {
            if (isForOthers(field.getModifiers())) {
                members.add(field.getName());
            }
        }
        for (Method method : type.getDeclaredMethods()) {
            if (isForOthers(method.getModifiers())) {
                members.add(method.getName() + parameters(method));
            }
        }
        for (Constructor<?> constructor : type.getDeclaredConstructors()) {
            if (isForOthers(constructor.getModifiers())) {
                members.add("<init>" + parameters(constructor));
            }
        }
        return members;
    }

    private static boolean isForOthers(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    private static String parameters(Executable executable) {
        return Arrays.stream(executable.getParameterTypes())
                .map(AllowedMembersTest::name)
                .collect(Collectors.joining(",", "(", ")"));
    }

    private static String name(Class<?> type) {
        return type.getTypeName().replace(type.getName(), type.getName()).replaceFirst("^java\\.lang\\.(?=[^.]+$)", "");
    }

    /**
     * A class of a partner's may inherit a refused method from one listed class and an allowed one of the same name from a
     * listed interface; a call through the interface would run the other. No two listed types allow that.
     */
    @Test
    void noInterfaceAllowsWhatAClassThatCanBeExtendedRefuses() throws Exception {
        Set<String> allowedByInterfaces = new TreeSet<>();
        Set<String> refusedByOthers = new TreeSet<>();
        Class<?> type = Object.class;
        for (String line : lines()) {
            String[] words = line.strip().split(" ", -1);
            if (!line.startsWith(" ")) {
                type = Class.forName(words[words[0].equals("hidden") ? 2 : 1], false, null);
                continue;
            }
            for (int i = 2; i < words.length; i++) {
                String key = words[1] + words[i];
                if (words[0].equals("allow") && type.isInterface()) {
                    allowedByInterfaces.add(key);
                }
                boolean extensible = Modifier.isPublic(type.getModifiers()) && !Modifier.isFinal(type.getModifiers());
                if (words[0].equals("refuse") && extensible) {
                    refusedByOthers.add(key);
                }
            }
        }
        assertThat(allowedByInterfaces).hasSizeGreaterThan(200).doesNotContainAnyElementsOf(refusedByOthers);
        assertThat(refusedByOthers).contains("parallelStream()", "printStackTrace()", "wait()");
    }

    @Test
    void whatTheListSaysIsWhatItAnswers() {
        AllowedMembers list = AllowedMembers.parse("""
                # a comment

                class a.B extends Object implements a.I Comparable
                    allow <init> () (int)
                    allow FIELD
                    refuse act (Object,int[])
                interface a.I extends a.J
                name a.N
                hidden class a.H extends a.B
                    allow run ()
                """);
        assertThat(list.classes()).containsExactly("a/B", "a/I", "a/N");
        assertThat(list.mayName("a/H")).isFalse();
        assertThat(list.parent("a/B")).isEqualTo("java/lang/Object");
        assertThat(list.interfaces("a/B")).containsExactly("a/I", "java/lang/Comparable");
        assertThat(list.parent("a/I")).isNull();
        assertThat(list.interfaces("a/I")).containsExactly("a/J");
        assertThat(list.parent("a/H")).isEqualTo("a/B");
        assertThat(list.declared("a/B", "<init>(int)")).isEqualTo(Optional.of(true));
        assertThat(list.declared("a/B", "<init>(long)")).isEmpty();
        assertThat(list.declared("a/B", "FIELD")).isEqualTo(Optional.of(true));
        assertThat(list.declared("a/B", "act(Object,int[])")).isEqualTo(Optional.of(false));
        assertThat(list.declared("a/H", "run()")).isEqualTo(Optional.of(true));
        assertThat(list.declared("a/Z", "run()")).isEmpty();
    }

    @Test
    void aBrokenListIsAFaultOfTheProgram() {
        assertThatThrownBy(() -> AllowedMembers.parse("class a.B\nclass a.B\n")).hasMessageContaining("twice");
        assertThatThrownBy(() -> AllowedMembers.parse("klass a.B\n")).hasMessageContaining("klass");
        assertThatThrownBy(() -> AllowedMembers.parse("    allow b ()\n")).hasMessageContaining("begins with");
    }
}
