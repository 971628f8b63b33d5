package headgate.runtime.schema;

import headgate.runtime.form.CountForm;
import headgate.runtime.form.FlagForm;
import headgate.runtime.form.Form;
import headgate.runtime.form.ListForm;
import headgate.runtime.form.LowfieldFiles;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.PairForm;
import headgate.runtime.form.QuantityForm;
import headgate.runtime.form.TermForm;
import headgate.runtime.form.TextForm;
import headgate.runtime.form.TupleForm;
import headgate.runtime.form.WordForm;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes the reference page of a kind of file: one table for each object that may stand in it. */
final class ReferencePage {

    /** The example of each kind, shown from the file itself. */
    private static final Map<String, Path> EXAMPLES = Map.of(
            "carriage", LowfieldFiles.path("carriage.json"),
            "crop-plan", LowfieldFiles.path("lettuce-45-weeding.json"),
            "fitting", LowfieldFiles.path("celeriac-60-mixed.json"),
            "policy", Path.of("src", "main", "resources", "headgate", "policy", "default.json"),
            "stand", LowfieldFiles.path("lettuce-45-stand.json"));

    private static final String CSV = """

            ## As comma-separated values

            The first line is `# headgate.stand/1`. The second names the columns, each length with its unit in brackets:
            `x [m],y [m],class,stem [mm],height [mm],canopy [mm]`. The columns `x`, `y` and `class` must be there, in any
            order. Each further line is one plant; `stem`, `height` and `canopy` may be left empty. Numbers have a decimal
            point, no exponent and no quotes.
            """;

    private ReferencePage() {}

    static String of(Kinds.Subject kind) throws IOException {
        StringBuilder page = new StringBuilder();
        page.append("# The ").append(kind.name()).append(" file\n\n");
        page.append("<!-- Written from the forms that the reader checks; a test holds it against them. -->\n\n");
        page.append(kind.form().help()).append("\n\n");
        page.append(
                "A quantity is text with its unit. Every object may have a field `note`. Fields in bold must be given. ");
        page.append("An editor can use the schema `schemas/")
                .append(kind.name())
                .append(".schema.json`.\n");
        List<ObjectForm> seen = new ArrayList<>();
        collect(kind.form(), seen);
        for (ObjectForm object : seen) {
            section(object, page);
        }
        if (kind.name().equals("stand")) {
            page.append(CSV);
        }
        page.append("\n## Example\n\n```json\n")
                .append(Files.readString(example(kind)))
                .append("```\n");
        return page.toString();
    }

    private static Path example(Kinds.Subject kind) {
        return EXAMPLES.getOrDefault(
                kind.name(), Path.of("src", "test", "resources", "headgate", "formats", kind.name() + "-1-full.json"));
    }

    private static void collect(Form form, List<ObjectForm> seen) {
        if (form instanceof ListForm list) {
            collect(list.item(), seen);
        } else if (form instanceof ObjectForm object && !seen.contains(object)) {
            seen.add(object);
            object.fields().forEach(field -> collect(field.form(), seen));
        }
    }

    private static void section(ObjectForm object, StringBuilder page) {
        page.append("\n## ")
                .append(capital(object.title()))
                .append("\n\n")
                .append(object.help())
                .append("\n\n");
        page.append("| field | what it is | value | example |\n|---|---|---|---|\n");
        for (ObjectForm.Field field : object.fields()) {
            if (field.name().equals("note")) {
                continue;
            }
            String name = field.required() ? "**`" + field.name() + "`**" : "`" + field.name() + "`";
            String example = field.form() instanceof ObjectForm || field.form() instanceof ListForm
                    ? ""
                    : "`" + field.form().example() + "`";
            page.append("| ")
                    .append(name)
                    .append(" | ")
                    .append(field.help())
                    .append(" | ")
                    .append(value(field.form()))
                    .append(" | ")
                    .append(example)
                    .append(" |\n");
        }
        for (List<String> choice : object.choices()) {
            page.append("\nExactly one of `")
                    .append(String.join("`, `", choice))
                    .append("` must be given.\n");
        }
    }

    private static String value(Form form) {
        if (form instanceof QuantityForm quantity) {
            String usual = quantity.usual() == null
                    ? ""
                    : "; usually " + quantity.usual().least() + " to "
                            + quantity.usual().most();
            String bounds = quantity.leastOpen()
                    ? " above " + quantity.least() + ", at most " + quantity.most()
                    : " from " + quantity.least() + " to " + quantity.most();
            return quantity.kind().phrase() + " in " + quantity.kind().symbols() + bounds + usual;
        }
        if (form instanceof PairForm pair) {
            return (pair.ordered() ? "an interval, lower end first: " : "two of ") + value(pair.first());
        }
        if (form instanceof ListForm list) {
            String most = list.most() == Integer.MAX_VALUE ? " or more" : " to " + list.most();
            return "a list of " + list.least() + most + ", each " + value(list.item());
        }
        if (form instanceof ObjectForm object) {
            return object.title();
        }
        if (form instanceof WordForm word) {
            return "one of `" + String.join("`, `", word.words()) + "`";
        }
        if (form instanceof TermForm term) {
            return "a word such as `" + String.join("`, `", term.known()) + "`";
        }
        if (form instanceof NumberForm number) {
            return "a number from " + number.least() + " to " + number.most();
        }
        if (form instanceof CountForm count) {
            return "a whole number from " + count.least() + " to " + count.most();
        }
        if (form instanceof TupleForm tuple) {
            return tuple.size() + " numbers from " + tuple.item().least() + " to "
                    + tuple.item().most();
        }
        if (form instanceof TextForm text) {
            return text.phrase() + ", at most " + text.longest() + " characters";
        }
        return form instanceof FlagForm ? "true or false" : form.expected();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
