package headgate.runtime.stand;

import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.form.TermForm;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import headgate.runtime.text.NearestName;
import headgate.runtime.text.Quote;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Stands as comma-separated values (RFC 4180, without quotes). The first line is {@code # headgate.stand/1}; the second
 * names the columns, each length with its unit, such as {@code x [m],y [m],class,stem [mm]}; each further line is one
 * plant. Columns {@code x}, {@code y} and {@code class} must be there; {@code stem}, {@code height} and {@code canopy} may.
 * A field of these three may be empty if it was not recorded.
 */
final class StandCsv {

    /** The first line. */
    static final String FORMAT = "# headgate.stand/1";

    /** Longest line that is read, characters. */
    static final int LONGEST_LINE = 500;

    /** Farthest that a plant may be from the plot's origin along one axis, micrometres: 10 km. */
    static final long FARTHEST = 10_000L * Micrometres.PER_METRE;

    /** Largest stem, height or canopy, micrometres: 5 m. */
    private static final long LARGEST = 5L * Micrometres.PER_METRE;

    private static final List<String> LENGTHS = List.of("x", "y", "stem", "height", "canopy");

    private static final List<String> COLUMNS = List.of("x", "y", "class", "stem", "height", "canopy");

    private static final Pattern HEADING = Pattern.compile("([a-z]+)(?: ?\\[([^\\]]*)\\])?");

    private static final Pattern WORD = Pattern.compile(TermForm.PATTERN);

    private record Column(String name, LengthColumn length) {}

    private final String file;
    private final StandTally tally;
    private final Map<String, PlantClass> classes = new HashMap<>();
    private List<Column> columns = List.of();
    private int lineNumber;

    private StandCsv(String file, StandTally tally) {
        this.file = file;
        this.tally = tally;
    }

    /** Reads a stand from text; the format line has not been read yet. */
    static void read(String file, Reader text, StandTally tally) throws InvalidFileException {
        try {
            new StandCsv(file, tally).read(new Lines(file, text));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void read(Lines lines) throws IOException, InvalidFileException {
        String first = lines.next();
        lineNumber = 1;
        if (first == null || !first.equals(FORMAT)) {
            throw stop(1, first == null ? "nothing" : Quote.of(first), "the line " + Quote.of(FORMAT), "");
        }
        String heading = lines.next();
        lineNumber = 2;
        if (heading == null) {
            throw stop(1, "nothing", "a line that names the columns, such as x [m],y [m],class,stem [mm]", "");
        }
        readHeading(heading);
        if (!tally.problems().isEmpty()) {
            throw new InvalidFileException(tally.problems());
        }
        for (String line = lines.next(); line != null; line = lines.next()) {
            lineNumber++;
            row(line);
        }
    }

    private InvalidFileException stop(int column, String found, String expected, String advice) {
        List<FileProblem> all = new ArrayList<>(tally.problems());
        all.add(problem(column, "", found, expected, advice));
        return new InvalidFileException(all);
    }

    private FileProblem problem(int column, String path, String found, String expected, String advice) {
        return new FileProblem(
                new Place(file, lineNumber, column), path, found, expected, advice, FileProblem.Sort.FORM);
    }

    private void readHeading(String heading) throws InvalidFileException {
        List<Column> named = new ArrayList<>();
        int from = 0;
        for (String cell : heading.split(",", -1)) {
            named.add(column(cell.strip(), from + 1, named));
            from += cell.length() + 1;
        }
        for (String must : List.of("x", "y", "class")) {
            if (named.stream().noneMatch(c -> c.name().equals(must))
                    && tally.problems().isEmpty()) {
                tally.problem(problem(
                        1,
                        must,
                        "no column " + Quote.of(must),
                        "the columns x, y and class",
                        heading.contains(";") ? "columns are parted by commas" : ""));
            }
        }
        columns = named;
    }

    private Column column(String cell, int at, List<Column> before) throws InvalidFileException {
        Matcher matcher = HEADING.matcher(cell);
        String name = matcher.matches() ? matcher.group(1) : cell;
        String unit = matcher.matches() && matcher.group(2) != null ? matcher.group(2) : "";
        if (!COLUMNS.contains(name)) {
            String advice = cell.contains(";")
                    ? "columns are parted by commas"
                    : NearestName.of(name, COLUMNS)
                            .map(n -> "did you mean " + Quote.of(n) + "?")
                            .orElse("");
            tally.problem(
                    problem(at, "", "the column " + Quote.of(cell), "one of " + String.join(", ", COLUMNS), advice));
            return new Column(name, new LengthColumn(1));
        }
        if (before.stream().anyMatch(c -> c.name().equals(name))) {
            tally.problem(problem(at, name, "the column " + Quote.of(name) + " a second time", "each column once", ""));
        }
        if (!LENGTHS.contains(name)) {
            if (!unit.isEmpty()) {
                tally.problem(problem(at, name, "the unit " + Quote.of(unit), "a column without a unit", ""));
            }
            return new Column(name, new LengthColumn(1));
        }
        LengthColumn length = LengthColumn.UNITS.get(unit);
        if (length == null) {
            tally.problem(problem(
                    at,
                    name,
                    unit.isEmpty() ? "no unit" : "the unit " + Quote.of(unit),
                    "the unit mm, cm or m in brackets, such as " + Quote.of(name + " [mm]"),
                    ""));
            return new Column(name, new LengthColumn(1));
        }
        return new Column(name, length);
    }

    private void row(String line) throws InvalidFileException {
        int problemsBefore = tally.problems().size();
        long x = 0;
        long y = 0;
        long stem = 0;
        long height = 0;
        long canopy = 0;
        PlantClass kind = Plant.CROP;
        int from = 0;
        int index = 0;
        while (true) {
            int comma = line.indexOf(',', from);
            int to = comma < 0 ? line.length() : comma;
            if (index < columns.size()) {
                Column column = columns.get(index);
                switch (column.name()) {
                    case "x" -> x = length(column, line, from, to, -FARTHEST, FARTHEST, false);
                    case "y" -> y = length(column, line, from, to, -FARTHEST, FARTHEST, false);
                    case "stem" -> stem = length(column, line, from, to, 0, LARGEST, true);
                    case "height" -> height = length(column, line, from, to, 0, LARGEST, true);
                    case "canopy" -> canopy = length(column, line, from, to, 0, LARGEST, true);
                    default -> kind = kind(line, from, to);
                }
            }
            index++;
            if (comma < 0) {
                break;
            }
            from = comma + 1;
        }
        if (index != columns.size()) {
            tally.problem(problem(
                    1,
                    "",
                    index + (index == 1 ? " field" : " fields"),
                    columns.size() + " fields, one for each column",
                    index > columns.size() ? "numbers have a decimal point, not a comma" : ""));
        }
        if (tally.problems().size() == problemsBefore) {
            tally.plant(new Plant(
                    new Plant.Position(x, y),
                    kind,
                    Micrometres.toMetres(stem),
                    Micrometres.toMetres(height),
                    Micrometres.toMetres(canopy)));
        }
    }

    private long length(Column column, String line, int from, int to, long least, long most, boolean mayBeEmpty)
            throws InvalidFileException {
        if (from == to && mayBeEmpty) {
            return 0;
        }
        OptionalLong value = column.length().micrometres(line, from, to);
        if (value.isPresent() && value.getAsLong() >= least && value.getAsLong() <= most) {
            return value.getAsLong();
        }
        BigDecimal perUnit = BigDecimal.valueOf(column.length().perUnit());
        tally.problem(problem(
                from + 1,
                column.name(),
                Quote.of(line.substring(from, to)),
                "a plain number from " + plain(least, perUnit) + " to " + plain(most, perUnit)
                        + " in the column's unit",
                ""));
        return 0;
    }

    private static String plain(long micrometres, BigDecimal perUnit) {
        return BigDecimal.valueOf(micrometres).divide(perUnit).toPlainString();
    }

    private PlantClass kind(String line, int from, int to) throws InvalidFileException {
        String word = line.substring(from, to);
        PlantClass known = classes.get(word);
        if (known != null) {
            return known;
        }
        if (!WORD.matcher(word).matches() || classes.size() == MOST_CLASSES) {
            tally.problem(problem(
                    from + 1,
                    "class",
                    Quote.of(word),
                    classes.size() == MOST_CLASSES
                            ? "at most " + MOST_CLASSES + " different classes"
                            : "crop, or a class of weeds in lower-case words joined by hyphens, such as \"broadleaf\"",
                    ""));
            return Plant.CROP;
        }
        PlantClass kind = PlantClass.of(word);
        classes.put(word, kind);
        return kind;
    }

    private static final int MOST_CLASSES = 1000;

    /** Writes the two lines that begin a stand. */
    static void writeHeading(Writer out) throws IOException {
        out.write(FORMAT + "\nx [m],y [m],class,stem [mm],height [mm],canopy [mm]\n");
    }

    /** Writes one plant. */
    static void write(Plant plant, Writer out) throws IOException {
        out.write(decimal(plant.position().x(), 6));
        out.write(',');
        out.write(decimal(plant.position().y(), 6));
        out.write(',');
        out.write(plant.kind().name());
        for (double length : new double[] {plant.stem(), plant.height(), plant.canopy()}) {
            out.write(',');
            out.write(length == 0 ? "" : decimal(Math.round(length * Micrometres.PER_METRE), 3));
        }
        out.write('\n');
    }

    private static String decimal(long micrometres, int places) {
        return BigDecimal.valueOf(micrometres, places).stripTrailingZeros().toPlainString();
    }

    /** Splits text into lines of bounded length; a line ends with LF or CR LF. */
    private static final class Lines {
        private final String file;
        private final Reader in;
        private final char[] buffer = new char[1 << 16];
        private final StringBuilder line = new StringBuilder();
        private int at;
        private int end;
        private int number;

        Lines(String file, Reader in) {
            this.file = file;
            this.in = in;
        }

        @org.jspecify.annotations.Nullable
        String next() throws IOException, InvalidFileException {
            line.setLength(0);
            number++;
            while (true) {
                if (at == end) {
                    end = in.read(buffer, 0, buffer.length);
                    at = 0;
                    if (end <= 0) {
                        end = 0;
                        return line.length() == 0 ? null : withoutReturn();
                    }
                }
                int from = at;
                while (at < end && buffer[at] != '\n') {
                    at++;
                }
                line.append(buffer, from, at - from);
                if (line.length() > LONGEST_LINE) {
                    throw new InvalidFileException(List.of(new FileProblem(
                            new Place(file, number, LONGEST_LINE),
                            "",
                            "a line of more than " + LONGEST_LINE + " characters",
                            "one plant a line",
                            "")));
                }
                if (at < end) {
                    at++;
                    return withoutReturn();
                }
            }
        }

        private String withoutReturn() {
            int length = line.length();
            return length > 0 && line.charAt(length - 1) == '\r' ? line.substring(0, length - 1) : line.toString();
        }
    }
}
