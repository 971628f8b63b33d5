package headgate.runtime.pack;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Types of fields and methods as class files write them (JVM Specification 17, section 4.3), read strictly. */
final class Descriptor {

    private static final int MOST_DIMENSIONS = 255;

    private final String text;
    private final List<String> classes = new ArrayList<>();
    private int at;

    private Descriptor(String text) {
        this.text = text;
    }

    /**
     * Finds the classes in a type.
     *
     * @param text a field's or a method's type
     * @return internal names of all classes in it
     * @throws IOException if it is no type
     */
    static List<String> classes(String text) throws IOException {
        Descriptor descriptor = new Descriptor(text);
        descriptor.read();
        return descriptor.classes;
    }

    /**
     * Says what parameters a method has, as Java writes them: {@code (Object,int[],java.util.List)}.
     *
     * @param text a type that was read before
     * @return the parameters, or an empty text for a field
     */
    static String parameters(String text) {
        if (!text.startsWith("(")) {
            return "";
        }
        StringBuilder out = new StringBuilder("(");
        for (int i = 1; i < text.length() && text.charAt(i) != ')'; ) {
            int dimensions = 0;
            while (text.charAt(i) == '[') {
                dimensions++;
                i++;
            }
            int end = text.charAt(i) == 'L' ? text.indexOf(';', i) : i;
            if (out.length() > 1) {
                out.append(',');
            }
            out.append(
                            text.charAt(i) == 'L'
                                    ? withoutJavaLang(text.substring(i + 1, end).replace('/', '.'))
                                    : primitive(text.charAt(i)))
                    .append("[]".repeat(dimensions));
            i = end + 1;
        }
        return out.append(')').toString();
    }

    private static String withoutJavaLang(String name) {
        boolean plain = name.startsWith("java.lang.") && name.indexOf('.', "java.lang.".length()) < 0;
        return plain ? name.substring("java.lang.".length()) : name;
    }

    private static String primitive(char c) {
        return switch (c) {
            case 'B' -> "byte";
            case 'C' -> "char";
            case 'D' -> "double";
            case 'F' -> "float";
            case 'I' -> "int";
            case 'J' -> "long";
            case 'S' -> "short";
            default -> "boolean";
        };
    }

    private void read() throws IOException {
        if (text.startsWith("(")) {
            at = 1;
            while (at < text.length() && text.charAt(at) != ')') {
                type();
            }
            at++;
            if (at < text.length() && text.charAt(at) == 'V') {
                at++;
            } else {
                type();
            }
        } else {
            type();
        }
        if (at != text.length()) {
            throw wrong();
        }
    }

    private void type() throws IOException {
        int dimensions = 0;
        while (at < text.length() && text.charAt(at) == '[') {
            dimensions++;
            at++;
        }
        if (at >= text.length() || dimensions > MOST_DIMENSIONS) {
            throw wrong();
        }
        char c = text.charAt(at);
        if (c == 'L') {
            int end = text.indexOf(';', at);
            if (end < 0) {
                throw wrong();
            }
            String name = text.substring(at + 1, end);
            checkClassName(name);
            classes.add(name);
            at = end + 1;
        } else if ("BCDFIJSZ".indexOf(c) >= 0) {
            at++;
        } else {
            throw wrong();
        }
    }

    private IOException wrong() {
        return new IOException("the type " + Printable.text(text));
    }

    /**
     * Refuses what is no name of a class (section 4.2.1), and names that a reader of a report could not see.
     *
     * @param name an internal name, with slashes
     * @throws IOException if it is none
     */
    static void checkClassName(String name) throws IOException {
        boolean empty = name.isEmpty() || name.startsWith("/") || name.endsWith("/") || name.contains("//");
        if (empty || hasAnyOf(name, ".;[") || !Printable.isSeen(name)) {
            throw new IOException("the class name " + Printable.text(name));
        }
    }

    /**
     * Refuses what is no name of a member (section 4.2.2), and names that a reader of a report could not see.
     *
     * @param name a name
     * @throws IOException if it is none
     */
    static void checkMemberName(String name) throws IOException {
        boolean special = name.equals("<init>") || name.equals("<clinit>");
        String never = special ? "" : ".;[/<>";
        if (name.isEmpty() || hasAnyOf(name, never) || !Printable.isSeen(name)) {
            throw new IOException("the member name " + Printable.text(name));
        }
    }

    private static boolean hasAnyOf(String name, String characters) {
        for (int i = 0; i < characters.length(); i++) {
            if (name.indexOf(characters.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }
}
