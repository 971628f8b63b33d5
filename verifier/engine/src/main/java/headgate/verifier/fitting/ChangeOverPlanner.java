package headgate.verifier.fitting;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.policy.Policy;
import headgate.verifier.check.Case;
import headgate.verifier.formula.RestToRest;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.setup.ArmAllowance;
import headgate.verifier.setup.EmptyArm;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds in which order arms can be shifted from one set-up to another. First all at once; if two would come too near,
 * one after the other: an arm that would meet another where that stands now must wait for it, one that would meet it where
 * it will stand must go first. Arms that may go at the same time then do. If there is no such order, no order of single
 * shifts exists.
 */
public final class ChangeOverPlanner {

    /** An arm that has to be shifted, or stays. */
    private record Slot(Arm arm, Occupied lifted, double allowance, long from, long to) {

        boolean moves() {
            return from != to;
        }
    }

    /** Arms that move as one: the linked ones, or one alone. */
    private record Mover(List<Integer> slots, Arm.AxisMotion motion) {}

    private final Case subject;
    private final List<Slot> slots;
    private final List<Mover> movers;
    private final ForbiddenOffsets[][][] forbidden;

    private ChangeOverPlanner(Case subject, Setup from, Setup to) {
        this.subject = subject;
        this.slots = slots(from, to);
        this.movers = movers();
        int n = slots.size();
        this.forbidden = new ForbiddenOffsets[n][n][];
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                forbidden[i][j] = offsets(slots.get(i), slots.get(j));
            }
        }
    }

    /**
     * Plans the change.
     *
     * @param subject the case that both set-ups are of, but for the rows
     * @param from the set-up before; it serves every lane
     * @param to the set-up after; it serves every lane
     * @return the plan; empty if no order of shifts keeps every arm off its neighbours
     */
    public static Optional<ChangeOver> plan(Case subject, Setup from, Setup to) {
        return new ChangeOverPlanner(subject, from, to)
                .steps()
                .map(steps -> new ChangeOver(lifting(from.stations()), steps, lifting(to.stations())));
    }

    /** Time until the slowest arm has gone from its lowest work height to the top of its lift, s. */
    private static double lifting(List<Station> stations) {
        return stations.stream()
                .mapToDouble(s -> {
                    Arm.AxisMotion m = s.arm().liftMotion();
                    long way = s.arm().lift().most() - s.workHeights().least();
                    return RestToRest.of(
                                    Math.max(0, Micrometres.toMetres(way)),
                                    m.speed(),
                                    m.acceleration(),
                                    m.deceleration())
                            .duration();
                })
                .max()
                .orElse(0);
    }

    private List<Slot> slots(Setup from, Setup to) {
        double k = subject.policy().value().coverageFactor().value();
        List<Slot> all = new ArrayList<>();
        for (Arm arm : subject.carriage().value().arms()) {
            Optional<Station> before = station(from, arm);
            // A head that one of the two set-ups does without is there all the same while arms are shifted.
            Optional<Station> held = before.or(() -> station(to, arm));
            Optional<HeadSheet> sheet = held.map(Station::sheet);
            Occupied lifted =
                    StationSpace.waiting(arm, sheet, held.map(Station::turned).orElse(false), new Point(x(arm), 0));
            all.add(new Slot(arm, lifted, ArmAllowance.of(arm, sheet, k).total(), y(from, arm), y(to, arm)));
        }
        return all.stream()
                .sorted(Comparator.comparingLong(Slot::from)
                        .thenComparing(s -> s.arm().id()))
                .toList();
    }

    private long x(Arm arm) {
        return subject.carriage().value().beam(arm.beam()).orElseThrow().x();
    }

    private static Optional<Station> station(Setup setup, Arm arm) {
        return Stream.concat(setup.stations().stream(), setup.waiting().stream())
                .filter(s -> s.arm().id().equals(arm.id()))
                .findFirst();
    }

    private static long y(Setup setup, Arm arm) {
        return station(setup, arm)
                .map(s -> s.mount().y())
                .or(() -> setup.empty().stream()
                        .filter(e -> e.arm().id().equals(arm.id()))
                        .map(EmptyArm::mount)
                        .map(Point::y)
                        .findFirst())
                .orElseThrow(() -> new IllegalArgumentException("the set-up says nothing of arm " + arm.id()));
    }

    private List<Mover> movers() {
        List<Mover> all = new ArrayList<>();
        List<Integer> linked = new ArrayList<>();
        for (Carriage.Link link : subject.carriage().value().links()) {
            List<Integer> own = new ArrayList<>();
            for (int i = 0; i < slots.size(); i++) {
                String id = slots.get(i).arm().id();
                if (slots.get(i).moves()
                        && link.members().stream().anyMatch(m -> m.arm().equals(id))) {
                    own.add(i);
                }
            }
            if (!own.isEmpty()) {
                all.add(new Mover(own, slowest(own)));
                linked.addAll(own);
            }
        }
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).moves() && !linked.contains(i)) {
                all.add(new Mover(List.of(i), slots.get(i).arm().shiftMotion()));
            }
        }
        all.sort(Comparator.comparingInt(m -> m.slots().get(0)));
        return all;
    }

    private Arm.AxisMotion slowest(List<Integer> own) {
        List<Arm.AxisMotion> motions =
                own.stream().map(i -> slots.get(i).arm().shiftMotion()).toList();
        return new Arm.AxisMotion(
                motions.stream().mapToDouble(Arm.AxisMotion::speed).min().orElseThrow(),
                motions.stream().mapToDouble(Arm.AxisMotion::acceleration).min().orElseThrow(),
                motions.stream().mapToDouble(Arm.AxisMotion::deceleration).min().orElseThrow(),
                motions.stream().mapToDouble(Arm.AxisMotion::overshoot).max().orElseThrow());
    }

    /** Forbidden offsets while the first moves, the second, or both: what may run past its set-point needs more room. */
    private ForbiddenOffsets[] offsets(Slot a, Slot b) {
        Policy policy = subject.policy().value();
        double gap = policy.armGap().value() + a.allowance() + b.allowance();
        double first = a.arm().shiftMotion().overshoot();
        double second = b.arm().shiftMotion().overshoot();
        ForbiddenOffsets[] all = new ForbiddenOffsets[3];
        double[] more = {first, second, first + second};
        for (int i = 0; i < 3; i++) {
            all[i] = ForbiddenOffsets.alongY(a.lifted(), b.lifted(), Math.max(1, Rounding.up(gap + more[i])));
        }
        return all;
    }

    private Optional<List<ChangeOver.Step>> steps() {
        if (movers.isEmpty()) {
            return Optional.of(List.of());
        }
        int n = movers.size();
        boolean[] done = new boolean[slots.size()];
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            open.add(i);
        }
        List<ChangeOver.Step> steps = new ArrayList<>();
        // All at once may be clear although some could not go alone.
        if (isClear(open, done)) {
            return Optional.of(List.of(step(open)));
        }
        while (!open.isEmpty()) {
            List<Integer> together = new ArrayList<>();
            for (int m : open) {
                List<Integer> tried = new ArrayList<>(together);
                tried.add(m);
                if (isFree(m, open, done) && isClear(tried, done)) {
                    together = tried;
                }
            }
            if (together.isEmpty()) {
                return Optional.empty();
            }
            steps.add(step(together));
            together.forEach(m -> movers.get(m).slots().forEach(s -> done[s] = true));
            open.removeAll(together);
        }
        return Optional.of(steps);
    }

    /** True if a mover need not wait for another, which would be in its way or in whose way it would be once it is set. */
    private boolean isFree(int mover, List<Integer> open, boolean[] done) {
        if (!isClear(List.of(mover), done)) {
            return false;
        }
        boolean[] after = done.clone();
        movers.get(mover).slots().forEach(s -> after[s] = true);
        boolean[] before = done.clone();
        for (int other : open) {
            if (other != mover && pairIsClear(other, mover, before) && !pairIsClear(other, mover, after)) {
                return false;
            }
        }
        return true;
    }

    /** True if one mover can go while another stands. */
    private boolean pairIsClear(int moving, int standing, boolean[] done) {
        for (int a : movers.get(moving).slots()) {
            for (int b : movers.get(standing).slots()) {
                if (!isClear(a, travel(moving, a), b, Travel.NONE, done)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** True if some movers can go at once while all others stand. */
    private boolean isClear(List<Integer> together, boolean[] done) {
        Travel[] travels = new Travel[slots.size()];
        for (int m : together) {
            movers.get(m).slots().forEach(s -> travels[s] = travel(m, s));
        }
        for (int i = 0; i < travels.length; i++) {
            for (int j = i + 1; j < travels.length; j++) {
                boolean moves = travels[i] != null || travels[j] != null;
                if (moves
                        && !isClear(
                                i,
                                travels[i] == null ? Travel.NONE : travels[i],
                                j,
                                travels[j] == null ? Travel.NONE : travels[j],
                                done)) {
                    return false;
                }
            }
        }
        return true;
    }

    private Travel travel(int mover, int slot) {
        Slot s = slots.get(slot);
        return new Travel(
                Micrometres.toMetres(s.to() - s.from()), movers.get(mover).motion());
    }

    private boolean isClear(int a, Travel ofA, int b, Travel ofB, boolean[] done) {
        if (a > b) {
            return isClear(b, ofB, a, ofA, done);
        }
        boolean aMoves = ofA.distance() != 0;
        boolean bMoves = ofB.distance() != 0;
        ForbiddenOffsets no = forbidden[a][b][aMoves && bMoves ? 2 : bMoves ? 1 : 0];
        long now = at(b, done) - at(a, done);
        Interval course = course(now, ofA, ofB);
        return no.intervals().stream().noneMatch(i -> i.least() < course.most() && course.least() < i.most());
    }

    private long at(int slot, boolean[] done) {
        return done[slot] ? slots.get(slot).to() : slots.get(slot).from();
    }

    /**
     * All offsets that two arms take while they move, from one that is given on: both ends are exact, turning points
     * between them are rounded outward.
     */
    static Interval course(long now, Travel ofA, Travel ofB) {
        long end = now + Math.round((ofB.distance() - ofA.distance()) * Micrometres.PER_METRE);
        Interval course = Interval.at(now).hull(Interval.at(end));
        TreeSet<Double> knots = new TreeSet<>(ofA.knots());
        knots.addAll(ofB.knots());
        double last = 0;
        for (double knot : knots) {
            // Between knots velocities are straight lines over time, so the offset turns where their difference is
            // zero.
            double shrink = (knot - last) * 1e-9;
            double before = relative(ofA, ofB, last + shrink);
            double after = relative(ofA, ofB, knot - shrink);
            if (before * after < 0) {
                double turn = last + (knot - last) * before / (before - after);
                double offset = (ofB.position(turn) - ofA.position(turn)) * Micrometres.PER_METRE + now;
                course = course.hull(new Interval((long) Math.floor(offset) - 1, (long) Math.ceil(offset) + 1));
            }
            last = knot;
        }
        return course;
    }

    private static double relative(Travel ofA, Travel ofB, double time) {
        return ofB.velocity(time) - ofA.velocity(time);
    }

    private ChangeOver.Step step(List<Integer> together) {
        List<ChangeOver.Move> moves = new ArrayList<>();
        double time = 0;
        for (int m : together) {
            for (int s : movers.get(m).slots()) {
                Slot slot = slots.get(s);
                moves.add(new ChangeOver.Move(slot.arm().id(), slot.from(), slot.to()));
                time = Math.max(time, travel(m, s).duration());
            }
        }
        moves.sort(Comparator.comparingLong(ChangeOver.Move::from).thenComparing(ChangeOver.Move::arm));
        return new ChangeOver.Step(moves, time);
    }
}
