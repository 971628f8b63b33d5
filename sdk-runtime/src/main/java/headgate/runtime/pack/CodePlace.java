package headgate.runtime.pack;

/**
 * Where in a class something is used.
 *
 * @param method the method, as Java writes it; empty if the class names it outside every method
 * @param line line of the source, or 0 if the class file does not say
 * @param more further places
 */
record CodePlace(String method, int line, int more) {

    /** In the class, outside every method. */
    static final CodePlace CLASS = new CodePlace("", 0, 0);

    /**
     * In a member.
     *
     * @param signature the member
     * @return the place
     */
    static CodePlace of(ClassFile.Signature signature) {
        return new CodePlace(signature.name() + Descriptor.parameters(signature.descriptor()), 0, 0);
    }

    /**
     * The same method, at a line.
     *
     * @param number the line, or 0
     * @return the place
     */
    CodePlace atLine(int number) {
        return new CodePlace(method, number, 0);
    }

    /**
     * Here and there.
     *
     * @param other another place
     * @return this place, with one more
     */
    CodePlace and(CodePlace other) {
        return new CodePlace(method, line, more + 1 + other.more);
    }

    /**
     * The more exact of two places.
     *
     * @param other another place
     * @return the other one if it names a line and this one does not
     */
    CodePlace orMoreExact(CodePlace other) {
        return line == 0 && (other.line != 0 || method.isEmpty()) ? other : this;
    }

    /**
     * Says where it is.
     *
     * @param className binary name of the class
     * @return class, method and line
     */
    String in(String className) {
        String in = "class " + className;
        if (method.isEmpty()) {
            return in;
        }
        String kind = !method.endsWith(")") ? "field " : "method ";
        return in + ", " + kind + method + (line == 0 ? "" : ", line " + line)
                + (more == 0 ? "" : " and " + more + " more");
    }
}
