package headgate.app.console;

import java.util.List;

/** Ends a command because of what the user gave. It carries every complaint, and no stack trace reaches the user. */
public final class RefusedInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Complaint> complaints;

    /**
     * Makes the exception.
     *
     * @param complaints what is wrong; at least one
     */
    public RefusedInputException(List<Complaint> complaints) {
        super(complaints.get(0).line(), null, false, false);
        this.complaints = List.copyOf(complaints);
    }

    /**
     * Makes the exception with one complaint.
     *
     * @param complaint what is wrong
     */
    public RefusedInputException(Complaint complaint) {
        this(List.of(complaint));
    }

    /** {@return every complaint} */
    public List<Complaint> complaints() {
        return complaints;
    }
}
