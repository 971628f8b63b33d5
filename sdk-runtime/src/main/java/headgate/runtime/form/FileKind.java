package headgate.runtime.form;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.text.LocatedJson;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import headgate.runtime.text.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A kind of file that people write: its name, the version of its format, and what it may hold.
 *
 * @param <T> what it is read into
 */
public final class FileKind<T> {

    private static final Pattern FORMAT = Pattern.compile("headgate\\.([a-z-]{1,40})/([0-9]{1,6})");

    private final String name;
    private final int version;
    private final ObjectForm form;
    private final Function<Fields, T> make;
    private final Function<Fields, Map<String, String>> lenders;

    /**
     * Declares a kind.
     *
     * @param name its name, such as {@code crop-plan}
     * @param version the version of its format, from 1
     * @param form its fields, without {@code format}
     * @param make makes the value from fields that are all sound
     */
    public FileKind(String name, int version, ObjectForm.Builder form, Function<Fields, T> make) {
        this(name, version, form, make, fields -> Map.of());
    }

    /**
     * Declares a kind in which some objects take fields from others, as arms do from their type.
     *
     * @param name its name, such as {@code carriage}
     * @param version the version of its format, from 1
     * @param form its fields, without {@code format}
     * @param make makes the value from fields that are all sound
     * @param lenders for the path of each object that takes fields from another, the path of that other
     */
    public FileKind(
            String name,
            int version,
            ObjectForm.Builder form,
            Function<Fields, T> make,
            Function<Fields, Map<String, String>> lenders) {
        this.name = name;
        this.version = version;
        this.form = form.build();
        this.make = make;
        this.lenders = lenders;
    }

    /**
     * Begins the form of a kind of file: its first field says what it is.
     *
     * @param name the kind's name
     * @param version the version of its format
     * @param title what it is, in one or two words with the article
     * @param help what it is, one or two sentences
     * @return a builder with the field {@code format}
     */
    public static ObjectForm.Builder form(String name, int version, String title, String help) {
        return ObjectForm.of(title, help)
                .required(
                        "format",
                        WordForm.of("headgate." + name + "/" + version),
                        "Says what the file is and in which version of its format.");
    }

    /** {@return its name, such as {@code crop-plan}} */
    public String name() {
        return name;
    }

    /** {@return the version of its format} */
    public int version() {
        return version;
    }

    /** {@return what it may hold} */
    public ObjectForm form() {
        return form;
    }

    /**
     * Reads a file.
     *
     * @param file its text
     * @return the value, where its fields stand, and notes on what is worth a second look
     * @throws InvalidFileException if the file is not JSON or not of this kind; it holds every problem, in order of place
     */
    public Loaded<T> read(SourceFile file) throws InvalidFileException {
        Reading reading = new Reading();
        Node root = LocatedJson.read(file, reading.problems());
        refuseOtherFormat(root);
        boolean sound = form.check(root, reading);
        if (!sound || !reading.problems().isEmpty()) {
            throw new InvalidFileException(reading.problems());
        }
        Fields fields = (Fields) reading.value(root);
        T value = make.apply(fields);
        Map<String, Place> places = withLent(reading.places(), lenders.apply(fields));
        return new Loaded<>(value, file.name(), file.sha256(), places, reading.notes());
    }

    /** What an object takes from another stands where the other one has it: that is the line that somebody must change. */
    private static Map<String, Place> withLent(Map<String, Place> places, Map<String, String> lenders) {
        Map<String, Place> all = new TreeMap<>(places);
        lenders.forEach((taker, lender) -> places.forEach((path, place) -> {
            if (path.startsWith(lender + ".")) {
                all.putIfAbsent(taker + path.substring(lender.length()), place);
            }
        }));
        return all;
    }

    /** A file of another kind or version would give nothing but unknown fields: say the one thing that is wrong. */
    private void refuseOtherFormat(Node root) throws InvalidFileException {
        if (!(root instanceof Node.Table table)
                || !table.fields().containsKey("format")
                || !(table.fields().get("format").value() instanceof Node.Text format)) {
            return;
        }
        Matcher written = FORMAT.matcher(format.text());
        if (!written.matches()) {
            return;
        }
        int itsVersion = Integer.parseInt(written.group(2));
        if (written.group(1).equals(name) && itsVersion == version) {
            return;
        }
        String advice;
        if (!written.group(1).equals(name)) {
            advice = "this is a file of another kind";
        } else if (itsVersion > version) {
            advice = "the file is written for a newer version of this program";
        } else {
            advice = "no such version was ever published";
        }
        throw new InvalidFileException(List.of(new FileProblem(
                format.place(), "format", format.found(), Quote.of("headgate." + name + "/" + version), advice)));
    }
}
