package headgate.runtime.form;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.text.Node;
import java.util.List;
import java.util.Optional;

/** Checks single values against a form, for files that are read as streams. */
public final class FormReader {

    private final ObjectForm form;

    /**
     * Makes a reader.
     *
     * @param form what a value may be
     */
    public FormReader(ObjectForm form) {
        this.form = form;
    }

    /**
     * Checks one value.
     *
     * @param node the value
     * @param problems where its problems go
     * @return its fields, if it is sound
     */
    public Optional<Fields> read(Node node, List<FileProblem> problems) {
        Reading reading = new Reading();
        boolean sound = form.check(node, reading);
        problems.addAll(reading.problems());
        return sound ? Optional.of((Fields) reading.value(node)) : Optional.empty();
    }
}
