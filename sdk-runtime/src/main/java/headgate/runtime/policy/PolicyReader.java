package headgate.runtime.policy;

import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads policy files, and the policy that is built in. */
public final class PolicyReader {

    /** The kind of file, with all that it may hold. */
    public static final FileKind<Policy> KIND = new FileKind<>("policy", 1, PolicyForm.FORM, PolicyReader::policy);

    private static final String BUILT_IN = "/headgate/policy/default.json";

    private PolicyReader() {}

    /**
     * Reads a policy file. Limits that it leaves out are those of the built-in policy; a limit that is looser than the
     * built-in one is noted.
     *
     * @param path the file
     * @return the policy, where its fields stand, and notes
     * @throws InvalidFileException if the file cannot be read or is not a policy; it holds every problem
     */
    public static Loaded<Policy> read(Path path) throws InvalidFileException {
        return withLooserNoted(KIND.read(SourceFile.read(path)));
    }

    private static Loaded<Policy> withLooserNoted(Loaded<Policy> loaded) {
        List<FileProblem> notes = new ArrayList<>(loaded.notes());
        for (Policy.Looser looser : loaded.value().looserThan(builtIn().value())) {
            String path = "limits." + looser.name() + ".value";
            notes.add(new FileProblem(
                    loaded.place(path).orElseGet(() -> Place.ofFile(loaded.file())),
                    path,
                    "a limit that is looser than the built-in policy's",
                    "the built-in limit or a stricter one",
                    "every report says so; the built-in limit's source: "
                            + looser.other().source(),
                    FileProblem.Sort.NOTE));
        }
        return new Loaded<>(loaded.value(), loaded.file(), loaded.sha256(), loaded.places(), notes);
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
                limit(limits, "armGap", Policy::armGap),
                limit(limits, "canopyGap", Policy::canopyGap),
                limit(limits, "coverageFactor", Policy::coverageFactor),
                limit(limits, "massUse", Policy::massUse),
                limit(limits, "momentUse", Policy::momentUse),
                limit(limits, "frameGap", Policy::frameGap),
                limit(limits, "groundGap", Policy::groundGap),
                limit(limits, "wheelGap", Policy::wheelGap),
                limit(limits, "shockAtWork", Policy::shockAtWork),
                limit(limits, "shockInTransport", Policy::shockInTransport),
                limit(limits, "boltUse", Policy::boltUse),
                limit(limits, "powerUse", Policy::powerUse),
                limit(limits, "sensorShadow", Policy::sensorShadow),
                limit(limits, "cropLoss", Policy::cropLoss),
                limit(limits, "confidence", Policy::confidence),
                limit(limits, "transportWidth", Policy::transportWidth),
                limit(limits, "transportHeight", Policy::transportHeight),
                limit(limits, "transportGroundGap", Policy::transportGroundGap),
                count(limits, "armsInTurn", Policy::armsInTurn));
    }

    private static Policy.Limit count(Fields limits, String name, Function<Policy, Policy.Limit> otherwise) {
        return limits.objectIfGiven(name)
                .map(limit -> new Policy.Limit(limit.count("value"), limit.text("source")))
                .orElseGet(() -> otherwise.apply(builtIn().value()));
    }

    private static Policy.Limit limit(Fields limits, String name, Function<Policy, Policy.Limit> otherwise) {
        return limits.objectIfGiven(name)
                .map(limit -> new Policy.Limit(limit.si("value"), limit.text("source")))
                .orElseGet(() -> otherwise.apply(builtIn().value()));
    }
}
