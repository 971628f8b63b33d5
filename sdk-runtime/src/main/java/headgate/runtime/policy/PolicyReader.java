package headgate.runtime.policy;

import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Reads policy files, and the policy that is built in. */
public final class PolicyReader {

    /** The kind of file, with all that it may hold. */
    public static final FileKind<Policy> KIND = new FileKind<>("policy", 1, PolicyForm.FORM, PolicyReader::policy);

    private static final String BUILT_IN = "/headgate/policy/default.json";

    private PolicyReader() {}

    /**
     * Reads a policy file.
     *
     * @param path the file
     * @return the policy, where its fields stand, and notes
     * @throws InvalidFileException if the file cannot be read or is not a policy; it holds every problem
     */
    public static Loaded<Policy> read(Path path) throws InvalidFileException {
        return KIND.read(SourceFile.read(path));
    }

    /** {@return the policy that holds if nobody gives one; its file is named "built-in policy"} */
    public static Loaded<Policy> builtIn() {
        try (InputStream in = PolicyReader.class.getResourceAsStream(BUILT_IN)) {
            if (in == null) {
                throw new IllegalStateException("the built-in policy is missing from the JAR");
            }
            return KIND.read(SourceFile.of("built-in policy", in.readAllBytes()));
        } catch (IOException broken) {
            throw new UncheckedIOException("reading the built-in policy", broken);
        } catch (InvalidFileException broken) {
            throw new IllegalStateException("the built-in policy is not a policy", broken);
        }
    }

    private static Policy policy(Fields file) {
        Fields limits = file.object("limits");
        return new Policy(
                limit(limits, "armGap"),
                limit(limits, "canopyGap"),
                limit(limits, "coverageFactor"),
                limit(limits, "massUse"),
                limit(limits, "momentUse"));
    }

    private static Policy.Limit limit(Fields limits, String name) {
        Fields limit = limits.object(name);
        return new Policy.Limit(limit.si("value"), limit.text("source"));
    }
}
