package headgate.api.signature;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.head.ToolHead;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The public signatures of this library stand in a file that a reviewer sees change. A line that goes, or that changes,
 * breaks heads that were compiled before; a line that comes is a promise.
 */
class ApiSignatureTest {

    private static final String FILE = "/headgate/api/signatures.txt";
    private static final String WRITE = "headgate.signatures.write";

    @Test
    void theSignaturesAreThoseThatWereReviewed() throws Exception {
        List<String> now = signatures();
        // A list of nothing would always be as reviewed.
        assertThat(now).hasSizeGreaterThan(400);
        if (Boolean.getBoolean(WRITE)) {
            Files.writeString(Path.of("src/test/resources" + FILE), String.join("\n", now) + "\n");
        }
        List<String> reviewed = Boolean.getBoolean(WRITE) ? now : reviewed();
        assertThat(now)
                .as("public signatures of sdk-api; if the change is meant, write the file again with"
                        + " mvn -pl sdk-api test -Dtest=ApiSignatureTest -D" + WRITE + "=true and have it reviewed")
                .isEqualTo(reviewed);
    }

    /** The status has no meaning at run time, so it is looked for in the class file. */
    @Test
    void everyPublicTypeSaysHowStableItIs() throws Exception {
        List<Class<?>> types = publicTypes();
        assertThat(types).hasSizeGreaterThan(50);
        for (Class<?> type : types) {
            String name = type.getName().substring(type.getPackageName().length() + 1) + ".class";
            try (InputStream in = type.getResourceAsStream(name)) {
                assertThat(in).as(name).isNotNull();
                assertThat(new String(in.readAllBytes(), StandardCharsets.ISO_8859_1))
                        .as(type.getName())
                        .contains("Lheadgate/api/annotation/ApiStatus;");
            }
        }
    }

    private static List<String> reviewed() throws IOException {
        try (InputStream in = ApiSignatureTest.class.getResourceAsStream(FILE)) {
            assertThat(in).as(FILE).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private static List<Class<?>> publicTypes() throws IOException, URISyntaxException {
        Path root = Path.of(ToolHead.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(p -> root.relativize(p).toString().replace('\\', '/'))
                    .filter(n -> n.endsWith(".class") && !n.endsWith("-info.class"))
                    .map(n -> n.substring(0, n.length() - ".class".length()).replace('/', '.'))
                    .sorted()
                    .<Class<?>>map(ApiSignatureTest::load)
                    .filter(c -> Modifier.isPublic(c.getModifiers()))
                    .toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> signatures() throws Exception {
        Set<String> lines = new TreeSet<>();
        for (Class<?> type : publicTypes()) {
            String name = type.getName();
            String parents = Stream.concat(
                            Stream.ofNullable(type.getGenericSuperclass()), Arrays.stream(type.getGenericInterfaces()))
                    .map(t -> t.getTypeName())
                    .collect(Collectors.joining(", "));
            lines.add(name + " : " + Modifier.toString(type.getModifiers()) + " " + kind(type) + " of " + parents);
            for (Field f : type.getDeclaredFields()) {
                if (visible(f.getModifiers()) && !f.isSynthetic()) {
                    lines.add(name + " field " + f.toGenericString());
                }
            }
            for (Constructor<?> c : type.getDeclaredConstructors()) {
                if (visible(c.getModifiers()) && !c.isSynthetic()) {
                    lines.add(name + " constructor " + c.toGenericString());
                }
            }
            for (Method m : type.getDeclaredMethods()) {
                if (visible(m.getModifiers()) && !m.isSynthetic()) {
                    lines.add(name + " method " + m.toGenericString());
                }
            }
        }
        return List.copyOf(lines);
    }

    private static String kind(Class<?> type) {
        return type.isAnnotation()
                ? "annotation"
                : type.isRecord() ? "record" : type.isEnum() ? "enum" : type.isInterface() ? "interface" : "class";
    }

    private static boolean visible(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }
}
