package headgate.verifier.interlock;

import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.setup.ArmStance;
import java.util.List;
import java.util.Optional;

/** Works out what must not coincide so that two arms keep a gap. */
final class InterlockMaker {

    private final ArmMaterial a;
    private final ArmMaterial b;
    private final long required;

    private InterlockMaker(ArmMaterial a, ArmMaterial b, long required) {
        this.a = a;
        this.b = b;
        this.required = required;
    }

    /**
     * The interlock of two arms.
     *
     * @param first the arm further to the right, in any of its stances
     * @param second the other arm, in any of its stances
     * @param gap the gap that they must keep, m
     * @return the interlock; empty if nothing in time keeps them apart, since material that stays is too near
     */
    static Optional<Interlock> of(ArmStance first, ArmStance second, double gap) {
        ArmMaterial a = ArmMaterial.of(first);
        ArmMaterial b = ArmMaterial.of(second);
        return new InterlockMaker(a, b, Math.max(1, Rounding.up(gap)))
                .make(first.arm().id(), second.arm().id(), gap);
    }

    private Optional<Interlock> make(String first, String second, double gap) {
        boolean apartAtRest = keepApart(a.resting(), b.resting())
                && keepApart(a.fixed(), b.resting())
                && keepApart(a.resting(), b.fixed());
        if (!apartAtRest) {
            return Optional.empty();
        }
        List<Zone> firstNever = zones(b.resting(), a);
        List<Zone> secondNever = zones(a.resting(), b);
        if (closes(firstNever, a) || closes(secondNever, b)) {
            return Optional.empty();
        }
        boolean neverTogether = !keepApart(a.fixed(), b.fixed());
        List<Zone> firstWhileActing = neverTogether ? List.of() : zones(b.fixed(), a);
        List<Zone> secondWhileActing = neverTogether ? List.of() : zones(a.fixed(), b);
        List<Zone> offsets = neverTogether
                ? List.of()
                : ZoneCover.of(a.moving().minus(b.moving()), required, b.reach().minus(a.reach()));
        return Optional.of(new Interlock(
                first,
                second,
                gap,
                firstNever,
                secondNever,
                ZoneCover.without(firstWhileActing, firstNever),
                ZoneCover.without(secondWhileActing, secondNever),
                offsets,
                neverTogether));
    }

    private boolean keepApart(Occupied one, Occupied other) {
        return Gap.atMost(required, one, other).map(g -> g.isAtLeast(required)).orElse(true);
    }

    /** Where the tool point brings what moves with it too near to something that stands. */
    private List<Zone> zones(Occupied standing, ArmMaterial mover) {
        return ZoneCover.of(standing.minus(mover.moving()), required, mover.reach());
    }

    /** Whether the tool point could not even start. */
    private static boolean closes(List<Zone> zones, ArmMaterial mover) {
        ToolWay ready = new ToolWay(mover.ready(), mover.ready());
        return zones.stream().anyMatch(ready::meets);
    }
}
