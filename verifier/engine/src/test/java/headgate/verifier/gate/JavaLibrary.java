package headgate.verifier.gate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.ModuleVisitor;
import org.objectweb.asm.Opcodes;

/** The base module of a JDK, read from its class files: this process's JDK or another one on the machine. */
final class JavaLibrary implements AutoCloseable {

    private static final int FOR_OTHERS = Opcodes.ACC_PUBLIC | Opcodes.ACC_PROTECTED;

    /** A field, method or constructor that a class declares for others. */
    record Member(String owner, String name, String descriptor, int access, boolean ofInterface) {

        boolean isField() {
            return !descriptor.startsWith("(");
        }

        boolean isStatic() {
            return (access & Opcodes.ACC_STATIC) != 0;
        }

        boolean isConstructor() {
            return name.equals("<init>");
        }
    }

    /** A class: what it extends, and what it declares for others. */
    record JavaType(String name, int access, @Nullable String parent, List<String> interfaces, List<Member> members) {

        boolean isInterface() {
            return (access & Opcodes.ACC_INTERFACE) != 0;
        }
    }

    private final int feature;
    private final FileSystem files;
    private final Map<String, Optional<JavaType>> types = new HashMap<>();

    private JavaLibrary(int feature, FileSystem files) {
        this.feature = feature;
        this.files = files;
    }

    /** The library of this process. */
    static JavaLibrary running() {
        return new JavaLibrary(Runtime.version().feature(), FileSystems.getFileSystem(URI.create("jrt:/")));
    }

    /** The library of the newest JDK that stands beside the one of this process; empty if none is newer. */
    static Optional<JavaLibrary> newest() throws IOException {
        Path home = Path.of(System.getProperty("java.home")).toRealPath();
        Path folder = Objects.requireNonNull(home.getParent());
        Optional<Path> newest;
        try (Stream<Path> beside = Files.list(folder)) {
            newest = beside.filter(each -> Files.isRegularFile(each.resolve("lib/jrt-fs.jar")))
                    .filter(each -> Files.isRegularFile(each.resolve("release")))
                    .max(Comparator.<Path>comparingInt(JavaLibrary::feature).thenComparing(Comparator.naturalOrder()));
        }
        return newest.filter(each -> feature(each) > Runtime.version().feature())
                .map(JavaLibrary::of);
    }

    private static JavaLibrary of(Path home) {
        try {
            FileSystem other = FileSystems.newFileSystem(URI.create("jrt:/"), Map.of("java.home", home.toString()));
            return new JavaLibrary(feature(home), other);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int feature(Path home) {
        Properties release = new Properties();
        try (java.io.Reader in = Files.newBufferedReader(home.resolve("release"))) {
            release.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String version = release.getProperty("JAVA_VERSION", "\"0\"").replace("\"", "");
        return Integer.parseInt(version.split("[.+-]", -1)[0]);
    }

    /** 17 or later. */
    int feature() {
        return feature;
    }

    /** Every member that a class of an exported package declares for others, in a fixed order. */
    List<Member> accessible() throws IOException {
        Path root = files.getPath("/modules/java.base");
        Set<String> exported = exported(root.resolve("module-info.class"));
        List<String> names;
        try (Stream<Path> all = Files.walk(root)) {
            names = all.map(each -> root.relativize(each).toString())
                    .filter(each -> each.endsWith(".class") && each.contains("/"))
                    .map(each -> each.substring(0, each.length() - ".class".length()))
                    .filter(each -> exported.contains(each.substring(0, each.lastIndexOf('/'))))
                    .sorted()
                    .toList();
        }
        List<Member> members = new ArrayList<>();
        for (String name : names) {
            if (isAccessible(name)) {
                members.addAll(type(name).orElseThrow().members());
            }
        }
        return members;
    }

    private boolean isAccessible(String name) {
        int nest = name.lastIndexOf('$');
        return type(name).filter(each -> (each.access() & FOR_OTHERS) != 0).isPresent()
                && (nest < 0 || isAccessible(name.substring(0, nest)));
    }

    private static Set<String> exported(Path moduleInfo) throws IOException {
        Set<String> exported = new HashSet<>();
        new ClassReader(Files.readAllBytes(moduleInfo))
                .accept(
                        new ClassVisitor(Opcodes.ASM9) {
                            @Override
                            public ModuleVisitor visitModule(String name, int access, String version) {
                                return new ModuleVisitor(Opcodes.ASM9) {
                                    @Override
                                    public void visitExport(
                                            String packageName, int flags, String @Nullable ... modules) {
                                        if (modules == null) {
                                            exported.add(packageName);
                                        }
                                    }
                                };
                            }
                        },
                        0);
        return exported;
    }

    /** A class by its internal name; empty if the base module has none of that name. */
    Optional<JavaType> type(String name) {
        return types.computeIfAbsent(name, this::read);
    }

    private Optional<JavaType> read(String name) {
        Path file = files.getPath("/modules/java.base/" + name + ".class");
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        Reader reader = new Reader();
        try {
            new ClassReader(Files.readAllBytes(file))
                    .accept(reader, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Optional.of(new JavaType(name, reader.access, reader.parent, reader.interfaces, reader.members));
    }

    @Override
    public void close() throws IOException {
        if (feature != Runtime.version().feature()) {
            files.close();
        }
    }

    private static final class Reader extends ClassVisitor {

        private String name = "";
        private int access;
        private @Nullable String parent;
        private List<String> interfaces = List.of();
        private final List<Member> members = new ArrayList<>();

        Reader() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visit(
                int version,
                int flags,
                String type,
                @Nullable String signature,
                @Nullable String extended,
                String[] implemented) {
            name = type;
            access = flags;
            parent = extended;
            interfaces = Arrays.asList(implemented);
        }

        @Override
        public void visitInnerClass(String type, @Nullable String outer, @Nullable String inner, int flags) {
            if (type.equals(name)) {
                access = flags;
            }
        }

        @Override
        public @Nullable FieldVisitor visitField(
                int flags, String field, String descriptor, @Nullable String signature, @Nullable Object value) {
            add(flags, field, descriptor);
            return null;
        }

        @Override
        public @Nullable MethodVisitor visitMethod(
                int flags,
                String method,
                String descriptor,
                @Nullable String signature,
                String @Nullable [] exceptions) {
            add(flags, method, descriptor);
            return null;
        }

        private void add(int flags, String member, String descriptor) {
            if ((flags & FOR_OTHERS) != 0) {
                members.add(new Member(name, member, descriptor, flags, (access & Opcodes.ACC_INTERFACE) != 0));
            }
        }
    }
}
