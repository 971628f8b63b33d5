package headgate.verifier.rules.mount;

import headgate.api.sheet.PlateDesignation;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** {@code mount.plate}: head and arm have the same plate. */
public final class PlateFits implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "mount.plate",
            "The head's plate is the plate of the arm",
            "Another pitch circle, number of holes or thread does not bolt on; an adapter adds mass and height that nobody"
                    + " has checked.",
            "The designations on the head's sheet and of the arm are the same: pitch circle, holes, thread.",
            "ISO 9409-1:2004, Manipulating industrial robots - Mechanical interfaces - Part 1: Plates (form of the"
                    + " designation)",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> check(subject, fitted));
    }

    private static List<Finding> check(Case subject, FittedHead fitted) {
        PlateDesignation plate = fitted.sheet().plate();
        Map<String, List<Arm>> others = fitted.arms().stream()
                .filter(a -> !a.plate().equals(plate))
                .collect(Collectors.groupingBy(a -> a.plate().toString(), TreeMap::new, Collectors.toList()));
        if (others.isEmpty()) {
            return List.of(Finding.of(INFO, fitted.label())
                    .examined(fitted.arms().size())
                    .end(Outcome.PASS, "The head and " + ArmWords.names(fitted.arms()) + " have plate " + plate + "."));
        }
        return others.entrySet().stream()
                .map(e -> Finding.of(INFO, fitted.label() + " on " + ArmWords.names(e.getValue()))
                        .field(ArmWords.field(subject, e.getValue().get(0), "plate"))
                        .examined(fitted.arms().size())
                        .end(
                                Outcome.FAIL,
                                "The head has plate " + plate + ", but " + ArmWords.names(e.getValue()) + " "
                                        + (e.getValue().size() == 1 ? "has" : "have") + " plate " + e.getKey() + "."))
                .toList();
    }
}
