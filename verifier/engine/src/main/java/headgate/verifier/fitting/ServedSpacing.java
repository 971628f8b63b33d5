package headgate.verifier.fitting;

import headgate.verifier.check.Case;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.remedy.SetRowsPerPass;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.WheelRun;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a fitting serves a row spacing.
 *
 * @param spacing the spacing, m
 * @param rows the most rows of one pass that it serves at that spacing, up to those of the plan; 0 if none
 * @param setup the set-up for so many rows; empty if there is none
 * @param fromPlan how the arms are moved there from the spacing of the plan, with as many rows as it serves there; empty if
 *     it serves none, or no order of shifts keeps every arm off its neighbours
 * @param wheelMargin how much more room the wheel with the least has between the rows, canopies as the plan says, than it
 *     needs, micrometres; less than 0 if it lacks some; empty if nothing is known of the wheels
 */
public record ServedSpacing(
        double spacing, int rows, Optional<Setup> setup, Optional<ChangeOver> fromPlan, Optional<Long> wheelMargin) {

    /**
     * Looks at several spacings.
     *
     * @param subject the case
     * @param spacings the spacings, m
     * @return what is found of each, in the same order
     */
    public static List<ServedSpacing> of(Case subject, List<Double> spacings) {
        Optional<Setup> now = most(subject).map(Setup::of);
        List<ServedSpacing> found = new ArrayList<>();
        for (double spacing : spacings) {
            Optional<Case> at = most(SetRowSpacing.to(spacing).apply(subject));
            Optional<Setup> then = at.map(Setup::of);
            found.add(new ServedSpacing(
                    spacing,
                    at.map(c -> c.plan().value().rows().perPass()).orElse(0),
                    then,
                    now.flatMap(n -> then.flatMap(t -> ChangeOverPlanner.plan(subject, n, t))),
                    at.flatMap(ServedSpacing::wheelMargin)));
        }
        return List.copyOf(found);
    }

    private static Optional<Long> wheelMargin(Case subject) {
        return WheelRun.of(subject).stream().map(WheelRun::margin).min(Comparator.naturalOrder());
    }

    /** The case with as many rows in one pass as can be served, up to its own number. */
    private static Optional<Case> most(Case subject) {
        for (int rows = subject.plan().value().rows().perPass(); rows > 0; rows--) {
            Case fewer = new SetRowsPerPass(rows).apply(subject);
            Setup setup = Setup.of(fewer);
            if (setup.servesEveryLane() && setup.margin().orElse(0L) >= 0) {
                return Optional.of(fewer);
            }
        }
        return Optional.empty();
    }

    /**
     * Says whether the fitting serves the spacing as the plan wants it.
     *
     * @param subject the case
     * @return true if it serves as many rows
     */
    public boolean isServed(Case subject) {
        return rows == subject.plan().value().rows().perPass();
    }
}
