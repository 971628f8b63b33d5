package headgate.runtime.testing;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Packages whose classes no Java compiler writes. */
public final class Forged {

    /** Internal name of the head in every package from here. */
    public static final String HEAD = "partner/Forged";

    private static final String ACT = "(Lheadgate/api/task/SpotTask;)Lheadgate/api/answer/Action;";

    private Forged() {}

    /** A head that has no sheet and declines to act, with whatever the editor adds to its class. */
    public static byte[] head(Consumer<ClassWriter> editor) {
        return head("java/lang/Object", editor);
    }

    /** The same, extending a class. */
    public static byte[] head(String parent, Consumer<ClassWriter> editor) {
        ClassWriter writer = new ClassWriter(0);
        writer.visit(Opcodes.V17, Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER, HEAD, null, parent, new String[] {
            "headgate/api/head/SpotHead"
        });
        writer.visitAnnotation("Lorg/pf4j/Extension;", true).visitEnd();
        MethodVisitor constructor = writer.visitMethod(Opcodes.ACC_PUBLIC, "<init>", "()V", null, null);
        constructor.visitCode();
        constructor.visitVarInsn(Opcodes.ALOAD, 0);
        constructor.visitMethodInsn(Opcodes.INVOKESPECIAL, parent, "<init>", "()V", false);
        constructor.visitInsn(Opcodes.RETURN);
        constructor.visitMaxs(1, 1);
        constructor.visitEnd();
        nothing(writer, "sheet", "()Lheadgate/api/sheet/HeadSheet;", 1);
        nothing(writer, "act", ACT, 2);
        editor.accept(writer);
        writer.visitEnd();
        return writer.toByteArray();
    }

    private static void nothing(ClassWriter writer, String name, String descriptor, int locals) {
        MethodVisitor method = writer.visitMethod(Opcodes.ACC_PUBLIC, name, descriptor, null, null);
        method.visitCode();
        method.visitInsn(Opcodes.ACONST_NULL);
        method.visitInsn(Opcodes.ARETURN);
        method.visitMaxs(1, locals);
        method.visitEnd();
    }

    /** A static method {@code use()} with a body; its stack and locals are large enough for any test. */
    public static Consumer<ClassWriter> using(Consumer<MethodVisitor> body) {
        return writer -> {
            MethodVisitor method =
                    writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC, "use", "()V", null, null);
            method.visitCode();
            body.accept(method);
            method.visitInsn(Opcodes.RETURN);
            method.visitMaxs(20, 20);
            method.visitEnd();
        };
    }

    /** Another class of the package. */
    public static byte[] type(
            int access, String name, String parent, String[] interfaces, Consumer<ClassWriter> editor) {
        ClassWriter writer = new ClassWriter(0);
        writer.visit(Opcodes.V17, access, name, null, parent, interfaces);
        editor.accept(writer);
        writer.visitEnd();
        return writer.toByteArray();
    }

    /** A package with the head and more classes, by internal name. */
    public static byte[] jar(byte[] head, Map<String, byte[]> others) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("META-INF/MANIFEST.MF", Jars.manifestBytes(Jars.manifest()));
        entries.put("META-INF/extensions.idx", HEAD.replace('/', '.').getBytes(StandardCharsets.UTF_8));
        entries.put(HEAD + ".class", head);
        others.forEach((name, bytes) -> entries.put(name + ".class", bytes));
        return Jars.zip(entries);
    }
}
