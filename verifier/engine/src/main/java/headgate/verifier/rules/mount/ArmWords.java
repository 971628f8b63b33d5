package headgate.verifier.rules.mount;

import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import java.util.List;
import java.util.stream.Collectors;

/** How findings name arms and the fields of the carriage file that hold their figures. */
final class ArmWords {

    private ArmWords() {}

    static String field(Case subject, Arm arm, String name) {
        return "carriage:arms[" + subject.carriage().value().arms().indexOf(arm) + "]." + name;
    }

    static String names(List<Arm> arms) {
        return (arms.size() == 1 ? "arm " : "arms ")
                + arms.stream().map(Arm::id).collect(Collectors.joining(", "));
    }
}
