package headgate.runtime.pack;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a class file (JVM Specification 17, chapter 4) names: every class and member that its code, its bootstraps or its
 * declarations can reach. All of it stands in the constant pool, so the whole pool is read: a class or member that is not
 * there cannot be linked. The instructions are read, too, to say where each is used. Bytes that are not understood are an
 * error.
 *
 * <p>Annotation types and generic signatures are not looked at: they are text until reflection reads them, and heads may
 * not reflect.
 */
final class ClassFile {

    /** Class files of Java 8: the first without instructions that jump to subroutines. */
    static final int OLDEST = 52;

    /** Class files of Java 17. */
    static final int NEWEST = 61;

    /** Most annotations inside one another. */
    static final int NESTED_ANNOTATIONS = 8;

    private static final int STATIC = 0x0008;
    private static final int PRIVATE = 0x0002;
    private static final int SYNCHRONIZED = 0x0020;
    private static final int NATIVE = 0x0100;
    private static final int INTERFACE = 0x0200;
    private static final int ABSTRACT = 0x0400;
    private static final int PUBLIC = 0x0001;
    private static final int PROTECTED = 0x0004;
    private static final int HANDLE_PUTS_STATIC = 4;

    /** A name and a type: what tells members of one class apart. */
    record Signature(String name, String descriptor) {}

    /**
     * A field or method that the class declares.
     *
     * @param signature name and type
     * @param access its flags
     */
    record Declared(Signature signature, int access) {

        boolean isMethod() {
            return signature.descriptor().startsWith("(");
        }

        boolean isPrivate() {
            return (access & PRIVATE) != 0;
        }

        boolean isStatic() {
            return (access & STATIC) != 0;
        }

        boolean isPublic() {
            return (access & PUBLIC) != 0;
        }

        boolean isForOthers() {
            return (access & (PUBLIC | PROTECTED)) != 0;
        }
    }

    /**
     * Something that no head has.
     *
     * @param what what it is
     * @param place where it is
     * @param instead what to do instead
     */
    record Oddity(String what, CodePlace place, String instead) {}

    private static final Set<Signature> SERIALIZATION_HOOKS = Set.of(
            new Signature("writeObject", "(Ljava/io/ObjectOutputStream;)V"),
            new Signature("readObject", "(Ljava/io/ObjectInputStream;)V"),
            new Signature("readObjectNoData", "()V"),
            new Signature("writeReplace", "()Ljava/lang/Object;"),
            new Signature("readResolve", "()Ljava/lang/Object;"),
            new Signature("writeExternal", "(Ljava/io/ObjectOutput;)V"),
            new Signature("readExternal", "(Ljava/io/ObjectInput;)V"));

    private final DataInputStream in;
    private final ConstantPool pool;
    private final int access;
    private final String name;
    private final @Nullable String parent;
    private final List<String> interfaces = new ArrayList<>();
    private final Map<Signature, Declared> declared = new LinkedHashMap<>();
    private final Set<String> annotations = new TreeSet<>();

    /** Handles and arguments of each bootstrap, by place in the pool. */
    private final List<int[]> bootstraps = new ArrayList<>();

    private final Map<Integer, CodePlace> uses = new HashMap<>();
    private final List<Oddity> oddities = new ArrayList<>();

    private final Map<String, CodePlace> classes = new LinkedHashMap<>();
    private final Map<Member, CodePlace> members = new LinkedHashMap<>();
    private final Set<Member> linking = new LinkedHashSet<>();

    /**
     * Reads a class file.
     *
     * @param bytes the whole file
     * @throws IOException if it is no class file that Java 17 reads, with the reason
     */
    ClassFile(byte[] bytes) throws IOException {
        in = new DataInputStream(new ByteArrayInputStream(bytes));
        try {
            if (in.readInt() != 0xCAFEBABE) {
                throw new IOException("no class file");
            }
            int minor = in.readUnsignedShort();
            int major = in.readUnsignedShort();
            if (major < OLDEST || major > NEWEST || (minor != 0 && major >= 56)) {
                throw new IOException("class file version " + major + "." + minor);
            }
            pool = new ConstantPool(in);
            access = in.readUnsignedShort();
            name = plainClassName(in.readUnsignedShort());
            int parentIndex = in.readUnsignedShort();
            parent = parentIndex == 0 ? null : plainClassName(parentIndex);
            for (int i = in.readUnsignedShort(); i > 0; i--) {
                interfaces.add(plainClassName(in.readUnsignedShort()));
            }
            declarations();
            declarations();
            attributes(in, this::ofClass);
            if (in.read() >= 0) {
                throw new IOException("bytes after the end");
            }
            spreadUses();
            collect();
        } catch (EOFException e) {
            throw new IOException("the end is missing", e);
        } catch (IndexOutOfBoundsException e) {
            throw new IOException("an index that points nowhere", e);
        }
    }

    private String plainClassName(int index) throws IOException {
        String text = pool.className(index);
        if (text.startsWith("[")) {
            throw new IOException("an array where a class belongs");
        }
        return text;
    }

    private void declarations() throws IOException {
        for (int i = in.readUnsignedShort(); i > 0; i--) {
            int flags = in.readUnsignedShort();
            String memberName = pool.text(in.readUnsignedShort());
            int descriptor = in.readUnsignedShort();
            Descriptor.checkMemberName(memberName);
            pool.types(descriptor);
            Signature signature = new Signature(memberName, pool.text(descriptor));
            Declared member = new Declared(signature, flags);
            if (declared.put(signature, member) != null) {
                throw new IOException("member " + Printable.text(memberName) + " twice");
            }
            CodePlace place = CodePlace.of(signature);
            for (String type : pool.types(descriptor)) {
                classes.putIfAbsent(type, place);
            }
            if (member.isMethod()) {
                lookAtMethod(member, place);
            }
            boolean[] seen = new boolean[1];
            attributes(in, (attribute, content) -> {
                if (attribute.equals("Code") && member.isMethod()) {
                    if (seen[0]) {
                        throw new IOException("two bodies of method " + Printable.text(memberName));
                    }
                    seen[0] = true;
                    code(content, member, place);
                }
            });
        }
    }

    private void lookAtMethod(Declared method, CodePlace place) {
        if ((method.access() & NATIVE) != 0) {
            oddities.add(new Oddity("native method", place, "write it in Java"));
        }
        if ((method.access() & SYNCHRONIZED) != 0) {
            oddities.add(new Oddity("synchronized method", place, "leave it out: one thread asks a head"));
        }
        if (method.signature().equals(new Signature("finalize", "()V"))) {
            oddities.add(new Oddity("finalizer", place, "leave it out: a head holds nothing that must be given back"));
        }
        if (SERIALIZATION_HOOKS.contains(method.signature())) {
            oddities.add(new Oddity("serialization hook", place, "leave it out: nothing of a head is serialized"));
        }
    }

    private interface Attribute {
        void take(String name, DataInputStream content) throws IOException;
    }

    private void attributes(DataInputStream from, Attribute reader) throws IOException {
        for (int i = from.readUnsignedShort(); i > 0; i--) {
            String attribute = pool.text(from.readUnsignedShort());
            int length = from.readInt();
            if (length < 0 || length > from.available()) {
                throw new IOException("attribute " + Printable.text(attribute) + " that is longer than the file");
            }
            byte[] content = new byte[length];
            from.readFully(content);
            reader.take(attribute, new DataInputStream(new ByteArrayInputStream(content)));
        }
    }

    private void ofClass(String attribute, DataInputStream content) throws IOException {
        if (attribute.equals("BootstrapMethods")) {
            for (int n = content.readUnsignedShort(); n > 0; n--) {
                int handle = content.readUnsignedShort();
                pool.expect(handle, ConstantPool.METHOD_HANDLE);
                int[] all = new int[1 + content.readUnsignedShort()];
                all[0] = handle;
                for (int i = 1; i < all.length; i++) {
                    all[i] = content.readUnsignedShort();
                }
                bootstraps.add(all);
            }
            end(attribute, content);
        } else if (attribute.equals("RuntimeVisibleAnnotations")) {
            for (int n = content.readUnsignedShort(); n > 0; n--) {
                annotations.add(pool.text(content.readUnsignedShort()));
                skipElements(content, 1);
            }
            end(attribute, content);
        }
    }

    private static void end(String attribute, DataInputStream content) throws IOException {
        if (content.read() >= 0) {
            throw new IOException("attribute " + attribute + " with bytes after its end");
        }
    }

    private static void skipElements(DataInputStream from, int depth) throws IOException {
        for (int n = from.readUnsignedShort(); n > 0; n--) {
            from.readUnsignedShort();
            skipValue(from, depth);
        }
    }

    private static void skipValue(DataInputStream from, int depth) throws IOException {
        if (depth > NESTED_ANNOTATIONS) {
            throw new IOException("annotations more than " + NESTED_ANNOTATIONS + " deep");
        }
        int tag = from.readUnsignedByte();
        switch (tag) {
            case 'e' -> from.readInt();
            case '@' -> {
                from.readUnsignedShort();
                skipElements(from, depth + 1);
            }
            case '[' -> {
                for (int n = from.readUnsignedShort(); n > 0; n--) {
                    skipValue(from, depth + 1);
                }
            }
            default -> from.readUnsignedShort();
        }
    }

    private void code(DataInputStream content, Declared method, CodePlace place) throws IOException {
        content.readInt();
        int length = content.readInt();
        if (length < 0 || length > content.available()) {
            throw new IOException("a method that is longer than the file");
        }
        byte[] code = new byte[length];
        content.readFully(code);
        int handlers = content.readUnsignedShort();
        content.skipNBytes(8L * handlers);
        List<int[]> lines = new ArrayList<>();
        attributes(content, (attribute, table) -> {
            if (attribute.equals("LineNumberTable")) {
                for (int n = table.readUnsignedShort(); n > 0; n--) {
                    lines.add(new int[] {table.readUnsignedShort(), table.readUnsignedShort()});
                }
                end(attribute, table);
            }
        });
        end("Code", content);
        int[] lineAt = lineAtEachByte(lines, length);
        Instructions.walk(code, (offset, opcode, constant) -> {
            CodePlace here = place.atLine(lineAt[offset]);
            if (constant != 0) {
                uses.merge(constant, here, CodePlace::and);
            }
            if (opcode == Instructions.MONITOR_ENTER) {
                oddities.add(new Oddity("synchronized block", here, "leave it out: one thread asks a head"));
            }
            if (opcode == Instructions.PUT_STATIC) {
                putStatic(pool.member(constant), method, here);
            }
        });
    }

    private static int[] lineAtEachByte(List<int[]> lines, int length) throws IOException {
        int[] lineAt = new int[length];
        for (int[] line : lines) {
            if (line[0] >= length) {
                throw new IOException("a line number outside its method");
            }
            lineAt[line[0]] = line[1];
        }
        for (int i = 1; i < length; i++) {
            if (lineAt[i] == 0) {
                lineAt[i] = lineAt[i - 1];
            }
        }
        return lineAt;
    }

    private void putStatic(Member field, Declared method, CodePlace place) {
        boolean own = method.signature().equals(new Signature("<clinit>", "()V"))
                && field.owner().equals(name);
        if (!own) {
            oddities.add(new Oddity(
                    "write to the static field " + field.name(),
                    place,
                    "set static fields where they are declared: what a head keeps between answers would change them"));
        }
    }

    /** What is used through a dynamic call, a handle or a member is used where that is used. */
    private void spreadUses() throws IOException {
        for (int i = 1; i < pool.size(); i++) {
            CodePlace place = uses.get(i);
            if (pool.tag(i) == ConstantPool.INVOKE_DYNAMIC) {
                int[] bootstrap = bootstraps.get(pool.first(i));
                for (int n = 1; place != null && n < bootstrap.length; n++) {
                    uses.putIfAbsent(bootstrap[n], place);
                }
            }
        }
        for (int i = 1; i < pool.size(); i++) {
            CodePlace place = uses.get(i);
            if (place != null && pool.tag(i) == ConstantPool.METHOD_HANDLE) {
                uses.putIfAbsent(pool.second(i), place);
            }
        }
        for (int i = 1; i < pool.size(); i++) {
            CodePlace place = uses.get(i);
            boolean member = pool.tag(i) >= ConstantPool.FIELD_REF && pool.tag(i) <= ConstantPool.INTERFACE_METHOD_REF;
            if (place != null && (member || pool.tag(i) == ConstantPool.INVOKE_DYNAMIC)) {
                uses.putIfAbsent(pool.second(i), place);
            }
            if (place != null && member) {
                uses.putIfAbsent(pool.first(i), place);
            }
        }
    }

    private void collect() throws IOException {
        Set<Integer> bootstrapHandles = new HashSet<>();
        Set<Integer> otherHandles = new HashSet<>(uses.keySet());
        for (int[] bootstrap : bootstraps) {
            bootstrapHandles.add(bootstrap[0]);
            for (int n = 1; n < bootstrap.length; n++) {
                otherHandles.add(bootstrap[n]);
            }
        }
        bootstrapHandles.removeAll(otherHandles);
        Set<Integer> linkingMembers = new HashSet<>();
        for (int handle : bootstrapHandles) {
            linkingMembers.add(pool.second(handle));
            linking.add(pool.member(pool.second(handle)));
        }
        linkingMembers.removeAll(uses.keySet());
        for (int i = 1; i < pool.size(); i++) {
            CodePlace place = uses.getOrDefault(i, CodePlace.CLASS);
            switch (pool.tag(i)) {
                case ConstantPool.CLASS -> {
                    String text = pool.className(i);
                    for (String each : text.startsWith("[") ? Descriptor.classes(text) : List.of(text)) {
                        classes.merge(each, place, CodePlace::orMoreExact);
                    }
                }
                case ConstantPool.NAME_AND_TYPE -> {
                    for (String each : pool.types(pool.second(i))) {
                        classes.putIfAbsent(each, place);
                    }
                }
                case ConstantPool.METHOD_TYPE -> {
                    for (String each : pool.types(pool.first(i))) {
                        classes.putIfAbsent(each, place);
                    }
                }
                case ConstantPool.FIELD_REF, ConstantPool.METHOD_REF, ConstantPool.INTERFACE_METHOD_REF -> {
                    if (!linkingMembers.contains(i)) {
                        members.merge(pool.member(i), place, CodePlace::orMoreExact);
                    }
                }
                case ConstantPool.METHOD_HANDLE -> {
                    if (pool.first(i) == HANDLE_PUTS_STATIC) {
                        oddities.add(new Oddity(
                                "handle that writes to the static field "
                                        + pool.member(pool.second(i)).name(),
                                place,
                                "set static fields where they are declared"));
                    }
                }
                case ConstantPool.DYNAMIC ->
                    oddities.add(new Oddity(
                            "dynamic constant", place, "use a plain constant; no Java compiler writes this one"));
                default -> {}
            }
        }
    }

    /** {@return the internal name, with slashes} */
    String name() {
        return name;
    }

    /** {@return true if it declares a module and no class} */
    boolean isModule() {
        return (access & 0x8000) != 0;
    }

    /** {@return true if it is an interface} */
    boolean isInterface() {
        return (access & INTERFACE) != 0;
    }

    /** {@return true if it is a public class that is not abstract} */
    boolean isPublicAndWhole() {
        return (access & (PUBLIC | ABSTRACT | INTERFACE)) == PUBLIC;
    }

    /** {@return the internal name of the class that it extends, if any} */
    @Nullable
    String parent() {
        return parent;
    }

    /** {@return the internal names of its interfaces} */
    List<String> interfaces() {
        return interfaces;
    }

    /** {@return the internal names of all classes that it names, element types for arrays, with a place of use} */
    Map<String, CodePlace> classes() {
        return classes;
    }

    /** {@return all members that it names but for those that only link its dynamic calls, with a place of use} */
    Map<Member, CodePlace> members() {
        return members;
    }

    /** {@return what it declares} */
    Map<Signature, Declared> declared() {
        return declared;
    }

    /** {@return descriptors of the annotations on the class that are kept at run time} */
    Set<String> annotations() {
        return annotations;
    }

    /** {@return the methods that link its dynamic calls} */
    Set<Member> bootstraps() {
        return linking;
    }

    /** {@return what no head has, with its place} */
    List<Oddity> oddities() {
        return oddities;
    }

    /** Groups class files by internal name. */
    static Map<String, ClassFile> byName(List<ClassFile> files) {
        Map<String, ClassFile> result = new HashMap<>();
        files.forEach(f -> result.put(f.name(), f));
        return result;
    }
}
