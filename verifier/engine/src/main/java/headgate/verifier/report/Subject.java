package headgate.verifier.report;

/**
 * A file that the report is about.
 *
 * @param kind what it is: head, carriage, crop plan, policy, transcript
 * @param name its name, without folders
 * @param sha256 digest of its bytes, lower-case hexadecimal
 */
public record Subject(String kind, String name, String sha256) {

    /** Cleans the words. */
    public Subject {
        kind = Plain.line(kind);
        name = Plain.line(name);
        sha256 = Plain.line(sha256);
    }
}
