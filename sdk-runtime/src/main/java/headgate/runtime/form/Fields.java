package headgate.runtime.form;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.runtime.text.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fields of an object that was checked, by name. Asking for a field that is not given or not sound is a fault of the
 * program: a rule names the fields that it needs, and a file is read into values only when all of it is sound.
 */
public final class Fields {

    private final Node.Table table;
    private final Reading reading;

    Fields(Node.Table table, Reading reading) {
        this.table = table;
        this.reading = reading;
    }

    /** {@return the object itself} */
    public Node node() {
        return table;
    }

    /**
     * Finds the node of a field that is given.
     *
     * @param name the field's name
     * @return its value's node
     */
    public Node node(String name) {
        Node.Field field = table.fields().get(name);
        if (field == null) {
            throw new IllegalStateException("asked for a field that is not given: " + Node.join(table.path(), name));
        }
        return field.value();
    }

    /**
     * Says whether a field is given.
     *
     * @param name the field's name
     * @return true if it is
     */
    public boolean has(String name) {
        return table.fields().containsKey(name);
    }

    /** {@return true if a field is given and sound} */
    boolean isSound(String name) {
        return has(name) && reading.isSound(node(name));
    }

    private Object value(String name) {
        return reading.value(node(name));
    }

    /**
     * Reads a quantity or a number.
     *
     * @param name the field's name
     * @return its value, SI
     */
    public double si(String name) {
        return (Double) value(name);
    }

    /**
     * Reads a quantity or a number that may be left out.
     *
     * @param name the field's name
     * @param otherwise what holds without it, SI
     * @return its value, SI
     */
    public double siOr(String name, double otherwise) {
        return has(name) ? si(name) : otherwise;
    }

    /**
     * Reads a quantity or a number that may be left out.
     *
     * @param name the field's name
     * @return its value, SI; empty if it is not given
     */
    public Optional<Double> siIfGiven(String name) {
        return has(name) ? Optional.of(si(name)) : Optional.empty();
    }

    /**
     * Reads a length onto the grid.
     *
     * @param name the field's name
     * @return its value, whole micrometres, to the nearest
     */
    public long micrometres(String name) {
        return Micrometres.nearest(si(name));
    }

    /**
     * Reads an interval or a point of two.
     *
     * @param name the field's name
     * @return the two values, SI
     */
    @SuppressWarnings("unchecked")
    public List<Double> pair(String name) {
        return (List<Double>) value(name);
    }

    /**
     * Reads a list of plain numbers of one length.
     *
     * @param name the field's name
     * @return the numbers
     */
    public List<Double> numbers(String name) {
        return pair(name);
    }

    /**
     * Reads an interval of lengths onto the grid.
     *
     * @param name the field's name
     * @return the interval, whole micrometres
     */
    public Interval interval(String name) {
        List<Double> ends = pair(name);
        return Interval.ofMetres(ends.get(0), ends.get(1));
    }

    /**
     * Reads a text or a word.
     *
     * @param name the field's name
     * @return the text
     */
    public String text(String name) {
        return (String) value(name);
    }

    /**
     * Reads a text or a word that may be left out.
     *
     * @param name the field's name
     * @return the text; empty if it is not given
     */
    public Optional<String> textIfGiven(String name) {
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    /**
     * Reads a whole number.
     *
     * @param name the field's name
     * @return the number
     */
    public int count(String name) {
        return (Integer) value(name);
    }

    /**
     * Reads yes or no.
     *
     * @param name the field's name
     * @param otherwise what holds without it
     * @return its value
     */
    public boolean flagOr(String name, boolean otherwise) {
        return has(name) ? (Boolean) value(name) : otherwise;
    }

    /**
     * Reads an object.
     *
     * @param name the field's name
     * @return its fields
     */
    public Fields object(String name) {
        return (Fields) value(name);
    }

    /**
     * Reads an object that may be left out.
     *
     * @param name the field's name
     * @return its fields; empty if it is not given
     */
    public Optional<Fields> objectIfGiven(String name) {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    /**
     * Reads a list of objects; without the field, none.
     *
     * @param name the field's name
     * @return the fields of each
     */
    public List<Fields> objects(String name) {
        return items(name).stream().map(node -> (Fields) reading.value(node)).toList();
    }

    /**
     * Finds one field in each object of a list, wherever that field is sound, whatever else is wrong with the object: for
     * rules over a list.
     *
     * @param list the list's field name
     * @param name the field's name in each object
     * @return the nodes, in order; none if the field is not a list
     */
    public List<Node> column(String list, String name) {
        if (!has(list) || !(node(list) instanceof Node.Sequence sequence)) {
            return List.of();
        }
        return sequence.items().stream()
                .filter(Node.Table.class::isInstance)
                .map(item -> ((Node.Table) item).fields().get(name))
                .filter(field -> field != null && reading.isSound(field.value()))
                .map(Node.Field::value)
                .toList();
    }

    /**
     * Finds the fields of one name at any depth below a field, wherever they are sound texts.
     *
     * @param below the field to look below
     * @param name the name
     * @return the nodes, in order of place
     */
    public List<Node> deep(String below, String name) {
        List<Node> found = new ArrayList<>();
        if (has(below)) {
            collect(node(below), name, found);
        }
        return found;
    }

    /**
     * Finds the elements of a list of texts in each object of a list, wherever they are sound.
     *
     * @param list the list's field name
     * @param name the name of the list of texts in each object
     * @return the elements, in order of place
     */
    public List<Node> deepItems(String list, String name) {
        return has(list) && node(list) instanceof Node.Sequence objects
                ? objects.items().stream()
                        .filter(Node.Table.class::isInstance)
                        .map(item -> ((Node.Table) item).fields().get(name))
                        .filter(field -> field != null && field.value() instanceof Node.Sequence)
                        .flatMap(field -> ((Node.Sequence) field.value()).items().stream())
                        .filter(reading::isSound)
                        .toList()
                : List.of();
    }

    private void collect(Node at, String name, List<Node> found) {
        if (at instanceof Node.Sequence list) {
            list.items().forEach(item -> collect(item, name, found));
        } else if (at instanceof Node.Table object) {
            object.fields().forEach((field, value) -> {
                if (field.equals(name) && value.value() instanceof Node.Text && reading.isSound(value.value())) {
                    found.add(value.value());
                } else {
                    collect(value.value(), name, found);
                }
            });
        }
    }

    /**
     * Reads a list of texts or words; without the field, none.
     *
     * @param name the field's name
     * @return the texts
     */
    public List<String> texts(String name) {
        return items(name).stream().map(node -> (String) reading.value(node)).toList();
    }

    /**
     * Reads a list of whole numbers; without the field, none.
     *
     * @param name the field's name
     * @return the numbers
     */
    public List<Integer> counts(String name) {
        return items(name).stream().map(node -> (Integer) reading.value(node)).toList();
    }

    /**
     * Reads a list of quantities; without the field, none.
     *
     * @param name the field's name
     * @return the quantities, SI
     */
    public List<Double> sis(String name) {
        return items(name).stream().map(node -> (Double) reading.value(node)).toList();
    }

    /**
     * Reads a list of pairs; without the field, none.
     *
     * @param name the field's name
     * @return the pairs, SI
     */
    @SuppressWarnings("unchecked")
    public List<List<Double>> pairs(String name) {
        return items(name).stream()
                .map(node -> (List<Double>) reading.value(node))
                .toList();
    }

    /**
     * Finds the nodes of a list; without the field, none.
     *
     * @param name the field's name
     * @return its elements
     */
    @SuppressWarnings("unchecked")
    public List<Node> items(String name) {
        return has(name) ? (List<Node>) value(name) : List.of();
    }
}
