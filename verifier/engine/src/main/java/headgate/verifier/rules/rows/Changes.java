package headgate.verifier.rules.rows;

import headgate.api.shape.Interval;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import headgate.verifier.remedy.LeaveArmsEmpty;
import headgate.verifier.remedy.LengthenRails;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.remedy.SetRowsPerPass;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The smallest changes after which every lane has an arm and no arm is too near to another. */
final class Changes {

    /** Rails are lengthened by whole steps, micrometres. */
    private static final long STEP = 1000;

    /** No rail grows by more than this, in steps: beyond it a carriage is another one. */
    private static final long MOST_STEPS = 1000;

    /** Spacings are tried in steps, m, up to the farthest from the plan's. */
    private static final double SPACING_STEP = 0.005;

    private static final int MOST_SPACING_STEPS = 40;

    /** Set-ups that are tried without some heads: all single ones and all pairs of eight arms. */
    private static final int MOST_TRIES = 36;

    private Changes() {}

    private static boolean isServed(Case subject) {
        Setup setup = Setup.of(subject);
        return setup.servesEveryLane() && setup.margin().map(m -> m >= 0).orElse(true);
    }

    /** The most rows in one pass, fewer than now. */
    static Optional<Edit> fewerRows(Case subject) {
        for (int rows = subject.plan().value().rows().perPass() - 1; rows > 0; rows--) {
            Edit edit = new SetRowsPerPass(rows);
            if (isServed(edit.apply(subject))) {
                return Optional.of(edit);
            }
        }
        return Optional.empty();
    }

    /** Every rail longer by the same least length at both ends; then only those that need it, as far as they do. */
    static Optional<Edit> longerRails(Case subject) {
        if (!isServed(longer(subject, MOST_STEPS))) {
            return Optional.empty();
        }
        long few = 0;
        long enough = MOST_STEPS;
        while (enough - few > 1) {
            long middle = (few + enough) / 2;
            if (isServed(longer(subject, middle))) {
                enough = middle;
            } else {
                few = middle;
            }
        }
        SortedMap<String, Interval> rails = new TreeMap<>();
        for (Station s : Setup.of(longer(subject, enough)).stations()) {
            Interval rail =
                    subject.carriage().value().arm(s.arm().id()).map(Arm::shift).orElseThrow();
            if (!rail.contains(s.mount().y())) {
                long y = s.mount().y();
                rails.put(
                        s.arm().id(),
                        rail.hull(new Interval(Math.floorDiv(y, STEP) * STEP, -Math.floorDiv(-y, STEP) * STEP)));
            }
        }
        // Arms without a lane may have needed the room too: then there is no small change of this kind.
        Edit some = new LengthenRails(rails);
        return !rails.isEmpty() && isServed(some.apply(subject)) ? Optional.of(some) : Optional.empty();
    }

    private static Case longer(Case subject, long steps) {
        SortedMap<String, Interval> rails = new TreeMap<>();
        for (Arm arm : subject.carriage().value().arms()) {
            rails.put(
                    arm.id(),
                    new Interval(arm.shift().least() - steps * STEP, arm.shift().most() + steps * STEP));
        }
        return new LengthenRails(rails).apply(subject);
    }

    /** The fewest fitted heads, up to two, without which every lane has an arm. */
    static Optional<Edit> emptyArms(Case subject) {
        List<String> fitted = subject.mountings().stream()
                .filter(m -> !(m.duty() instanceof Case.Duty.AsNeeded))
                .map(Case.Mounting::armId)
                .distinct()
                .sorted()
                .toList();
        List<List<String>> tries = new ArrayList<>();
        fitted.forEach(arm -> tries.add(List.of(arm)));
        for (int i = 0; i < fitted.size(); i++) {
            for (int j = i + 1; j < fitted.size(); j++) {
                tries.add(List.of(fitted.get(i), fitted.get(j)));
            }
        }
        return tries.stream()
                .limit(MOST_TRIES)
                .<Edit>map(LeaveArmsEmpty::new)
                .filter(edit -> isServed(edit.apply(subject)))
                .findFirst();
    }

    /** The most rows in one pass, fewer than now, that divide the planter's. */
    static Optional<Edit> dividing(Case subject, int planter) {
        for (int rows = subject.plan().value().rows().perPass() - 1; rows > 0; rows--) {
            Edit edit = new SetRowsPerPass(rows);
            if (planter % rows == 0 && isServed(edit.apply(subject))) {
                return Optional.of(edit);
            }
        }
        return Optional.empty();
    }

    /** The nearest other row spacing, narrower or wider, at which every lane has an arm. */
    static Optional<Edit> otherSpacing(Case subject) {
        return otherSpacing(subject, Changes::isServed);
    }

    /** The nearest other row spacing, narrower or wider, at which something holds. */
    static Optional<Edit> otherSpacing(Case subject, Predicate<Case> holds) {
        double now = subject.plan().value().rows().spacing();
        for (int step = 1; step <= MOST_SPACING_STEPS; step++) {
            for (int sign : new int[] {-1, 1}) {
                double spacing = now + sign * step * SPACING_STEP;
                if (spacing > SPACING_STEP) {
                    Edit edit = SetRowSpacing.to(spacing);
                    if (holds.test(edit.apply(subject))) {
                        return Optional.of(edit);
                    }
                }
            }
        }
        return Optional.empty();
    }
}
