package headgate.runtime.pack;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The constant pool of a class file (JVM Specification 17, section 4.4): everything that code can be linked to stands in
 * it. Read strictly; a constant of an unknown kind, or one that points to one of another kind, is an error.
 */
final class ConstantPool {

    static final int UTF8 = 1;
    static final int CLASS = 7;
    static final int STRING = 8;
    static final int FIELD_REF = 9;
    static final int METHOD_REF = 10;
    static final int INTERFACE_METHOD_REF = 11;
    static final int NAME_AND_TYPE = 12;
    static final int METHOD_HANDLE = 15;
    static final int METHOD_TYPE = 16;
    static final int DYNAMIC = 17;
    static final int INVOKE_DYNAMIC = 18;

    private static final int LAST_HANDLE_KIND = 9;

    private final int[] tags;
    private final int[] first;
    private final int[] second;
    private final @Nullable String[] texts;

    /** Classes in each type, by the place of its text: many members may share one long type, which is read once. */
    private final Map<Integer, List<String>> types = new HashMap<>();

    /**
     * Reads a pool.
     *
     * @param in stands at the count of constants
     * @throws IOException if it cannot be read, with the reason
     */
    ConstantPool(DataInputStream in) throws IOException {
        int count = in.readUnsignedShort();
        tags = new int[count];
        first = new int[count];
        second = new int[count];
        texts = new String[count];
        for (int i = 1; i < count; i++) {
            int tag = in.readUnsignedByte();
            tags[i] = tag;
            switch (tag) {
                case UTF8 -> texts[i] = utf8(in);
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
        for (int i = 1; i < count; i++) {
            check(i);
        }
    }

    /**
     * One text has one spelling: a virtual machine compares names by their bytes, and we by their characters. With two
     * spellings of a name, it would see two members where we see one.
     */
    private static String utf8(DataInputStream in) throws IOException {
        byte[] bytes = new byte[in.readUnsignedShort()];
        in.readFully(bytes);
        StringBuilder text = new StringBuilder(bytes.length);
        for (int i = 0; i < bytes.length; ) {
            int b = bytes[i] & 0xff;
            int length = b < 0x80 ? 1 : (b & 0xE0) == 0xC0 ? 2 : (b & 0xF0) == 0xE0 ? 3 : 0;
            if (length == 0 || i + length > bytes.length) {
                throw badText(bytes);
            }
            int c = length == 1 ? b : b & (0xff >> (length + 1));
            for (int n = 1; n < length; n++) {
                if ((bytes[i + n] & 0xC0) != 0x80) {
                    throw badText(bytes);
                }
                c = (c << 6) | (bytes[i + n] & 0x3F);
            }
            int needed = c == 0 ? 2 : c < 0x80 ? 1 : c < 0x800 ? 2 : 3;
            if (needed != length) {
                throw badText(bytes);
            }
            text.append((char) c);
            i += length;
        }
        return text.toString();
    }

    private static IOException badText(byte[] bytes) {
        return new IOException(
                "a text that is not spelled as class files spell it: " + new String(bytes, StandardCharsets.UTF_8));
    }

    private void check(int index) throws IOException {
        switch (tags[index]) {
            case CLASS -> {
                String name = text(first[index]);
                if (name.startsWith("[")) {
                    Descriptor.classes(name);
                } else {
                    Descriptor.checkClassName(name);
                }
            }
            case STRING -> text(first[index]);
            case METHOD_TYPE -> {
                if (!text(first[index]).startsWith("(")) {
                    throw new IOException("a method type that is none");
                }
                types(first[index]);
            }
            case NAME_AND_TYPE -> {
                Descriptor.checkMemberName(text(first[index]));
                types(second[index]);
            }
            case FIELD_REF, METHOD_REF, INTERFACE_METHOD_REF -> {
                Member member = member(index);
                if (member.descriptor().startsWith("(") == (tags[index] == FIELD_REF)) {
                    throw new IOException("a field with the type of a method, or the other way round");
                }
            }
            case DYNAMIC, INVOKE_DYNAMIC -> expect(second[index], NAME_AND_TYPE);
            case METHOD_HANDLE -> {
                if (first[index] < 1 || first[index] > LAST_HANDLE_KIND) {
                    throw new IOException("a method handle of kind " + first[index]);
                }
                member(second[index]);
            }
            default -> {}
        }
    }

    /** {@return the number of places; the first is never used} */
    int size() {
        return tags.length;
    }

    /** {@return the kind of a constant} */
    int tag(int index) {
        return tags[index];
    }

    /** {@return the first index, or the kind of a handle, of a constant} */
    int first(int index) {
        return first[index];
    }

    /** {@return the second index of a constant} */
    int second(int index) {
        return second[index];
    }

    /**
     * Demands a kind.
     *
     * @param index a place
     * @param tag the kind
     * @throws IOException if another kind stands there
     */
    void expect(int index, int tag) throws IOException {
        if (tags[index] != tag) {
            throw new IOException("a constant of kind " + tags[index] + " where one of kind " + tag + " belongs");
        }
    }

    /**
     * Reads a text.
     *
     * @param index a place
     * @return the text
     * @throws IOException if none stands there
     */
    String text(int index) throws IOException {
        expect(index, UTF8);
        String text = texts[index];
        if (text == null) {
            throw new IOException("a text that is none");
        }
        return text;
    }

    /**
     * Reads a type.
     *
     * @param index the place of its text
     * @return internal names of all classes in it
     * @throws IOException if none stands there
     */
    List<String> types(int index) throws IOException {
        List<String> known = types.get(index);
        if (known == null) {
            known = Descriptor.classes(text(index));
            types.put(index, known);
        }
        return known;
    }

    /**
     * Reads the name of a class.
     *
     * @param index a place
     * @return internal name, or the type of an array
     * @throws IOException if none stands there
     */
    String className(int index) throws IOException {
        expect(index, CLASS);
        return text(first[index]);
    }

    /**
     * Reads a member.
     *
     * @param index a place
     * @return the member
     * @throws IOException if none stands there
     */
    Member member(int index) throws IOException {
        int tag = tags[index];
        if (tag != FIELD_REF && tag != METHOD_REF && tag != INTERFACE_METHOD_REF) {
            throw new IOException("a constant of kind " + tag + " where a member belongs");
        }
        expect(second[index], NAME_AND_TYPE);
        return new Member(className(first[index]), text(first[second[index]]), text(second[second[index]]));
    }
}
