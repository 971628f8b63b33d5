package headgate.verifier.setup;

import headgate.verifier.check.Case;
import headgate.verifier.check.FittedHead;
import java.util.List;

/** Which heads of a case can work at all. */
public final class Working {

    private Working() {}

    /**
     * The mountings whose head does the operation that the plan wants; the others wait lifted. If none does, they all
     * count, so that the other rules can say what they think of them.
     *
     * @param subject the case
     * @return mountings with a sheet, in their order
     */
    public static List<Case.Mounting> of(Case subject) {
        List<Case.Mounting> known = subject.mountings().stream()
                .filter(m -> m.head().sheet().isPresent())
                .toList();
        List<Case.Mounting> apt = known.stream()
                .filter(m -> m.head()
                        .sheet()
                        .orElseThrow()
                        .operation()
                        .equals(subject.plan().value().wanted().operation()))
                .toList();
        return apt.isEmpty() ? known : apt;
    }

    /**
     * Says whether a fitted head can work.
     *
     * @param subject the case
     * @param fitted the head, one way round
     * @return false if it waits lifted on every arm that it is on
     */
    public static boolean includes(Case subject, FittedHead fitted) {
        return of(subject).stream()
                .anyMatch(m -> m.head().equals(fitted.head())
                        && m.turned() == fitted.turned()
                        && !(m.duty() instanceof Case.Duty.Waits));
    }
}
