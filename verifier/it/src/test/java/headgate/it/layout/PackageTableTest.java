package headgate.it.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import headgate.it.Checkout;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the tables of DEVELOPERS.md against the code, both ways: no use that is not in them, no row that is not used. */
class PackageTableTest {

    /** Annotations without code, on every package. */
    private static final Set<String> EVERYWHERE = Set.of("org.jspecify.annotations");

    private static final String PAGE = Checkout.text("DEVELOPERS.md");

    @Test
    void manyClassesWereSeen() {
        assertThat(Code.classes()).hasSizeGreaterThan(Code.LEAST_CLASSES);
        assertThat(Code.uses().keySet()).contains("api.sheet", "app.command", "sample.gripper", "testkit");
    }

    @Test
    void everyPackageUsesWhatTheTableSays() {
        NavigableMap<String, NavigableSet<String>> code = Code.uses();
        NavigableMap<String, NavigableSet<String>> table = MarkdownTable.under(PAGE, "## Packages");
        assertThat(table.keySet()).as("packages in the table of DEVELOPERS.md").isEqualTo(code.keySet());
        List<String> rowsToChange = code.entrySet().stream()
                .filter(each -> !each.getValue().equals(table.get(each.getKey())))
                .map(PackageTableTest::row)
                .toList();
        assertThat(rowsToChange).as("rows of DEVELOPERS.md that must read so").isEmpty();
    }

    @Test
    void noPackageUsesItselfThroughOthers() {
        NavigableMap<String, NavigableSet<String>> uses = Code.uses();
        NavigableSet<String> circular = new TreeSet<>();
        for (String start : uses.keySet()) {
            if (reachable(uses, start).contains(start)) {
                circular.add(start);
            }
        }
        assertThat(circular).as("packages on a circle").isEmpty();
    }

    static NavigableSet<String> libraries() {
        return new TreeSet<>(MarkdownTable.under(PAGE, "## Libraries").keySet());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void everyLibraryIsUsedWhereTheTableSays(String library) {
        assertThat(users(library))
                .isEqualTo(MarkdownTable.under(PAGE, "## Libraries").get(library));
    }

    @Test
    void everyLibraryIsInTheTable() {
        NavigableSet<String> unknown = new TreeSet<>();
        for (JavaClass each : Code.classes()) {
            each.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(target -> !target.isPrimitive())
                    .map(JavaClass::getPackageName)
                    .filter(target -> !target.startsWith(Code.PREFIX) && !EVERYWHERE.contains(target))
                    .filter(target -> !target.startsWith("java."))
                    .filter(target -> libraries().stream().noneMatch(target::startsWith))
                    .forEach(unknown::add);
        }
        assertThat(unknown)
                .as("used, but not under '## Libraries' of DEVELOPERS.md")
                .isEmpty();
    }

    @Test
    void theReaderOfTablesRefusesAPageWithout() {
        assertThatThrownBy(() -> MarkdownTable.under("# A\n\ntext\n", "# A")).hasMessageContaining("no table");
        String twice = "# A\n\n| `x` | `y` | z |\n| `x` | `y` | z |\n";
        assertThatThrownBy(() -> MarkdownTable.under(twice, "# A")).hasMessageContaining("two rows");
    }

    private static NavigableSet<String> users(String library) {
        NavigableSet<String> users = new TreeSet<>();
        for (JavaClass each : Code.classes()) {
            boolean uses = each.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .anyMatch(target -> target.getPackageName().startsWith(library));
            if (uses) {
                users.add(each.getPackageName().substring(Code.PREFIX.length()));
            }
        }
        return users;
    }

    private static NavigableSet<String> reachable(NavigableMap<String, NavigableSet<String>> uses, String start) {
        NavigableSet<String> seen = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(uses.get(start));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (seen.add(next)) {
                open.addAll(uses.getOrDefault(next, new TreeSet<>()));
            }
        }
        return seen;
    }

    /** The first two columns of a row, ready to be put into the table. */
    private static String row(Map.Entry<String, NavigableSet<String>> uses) {
        String targets = uses.getValue().stream().map(each -> "`" + each + "`").collect(Collectors.joining(", "));
        return "| `" + uses.getKey() + "` | " + (targets.isEmpty() ? "nothing of ours" : targets) + " |";
    }
}
