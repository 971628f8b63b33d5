package headgate.runtime.pack;

/**
 * A member of a class, as a constant pool names it.
 *
 * @param owner internal name of the class that it is named on, with slashes, or the type of an array
 * @param name its name
 * @param descriptor its type
 */
record Member(String owner, String name, String descriptor) {

    /** {@return name and parameters, as the list of allowed members writes them} */
    String key() {
        return name + Descriptor.parameters(descriptor);
    }

    /**
     * The same member on another class.
     *
     * @param other internal name of the class
     * @return the member
     */
    Member on(String other) {
        return new Member(other, name, descriptor);
    }

    /** {@return the member as Java writes it, with its class} */
    @Override
    public String toString() {
        return owner.replace('/', '.') + "." + key();
    }
}
