package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.pack.PackageProblem.Kind;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

class ReferencesTest {

    private static List<String> found(String source) {
        Inspected inspected = (Inspected) HeadPackage.inspect(Jars.of(Heads.NAME, source));
        return inspected.facts().problemsOf(Kind.REFERENCE).stream()
                .map(PackageProblem::found)
                .toList();
    }

    @Test
    void whatHeadsNeedIsAllowed() {
        String members = """
                enum Size { SMALL, LARGE }
                record Pair(double a, String b, List<Integer> c) {}
                interface Shape { default double area() { return 1; } }
                static class Square extends ArrayList<Double> implements Shape, Comparable<Square> {
                    private static final long serialVersionUID = 1L;
                    public int compareTo(Square o) { return Integer.compare(size(), o.size()); }
                }
                sealed interface Soil permits Clay, Sand {}
                record Clay() implements Soil {}
                record Sand() implements Soil {}
                static double use(Size size, int n) {
                    assert n > 0 : "n is " + n;
                    double[] values = {1, 2, 3};
                    double[] copy = values.clone();
                    Map<String, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
                    counts.merge("a" + n, 1, Integer::sum);
                    Pair pair = new Pair(n, "x", List.of(1, 2));
                    String text = switch (size) { case SMALL -> "s"; case LARGE -> pair.toString(); };
                    Square square = new Square();
                    square.add(square.area());
                    Soil soil = n > 1 ? new Clay() : new Sand();
                    if (soil instanceof Clay clay && clay.equals(soil)) {
                        text += String.format(Locale.ROOT, "%.3f", Math.hypot(n, copy[0]));
                    }
                    try {
                        for (Size s : Size.values()) { counts.computeIfAbsent(s.name(), k -> k.length()); }
                        Objects.requireNonNull(text);
                        return counts.values().stream().mapToInt(i -> i).sum() + Arrays.stream(copy).max().orElse(0)
                                + Optional.of(text).map(String::length).orElseThrow() + square.hashCode();
                    } catch (IllegalArgumentException | ArithmeticException e) {
                        throw new IllegalStateException("cannot " + e.getMessage(), e);
                    }
                }
                """;
        assertThat(found(Heads.spot(members))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "System.exit(1)",
                "System.currentTimeMillis()",
                "System.nanoTime()",
                "System.getenv(\"a\")",
                "System.getProperty(\"a\")",
                "System.out.println()",
                "System.load(\"a\")",
                "Runtime.getRuntime().halt(1)",
                "new Thread().start()",
                "new java.io.File(\"a\").delete()",
                "new java.net.Socket()",
                "java.nio.file.Files.exists(java.nio.file.Path.of(\"a\"))",
                "new ProcessBuilder(\"a\")",
                "Class.forName(\"a\")",
                "Math.random()",
                "new Random().nextInt()",
                "UUID.randomUUID()",
                "java.time.Instant.now()",
                "java.time.LocalDate.now()",
                "Integer.getInteger(\"a\")",
                "Boolean.getBoolean(\"a\")",
                "Long.getLong(\"a\")",
                "String.format(\"%f\", 1.0)",
                "\"a\".formatted()",
                "\"A\".toLowerCase()",
                "Locale.getDefault()",
                "List.of(1).parallelStream()",
                "Collections.shuffle(List.of())",
                "java.lang.invoke.MethodHandles.lookup()",
                "TestHead.class.getClassLoader()",
                "TestHead.class.getMethods()",
                "TestHead.class.getResourceAsStream(\"a\")",
                "new Object().wait()",
                "new Exception().printStackTrace()",
                "ServiceLoader.load(Runnable.class)",
                "new Timer()",
                "java.util.concurrent.ForkJoinPool.commonPool()",
                "new java.security.SecureRandom()",
                "java.util.stream.Stream.of(1).parallel()",
                "\"a\".getBytes()",
                "java.lang.management.ManagementFactory.getRuntimeMXBean()",
                "new Scanner(\"a\")",
                "System.identityHashCode(\"a\")",
                "new ArrayList<String>().parallelStream()",
                "new TreeSet<String>().spliterator()",
                "new Object().notifyAll()",
                "java.util.stream.IntStream.range(0, 9).parallel()"
            })
    void whatLeavesTheHeadIsNamed(String expression) {
        List<String> found = found(Heads.spot("static void use() throws Throwable { " + expression + "; }"));
        assertThat(found).isNotEmpty();
    }

    @Test
    void anInheritedMemberIsFoundThroughOwnClasses() {
        String members =
                "static class Own extends ArrayList<String> { private static final long serialVersionUID = 1L; }"
                        + " static class More extends Own { private static final long serialVersionUID = 1L; }"
                        + " static void use() { new More().parallelStream(); new More().size(); }";
        assertThat(found(Heads.spot(members)))
                .contains("partner.TestHead$More.parallelStream(), which is java.util.Collection.parallelStream()")
                .noneMatch(f -> f.contains(".size"));
    }

    @Test
    void aMethodReferenceIsAsGoodAsACall() {
        assertThat(found(Heads.spot("static java.util.function.IntConsumer c = System::exit;")))
                .contains("java.lang.System.exit(int)");
    }

    @Test
    void nativeMethodsAndFinalizersAreNamed() {
        assertThat(found(Heads.spot("native void fast(); protected void finalize() {}")))
                .contains("native method", "finalizer");
    }

    @Test
    void everyListedClassIsAClassOfThePlatform() {
        for (String name : AllowedMembers.list().classes()) {
            assertThat(ClassLoader.getPlatformClassLoader().getResource(name + ".class"))
                    .as(name)
                    .isNotNull();
        }
    }

    /** What an independent reader of class files, ASM, meets in every instruction must be in our walk of the pool. */
    @Test
    void theWalkMissesNothingThatAsmSees() throws Exception {
        int classes = 0;
        int members = 0;
        for (String library : List.of(
                "org/pf4j/PluginManager.class",
                "headgate/api/head/ToolHead.class",
                "org/assertj/core/api/Assertions.class")) {
            for (byte[] bytes : classesBeside(library)) {
                ClassFile ours = new ClassFile(bytes);
                Set<String> theirs = byAsm(bytes);
                Set<String> walked = new TreeSet<>();
                ours.members().keySet().forEach(m -> walked.add(m.owner() + "." + m.name() + m.descriptor()));
                Map<String, String> places = new HashMap<>();
                ours.members()
                        .forEach((m, place) -> places.put(
                                m.owner() + "." + m.name() + m.descriptor(), place.method() + ":" + place.line()));
                firstPlacesByAsm(bytes).forEach((member, place) -> assertThat(places.get(member))
                        .as("%s in %s", member, ours.name())
                        .isEqualTo(place));
                ours.bootstraps().forEach(m -> walked.add(m.owner() + "." + m.name() + m.descriptor()));
                assertThat(walked).as(ours.name()).containsAll(theirs);
                classes++;
                members += theirs.size();
            }
        }
        assertThat(classes).isGreaterThan(500);
        assertThat(members).isGreaterThan(10_000);
    }

    private static List<byte[]> classesBeside(String resource) throws Exception {
        URI uri = Objects.requireNonNull(ReferencesTest.class.getClassLoader().getResource(resource))
                .toURI();
        if (uri.getScheme().equals("file")) {
            Path root = Path.of(uri);
            for (int i = resource.split("/", -1).length; i > 0; i--) {
                root = Objects.requireNonNull(root.getParent());
            }
            return classesUnder(root);
        }
        try (FileSystem zip = FileSystems.newFileSystem(uri, Map.of())) {
            return classesUnder(zip.getPath("/"));
        }
    }

    private static List<byte[]> classesUnder(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(p ->
                            p.toString().endsWith(".class") && !p.toString().contains("META-INF"))
                    .filter(p -> !p.getFileName().toString().equals("module-info.class"))
                    .sorted()
                    .map(ReferencesTest::bytes)
                    .toList();
        }
    }

    private static byte[] bytes(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Set<String> byAsm(byte[] bytes) {
        Set<String> seen = new TreeSet<>();
        new ClassReader(bytes)
                .accept(
                        new ClassVisitor(Opcodes.ASM9) {
                            @Override
                            public MethodVisitor visitMethod(int a, String n, String d, String s, String[] e) {
                                return new Calls(seen);
                            }
                        },
                        0);
        return seen;
    }

    /** Where each member is first used by an instruction of its own: method and line. */
    private static Map<String, String> firstPlacesByAsm(byte[] bytes) {
        Map<String, String> first = new HashMap<>();
        new ClassReader(bytes)
                .accept(
                        new ClassVisitor(Opcodes.ASM9) {
                            @Override
                            public MethodVisitor visitMethod(int a, String n, String d, String s, String[] e) {
                                return new MethodVisitor(Opcodes.ASM9) {
                                    private int line;

                                    @Override
                                    public void visitLineNumber(int number, Label start) {
                                        line = number;
                                    }

                                    @Override
                                    public void visitMethodInsn(int o, String owner, String m, String t, boolean i) {
                                        first.putIfAbsent(
                                                owner + "." + m + t, n + Descriptor.parameters(d) + ":" + line);
                                    }

                                    @Override
                                    public void visitFieldInsn(int o, String owner, String m, String t) {
                                        first.putIfAbsent(
                                                owner + "." + m + t, n + Descriptor.parameters(d) + ":" + line);
                                    }
                                };
                            }
                        },
                        0);
        return first;
    }

    private static final class Calls extends MethodVisitor {

        private final Set<String> seen;

        Calls(Set<String> seen) {
            super(Opcodes.ASM9);
            this.seen = seen;
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            seen.add(owner + "." + name + descriptor);
        }

        @Override
        public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
            seen.add(owner + "." + name + descriptor);
        }

        @Override
        public void visitInvokeDynamicInsn(String name, String descriptor, Handle bootstrap, Object... arguments) {
            handle(bootstrap);
            for (Object argument : arguments) {
                if (argument instanceof Handle handle) {
                    handle(handle);
                }
            }
        }

        @Override
        public void visitLdcInsn(Object value) {
            if (value instanceof Handle handle) {
                handle(handle);
            }
        }

        private void handle(Handle h) {
            seen.add(h.getOwner() + "." + h.getName() + h.getDesc());
        }
    }
}
