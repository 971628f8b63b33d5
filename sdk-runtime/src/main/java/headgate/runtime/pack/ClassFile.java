package headgate.runtime.pack;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a class file (JVM Specification 17, chapter 4) names: every class and member that its code, its bootstraps or its
 * declarations can reach. All of it stands in the constant pool, so the whole pool is read and not only the instructions:
 * a class or member that is not there cannot be linked. Bytes that are not understood are an error.
 *
 * <p>Annotation types and generic signatures are not looked at: they are text until reflection reads them, and heads may
 * not reflect.
 */
final class ClassFile {

    /** A member of a class, as the pool names it. */
    record Member(String owner, String name, String descriptor) implements Comparable<Member> {
        @Override
        public int compareTo(Member other) {
            return toString().compareTo(other.toString());
        }

        @Override
        public String toString() {
            return owner.replace('/', '.') + "." + name + descriptor;
        }
    }

    /** Class files that Java 17 reads. */
    static final int NEWEST = 61;

    private static final int UTF8 = 1;
    private static final int CLASS = 7;
    private static final int STRING = 8;
    private static final int FIELD_REF = 9;
    private static final int METHOD_REF = 10;
    private static final int INTERFACE_METHOD_REF = 11;
    private static final int NAME_AND_TYPE = 12;
    private static final int METHOD_HANDLE = 15;
    private static final int METHOD_TYPE = 16;
    private static final int DYNAMIC = 17;
    private static final int INVOKE_DYNAMIC = 18;

    private final DataInputStream in;
    private int[] tags = {};
    private int[] first = {};
    private int[] second = {};
    private @Nullable String[] texts = {};

    private final int major;
    private final int access;
    private final String name;
    private final @Nullable String parent;
    private final List<String> interfaces = new ArrayList<>();
    private final Set<String> classes = new TreeSet<>();
    private final Set<Member> members = new TreeSet<>();
    private final Set<String> declared = new HashSet<>();
    private final Set<String> annotations = new TreeSet<>();
    private final List<Member> bootstraps = new ArrayList<>();
    private final List<String> oddities = new ArrayList<>();

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
            major = in.readUnsignedShort();
            if (major < 45 || major > NEWEST || (minor != 0 && major >= 56)) {
                throw new IOException("class file version " + major + "." + minor);
            }
            pool();
            access = in.readUnsignedShort();
            name = className(in.readUnsignedShort());
            int parentIndex = in.readUnsignedShort();
            parent = parentIndex == 0 ? null : className(parentIndex);
            for (int i = in.readUnsignedShort(); i > 0; i--) {
                interfaces.add(className(in.readUnsignedShort()));
            }
            members(true);
            members(false);
            attributes(true);
            if (in.read() >= 0) {
                throw new IOException("bytes after the end");
            }
            references();
        } catch (EOFException e) {
            throw new IOException("the end is missing", e);
        } catch (IndexOutOfBoundsException e) {
            throw new IOException("an index that points nowhere", e);
        }
    }

    private void pool() throws IOException {
        int count = in.readUnsignedShort();
        tags = new int[count];
        first = new int[count];
        second = new int[count];
        texts = new String[count];
        for (int i = 1; i < count; i++) {
            int tag = in.readUnsignedByte();
            tags[i] = tag;
            switch (tag) {
                case UTF8 -> texts[i] = in.readUTF();
                case 3, 4 -> in.readInt();
                case 5, 6 -> {
                    in.readLong();
                    i++;
                }
                case CLASS, STRING, METHOD_TYPE -> first[i] = in.readUnsignedShort();
                case FIELD_REF, METHOD_REF, INTERFACE_METHOD_REF, NAME_AND_TYPE, DYNAMIC, INVOKE_DYNAMIC -> {
                    first[i] = in.readUnsignedShort();
                    second[i] = in.readUnsignedShort();
                }
                case METHOD_HANDLE -> {
                    first[i] = in.readUnsignedByte();
                    second[i] = in.readUnsignedShort();
                }
                default -> throw new IOException("a constant of kind " + tag);
            }
        }
    }

    private void expect(int index, int tag) throws IOException {
        if (tags[index] != tag) {
            throw new IOException("a constant of kind " + tags[index] + " where one of kind " + tag + " belongs");
        }
    }

    private String text(int index) throws IOException {
        expect(index, UTF8);
        String text = texts[index];
        if (text == null) {
            throw new IOException("a text that is none");
        }
        return text;
    }

    private String className(int index) throws IOException {
        expect(index, CLASS);
        return text(first[index]);
    }

    private Member member(int index) throws IOException {
        int tag = tags[index];
        if (tag != FIELD_REF && tag != METHOD_REF && tag != INTERFACE_METHOD_REF) {
            throw new IOException("a constant of kind " + tag + " where a member belongs");
        }
        expect(second[index], NAME_AND_TYPE);
        return new Member(className(first[index]), text(first[second[index]]), text(second[second[index]]));
    }

    private void members(boolean fields) throws IOException {
        for (int i = in.readUnsignedShort(); i > 0; i--) {
            int flags = in.readUnsignedShort();
            String memberName = text(in.readUnsignedShort());
            String descriptor = text(in.readUnsignedShort());
            declared.add(memberName + descriptor);
            typesIn(descriptor);
            if (!fields && (flags & 0x0100) != 0) {
                oddities.add("native method " + memberName);
            }
            if (!fields && memberName.equals("finalize") && descriptor.equals("()V")) {
                oddities.add("finalizer");
            }
            attributes(false);
        }
    }

    private void attributes(boolean ofClass) throws IOException {
        for (int i = in.readUnsignedShort(); i > 0; i--) {
            String attribute = text(in.readUnsignedShort());
            int length = in.readInt();
            if (length < 0 || length > in.available()) {
                throw new IOException("attribute " + attribute + " that is longer than the file");
            }
            byte[] content = new byte[length];
            in.readFully(content);
            DataInputStream inner = new DataInputStream(new ByteArrayInputStream(content));
            if (ofClass && attribute.equals("BootstrapMethods")) {
                for (int n = inner.readUnsignedShort(); n > 0; n--) {
                    int handle = inner.readUnsignedShort();
                    expect(handle, METHOD_HANDLE);
                    bootstraps.add(member(second[handle]));
                    inner.skipBytes(2 * inner.readUnsignedShort());
                }
            } else if (ofClass && attribute.equals("RuntimeVisibleAnnotations")) {
                for (int n = inner.readUnsignedShort(); n > 0; n--) {
                    annotation(inner);
                }
            }
        }
    }

    private void annotation(DataInputStream from) throws IOException {
        annotations.add(text(from.readUnsignedShort()));
        skipElements(from);
    }

    private static void skipElements(DataInputStream from) throws IOException {
        for (int n = from.readUnsignedShort(); n > 0; n--) {
            from.readUnsignedShort();
            skipValue(from);
        }
    }

    private static void skipValue(DataInputStream from) throws IOException {
        int tag = from.readUnsignedByte();
        switch (tag) {
            case 'e' -> from.readInt();
            case '@' -> {
                from.readUnsignedShort();
                skipElements(from);
            }
            case '[' -> {
                for (int n = from.readUnsignedShort(); n > 0; n--) {
                    skipValue(from);
                }
            }
            default -> from.readUnsignedShort();
        }
    }

    private void references() throws IOException {
        for (int i = 1; i < tags.length; i++) {
            switch (tags[i]) {
                case CLASS -> typesIn(text(first[i]).startsWith("[") ? text(first[i]) : "L" + text(first[i]) + ";");
                case FIELD_REF, METHOD_REF, INTERFACE_METHOD_REF -> members.add(member(i));
                case NAME_AND_TYPE -> typesIn(text(second[i]));
                case METHOD_TYPE -> typesIn(text(first[i]));
                case METHOD_HANDLE -> member(second[i]);
                case DYNAMIC -> oddities.add("dynamic constant");
                default -> {}
            }
        }
    }

    /** Adds every class named in a descriptor. */
    private void typesIn(String descriptor) throws IOException {
        int at = 0;
        while (at < descriptor.length()) {
            char c = descriptor.charAt(at);
            if (c == 'L') {
                int end = descriptor.indexOf(';', at);
                if (end < 0) {
                    throw new IOException("descriptor " + descriptor);
                }
                classes.add(descriptor.substring(at + 1, end));
                at = end + 1;
            } else if ("BCDFIJSZV[()".indexOf(c) >= 0) {
                at++;
            } else {
                throw new IOException("descriptor " + descriptor);
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

    /** {@return the internal names of the class that it extends, if any, and of the interfaces} */
    List<String> parents() {
        List<String> parents = new ArrayList<>(interfaces);
        if (parent != null) {
            parents.add(0, parent);
        }
        return parents;
    }

    /** {@return the internal names of all classes that it names, element types for arrays} */
    Set<String> classes() {
        return classes;
    }

    /** {@return all members that it names} */
    Set<Member> members() {
        return members;
    }

    /**
     * Says whether the class itself declares a member.
     *
     * @param member the member; its owner is not looked at
     * @return true if it does
     */
    boolean declares(Member member) {
        return declared.contains(member.name() + member.descriptor());
    }

    /** {@return descriptors of the annotations on the class that are kept at run time} */
    Set<String> annotations() {
        return annotations;
    }

    /** {@return the methods that link its dynamic calls} */
    List<Member> bootstraps() {
        return bootstraps;
    }

    /** {@return what no head has: native methods, finalizers, dynamic constants} */
    List<String> oddities() {
        return oddities;
    }

    /** Groups class files by internal name. */
    static Map<String, ClassFile> byName(List<ClassFile> files) {
        Map<String, ClassFile> result = new HashMap<>();
        files.forEach(f -> result.put(f.name(), f));
        return result;
    }
}
