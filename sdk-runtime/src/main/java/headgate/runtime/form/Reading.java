package headgate.runtime.form;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Place;
import headgate.runtime.text.Node;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One file while it is checked: the problems and notes so far, the value that each sound node stands for, and where each
 * field stands. Confined to the thread that reads.
 */
public final class Reading {

    private final List<FileProblem> problems = new ArrayList<>();
    private final List<FileProblem> notes = new ArrayList<>();
    private final IdentityHashMap<Node, Object> values = new IdentityHashMap<>();
    private final Map<String, Place> places = new TreeMap<>();

    /** Begins with nothing. */
    Reading() {}

    /** {@return the problems so far, in the order found; the list itself, so that the parser adds to it} */
    List<FileProblem> problems() {
        return problems;
    }

    /** {@return what is not wrong but worth a second look} */
    List<FileProblem> notes() {
        return notes;
    }

    /** {@return where each field stands, by path} */
    Map<String, Place> places() {
        return places;
    }

    /** Remembers where a node stands. */
    void at(Node node) {
        places.put(node.path(), node.place());
    }

    /**
     * Reports that a node has not the form that belongs there.
     *
     * @return false, for the check to hand on
     */
    boolean wrong(Node node, String expected, String advice) {
        return problem(node, FileProblem.Sort.FORM, node.found(), expected, advice);
    }

    /**
     * Reports a problem with a node.
     *
     * @return false, for the check to hand on
     */
    boolean problem(Node node, FileProblem.Sort sort, String found, String expected, String advice) {
        problems.add(new FileProblem(node.place(), node.path(), found, expected, advice, sort));
        return false;
    }

    /** Notes that a node is worth a second look. */
    void note(Node node, String found, String expected, String advice) {
        notes.add(new FileProblem(node.place(), node.path(), found, expected, advice, FileProblem.Sort.NOTE));
    }

    /**
     * Keeps what a sound node stands for.
     *
     * @return true, for the check to hand on
     */
    boolean keep(Node node, Object value) {
        values.put(node, value);
        return true;
    }

    /** {@return true if the node was found sound} */
    boolean isSound(Node node) {
        return values.containsKey(node);
    }

    /** {@return what a sound node stands for} */
    Object value(Node node) {
        Object value = values.get(node);
        if (value == null) {
            throw new IllegalStateException("asked for the value of a node that is not sound: " + node.path());
        }
        return value;
    }
}
