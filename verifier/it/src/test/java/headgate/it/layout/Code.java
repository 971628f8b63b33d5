package headgate.it.layout;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The project's own classes, all modules, without tests. Read once: reading takes a second. */
final class Code {

    /** Every name of ours begins with it. */
    static final String PREFIX = "headgate.";

    /** A floor on what the import must see: a test over no classes would hold every rule. Raise it as the code grows. */
    static final int LEAST_CLASSES = 250;

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("headgate");

    private Code() {}

    static JavaClasses classes() {
        return CLASSES;
    }

    /** {@return for each package which other packages of ours it uses; names without the common prefix} */
    static NavigableMap<String, NavigableSet<String>> uses() {
        NavigableMap<String, NavigableSet<String>> uses = new TreeMap<>();
        for (JavaClass each : CLASSES) {
            NavigableSet<String> targets = uses.computeIfAbsent(name(each), ignored -> new TreeSet<>());
            each.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(target -> target.getPackageName().startsWith(PREFIX))
                    .map(Code::name)
                    .filter(target -> !target.equals(name(each)))
                    .forEach(targets::add);
        }
        return uses;
    }

    private static String name(JavaClass each) {
        return each.getPackageName().substring(PREFIX.length());
    }
}
