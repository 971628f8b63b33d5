package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.testing.Forged;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.Attribute;
import org.objectweb.asm.ByteVector;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Ways past the gate that attackers know, each of which must come out as a problem that names it. */
class SmuggleTest {

    private static final String METAFACTORY_TYPE =
            "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/MethodType;"
                    + "Ljava/lang/invoke/MethodType;Ljava/lang/invoke/MethodHandle;Ljava/lang/invoke/MethodType;)"
                    + "Ljava/lang/invoke/CallSite;";

    private static final Handle EXIT = new Handle(Opcodes.H_INVOKESTATIC, "java/lang/System", "exit", "(I)V", false);

    private static final Handle METAFACTORY = new Handle(
            Opcodes.H_INVOKESTATIC, "java/lang/invoke/LambdaMetafactory", "metafactory", METAFACTORY_TYPE, false);

    private static List<String> sentences(byte[] jar) {
        Inspection inspection = HeadPackage.inspect(jar);
        assertThat(inspection).isInstanceOf(Inspected.class);
        return ((Inspected) inspection)
                .facts().problems().stream().map(PackageProblem::sentence).toList();
    }

    private static void assertRefused(byte[] jar, String... parts) {
        assertThat(sentences(jar)).anySatisfy(sentence -> assertThat(sentence).contains(parts));
    }

    private static byte[] forged(Consumer<ClassWriter> editor) {
        return Forged.jar(Forged.head(editor), Map.of());
    }

    private static byte[] compiled(String members) {
        return Jars.of(Heads.NAME, Heads.spot(members));
    }

    private static void assertPlain(byte[] jar) {
        assertThat(sentences(jar)).isEmpty();
    }

    @Test
    void theForgedHeadItselfIsPlain() {
        assertPlain(forged(writer -> {}));
    }

    /** Five tricks by which a scan of calls sees nothing. */
    @Nested
    class KnownTricks {

        @Test
        void dynamicConstant() {
            Handle bootstrap = new Handle(
                    Opcodes.H_INVOKESTATIC,
                    "java/lang/invoke/ConstantBootstraps",
                    "invoke",
                    "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/Class;"
                            + "Ljava/lang/invoke/MethodHandle;[Ljava/lang/Object;)Ljava/lang/Object;",
                    false);
            byte[] jar = forged(Forged.using(code -> {
                code.visitLdcInsn(new ConstantDynamic("c", "Ljava/lang/Object;", bootstrap, EXIT, 1));
                code.visitInsn(Opcodes.POP);
            }));
            assertRefused(jar, "dynamic constant");
            assertRefused(jar, "java.lang.System.exit(int)");
            assertRefused(jar, "ConstantBootstraps.invoke");
        }

        @Test
        void ownBootstrap() {
            Handle bootstrap = new Handle(
                    Opcodes.H_INVOKESTATIC,
                    Forged.HEAD,
                    "link",
                    "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/MethodType;)"
                            + "Ljava/lang/invoke/CallSite;",
                    false);
            byte[] jar = forged(writer -> {
                Forged.using(code -> code.visitInvokeDynamicInsn("x", "()V", bootstrap))
                        .accept(writer);
                MethodVisitor link = writer.visitMethod(
                        Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC, "link", bootstrap.getDesc(), null, null);
                link.visitCode();
                link.visitInsn(Opcodes.ACONST_NULL);
                link.visitInsn(Opcodes.ARETURN);
                link.visitMaxs(1, 3);
                link.visitEnd();
            });
            assertRefused(jar, "a dynamic call linked by partner.Forged.link");
        }

        @Test
        void fakeLambda() {
            // Named and flagged as compilers name and flag the body of a lambda, which some scans fold away.
            byte[] jar = forged(writer -> {
                MethodVisitor body = writer.visitMethod(
                        Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC,
                        "lambda$act$0",
                        "()V",
                        null,
                        null);
                body.visitCode();
                body.visitInsn(Opcodes.ICONST_1);
                body.visitMethodInsn(Opcodes.INVOKESTATIC, "java/lang/System", "exit", "(I)V", false);
                body.visitInsn(Opcodes.RETURN);
                body.visitMaxs(1, 0);
                body.visitEnd();
            });
            assertRefused(jar, "method lambda$act$0()", "java.lang.System.exit(int)");
        }

        @Test
        void malformedAttribute() {
            // A line number behind the end of the method: readers for people drop such a class and go on.
            byte[] head = Forged.head(Forged.using(code -> {
                Label start = new Label();
                code.visitLabel(start);
                code.visitLineNumber(7, start);
                code.visitInsn(Opcodes.ICONST_1);
                code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/lang/System", "exit", "(I)V", false);
            }));
            byte[] mark = {0, 1, 0, 0, 0, 7};
            int at = indexOf(head, mark);
            head[at + 3] = 99;
            assertRefused(Forged.jar(head, Map.of()), "a line number outside its method");
            // An attribute of another name is skipped by its length; what its class calls is found all the same.
            byte[] odd = Forged.head(writer -> {
                writer.visitAttribute(new Junk("Signature"));
                Forged.using(code -> {
                            code.visitInsn(Opcodes.ICONST_1);
                            code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/lang/System", "exit", "(I)V", false);
                        })
                        .accept(writer);
            });
            assertRefused(Forged.jar(odd, Map.of()), "java.lang.System.exit(int)");
        }

        @Test
        void inheritedMember() {
            byte[] own = Forged.type(
                    Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER, "partner/Own", "java/util/ArrayList", null, writer -> {});
            byte[] head = Forged.head(Forged.using(code -> {
                code.visitInsn(Opcodes.ACONST_NULL);
                code.visitTypeInsn(Opcodes.CHECKCAST, "partner/Own");
                code.visitMethodInsn(
                        Opcodes.INVOKEVIRTUAL, "partner/Own", "parallelStream", "()Ljava/util/stream/Stream;", false);
                code.visitInsn(Opcodes.POP);
            }));
            assertRefused(
                    Forged.jar(head, Map.of("partner/Own", own)),
                    "partner.Own.parallelStream(), which is java.util.Collection.parallelStream()");
        }
    }

    private static final class Junk extends Attribute {

        Junk(String name) {
            super(name);
        }

        @Override
        protected ByteVector write(ClassWriter writer, byte[] code, int length, int stack, int locals) {
            return new ByteVector().putByteArray(new byte[] {1, 2, 3}, 0, 3);
        }
    }

    private static int indexOf(byte[] bytes, byte[] part) {
        for (int i = 0; i + part.length <= bytes.length; i++) {
            if (Arrays.equals(bytes, i, i + part.length, part, 0, part.length)) {
                return i;
            }
        }
        throw new AssertionError("not there");
    }

    @Test
    void anOwnInterfaceThatOnlyNamesAnInheritedMethod() {
        // Plain Java: the compiler writes a call on Trace, and Throwable's method runs.
        assertRefused(
                compiled("interface Trace { void printStackTrace(); }"
                        + " static class Loud extends RuntimeException implements Trace {"
                        + " private static final long serialVersionUID = 1L; }"
                        + " static void use(Trace t) { t.printStackTrace(); }"),
                "class partner.TestHead$Loud",
                "java.lang.Throwable.printStackTrace()");
    }

    @Test
    void anOwnInterfaceThatNamesADefaultMethodOfAnotherOne() {
        byte[] alias = Forged.type(
                Opcodes.ACC_PUBLIC | Opcodes.ACC_INTERFACE | Opcodes.ACC_ABSTRACT,
                "partner/Alias",
                "java/lang/Object",
                null,
                writer -> writer.visitMethod(
                                Opcodes.ACC_PUBLIC | Opcodes.ACC_ABSTRACT,
                                "parallelStream",
                                "()Ljava/util/stream/Stream;",
                                null,
                                null)
                        .visitEnd());
        byte[] own = Forged.type(
                Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER,
                "partner/Own",
                "java/util/ArrayList",
                new String[] {"partner/Alias"},
                writer -> {});
        assertRefused(
                Forged.jar(Forged.head(writer -> {}), Map.of("partner/Alias", alias, "partner/Own", own)),
                "class partner.Own",
                "java.util.Collection.parallelStream()");
    }

    @Test
    void anOwnInterfaceThatNamesAMethodOfObject() {
        byte[] alias = Forged.type(
                Opcodes.ACC_PUBLIC | Opcodes.ACC_INTERFACE | Opcodes.ACC_ABSTRACT,
                "partner/Alias",
                "java/lang/Object",
                null,
                writer -> writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_ABSTRACT, "wait", "()V", null, null)
                        .visitEnd());
        byte[] own = Forged.type(
                Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER,
                "partner/Own",
                "java/lang/Object",
                new String[] {"partner/Alias"},
                writer -> {});
        assertRefused(
                Forged.jar(Forged.head(writer -> {}), Map.of("partner/Alias", alias, "partner/Own", own)),
                "java.lang.Object.wait()");
    }

    @Test
    void theSecondSpellingOfAName() {
        // The virtual machine tells "parallelStream" from the same letters in two bytes each; a reader of texts does
        // not, and would take the inherited method for the declared one.
        byte[] own = Forged.type(
                Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER, "partner/Own", "java/util/ArrayList", null, writer -> {
                    MethodVisitor method = writer.visitMethod(
                            Opcodes.ACC_PUBLIC, "qarallelStream", "()Ljava/util/stream/Stream;", null, null);
                    method.visitCode();
                    method.visitInsn(Opcodes.ACONST_NULL);
                    method.visitInsn(Opcodes.ARETURN);
                    method.visitMaxs(1, 1);
                    method.visitEnd();
                });
        byte[] name = "qarallelStream".getBytes(StandardCharsets.US_ASCII);
        int at = indexOf(own, name);
        byte[] respelled = new byte[own.length + 1];
        System.arraycopy(own, 0, respelled, 0, at);
        respelled[at - 1]++;
        respelled[at] = (byte) 0xC1;
        respelled[at + 1] = (byte) 0xB0;
        System.arraycopy(own, at + 1, respelled, at + 2, own.length - at - 1);
        assertRefused(
                Forged.jar(Forged.head(writer -> {}), Map.of("partner/Own", respelled)),
                "a text that is not spelled as class files spell it");
    }

    @Test
    void theHeadApiAsACloak() {
        // Everything inherits from Object: the owner is a class of the head API, the method is not its own.
        assertRefused(
                forged(Forged.using(code -> {
                    code.visitInsn(Opcodes.ACONST_NULL);
                    code.visitTypeInsn(Opcodes.CHECKCAST, "headgate/api/shape/Point");
                    code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "headgate/api/shape/Point", "notifyAll", "()V", false);
                })),
                "headgate.api.shape.Point.notifyAll(), which is java.lang.Object.notifyAll()");
    }

    @Test
    void whatTheHeadApiDoesNotHave() {
        assertRefused(
                forged(Forged.using(code ->
                        code.visitMethodInsn(Opcodes.INVOKESTATIC, "headgate/api/unit/Units", "reboot", "()V", false))),
                "headgate.api.unit.Units.reboot(), which the head API does not have");
        assertRefused(
                forged(Forged.using(code -> code.visitMethodInsn(
                        Opcodes.INVOKESTATIC, "headgate/api/unit/Secret", "reboot", "()V", false))),
                "headgate.api.unit.Secret.reboot()");
    }

    @Test
    void theBootstrapOfLambdasCalledByHand() {
        assertRefused(
                forged(Forged.using(code -> {
                    for (int i = 0; i < 6; i++) {
                        code.visitInsn(Opcodes.ACONST_NULL);
                    }
                    code.visitMethodInsn(
                            Opcodes.INVOKESTATIC,
                            "java/lang/invoke/LambdaMetafactory",
                            "metafactory",
                            METAFACTORY_TYPE,
                            false);
                    code.visitInsn(Opcodes.POP);
                })),
                "java.lang.invoke.LambdaMetafactory.metafactory");
    }

    @Test
    void theBootstrapOfLambdasAsAnArgument() {
        assertRefused(
                forged(Forged.using(code -> {
                    code.visitInvokeDynamicInsn(
                            "get",
                            "()Ljava/util/function/Supplier;",
                            METAFACTORY,
                            Type.getType("()Ljava/lang/Object;"),
                            METAFACTORY,
                            Type.getType("()Ljava/lang/Object;"));
                    code.visitInsn(Opcodes.POP);
                })),
                "java.lang.invoke.LambdaMetafactory.metafactory");
    }

    @Test
    void aLambdaOverAForbiddenMethod() {
        assertRefused(
                forged(Forged.using(code -> {
                    code.visitInvokeDynamicInsn(
                            "accept",
                            "()Ljava/util/function/IntConsumer;",
                            METAFACTORY,
                            Type.getType("(I)V"),
                            EXIT,
                            Type.getType("(I)V"));
                    code.visitInsn(Opcodes.POP);
                })),
                "method use()",
                "java.lang.System.exit(int)");
    }

    @Test
    void theBootstrapForSerializableLambdas() {
        assertRefused(
                compiled("static Object o = (Runnable & java.io.Serializable) () -> {};"),
                "LambdaMetafactory.altMetafactory");
    }

    @Test
    void aHandleInThePoolThatNobodyUses() {
        assertRefused(
                forged(writer -> writer.newHandle(Opcodes.H_INVOKESTATIC, "java/lang/System", "exit", "(I)V", false)),
                "java.lang.System.exit(int)");
    }

    @Test
    void aClassInThePoolThatNobodyUses() {
        assertRefused(
                forged(writer -> writer.newClass("java/lang/Thread")), "class partner.Forged", "java.lang.Thread");
    }

    @Test
    void anArrayOfWhatMayNotBeNamed() {
        assertRefused(
                forged(Forged.using(code -> {
                    code.visitLdcInsn(Type.getType("[[Ljava/lang/ProcessBuilder;"));
                    code.visitInsn(Opcodes.POP);
                })),
                "java.lang.ProcessBuilder");
    }

    @Test
    void aMethodTypeOfWhatMayNotBeNamed() {
        assertRefused(
                forged(Forged.using(code -> {
                    code.visitLdcInsn(Type.getType("()Ljava/lang/Thread;"));
                    code.visitInsn(Opcodes.POP);
                })),
                "java.lang.Thread");
    }

    @Test
    void aHandleThatWritesAStaticField() {
        assertRefused(
                forged(writer -> {
                    writer.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_PRIVATE, "kept", "I", null, null)
                            .visitEnd();
                    writer.newHandle(Opcodes.H_PUTSTATIC, Forged.HEAD, "kept", "I", false);
                }),
                "handle that writes to the static field kept");
    }

    @Test
    void theStaticFieldOfAnotherOwnClass() {
        assertRefused(
                compiled("static class Other { static int kept; }"
                        + " static class More { static { Other.kept = 1; } }"),
                "class partner.TestHead$More, method <clinit>()",
                "write to the static field kept");
    }

    @Test
    void aSuperCallOfAnInterface() {
        assertRefused(
                compiled("interface Own extends List<String> {"
                        + " default java.util.stream.Stream<String> parallelStream() {"
                        + " return List.super.parallelStream(); } }"),
                "java.util.Collection.parallelStream()");
    }

    @Test
    void aClassByItsNameThroughAnEnum() {
        // Enum.valueOf is listed, since every enum calls it; Class.forName, which would find other enums, is not.
        assertRefused(
                compiled("enum E { A } @SuppressWarnings({\"unchecked\", \"rawtypes\"}) static void use()"
                        + " throws Exception { Enum.valueOf((Class) Class.forName(\"x\"), \"A\"); }"),
                "java.lang.Class.forName(String)");
    }

    @Test
    void annotationsAreTextAndNothingElse() {
        // An annotation whose type is a forbidden class cannot be linked by the code; it is left alone.
        assertPlain(forged(writer -> {
            AnnotationVisitor annotation = writer.visitAnnotation("Ljava/lang/Thread;", true);
            annotation.visit("name", Type.getType("Ljava/lang/ProcessBuilder;"));
            annotation.visitEnd();
        }));
    }

    @Test
    void annotationsThatNestWithoutEnd() {
        byte[] jar = forged(writer -> {
            Deque<AnnotationVisitor> open = new ArrayDeque<>();
            open.push(writer.visitAnnotation("Lpartner/Deep;", true));
            for (int i = 0; i < 5000; i++) {
                open.push(open.element().visitArray(i == 0 ? "v" : null));
            }
            open.forEach(AnnotationVisitor::visitEnd);
        });
        assertRefused(jar, "annotations more than 8 deep");
    }

    @Test
    void whatIsSealedOrNestedByForce() {
        assertRefused(forged(writer -> writer.visitNestHost("java/lang/Thread")), "java.lang.Thread");
        assertRefused(forged(writer -> writer.visitNestMember("java/lang/Thread")), "java.lang.Thread");
        assertRefused(forged(writer -> writer.visitPermittedSubclass("java/lang/Thread")), "java.lang.Thread");
        assertRefused(forged(writer -> writer.visitOuterClass("java/lang/Thread", "run", "()V")), "java.lang.Thread");
    }

    @Test
    void recordMethodsOverForeignFields() {
        Handle bootstrap = new Handle(
                Opcodes.H_INVOKESTATIC,
                "java/lang/runtime/ObjectMethods",
                "bootstrap",
                "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/TypeDescriptor;"
                        + "Ljava/lang/Class;Ljava/lang/String;[Ljava/lang/invoke/MethodHandle;)Ljava/lang/Object;",
                false);
        assertRefused(
                forged(Forged.using(code -> {
                    code.visitInsn(Opcodes.ACONST_NULL);
                    code.visitInvokeDynamicInsn(
                            "toString",
                            "(Lpartner/Forged;)Ljava/lang/String;",
                            bootstrap,
                            Type.getObjectType(Forged.HEAD),
                            "out",
                            new Handle(Opcodes.H_GETSTATIC, "java/lang/System", "out", "Ljava/io/PrintStream;", false));
                    code.visitInsn(Opcodes.POP);
                })),
                "java.lang.System.out");
    }

    @Test
    void aModuleInDisguise() {
        assertRefused(
                Forged.jar(
                        Forged.head(writer -> {}),
                        Map.of(
                                "partner/Disguise",
                                Forged.type(Opcodes.ACC_MODULE, "partner/Disguise", null, null, writer -> {}))),
                "a module under another name");
        // The real one describes a module path, which no head is on; the copy leaves it out.
        ClassWriter module = new ClassWriter(0);
        module.visit(Opcodes.V17, Opcodes.ACC_MODULE, "module-info", null, null, null);
        module.visitModule("partner", 0, null).visitEnd();
        module.visitEnd();
        byte[] jar = Forged.jar(Forged.head(writer -> {}), Map.of("module-info", module.toByteArray()));
        assertPlain(jar);
        byte[] copy =
                ((Inspected) HeadPackage.inspect(jar)).clean().orElseThrow().bytes();
        assertThat(new String(copy, StandardCharsets.ISO_8859_1)).doesNotContain("module-info");
    }

    @Test
    void classesThatInheritFromThemselves() {
        byte[] one = Forged.type(Opcodes.ACC_PUBLIC, "partner/One", "partner/Two", null, writer -> {});
        byte[] two = Forged.type(Opcodes.ACC_PUBLIC, "partner/Two", "partner/One", null, writer -> {});
        assertRefused(
                Forged.jar(Forged.head(writer -> {}), Map.of("partner/One", one, "partner/Two", two)),
                "class partner.One",
                "itself among its parents");
    }

    @Test
    void classNamesThatCannotBeRead() {
        // U+202E turns the direction of reading; a report would show another name than the one that is there.
        byte[] odd = Forged.type(Opcodes.ACC_PUBLIC, "partner/X\u202Etxt", "java/lang/Object", null, writer -> {});
        assertRefused(Forged.jar(Forged.head(writer -> {}), Map.of("partner/X\u202Etxt", odd)), "partner/X<U+202E>txt");
        byte[] pointed = Forged.type(Opcodes.ACC_PUBLIC, "partner/a.b", "java/lang/Object", null, writer -> {});
        assertRefused(
                Forged.jar(Forged.head(writer -> {}), Map.of("partner/a.b", pointed)), "the class name partner/a.b");
    }

    @Test
    void aClassThatSplitsAPackageOfTheHost() {
        for (String name : List.of("java/lang/Helper", "org/pf4j/Helper", "headgate/api/shape/Helper", "jdk/Helper")) {
            byte[] own = Forged.type(Opcodes.ACC_PUBLIC, name, "java/lang/Object", null, writer -> {});
            assertRefused(
                    Forged.jar(Forged.head(writer -> {}), Map.of(name, own)),
                    "class " + name.replace('/', '.'),
                    "the host brings it");
        }
    }

    @Test
    void aClassThatNamesAnotherAsItself() {
        byte[] own = Forged.type(Opcodes.ACC_PUBLIC, "java/lang/Thread", "java/lang/Object", null, writer -> {});
        assertRefused(
                Forged.jar(Forged.head(writer -> {}), Map.of("partner/Thread", own)),
                "must hold the class that it is named after");
    }

    @Test
    void theSameMemberTwice() {
        byte[] jar = forged(writer -> {
            for (int i = 0; i < 2; i++) {
                writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_ABSTRACT, "twice", "()V", null, null)
                        .visitEnd();
            }
        });
        assertRefused(jar, "member twice twice");
    }

    @Test
    void anInstructionThatIsNone() {
        byte[] head = Forged.head(Forged.using(code -> {
            code.visitIntInsn(Opcodes.SIPUSH, 0x1234);
            code.visitInsn(Opcodes.POP);
        }));
        int at = indexOf(head, new byte[] {17, 0x12, 0x34, 87});
        head[at] = (byte) 0xCA;
        assertRefused(Forged.jar(head, Map.of()), "instruction 202");
        head[at] = (byte) Opcodes.TABLESWITCH;
        assertRefused(Forged.jar(head, Map.of()), "must be a class file");
        head[at] = (byte) Opcodes.JSR;
        assertRefused(Forged.jar(head, Map.of()), "instruction 168");
    }

    /** Long types that many members share, deep chains: none may make the gate slow. The figures are the format's own. */
    @Test
    @Timeout(20)
    void oneLongTypeSharedByThousandsIsReadOnce() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        int shared = 20_000;
        out.writeInt(0xCAFEBABE);
        out.writeInt(61);
        out.writeShort(6 + 3 * shared);
        out.writeByte(1);
        out.writeUTF("partner/Slow");
        out.writeByte(7);
        out.writeShort(1);
        out.writeByte(1);
        out.writeUTF("java/lang/Object");
        out.writeByte(7);
        out.writeShort(3);
        out.writeByte(1);
        out.writeUTF("(" + "Ljava/lang/Object;".repeat(3500) + ")V");
        for (int i = 0; i < shared; i++) {
            out.writeByte(1);
            out.writeUTF("m" + i);
            out.writeByte(12);
            out.writeShort(6 + 3 * i);
            out.writeShort(5);
            out.writeByte(10);
            out.writeShort(4);
            out.writeShort(7 + 3 * i);
        }
        for (int value : new int[] {1, 2, 4, 0, 0, 0, 0}) {
            out.writeShort(value);
        }
        byte[] jar = Forged.jar(Forged.head(writer -> {}), Map.of("partner/Slow", bytes.toByteArray()));
        List<String> sentences = sentences(jar);
        assertThat(sentences).hasSize(PackageLimits.PROBLEMS + 1);
        assertThat(sentences).anyMatch(sentence -> sentence.contains("more than 200 problems"));
    }

    @Test
    @Timeout(20)
    void aDeepChainOfClassesIsGivenUp() {
        Map<String, byte[]> classes = new HashMap<>();
        int depth = 1900;
        for (int i = 0; i < depth; i++) {
            String parent = i == 0 ? "java/lang/Object" : "partner/C" + (i - 1);
            int methods = i == 0 ? 1000 : 0;
            classes.put("partner/C" + i, Forged.type(Opcodes.ACC_PUBLIC, "partner/C" + i, parent, null, writer -> {
                for (int n = 0; n < methods; n++) {
                    writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_ABSTRACT, "m" + n, "()V", null, null)
                            .visitEnd();
                }
            }));
        }
        String last = "partner/C" + (depth - 1);
        for (int n = 0; n < 4; n++) {
            String caller = "partner/Caller" + n;
            classes.put(caller, Forged.type(Opcodes.ACC_PUBLIC, caller, "java/lang/Object", null, writer -> {
                for (int i = 0; i < 1000; i++) {
                    writer.newMethod(last, "m" + i, "()V", false);
                }
            }));
        }
        assertRefused(Forged.jar(Forged.head(writer -> {}), classes), "more than 2000000 steps");
    }

    @Test
    void whatNoHeadHasIsNamedWithItsPlace() {
        SortedMap<String, String> expected = new TreeMap<>(Map.of(
                "synchronized void a() {}", "method a() must have none; instead: leave it out: one thread",
                "void b() { synchronized (this) { b(); } }", "method b(), line",
                "protected void finalize() {}", "finalizer",
                "private Object readResolve() { return this; }", "serialization hook",
                "private Object writeReplace() { return this; }", "serialization hook",
                "static int kept; void c() { kept++; }", "write to the static field kept",
                "static int kept; { kept = 2; }", "method <init>(), line",
                "native void d();", "native method"));
        expected.forEach((members, part) -> assertRefused(compiled(members), part));
        assertPlain(compiled("static final int A = Integer.parseInt(\"1\"); static int b; static { b = 3; }"));
    }

    @Test
    void aFindingNamesClassMethodLineMemberAndWhatToUseInstead() {
        String source =
                Heads.spot("static double use(int[] values) {\n  return values.length\n      * Math.random();\n}");
        long line =
                source.lines().takeWhile(each -> !each.contains("Math.random")).count() + 1;
        assertThat(sentences(Jars.of(Heads.NAME, source)))
                .containsExactly("class partner.TestHead, method use(int[]), line " + line
                        + " must use only what a head may use; instead: answer from the task alone; a head draws no lots;"
                        + " found: java.lang.Math.random()");
    }

    @Test
    void theSamePlaceIsToldOnceWithACount() {
        assertRefused(
                compiled("static double use() { return Math.random() + Math.random() + Math.random(); }"),
                "method use(), line",
                "and 2 more",
                "java.lang.Math.random()");
    }

    @Test
    void everyAdviceIsForSomethingThatIsRefused() {
        assertThat(Instead.of("java.util.concurrent.locks.ReentrantLock.lock()"))
                .contains("one thread");
        assertThat(Instead.of("partner.Gone.act()")).isEqualTo("work it out in the package's own classes");
        assertThat(Objects.requireNonNull(Instead.of("java.lang.Thread.sleep(long)")))
                .contains("one thread");
    }
}
