package headgate.verifier.interlock;

import java.util.List;
import java.util.stream.Stream;

/**
 * What keeps two arms apart that are too near if both act anywhere. A value: it knows the arms' set-points and heights of
 * work, and answers for ways of their tool points alone.
 *
 * <p>With F what of a head stands still as it acts, M what moves with its tool point, p the tool point seen from its own
 * mount, and everything made larger by the required gap, there are three sets: p of the first arm in F of the second less
 * M of the first; the same the other way round; and p of the second less p of the first in M of the first less M of the
 * second. They hold for whole actions, since an action cannot be interrupted: every place of one action against every
 * place of the other, whatever the times. Where the material that stays even while the other arm rests is in the way, the
 * tool point may never go there.
 *
 * @param first the id of the arm further to the right
 * @param second the id of the other arm
 * @param required the gap that the zones keep, m
 * @param firstNever where the first arm's tool point may never go
 * @param secondNever where the second arm's tool point may never go
 * @param firstWhileSecondActs where the first arm's tool point may not go while the second acts
 * @param secondWhileFirstActs where the second arm's tool point may not go while the first acts
 * @param offsets what the second arm's tool point less the first's may not be while both act
 * @param neverTogether true if the two may not act at the same time at all
 * @param excess how much of what a tool point reaches, or of the offsets that occur, the zones of one set close at most
 *     besides what is too near in it; the largest share of all sets, 0 to 1
 */
public record Interlock(
        String first,
        String second,
        double required,
        List<Zone> firstNever,
        List<Zone> secondNever,
        List<Zone> firstWhileSecondActs,
        List<Zone> secondWhileFirstActs,
        List<Zone> offsets,
        boolean neverTogether,
        double excess) {

    /** Copies the lists. */
    public Interlock {
        firstNever = List.copyOf(firstNever);
        secondNever = List.copyOf(secondNever);
        firstWhileSecondActs = List.copyOf(firstWhileSecondActs);
        secondWhileFirstActs = List.copyOf(secondWhileFirstActs);
        offsets = List.copyOf(offsets);
    }

    /**
     * Says whether the first arm may act along these ways while the second rests.
     *
     * @param ways the ways of its tool point, of a whole action
     * @return true if it may
     */
    public boolean firstMayAct(List<ToolWay> ways) {
        return staysOut(ways, firstNever);
    }

    /**
     * Says whether the second arm may act along these ways while the first rests.
     *
     * @param ways the ways of its tool point, of a whole action
     * @return true if it may
     */
    public boolean secondMayAct(List<ToolWay> ways) {
        return staysOut(ways, secondNever);
    }

    /**
     * Says whether two actions may coincide, at whatever times each is where.
     *
     * @param ofFirst the ways of the first arm's tool point, of a whole action
     * @param ofSecond the ways of the second arm's tool point, of a whole action
     * @return true if they may
     */
    public boolean mayCoincide(List<ToolWay> ofFirst, List<ToolWay> ofSecond) {
        return !neverTogether
                && firstMayAct(ofFirst)
                && secondMayAct(ofSecond)
                && staysOut(ofFirst, firstWhileSecondActs)
                && staysOut(ofSecond, secondWhileFirstActs)
                && ofFirst.stream().allMatch(a -> ofSecond.stream()
                        .allMatch(b -> offsets.stream().noneMatch(z -> Meeting.differenceMeets(b, a, z))));
    }

    private static boolean staysOut(List<ToolWay> ways, List<Zone> zones) {
        return zones.isEmpty() || ways.stream().allMatch(w -> zones.stream().noneMatch(w::meets));
    }

    /** {@return true if an action of one arm may have to wait for one of the other} */
    public boolean makesWait() {
        return neverTogether
                || Stream.of(firstWhileSecondActs, secondWhileFirstActs, offsets)
                        .anyMatch(zones -> !zones.isEmpty());
    }

    /** {@return the number of zones} */
    public int zones() {
        return Stream.of(firstNever, secondNever, firstWhileSecondActs, secondWhileFirstActs, offsets)
                .mapToInt(List::size)
                .sum();
    }
}
