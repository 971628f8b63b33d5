package headgate.runtime.form;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.api.unit.Micrometres;
import headgate.runtime.quantity.Kind;
import headgate.runtime.quantity.Quantities;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes a file that people may go on with: fields in order, quantities in the unit that a person would use, each so that
 * it reads back as the same value.
 */
public final class JsonText {

    private static final int WIDTH = 110;

    private final Map<String, Object> fields = new LinkedHashMap<>();

    /** Begins an object without fields. */
    public JsonText() {}

    /**
     * Begins a file.
     *
     * @param format what it is and in which version, such as {@code headgate.policy/1}
     * @return an object with the field {@code format}
     */
    public static JsonText file(String format) {
        return new JsonText().text("format", format);
    }

    private JsonText put(String name, Object value) {
        fields.put(name, value);
        return this;
    }

    /**
     * Adds a text.
     *
     * @param name the field's name
     * @param text the text
     * @return this
     */
    public JsonText text(String name, String text) {
        return put(name, text);
    }

    /**
     * Adds a text, if there is one.
     *
     * @param name the field's name
     * @param text the text
     * @return this
     */
    public JsonText text(String name, Optional<String> text) {
        text.ifPresent(t -> put(name, t));
        return this;
    }

    /**
     * Adds a list of texts.
     *
     * @param name the field's name
     * @param texts the texts
     * @return this
     */
    public JsonText texts(String name, List<String> texts) {
        return put(name, texts);
    }

    /**
     * Adds a quantity.
     *
     * @param name the field's name
     * @param si its value, SI
     * @param kind what it measures
     * @return this
     */
    public JsonText quantity(String name, double si, Kind kind) {
        return put(name, text(si, kind));
    }

    /**
     * Adds a quantity, if there is one.
     *
     * @param name the field's name
     * @param si its value, SI
     * @param kind what it measures
     * @return this
     */
    public JsonText quantity(String name, Optional<Double> si, Kind kind) {
        si.ifPresent(value -> quantity(name, value, kind));
        return this;
    }

    private static String text(double si, Kind kind) {
        return Quantities.text(si, kind, Quantities.handiest(si, kind));
    }

    /**
     * Adds a list of quantities; without any, nothing.
     *
     * @param name the field's name
     * @param sis their values, SI
     * @param kind what they measure
     * @return this
     */
    public JsonText quantities(String name, List<Double> sis, Kind kind) {
        return sis.isEmpty()
                ? this
                : put(name, sis.stream().map(si -> text(si, kind)).toList());
    }

    /**
     * Adds a length that lies on the grid.
     *
     * @param name the field's name
     * @param micrometres the length, micrometres
     * @return this
     */
    public JsonText length(String name, long micrometres) {
        return put(name, length(micrometres));
    }

    private static String length(long micrometres) {
        return text(Micrometres.toMetres(micrometres), Kind.LENGTH);
    }

    /**
     * Adds an interval of quantities.
     *
     * @param name the field's name
     * @param least lower end, SI
     * @param most upper end, SI
     * @param kind what it measures
     * @return this
     */
    public JsonText interval(String name, double least, double most, Kind kind) {
        return put(name, List.of(text(least, kind), text(most, kind)));
    }

    /**
     * Adds an interval that lies on the grid.
     *
     * @param name the field's name
     * @param interval the interval
     * @return this
     */
    public JsonText interval(String name, Interval interval) {
        return put(name, ends(interval));
    }

    private static List<String> ends(Interval interval) {
        return List.of(length(interval.least()), length(interval.most()));
    }

    /**
     * Adds a plain number.
     *
     * @param name the field's name
     * @param number the number, finite
     * @return this
     */
    public JsonText number(String name, double number) {
        BigDecimal shortest = new BigDecimal(Double.toString(number));
        return put(name, shortest.signum() == 0 ? BigDecimal.ZERO : shortest.stripTrailingZeros());
    }

    /**
     * Adds a whole number.
     *
     * @param name the field's name
     * @param count the number
     * @return this
     */
    public JsonText count(String name, int count) {
        return put(name, BigDecimal.valueOf(count));
    }

    /**
     * Adds a list of whole numbers; without any, nothing.
     *
     * @param name the field's name
     * @param counts the numbers
     * @return this
     */
    public JsonText counts(String name, List<Integer> counts) {
        return counts.isEmpty()
                ? this
                : put(name, counts.stream().map(BigDecimal::valueOf).toList());
    }

    /**
     * Adds yes or no.
     *
     * @param name the field's name
     * @param flag its value
     * @return this
     */
    public JsonText flag(String name, boolean flag) {
        return put(name, flag);
    }

    /**
     * Adds an object.
     *
     * @param name the field's name
     * @param object the object
     * @return this
     */
    public JsonText object(String name, JsonText object) {
        return put(name, object.fields);
    }

    /**
     * Adds an object, if there is one.
     *
     * @param name the field's name
     * @param object the object
     * @return this
     */
    public JsonText object(String name, Optional<JsonText> object) {
        object.ifPresent(o -> object(name, o));
        return this;
    }

    /**
     * Adds a list of objects; without any, nothing.
     *
     * @param name the field's name
     * @param objects the objects
     * @return this
     */
    public JsonText objects(String name, List<JsonText> objects) {
        return objects.isEmpty() ? this : objectsEvenIfNone(name, objects);
    }

    /**
     * Adds a list of objects, an empty one if there is none.
     *
     * @param name the field's name
     * @param objects the objects
     * @return this
     */
    public JsonText objectsEvenIfNone(String name, List<JsonText> objects) {
        return put(name, objects.stream().map(o -> o.fields).toList());
    }

    /**
     * Adds a body; one without material is left out.
     *
     * @param name the field's name
     * @param body the body
     * @return this
     */
    public JsonText body(String name, Body body) {
        return objects(name, body.prisms().stream().map(JsonText::prism).toList());
    }

    private static JsonText prism(Prism prism) {
        List<Point> corners = prism.outline().vertices();
        List<List<String>> outline = new ArrayList<>();
        corners.forEach(c -> outline.add(List.of(length(c.x()), length(c.y()))));
        JsonText object = new JsonText();
        Interval x = extent(corners.stream().map(Point::x).toList());
        Interval y = extent(corners.stream().map(Point::y).toList());
        boolean rectangle = corners.size() == 4
                && corners.stream()
                        .allMatch(c ->
                                (c.x() == x.least() || c.x() == x.most()) && (c.y() == y.least() || c.y() == y.most()));
        if (rectangle) {
            object.object("rectangle", new JsonText().interval("x", x).interval("y", y));
        } else {
            object.put("outline", outline);
        }
        return object.interval("z", prism.height());
    }

    private static Interval extent(List<Long> values) {
        return new Interval(
                values.stream().mapToLong(Long::longValue).min().orElseThrow(),
                values.stream().mapToLong(Long::longValue).max().orElseThrow());
    }

    /** {@return the whole as text, with a line feed at the end} */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        write(fields, "", out);
        return out.append('\n').toString();
    }

    private static void write(Object value, String indent, StringBuilder out) {
        String line = flat(value);
        // The file as a whole is always written field by field; what is short stands on one line.
        if (!indent.isEmpty() && indent.length() + line.length() <= WIDTH) {
            out.append(line);
            return;
        }
        String inner = indent + "  ";
        if (value instanceof Map<?, ?> map && !map.isEmpty()) {
            String separator = "{\n";
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                out.append(separator).append(inner).append(flat(entry.getKey())).append(": ");
                write(entry.getValue(), inner, out);
                separator = ",\n";
            }
            out.append('\n').append(indent).append('}');
        } else if (value instanceof List<?> list && !list.isEmpty()) {
            String separator = "[\n";
            for (Object item : list) {
                out.append(separator).append(inner);
                write(item, inner, out);
                separator = ",\n";
            }
            out.append('\n').append(indent).append(']');
        } else {
            out.append(line);
        }
    }

    private static String flat(Object value) {
        if (value instanceof Map<?, ?> map) {
            List<String> parts = new ArrayList<>();
            map.forEach((name, item) -> parts.add(flat(name) + ": " + flat(item)));
            return "{" + String.join(", ", parts) + "}";
        }
        if (value instanceof List<?> list) {
            return "[" + String.join(", ", list.stream().map(JsonText::flat).toList()) + "]";
        }
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return value instanceof Boolean flag ? flag.toString() : quoted((String) value);
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\t' -> out.append("\\t");
                default -> out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
