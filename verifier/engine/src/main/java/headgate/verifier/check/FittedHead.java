package headgate.verifier.check;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.carriage.Arm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A head that gave its sheet, one way round, with the arms that it may be used on: what most rules look at once, and
 * then at the worst arm.
 *
 * @param head the head
 * @param sheet its sheet
 * @param turned true if it is fitted turned by 180 degrees
 * @param arms the arms that it may be used on, in the order in which they are mounted; at least one
 */
public record FittedHead(HeadUnderTest head, HeadSheet sheet, boolean turned, List<Arm> arms) {

    private record Key(HeadUnderTest head, boolean turned) {}

    /** Copies the list. */
    public FittedHead {
        arms = List.copyOf(arms);
    }

    /**
     * The fitted heads of a case. Heads that gave no sheet are left out; so are mountings on an arm that the carriage
     * does not have.
     *
     * @param subject the case
     * @return each head once for each way round in which it is fitted, in the order in which they are mounted
     */
    public static List<FittedHead> of(Case subject) {
        Map<Key, List<Arm>> arms = new LinkedHashMap<>();
        for (Case.Mounting m : subject.mountings()) {
            if (m.head().sheet().isPresent()) {
                subject.carriage().value().arm(m.armId()).ifPresent(arm -> arms.computeIfAbsent(
                                new Key(m.head(), m.turned()), k -> new ArrayList<>())
                        .add(arm));
            }
        }
        return arms.entrySet().stream()
                .map(e -> new FittedHead(
                        e.getKey().head(),
                        e.getKey().head().sheet().orElseThrow(),
                        e.getKey().turned(),
                        e.getValue()))
                .toList();
    }

    /**
     * Looks at each fitted head of a case.
     *
     * @param subject the case
     * @param rule the rule that looks
     * @param look what it finds about one
     * @return all that it finds; that it does not apply if no head gave a sheet
     */
    public static List<Finding> each(Case subject, RuleInfo rule, Function<FittedHead, List<Finding>> look) {
        List<Finding> findings =
                of(subject).stream().flatMap(f -> look.apply(f).stream()).toList();
        return findings.isEmpty()
                ? List.of(Finding.notApplicable(rule, "all heads", "No head on any arm gave its sheet."))
                : findings;
    }

    /** {@return how reports name it: id and version, and whether it is turned} */
    public String label() {
        return head.label() + (turned ? ", turned" : "");
    }
}
