package headgate.runtime.fitting;

import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.text.SourceFile;
import java.nio.file.Path;
import java.util.Optional;

/** Reads fitting files. */
public final class FittingReader {

    /** The kind of file, with all that it may hold. */
    public static final FileKind<Fitting> KIND = new FileKind<>("fitting", 1, FittingForm.FORM, FittingReader::fitting);

    private FittingReader() {}

    /**
     * Reads a fitting file. The files that it names are not read.
     *
     * @param path the file
     * @return the fitting, where its fields stand, and notes
     * @throws InvalidFileException if the file cannot be read or is not a fitting; it holds every problem
     */
    public static Loaded<Fitting> read(Path path) throws InvalidFileException {
        return read(SourceFile.read(path));
    }

    /**
     * Reads a fitting from a text at hand.
     *
     * @param file the text
     * @return the fitting, where its fields stand, and notes
     * @throws InvalidFileException if the text is not a fitting; it holds every problem
     */
    public static Loaded<Fitting> read(SourceFile file) throws InvalidFileException {
        return KIND.read(file);
    }

    private static Fitting fitting(Fields file) {
        return new Fitting(
                file.text("name"),
                file.text("carriage"),
                file.text("cropPlan"),
                file.textIfGiven("policy"),
                file.objects("heads").stream()
                        .map(h -> new Fitting.Head(
                                h.text("id"),
                                h.text("package"),
                                h.has("count") ? Optional.of(h.count("count")) : Optional.empty()))
                        .toList(),
                file.objects("arms").stream()
                        .map(a -> new Fitting.Place(
                                a.text("arm"),
                                a.text("head"),
                                a.flagOr("turned", false),
                                a.flagOr("waits", false),
                                a.counts("lanes"),
                                a.flagOr("shares", false)))
                        .toList(),
                file.sis("spacings"));
    }
}
