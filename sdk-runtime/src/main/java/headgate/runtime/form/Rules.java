package headgate.runtime.form;

import headgate.runtime.text.NearestName;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Rules that several kinds of file share. They look at each name that is sound, whatever else is wrong around it, so that
 * one mistake does not make others.
 */
public final class Rules {

    private Rules() {}

    /**
     * Demands that the objects of a list have different names.
     *
     * @param fields the object that has the list
     * @param list the list's field name
     * @param name the field's name in each object
     * @param complaint takes what is wrong
     */
    public static void distinct(Fields fields, String list, String name, ObjectForm.Complaint complaint) {
        Map<String, Node> first = new HashMap<>();
        for (Node node : fields.column(list, name)) {
            Node before = first.putIfAbsent(((Node.Text) node).text(), node);
            if (before != null) {
                complaint.at(
                        node,
                        node.found() + " a second time",
                        "a different " + name + " for each",
                        "it stands first in line " + before.place().line());
            }
        }
    }

    /**
     * Finds the names of the objects of a list.
     *
     * @param fields the object that has the list
     * @param list the list's field name
     * @param name the field's name in each object
     * @return the names that are sound, in order
     */
    public static List<String> names(Fields fields, String list, String name) {
        return fields.column(list, name).stream()
                .map(node -> ((Node.Text) node).text())
                .toList();
    }

    /**
     * Demands that each of some names is a known one.
     *
     * @param nodes where the names stand
     * @param known the known names
     * @param what what they name, with the article, such as "the id of a beam"
     * @param complaint takes what is wrong
     */
    public static void known(List<Node> nodes, List<String> known, String what, ObjectForm.Complaint complaint) {
        for (Node node : nodes) {
            String name = ((Node.Text) node).text();
            if (!known.contains(name)) {
                String advice = NearestName.of(name, known)
                        .map(n -> "did you mean " + Quote.of(n) + "?")
                        .orElse("");
                complaint.at(
                        node, Quote.of(name), what + (known.isEmpty() ? "" : ": " + String.join(", ", known)), advice);
            }
        }
    }
}
