package headgate.runtime.schema;

import headgate.runtime.quantity.WrittenUnit;
import headgate.runtime.text.Node;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A JSON value that can be changed, and the slips that people make when they type one. Objects are lists of entries, so
 * that a name can stand twice.
 */
final class Mutant {

    /** One entry of an object. */
    private static final class Entry {
        private final String name;
        private Object value;

        Entry(String name, Object value) {
            this.name = name;
            this.value = value;
        }
    }

    /** An object. */
    private static final class Table {
        private final List<Entry> entries = new ArrayList<>();
    }

    /** A value that is written as it stands: a number, true, false, null. */
    private record Raw(String text) {}

    /** A place where a value stands: in an entry, or in a list at an index. */
    private record Spot(Entry entry, List<Object> list, int index) {
        Object get() {
            return entry != null ? entry.value : list.get(index);
        }

        void set(Object value) {
            if (entry != null) {
                entry.value = value;
            } else {
                list.set(index, value);
            }
        }
    }

    private final Object root;
    private final Random random;

    Mutant(Node node, Random random) {
        this.root = copy(node);
        this.random = random;
    }

    private static Object copy(Node node) {
        if (node instanceof Node.Table table) {
            Table copy = new Table();
            for (Map.Entry<String, Node.Field> field : table.fields().entrySet()) {
                copy.entries.add(new Entry(field.getKey(), copy(field.getValue().value())));
            }
            return copy;
        }
        if (node instanceof Node.Sequence list) {
            List<Object> copy = new ArrayList<>();
            list.items().forEach(item -> copy.add(copy(item)));
            return copy;
        }
        if (node instanceof Node.Text text) {
            return text.text();
        }
        if (node instanceof Node.Numeral number) {
            return new Raw(number.literal());
        }
        return new Raw(node instanceof Node.Flag flag ? Boolean.toString(flag.value()) : "null");
    }

    /** Makes one slip of a kind that is drawn; returns what it was. */
    String slip() {
        return switch (random.nextInt(9)) {
            case 0 -> type();
            case 1 -> unit();
            case 2 -> range();
            case 3 -> missing();
            case 4 -> extra();
            case 5 -> duplicate();
            case 6 -> order();
            case 7 -> spelling();
            default -> name();
        };
    }

    private String type() {
        Object[] others = {
            new Raw("7"), new Raw("true"), new Raw("null"), "7", new Table(), new ArrayList<>(), new Raw("-0.5")
        };
        anySpot(spots()).set(others[random.nextInt(others.length)]);
        return "type";
    }

    private String unit() {
        List<Spot> quantities = spots().stream()
                .filter(s -> s.get() instanceof String text && text.matches("-?[0-9.]+ .*"))
                .toList();
        if (quantities.isEmpty()) {
            return type();
        }
        Spot spot = anySpot(quantities);
        String number = ((String) spot.get()).replaceAll(" .*", "");
        WrittenUnit[] units = WrittenUnit.values();
        String[] foreign = {"lbf", "inch", "Nm", "", "M", "degree"};
        int choice = random.nextInt(units.length + foreign.length);
        String unit = choice < units.length ? units[choice].symbol() : foreign[choice - units.length];
        spot.set(number + (random.nextBoolean() ? " " : "") + unit);
        return "unit";
    }

    private String range() {
        List<Spot> figures = spots().stream().filter(Mutant::isFigure).toList();
        if (figures.isEmpty()) {
            return type();
        }
        Spot spot = anySpot(figures);
        String text = spot.get() instanceof Raw raw ? raw.text() : (String) spot.get();
        String rest = text.replaceAll("^-?[0-9.]+", "");
        String[] numbers = {"0", "-1", "1000000", "0.001", "1e3", "12,5", "-0", "007", "1.50", "99999999999", "1.", "+2"
        };
        String number = numbers[random.nextInt(numbers.length)];
        boolean json = number.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][0-9]+)?");
        spot.set(spot.get() instanceof Raw ? new Raw(json ? number : "-3") : number + rest);
        return "range";
    }

    private static boolean isFigure(Spot spot) {
        return spot.get() instanceof Raw raw
                ? raw.text().matches("-?[0-9.]+")
                : spot.get() instanceof String text && text.matches("-?[0-9.]+ .*");
    }

    private String missing() {
        Table table = anyTable(t -> !t.entries.isEmpty());
        table.entries.remove(random.nextInt(table.entries.size()));
        return "missing";
    }

    private String extra() {
        List<List<Object>> lists = new ArrayList<>();
        collectLists(root, lists);
        if (!lists.isEmpty() && random.nextBoolean()) {
            List<Object> list = lists.get(random.nextInt(lists.size()));
            list.add(list.isEmpty() ? new Raw("1") : list.get(random.nextInt(list.size())));
            return "extra element";
        }
        String[] names = {"colour", "note", "Mass", "spacing", "id", ""};
        Table table = anyTable(t -> true);
        String name = names[random.nextInt(names.length)];
        if (table.entries.stream().noneMatch(e -> e.name.equals(name))) {
            table.entries.add(random.nextInt(table.entries.size() + 1), new Entry(name, "x"));
        }
        return "extra field";
    }

    private String duplicate() {
        Table table = anyTable(t -> !t.entries.isEmpty());
        Entry entry = table.entries.get(random.nextInt(table.entries.size()));
        table.entries.add(random.nextInt(table.entries.size() + 1), new Entry(entry.name, entry.value));
        return "duplicate";
    }

    private String order() {
        List<List<Object>> lists = new ArrayList<>();
        collectLists(root, lists);
        if (!lists.isEmpty() && random.nextBoolean()) {
            Collections.shuffle(lists.get(random.nextInt(lists.size())), random);
        } else {
            Collections.shuffle(anyTable(t -> true).entries, random);
        }
        return "order";
    }

    private String spelling() {
        List<Spot> texts =
                spots().stream().filter(s -> s.get() instanceof String).toList();
        Spot spot = anySpot(texts);
        String text = (String) spot.get();
        String[] changed = {
            text + " ",
            text.toUpperCase(java.util.Locale.ROOT),
            "",
            text + "x",
            text.replace(' ', '\t'),
            text.repeat(90),
            " " + text,
            text.isEmpty() ? "y" : text.substring(1)
        };
        spot.set(changed[random.nextInt(changed.length)]);
        return "spelling";
    }

    private String name() {
        Table table = anyTable(t -> !t.entries.isEmpty());
        int at = random.nextInt(table.entries.size());
        Entry entry = table.entries.get(at);
        String[] changed = {entry.name + "s", entry.name.toUpperCase(java.util.Locale.ROOT), "x" + entry.name};
        table.entries.set(at, new Entry(changed[random.nextInt(changed.length)], entry.value));
        return "name";
    }

    private Spot anySpot(List<Spot> spots) {
        return spots.get(random.nextInt(spots.size()));
    }

    private List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        collectSpots(root, spots);
        return spots;
    }

    private static void collectSpots(Object value, List<Spot> spots) {
        if (value instanceof Table table) {
            for (Entry entry : table.entries) {
                spots.add(new Spot(entry, List.of(), 0));
                collectSpots(entry.value, spots);
            }
        } else if (value instanceof List<?> list) {
            @SuppressWarnings("unchecked")
            List<Object> items = (List<Object>) list;
            for (int i = 0; i < items.size(); i++) {
                spots.add(new Spot(null, items, i));
                collectSpots(items.get(i), spots);
            }
        }
    }

    private static void collectLists(Object value, List<List<Object>> lists) {
        if (value instanceof Table table) {
            table.entries.forEach(entry -> collectLists(entry.value, lists));
        } else if (value instanceof List<?> list) {
            @SuppressWarnings("unchecked")
            List<Object> items = (List<Object>) list;
            lists.add(items);
            items.forEach(item -> collectLists(item, lists));
        }
    }

    private Table anyTable(java.util.function.Predicate<Table> which) {
        List<Table> tables = new ArrayList<>();
        collectTables(root, tables);
        List<Table> right = tables.stream().filter(which).toList();
        return right.get(random.nextInt(right.size()));
    }

    private static void collectTables(Object value, List<Table> tables) {
        if (value instanceof Table table) {
            tables.add(table);
            table.entries.forEach(entry -> collectTables(entry.value, tables));
        } else if (value instanceof List<?> list) {
            list.forEach(item -> collectTables(item, tables));
        }
    }

    /** Writes the value, one field a line. */
    String text() {
        StringBuilder out = new StringBuilder();
        write(root, out);
        return out.append('\n').toString();
    }

    private static void write(Object value, StringBuilder out) {
        if (value instanceof Table table) {
            out.append('{');
            String separator = "\n";
            for (Entry entry : table.entries) {
                out.append(separator).append(quoted(entry.name)).append(": ");
                write(entry.value, out);
                separator = ",\n";
            }
            out.append('}');
        } else if (value instanceof List<?> list) {
            out.append('[');
            String separator = "";
            for (Object item : list) {
                out.append(separator);
                write(item, out);
                separator = ", ";
            }
            out.append(']');
        } else if (value instanceof Raw raw) {
            out.append(raw.text());
        } else {
            out.append(quoted((String) value));
        }
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\t", "\\t") + "\"";
    }
}
