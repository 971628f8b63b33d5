package headgate.verifier.interlock;

import headgate.verifier.geometry.Box;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.setup.ArmStance;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Works out what must not coincide so that two arms keep a gap. */
final class InterlockMaker {

    /** Most boxes of offsets that are looked at one by one. */
    private static final int MOST_BOXES = 1024;

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
        Cover firstNever = closed(b.resting(), a, List.of());
        Cover secondNever = closed(a.resting(), b, List.of());
        if (closes(firstNever.zones(), a) || closes(secondNever.zones(), b)) {
            return Optional.empty();
        }
        boolean neverTogether = !keepApart(a.fixed(), b.fixed());
        Cover firstWhileActing = neverTogether ? Cover.NOTHING : closed(b.fixed(), a, firstNever.zones());
        Cover secondWhileActing = neverTogether ? Cover.NOTHING : closed(a.fixed(), b, secondNever.zones());
        Cover offsets = neverTogether
                ? Cover.NOTHING
                : offsets(both(firstNever, firstWhileActing), both(secondNever, secondWhileActing));
        return Optional.of(new Interlock(
                first,
                second,
                gap,
                firstNever.zones(),
                secondNever.zones(),
                firstWhileActing.zones(),
                secondWhileActing.zones(),
                offsets.zones(),
                neverTogether,
                Stream.of(firstNever, secondNever, firstWhileActing, secondWhileActing, offsets)
                        .mapToDouble(Cover::excess)
                        .max()
                        .orElse(0)));
    }

    private static List<Zone> both(Cover one, Cover other) {
        return Stream.of(one, other).flatMap(c -> c.zones().stream()).toList();
    }

    /** Offsets that only places in other zones would give are closed by those. */
    private Cover offsets(List<Zone> closedToFirst, List<Zone> closedToSecond) {
        if (a.reach().isEmpty() || b.reach().isEmpty()) {
            return Cover.NOTHING;
        }
        Occupied places = b.reach().minus(a.reach());
        List<Box> first = Boxes.open(a.reach(), closedToFirst);
        List<Box> second = Boxes.open(b.reach(), closedToSecond);
        List<Box> possible =
                first.size() * second.size() <= MOST_BOXES ? Boxes.differences(second, first) : places.boxes();
        return ZoneCover.of(a.moving().minus(b.moving()), required, places, List.of(), possible);
    }

    private boolean keepApart(Occupied one, Occupied other) {
        return Gap.atMost(required, one, other).map(g -> g.isAtLeast(required)).orElse(true);
    }

    /** Where the tool point brings what moves with it too near to something that stands. */
    private Cover closed(Occupied standing, ArmMaterial mover, List<Zone> closedAnyway) {
        return ZoneCover.of(
                standing.minus(mover.moving()),
                required,
                mover.reach(),
                closedAnyway,
                mover.reach().boxes());
    }

    /** Whether the tool point could not even start. */
    private static boolean closes(List<Zone> zones, ArmMaterial mover) {
        ToolWay ready = new ToolWay(mover.ready(), mover.ready());
        return zones.stream().anyMatch(ready::meets);
    }
}
