package headgate.runtime.form;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.text.NearestName;
import headgate.runtime.text.Node;
import headgate.runtime.text.Quote;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * An object with named fields. Its value is a {@link Fields}. A field {@code note}, a text for people, is allowed in
 * every object, since JSON has no comments.
 */
public final class ObjectForm implements Form {

    /** The field that every object may have. */
    static final String NOTE = "note";

    private static final Field NOTE_FIELD = new Field(
            NOTE,
            Forms.text("measured on the machine"),
            false,
            "Anything that a reader should know. Programs ignore it.");

    /**
     * One field.
     *
     * @param name its name
     * @param form what its value may be
     * @param required true if it must be given
     * @param help what it is, one or two sentences
     */
    public record Field(String name, Form form, boolean required, String help) {}

    /**
     * What a schema cannot say. It is asked only when the fields that it needs are given and sound.
     *
     * @param needs the names of the fields
     * @param check reports what is wrong
     */
    private record Rule(List<String> needs, BiConsumer<Fields, Complaint> check) {}

    /** Takes what a rule has found wrong. */
    @FunctionalInterface
    public interface Complaint {
        /**
         * Reports a problem.
         *
         * @param node where it is
         * @param found what was found
         * @param expected what was expected
         * @param advice what to do; may be empty
         */
        void at(Node node, String found, String expected, String advice);
    }

    private final String title;
    private final String help;
    private final Map<String, Field> fields;
    private final List<List<String>> choices;
    private final List<Rule> rules;

    private ObjectForm(Builder from) {
        this.title = from.title;
        this.help = from.help;
        this.fields = new LinkedHashMap<>(from.fields);
        this.fields.put(NOTE, NOTE_FIELD);
        this.choices = List.copyOf(from.choices);
        this.rules = List.copyOf(from.rules);
    }

    /**
     * Begins a form.
     *
     * @param title what the object is, in one or two words with the article
     * @param help what it is, one or two sentences
     * @return a builder without fields
     */
    public static Builder of(String title, String help) {
        return new Builder(title, help);
    }

    /** {@return what the object is, in one or two words with the article} */
    public String title() {
        return title;
    }

    /** {@return what it is, one or two sentences} */
    public String help() {
        return help;
    }

    /** {@return its fields in their order, the note last} */
    public List<Field> fields() {
        return List.copyOf(fields.values());
    }

    /** {@return groups of fields of which exactly one must be given} */
    public List<List<String>> choices() {
        return choices;
    }

    @Override
    public boolean check(Node node, Reading reading) {
        reading.at(node);
        if (!(node instanceof Node.Table table)) {
            return reading.wrong(node, expected(), "");
        }
        boolean sound = true;
        Set<String> meant = new HashSet<>();
        for (Map.Entry<String, Node.Field> entry : table.fields().entrySet()) {
            Field field = fields.get(entry.getKey());
            if (field == null) {
                sound = unknown(table, entry.getKey(), entry.getValue(), meant, reading);
            } else {
                sound &= field.form.check(entry.getValue().value(), reading);
            }
        }
        sound &= complete(table, meant, reading);
        Fields view = new Fields(table, reading);
        boolean[] kept = {sound};
        for (Rule rule : rules) {
            if (rule.needs.stream().allMatch(view::isSound)) {
                rule.check.accept(
                        view,
                        (at, found, expected, advice) ->
                                kept[0] = reading.problem(at, FileProblem.Sort.RULE, found, expected, advice));
            }
        }
        return kept[0] && reading.keep(node, view);
    }

    /** Reports a field that does not belong here; remembers which missing field it was probably meant to be. */
    private boolean unknown(Node.Table table, String name, Node.Field field, Set<String> meant, Reading reading) {
        List<String> free = fields.keySet().stream()
                .filter(known -> !table.fields().containsKey(known))
                .toList();
        Optional<String> near = NearestName.of(name, free);
        near.ifPresent(meant::add);
        reading.problems()
                .add(new FileProblem(
                        field.namePlace(),
                        field.value().path(),
                        "the unknown field " + Quote.of(name),
                        "one of " + String.join(", ", fields.keySet()),
                        near.map(n -> "did you mean " + Quote.of(n) + "?").orElse(""),
                        FileProblem.Sort.UNKNOWN));
        return false;
    }

    private boolean complete(Node.Table table, Set<String> meant, Reading reading) {
        boolean sound = true;
        for (Field field : fields.values()) {
            if (field.required && !table.fields().containsKey(field.name) && !meant.contains(field.name)) {
                reading.problems()
                        .add(new FileProblem(
                                table.place(),
                                Node.join(table.path(), field.name),
                                "no field " + Quote.of(field.name),
                                field.form.expected(),
                                "add " + Quote.of(field.name) + " to this object",
                                FileProblem.Sort.MISSING));
                sound = false;
            }
        }
        for (List<String> choice : choices) {
            List<String> given =
                    choice.stream().filter(table.fields()::containsKey).toList();
            if (given.size() != 1 && choice.stream().noneMatch(meant::contains)) {
                sound = reading.problem(
                        table,
                        given.isEmpty() ? FileProblem.Sort.MISSING : FileProblem.Sort.FORM,
                        given.isEmpty() ? "none of them" : String.join(" and ", given),
                        "exactly one of " + String.join(", ", choice),
                        "");
            }
        }
        return sound;
    }

    @Override
    public String expected() {
        return title + ", an object with " + String.join(", ", required());
    }

    private List<String> required() {
        List<String> names = new ArrayList<>();
        fields.values().stream().filter(Field::required).map(Field::name).forEach(names::add);
        choices.forEach(c -> names.add(String.join(" or ", c)));
        return names;
    }

    @Override
    public String example() {
        StringBuilder out = new StringBuilder("{");
        Set<String> shown = new HashSet<>();
        choices.forEach(c -> shown.add(c.get(0)));
        for (Field field : fields.values()) {
            if (field.required || shown.contains(field.name)) {
                out.append(out.length() > 1 ? ", " : "")
                        .append(Quote.of(field.name))
                        .append(": ")
                        .append(field.form.example());
            }
        }
        return out.append("}").toString();
    }

    /** Collects the fields of an object form. */
    public static final class Builder {

        private final String title;
        private final String help;
        private final Map<String, Field> fields = new LinkedHashMap<>();
        private final List<List<String>> choices = new ArrayList<>();
        private final List<Rule> rules = new ArrayList<>();

        private Builder(String title, String help) {
            this.title = title;
            this.help = help;
        }

        /**
         * Adds a field that must be given.
         *
         * @param name its name
         * @param form what its value may be
         * @param help what it is, one or two sentences
         * @return this
         */
        public Builder required(String name, Form form, String help) {
            return add(new Field(name, form, true, help));
        }

        /**
         * Adds a field that may be left out.
         *
         * @param name its name
         * @param form what its value may be
         * @param help what it is and what holds without it, one or two sentences
         * @return this
         */
        public Builder optional(String name, Form form, String help) {
            return add(new Field(name, form, false, help));
        }

        private Builder add(Field field) {
            if (fields.put(field.name, field) != null) {
                throw new IllegalArgumentException("a form has the field " + field.name + " twice");
            }
            return this;
        }

        /**
         * Demands exactly one of some optional fields.
         *
         * @param names their names
         * @return this
         */
        public Builder exactlyOne(String... names) {
            choices.add(List.of(names));
            return this;
        }

        /**
         * Adds what a schema cannot say.
         *
         * @param needs the names of the fields that must be given and sound for the rule to be asked
         * @param check reports what is wrong
         * @return this
         */
        public Builder rule(List<String> needs, BiConsumer<Fields, Complaint> check) {
            rules.add(new Rule(List.copyOf(needs), check));
            return this;
        }

        /** {@return the form} */
        public ObjectForm build() {
            return new ObjectForm(this);
        }
    }
}
