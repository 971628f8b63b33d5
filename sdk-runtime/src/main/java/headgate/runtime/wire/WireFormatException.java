package headgate.runtime.wire;

/** Bytes that are not what they should be. */
public final class WireFormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message what is wrong, for a person
     */
    public WireFormatException(String message) {
        super(message);
    }
}
