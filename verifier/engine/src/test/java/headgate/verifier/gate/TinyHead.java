package headgate.verifier.gate;

import headgate.verifier.gate.JavaLibrary.Member;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** The smallest package that the gate finds nothing wrong with but for one use of one member. */
enum TinyHead {
    /** An instruction that uses the member. */
    CALL,
    /** A method handle among the constants. */
    HANDLE,
    /** A call of the parent's member. */
    SUPER_CALL,
    /** The member, named on an own class that inherits it. */
    INHERITED;

    private static final String NAME = "partner/Tiny";
    private static final int ROOM = 300;

    private static final byte[] MANIFEST = """
            Manifest-Version: 1.0
            Plugin-Id: tiny
            Plugin-Version: 1.0.0
            Plugin-Provider: tests
            Plugin-Requires: >=0.1.0 & <0.2.0

            """.getBytes(StandardCharsets.UTF_8);

    private static final byte[] INDEX = "partner.Tiny\n".getBytes(StandardCharsets.UTF_8);

    /** Whether it can be written: constructors are not inherited, and fields are not called. */
    boolean suits(Member member) {
        return switch (this) {
            case CALL, HANDLE -> true;
            case SUPER_CALL -> !member.isField() && !member.isStatic();
            case INHERITED -> !member.isConstructor();
        };
    }

    /** The package. */
    byte[] using(Member member) {
        boolean extend = this == SUPER_CALL || this == INHERITED;
        boolean implement = extend && member.ofInterface();
        ClassWriter writer = new ClassWriter(0);
        writer.visit(
                Opcodes.V17,
                Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER,
                NAME,
                null,
                extend && !implement ? member.owner() : "java/lang/Object",
                implement
                        ? new String[] {"headgate/api/head/SpotHead", member.owner()}
                        : new String[] {"headgate/api/head/SpotHead"});
        writer.visitAnnotation("Lorg/pf4j/Extension;", true).visitEnd();
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PUBLIC, "<init>", "()V", null, null);
        code.visitCode();
        use(code, member);
        code.visitInsn(Opcodes.RETURN);
        code.visitMaxs(ROOM, 1);
        code.visitEnd();
        writer.visitEnd();
        return packed(writer.toByteArray());
    }

    private void use(MethodVisitor code, Member member) {
        String owner = this == INHERITED ? NAME : member.owner();
        boolean ofInterface = this != INHERITED && member.ofInterface();
        if (this == HANDLE) {
            code.visitLdcInsn(new Handle(handleKind(member), owner, member.name(), member.descriptor(), ofInterface));
        } else if (member.isField()) {
            code.visitFieldInsn(
                    member.isStatic() ? Opcodes.GETSTATIC : Opcodes.GETFIELD,
                    owner,
                    member.name(),
                    member.descriptor());
        } else {
            code.visitMethodInsn(
                    instruction(member, ofInterface), owner, member.name(), member.descriptor(), ofInterface);
        }
    }

    private int instruction(Member member, boolean ofInterface) {
        if (this == SUPER_CALL || member.isConstructor()) {
            return Opcodes.INVOKESPECIAL;
        }
        return member.isStatic() ? Opcodes.INVOKESTATIC : ofInterface ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    }

    private static int handleKind(Member member) {
        if (member.isField()) {
            return member.isStatic() ? Opcodes.H_GETSTATIC : Opcodes.H_GETFIELD;
        }
        return member.isConstructor()
                ? Opcodes.H_NEWINVOKESPECIAL
                : member.isStatic()
                        ? Opcodes.H_INVOKESTATIC
                        : member.ofInterface() ? Opcodes.H_INVOKEINTERFACE : Opcodes.H_INVOKEVIRTUAL;
    }

    private static byte[] packed(byte[] head) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setMethod(ZipOutputStream.STORED);
            store(zip, "META-INF/MANIFEST.MF", MANIFEST);
            store(zip, "META-INF/extensions.idx", INDEX);
            store(zip, NAME + ".class", head);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void store(ZipOutputStream zip, String name, byte[] content) throws IOException {
        CRC32 crc = new CRC32();
        crc.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setSize(content.length);
        entry.setCrc(crc.getValue());
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
