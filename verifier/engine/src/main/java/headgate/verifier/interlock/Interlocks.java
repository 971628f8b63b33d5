package headgate.verifier.interlock;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.Box;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Nearness;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The interlocks that a case needs: one for each two arms that are too near somewhere, and that an order in time can keep
 * apart. That is so if both carry spot heads or one of them does not work, every place where they are too near has at least
 * one of them at work, and no material that stays where it is is too near. The arms that may have to wait for one another
 * are no more than the policy allows.
 *
 * @param all the interlocks, neighbours first
 */
public record Interlocks(List<Interlock> all) {

    /** Copies the list. */
    public Interlocks {
        all = List.copyOf(all);
    }

    /** Two arms' ids, the one further to the right first. */
    private record Two(String first, String second) {}

    /**
     * Works out the interlocks of a case.
     *
     * @param subject the case
     * @return the interlocks; none if no two arms are too near, or nothing in time would help
     */
    public static Interlocks of(Case subject) {
        return subject.derived(Interlocks.class, Interlocks::make);
    }

    private static Interlocks make(Case subject) {
        Map<Two, List<Nearness.Measured>> tooNear = new LinkedHashMap<>();
        for (Nearness.Measured m : Nearness.of(subject).tooNear()) {
            tooNear.computeIfAbsent(
                            new Two(
                                    m.pair().right().arm().id(),
                                    m.pair().left().arm().id()),
                            k -> new ArrayList<>())
                    .add(m);
        }
        List<Interlock> found = new ArrayList<>();
        for (List<Nearness.Measured> pairs : tooNear.values()) {
            if (pairs.stream().allMatch(m -> m.pair().someWorks())) {
                make(pairs.get(0)).ifPresent(found::add);
            }
        }
        int most = (int) subject.policy().value().armsInTurn().value();
        Interlocks every = new Interlocks(found);
        return new Interlocks(found.stream()
                .filter(i -> every.inTurnWith(i.first()).size() <= most)
                .toList());
    }

    private static Optional<Interlock> make(Nearness.Measured measured) {
        ArmStance right = measured.pair().right();
        ArmStance left = measured.pair().left();
        if (!canWait(right) || !canWait(left)) {
            return Optional.empty();
        }
        return InterlockMaker.of(right, left, measured.pair().required());
    }

    /** A head that works row after row without a stop can wait for nobody; one that rests anyway need not. */
    private static boolean canWait(ArmStance stance) {
        return stance.station()
                .filter(Station::isAtWork)
                .map(s -> s.head().answers().map(HeadAnswers::kind).equals(Optional.of(HeadKind.SPOT)))
                .orElse(true);
    }

    /**
     * Finds the interlock of two arms.
     *
     * @param one an arm's id
     * @param other another arm's id
     * @return the interlock, whichever of the two is its first arm; empty if they need none
     */
    public Optional<Interlock> between(String one, String other) {
        return all.stream()
                .filter(i -> (i.first().equals(one) && i.second().equals(other))
                        || (i.first().equals(other) && i.second().equals(one)))
                .findFirst();
    }

    /**
     * Says whether there are places where an arm's tool point may never go.
     *
     * @param arm the arm's id
     * @return true if there are
     */
    public boolean restrict(String arm) {
        return all.stream()
                .anyMatch(i -> (i.first().equals(arm) && !i.firstNever().isEmpty())
                        || (i.second().equals(arm) && !i.secondNever().isEmpty()));
    }

    /**
     * Says whether an arm may act along these ways while all others rest.
     *
     * @param arm the arm's id
     * @param ways the ways of its tool point, of a whole action
     * @return true if it may
     */
    public boolean mayAct(String arm, List<ToolWay> ways) {
        return all.stream()
                .allMatch(i -> (!i.first().equals(arm) || i.firstMayAct(ways))
                        && (!i.second().equals(arm) || i.secondMayAct(ways)));
    }

    /**
     * Says whether an arm may act with its tool point anywhere in a box while all others rest.
     *
     * @param arm the arm's id
     * @param places the box, seen from the arm's mount along the axes of the carriage
     * @return true if it may
     */
    public boolean mayActWithin(String arm, Box places) {
        return all.stream()
                .flatMap(i -> Stream.concat(
                        i.first().equals(arm) ? i.firstNever().stream() : Stream.empty(),
                        i.second().equals(arm) ? i.secondNever().stream() : Stream.empty()))
                .noneMatch(zone -> zone.meets(places));
    }

    /**
     * Says whether the actions of two arms may coincide, at whatever times each is where.
     *
     * @param one an arm's id
     * @param ways the ways of its tool point, of a whole action
     * @param other another arm's id
     * @param otherWays the ways of that arm's tool point, of a whole action
     * @return true if they may
     */
    public boolean mayCoincide(String one, List<ToolWay> ways, String other, List<ToolWay> otherWays) {
        return between(one, other)
                .map(i -> i.first().equals(one) ? i.mayCoincide(ways, otherWays) : i.mayCoincide(otherWays, ways))
                .orElse(true);
    }

    /**
     * The arms that may have to wait for one another, directly or through others: while one of them acts, any other of
     * them may have to rest.
     *
     * @param arm an arm's id
     * @return the ids of those arms, this one among them, sorted
     */
    public SortedSet<String> inTurnWith(String arm) {
        SortedSet<String> known = new TreeSet<>(List.of(arm));
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Interlock i : all) {
                if (i.makesWait() && (known.contains(i.first()) || known.contains(i.second()))) {
                    grows |= known.add(i.first());
                    grows |= known.add(i.second());
                }
            }
        }
        return known;
    }
}
