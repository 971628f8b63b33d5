package headgate.it.hostile;

import headgate.testkit.jar.HeadJarBuilder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** The sample gripper's package, made wrong in one way, and the one answer that it must get. */
@SuppressWarnings("ImmutableEnumChecker") // Makers are functions without state; the checker cannot see that.
enum BrokenPackage {
    // What is no archive: an error of the input.
    EMPTY(error("empty"), () -> new byte[0]),
    A_TEXT(error("no JAR"), () -> bytes("this is a text, whatever its name says")),
    CUT_OFF(error("no JAR"), () -> Arrays.copyOf(good(), good().length - 40)),
    BEGINNING_LOST(error("no JAR"), () -> Arrays.copyOfRange(good(), 20, good().length)),
    TOO_LARGE(error("more than"), () -> new byte[17 * 1024 * 1024]),
    DIRECTORY_ELSEWHERE(error("no JAR"), () -> archive().atEnd(16, 7).bytes()),
    WRONG_CHECKSUM(error("no JAR"), () -> archive()
            .inDirectory(Known.HEAD, 16, 7)
            .atEntry(Known.HEAD, 14, 7)
            .bytes()),
    ENTRY_BEHIND_THE_END(
            error("no JAR"), () -> archive().inDirectory(Known.HEAD, 44, 0x7fff).bytes()),

    // The archive itself.
    BOMB(archive("200-fold"), () -> with("zeros.txt", new byte[4_000_000])),
    BOMB_OF_MANY(archive("bytes unpacked"), () -> with(many("zeros", 9, new byte[3_900_000]))),
    TOO_MANY_ENTRIES(archive("entries"), () -> with(many("none", 2_000, new byte[0]))),
    LARGE_ENTRY(archive("bytes"), () -> with("zeros.txt", new byte[4_200_000])),
    LONG_NAME(archive("at most 240 bytes"), () -> with("a".repeat(300), new byte[1])),
    NAME_THAT_CLIMBS(archive("plain relative name"), () -> with("../../etc/head", new byte[1])),
    NAME_FROM_THE_ROOT(archive("plain relative name"), () -> with("/etc/head", new byte[1])),
    NAME_WITH_A_DRIVE(archive("plain relative name"), () -> with("c:head", new byte[1])),
    NAME_WITH_BACKSLASHES(archive("plain relative name"), () -> with("..\\head", new byte[1])),
    NAME_THAT_TURNS(archive("<U+202E>"), () -> with("a\u202Etxt.class.txt", new byte[1])),
    NAME_WITH_A_LINE_END(archive("<U+000A>"), () -> with("a\nb", new byte[1])),
    NAME_TWICE(archive("the only one of its name"), () -> RawArchive.stored(
                    plus("notes/one", new byte[1], "notes/two", new byte[1]))
            .renamed("notes/two", "notes/one")
            .bytes()),
    NAME_TWICE_IN_OTHER_CASE(
            archive("the only one of its name"), () -> with("headgate/sample/gripper/gripper.class", new byte[0])),
    NAME_TWICE_IN_OTHER_SPELLING(archive("the only one of its name"), () -> RawArchive.stored(
                    plus("a\u00E4", new byte[1], "aa\u0308", new byte[1]))
            .bytes()),
    ENCRYPTED(archive("encrypted"), () -> archive()
            .inDirectory(Known.HEAD, 8, 0x801)
            .atEntry(Known.HEAD, 6, 0x801)
            .bytes()),
    LINK(
            archive("symbolic link"),
            () -> archive().inDirectory(Known.HEAD, 40, 0xA1FF).bytes()),
    STRANGE_METHOD(archive("stored or deflated"), () -> archive()
            .inDirectory(Known.HEAD, 10, 12)
            .atEntry(Known.HEAD, 8, 12)
            .bytes()),
    TWO_HEADERS_DISAGREE(
            archive("both of its headers"),
            () -> archive().renamedOnce(Known.HEAD, Known.FALSE_HEAD).bytes()),
    SIZES_DISAGREE(
            archive("both of its headers"),
            () -> archive().atEntry(Known.HEAD, 22, 9).bytes()),
    SCRIPT_BEFORE(archive("belong to no entry"), () -> archive()
            .with(bytes("#!/bin/sh\necho hello\n"), "META-INF/MANIFEST.MF")
            .bytes()),
    BYTES_BETWEEN(
            archive("belong to no entry"),
            () -> archive().with(bytes("hidden"), Known.HEAD).bytes()),
    COMMENT(archive("comment"), () -> {
        byte[] longer = Arrays.copyOf(good(), good().length + 4);
        longer[good().length - 2] = 4;
        return longer;
    }),
    NESTED_ARCHIVE(archive("nested archive"), () -> with("lib/more.jar", new byte[1])),
    NESTED_ARCHIVE_IN_DISGUISE(archive("nested archive"), () -> with("notes.txt", good())),
    NATIVE_CODE(archive("native code"), () -> with("fast.so", new byte[1])),
    NATIVE_CODE_IN_DISGUISE(archive("native code"), () -> with("notes.txt", new byte[] {0x7f, 'E', 'L', 'F', 2})),
    OTHER_VERSION_OF_JAVA(
            archive("another version of Java"), () -> with("META-INF/versions/21/" + Known.HEAD, good(Known.HEAD))),
    SERVICE(archive("a service"), () -> with("META-INF/services/java.lang.Runnable", bytes("a.B\n"))),
    SIGNATURE(archive("a signature"), () -> with("META-INF/PARTNER.SF", bytes("Signature-Version: 1.0\r\n\r\n"))),
    SECOND_DESCRIPTION(archive("the manifest describes"), () -> with("plugin.properties", bytes("plugin.id=x\n"))),
    LIST_OF_ARCHIVES(archive("a list of other archives"), () -> with("META-INF/INDEX.LIST", bytes("x"))),

    // The classes.
    TOO_NEW_CLASS(archive("class file version 66.0"), () -> with(Known.HEAD, changed(good(Known.HEAD), 7, 66))),
    TOO_OLD_CLASS(archive("class file version 49.0"), () -> with(Known.HEAD, changed(good(Known.HEAD), 7, 49))),
    PREVIEW_CLASS(archive("class file version 61.65535"), () -> {
        byte[] head = good(Known.HEAD);
        head[4] = -1;
        head[5] = -1;
        return with(Known.HEAD, head);
    }),
    CLASS_CUT_OFF(archive("the end is missing"), () -> with(Known.HEAD, Arrays.copyOf(good(Known.HEAD), 200))),
    CLASS_WITH_A_TAIL(
            archive("bytes after the end"),
            () -> with(Known.HEAD, Arrays.copyOf(good(Known.HEAD), good(Known.HEAD).length + 1))),
    CLASS_UNDER_ANOTHER_NAME(archive("named after"), () -> with("partner/Other.class", type("partner/One", c -> {}))),
    CLASS_THAT_IS_A_TEXT(archive("no class file"), () -> with("partner/Text.class", bytes("hello"))),
    OUR_CLASS(archive("host brings it"), () -> withType("headgate/api/head/SpotHead", c -> {})),
    CLASS_OF_THE_PLUGIN_HOST(archive("host brings it"), () -> withType("org/pf4j/Extension", c -> {})),
    CLASS_OF_JAVA(archive("host brings it"), () -> withType("java/lang/Math", c -> {})),
    ENDS_THE_PROGRAM(archive("java.lang.System.exit(int)"), () -> withCall("java/lang/System", "exit", "(I)V")),
    READS_THE_CLOCK(archive("java.lang.System.nanoTime()"), () -> withCall("java/lang/System", "nanoTime", "()J")),
    STARTS_A_THREAD(archive("java.lang.Thread.start()"), () -> withCall("java/lang/Thread", "start", "()V")),
    REFLECTS(
            archive("java.lang.Class.forName(String)"),
            () -> withCall("java/lang/Class", "forName", "(Ljava/lang/String;)Ljava/lang/Class;")),
    OPENS_A_FILE(
            archive("java.io.FileInputStream.<init>(String)"),
            () -> withCall("java/io/FileInputStream", "<init>", "(Ljava/lang/String;)V")),
    DYNAMIC_CONSTANT(
            archive("dynamic constant"),
            () -> withCode(code -> code.visitLdcInsn(new ConstantDynamic(
                    "x",
                    "Ljava/lang/Object;",
                    new Handle(
                            Opcodes.H_INVOKESTATIC,
                            "java/lang/invoke/LambdaMetafactory",
                            "metafactory",
                            "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/MethodType;"
                                    + "Ljava/lang/invoke/MethodType;Ljava/lang/invoke/MethodHandle;"
                                    + "Ljava/lang/invoke/MethodType;)Ljava/lang/invoke/CallSite;",
                            false))))),
    OWN_BOOTSTRAP(
            archive("linked by partner.One.link"),
            () -> withCode(code -> code.visitInvokeDynamicInsn(
                    "x",
                    "()V",
                    new Handle(
                            Opcodes.H_INVOKESTATIC, "partner/One", "link", "()Ljava/lang/invoke/CallSite;", false)))),
    SYNCHRONIZED(archive("synchronized method"), () -> withMethod(Opcodes.ACC_SYNCHRONIZED, "run", "()V")),
    FINALIZER(archive("finalizer"), () -> withMethod(0, "finalize", "()V")),
    NATIVE_METHOD(archive("native method"), () -> withMethod(Opcodes.ACC_NATIVE, "fast", "()V")),
    SERIALIZATION_HOOK(archive("serialization hook"), () -> withMethod(0, "readResolve", "()Ljava/lang/Object;")),
    WRITES_A_STATIC_FIELD(
            archive("write to the static field kept"),
            () -> withType("partner/One", type -> {
                type.visitField(Opcodes.ACC_STATIC, "kept", "I", null, null).visitEnd();
                method(type, Opcodes.ACC_STATIC, "run", code -> {
                    code.visitInsn(Opcodes.ICONST_1);
                    code.visitFieldInsn(Opcodes.PUTSTATIC, "partner/One", "kept", "I");
                });
            })),
    INHERITED_METHOD(archive("java.lang.Throwable.printStackTrace()"), () -> {
        ClassWriter type = new ClassWriter(0);
        type.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, "partner/One", null, "java/lang/RuntimeException", null);
        method(type, Opcodes.ACC_STATIC, "run", code -> {
            code.visitInsn(Opcodes.ACONST_NULL);
            code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "partner/One", "printStackTrace", "()V", false);
        });
        return with("partner/One.class", type.toByteArray());
    }),
    DEEP_ANNOTATIONS(
            archive("annotations more than 8 deep"),
            () -> withType("partner/One", type -> {
                Deque<AnnotationVisitor> open = new ArrayDeque<>();
                open.push(type.visitAnnotation("Lpartner/Deep;", true));
                for (int i = 0; i < 5_000; i++) {
                    open.push(open.element().visitArray(i == 0 ? "v" : null));
                }
                open.forEach(AnnotationVisitor::visitEnd);
            })),
    THOUSANDS_OF_PROBLEMS(
            archive("201 problems"),
            () -> withType("partner/One", type -> {
                for (int i = 0; i < 15_000; i++) {
                    type.newMethod("java/lang/Thread", "m" + i, "()V", false);
                }
            })),

    // The manifest and the index.
    NO_MANIFEST(manifest("META-INF/MANIFEST.MF"), () -> without("META-INF/MANIFEST.MF")),
    MANIFEST_OF_OTHER_BYTES(manifest("UTF-8"), () -> with("META-INF/MANIFEST.MF", new byte[] {-1, -2, -3})),
    HUGE_MANIFEST(manifest("at most 65536 bytes"), () -> {
        byte[] huge = bytes("Manifest-Version: 1.0\r\n" + " x\r\n".repeat(40_000));
        return RawArchive.stored(plus("META-INF/MANIFEST.MF", huge)).bytes();
    }),
    MALFORMED_LINE(manifest("Name: value"), () -> attribute("no colon")),
    ID_TWICE(manifest("in the manifest once"), () -> attribute("plugin-id: other")),
    ID_WITH_SPACES(manifest("Plugin-Id"), () -> attributes("Plugin-Id", "two words")),
    VERSION_OF_WORDS(manifest("Plugin-Version"), () -> attributes("Plugin-Version", "banana")),
    PROVIDER_THAT_TURNS(manifest("Plugin-Provider"), () -> attributes("Plugin-Provider", "a\u202Eb")),
    RANGE_OF_ANOTHER_FORM(manifest("Plugin-Requires"), () -> attributes("Plugin-Requires", "^0.1")),
    RANGE_WITHOUT_US(manifest("must include"), () -> attributes("Plugin-Requires", ">=7.0.0 & <8.0.0")),
    CLASS_PATH(manifest("loads other files"), () -> attribute("Class-Path: file:/etc/")),
    MULTI_RELEASE(manifest("other versions of Java"), () -> attribute("Multi-Release: true")),
    AGENT(manifest("starts an agent"), () -> attribute("Launcher-Agent-Class: partner.Agent")),
    PLUGIN_CLASS(manifest("before the head is asked"), () -> attribute("Plugin-Class: partner.Plugin")),
    PLUGIN_DEPENDENCIES(manifest("needs other packages"), () -> attribute("Plugin-Dependencies: other@1.0")),
    NO_INDEX(manifest("must list one class"), () -> without(HeadJarBuilder.INDEX)),
    INDEX_OF_A_CLASS_THAT_IS_GONE(
            manifest("build again from clean"), () -> with(HeadJarBuilder.INDEX, bytes("partner.Gone\n"))),
    INDEX_OF_TWO(
            manifest("must list one class"),
            () -> with(HeadJarBuilder.INDEX, bytes("headgate.sample.gripper.Gripper\npartner.One\n"))),
    HEAD_OF_BOTH_KINDS(manifest("found: both"), () -> withHead(Opcodes.ACC_PUBLIC, Known.BOTH_KINDS)),
    HEAD_OF_NO_KIND(manifest("found: neither"), () -> withHead(Opcodes.ACC_PUBLIC, new String[0])),
    HEAD_THAT_IS_NOT_PUBLIC(manifest("the host cannot make"), () -> withHead(0, Known.ONE_KIND)),
    HEAD_THAT_IS_ABSTRACT(
            manifest("the host cannot make"),
            () -> withHead(Opcodes.ACC_PUBLIC | Opcodes.ACC_ABSTRACT, Known.ONE_KIND));

    /** The answer: an error of the input if it names no rule. */
    record Answer(String rule, String part) {}

    private final Answer answer;
    private final Supplier<byte[]> maker;

    BrokenPackage(Answer answer, Supplier<byte[]> maker) {
        this.answer = answer;
        this.maker = maker;
    }

    Answer answer() {
        return answer;
    }

    byte[] jar() {
        return maker.get();
    }

    /** Constants that the enum's own values use; its own fields come too late for them. */
    private static final class Known {
        static final String HEAD = "headgate/sample/gripper/Gripper.class";
        static final String FALSE_HEAD = "headgate/sample/gripper/Flipper.class";
        static final String[] ONE_KIND = {"headgate/api/head/SpotHead"};
        static final String[] BOTH_KINDS = {"headgate/api/head/SpotHead", "headgate/api/head/ContinuousHead"};
    }

    private static final class Good {
        static final Map<String, byte[]> ENTRIES = RawArchive.entries(Misdeed.innocent());
    }

    private static Answer error(String part) {
        return new Answer("", part);
    }

    private static Answer archive(String part) {
        return new Answer("package.self-contained", part);
    }

    private static Answer manifest(String part) {
        return new Answer("package.manifest", part);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] good() {
        return archive().bytes();
    }

    private static byte[] good(String entry) {
        return Objects.requireNonNull(Good.ENTRIES.get(entry)).clone();
    }

    private static RawArchive archive() {
        return RawArchive.stored(Good.ENTRIES);
    }

    private static Map<String, byte[]> plus(String name, byte[] content) {
        Map<String, byte[]> entries = new LinkedHashMap<>(Good.ENTRIES);
        entries.put(name, content);
        return entries;
    }

    private static Map<String, byte[]> plus(String one, byte[] first, String two, byte[] second) {
        Map<String, byte[]> entries = plus(one, first);
        entries.put(two, second);
        return entries;
    }

    private static byte[] with(String name, byte[] content) {
        return RawArchive.deflated(plus(name, content));
    }

    private static byte[] with(Map<String, byte[]> more) {
        Map<String, byte[]> entries = new LinkedHashMap<>(Good.ENTRIES);
        entries.putAll(more);
        return RawArchive.deflated(entries);
    }

    private static byte[] without(String name) {
        Map<String, byte[]> entries = new LinkedHashMap<>(Good.ENTRIES);
        entries.remove(name);
        return RawArchive.deflated(entries);
    }

    private static Map<String, byte[]> many(String name, int count, byte[] content) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            entries.put(name + i, content);
        }
        return entries;
    }

    private static byte[] changed(byte[] content, int at, int value) {
        content[at] = (byte) value;
        return content;
    }

    private static byte[] attribute(String line) {
        String manifest = new String(good(HeadJarBuilder.MANIFEST), StandardCharsets.UTF_8).strip();
        return with(HeadJarBuilder.MANIFEST, bytes(manifest + "\r\n" + line + "\r\n\r\n"));
    }

    private static byte[] attributes(String name, String value) {
        String manifest = new String(good(HeadJarBuilder.MANIFEST), StandardCharsets.UTF_8);
        return with(HeadJarBuilder.MANIFEST, bytes(manifest.replaceFirst(name + ": .*", name + ": " + value)));
    }

    private static byte[] type(String name, Consumer<ClassWriter> editor) {
        ClassWriter type = new ClassWriter(0);
        type.visit(Opcodes.V17, Opcodes.ACC_PUBLIC | Opcodes.ACC_ABSTRACT, name, null, "java/lang/Object", null);
        editor.accept(type);
        type.visitEnd();
        return type.toByteArray();
    }

    private static byte[] withType(String name, Consumer<ClassWriter> editor) {
        return with(name + ".class", type(name, editor));
    }

    private static byte[] withMethod(int access, String name, String descriptor) {
        return withType("partner/One", type -> {
            int flags = access == Opcodes.ACC_NATIVE ? access : access | Opcodes.ACC_ABSTRACT;
            type.visitMethod(flags, name, descriptor, null, null).visitEnd();
        });
    }

    private static void method(ClassWriter type, int access, String name, Consumer<MethodVisitor> body) {
        MethodVisitor code = type.visitMethod(access, name, "()V", null, null);
        code.visitCode();
        body.accept(code);
        code.visitInsn(Opcodes.RETURN);
        code.visitMaxs(10, 10);
        code.visitEnd();
    }

    private static byte[] withCode(Consumer<MethodVisitor> body) {
        return withType("partner/One", type -> {
            method(type, Opcodes.ACC_STATIC, "run", body);
            type.visitMethod(
                            Opcodes.ACC_STATIC | Opcodes.ACC_ABSTRACT,
                            "link",
                            "()Ljava/lang/invoke/CallSite;",
                            null,
                            null)
                    .visitEnd();
        });
    }

    /** The gate reads references and does not verify stacks, so the call needs nothing around it. */
    private static byte[] withCall(String owner, String name, String descriptor) {
        return withCode(code -> code.visitMethodInsn(Opcodes.INVOKESTATIC, owner, name, descriptor, false));
    }

    private static byte[] withHead(int access, String[] kinds) {
        ClassWriter writer = new ClassWriter(0);
        new ClassReader(good(Known.HEAD))
                .accept(
                        new ClassVisitor(Opcodes.ASM9, writer) {
                            @Override
                            public void visit(
                                    int version, int flags, String name, String s, String parent, String[] interfaces) {
                                super.visit(version, access | Opcodes.ACC_SUPER, name, s, parent, kinds);
                            }
                        },
                        0);
        return with(Known.HEAD, writer.toByteArray());
    }
}
