package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.geometry.ForbiddenOffsets;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an arm can fill in each of its stances, placed at y = 0, and which side shifts are forbidden to it. The heights
 * are those in the middle of the carriage, where roll moves the ground least and the arm has most heights to choose from:
 * further out it fills no more than that. A head that can only work with its low parts in free strips between rows counts as
 * if all of it lay in them, which is an outer bound; another may work lower in a free strip than is taken here: then a
 * set-point may be less than the best, and the rules still measure what is really filled.
 */
final class ArmSpaces {

    /**
     * A stance of an arm.
     *
     * @param mounting the head in this stance; empty for an arm without one
     * @param works true at work, false waiting lifted
     */
    record Kind(Optional<Case.Mounting> mounting, boolean works) {}

    /**
     * Everything that decides what is filled: two stances that are equal here fill the same.
     *
     * @param x where the mount is along travel, micrometres
     * @param spaces what is filled, in each stance that a neighbour can meet
     * @param resting how many of these, from the end, are filled also while the arm does not act
     * @param fixed what stands still while it acts; empty if it does not act, or can wait for nobody
     * @param allowance how far the mount may be from where it is set, m
     */
    private record Shape(long x, List<Occupied> spaces, int resting, Optional<Occupied> fixed, double allowance) {

        /** What an order in time cannot keep out of another arm's way. */
        List<Occupied> always() {
            return spaces.subList(spaces.size() - resting, spaces.size());
        }

        boolean canWait() {
            return fixed.isPresent() || resting == spaces.size();
        }
    }

    private record PairKey(int first, int second) {}

    private final Case subject;
    private final List<Shape> shapes = new ArrayList<>();
    private final Map<Shape, Integer> known = new HashMap<>();
    private final Map<PairKey, Optional<Interval>> pairs = new HashMap<>();
    private final Map<PairKey, Optional<Interval>> inTurn = new HashMap<>();
    private final Map<Integer, ForbiddenOffsets> frame = new HashMap<>();
    private final Occupied structure;

    ArmSpaces(Case subject) {
        this.subject = subject;
        Occupied all = Occupied.NOTHING;
        for (Carriage.Part part : subject.carriage().value().structure()) {
            all = all.and(Occupied.of(part.body()));
        }
        this.structure = all;
    }

    /** The number of what an arm fills in a stance. */
    int shape(Arm arm, Kind kind) {
        Carriage carriage = subject.carriage().value();
        long x = carriage.beam(arm.beam()).orElseThrow().x();
        Point at = new Point(x, 0);
        Optional<HeadSheet> sheet = kind.mounting().flatMap(m -> m.head().sheet());
        boolean turned = kind.mounting().map(Case.Mounting::turned).orElse(false);
        List<Occupied> spaces = new ArrayList<>();
        Optional<Occupied> fixed = Optional.empty();
        if (kind.works()) {
            HeadSheet s = sheet.orElseThrow();
            WorkHeight overPlants = WorkHeight.of(subject, arm, at, s);
            WorkHeight height = overPlants.serves(arm) ? overPlants : WorkHeight.betweenRows(subject, arm, at, s);
            spaces.add(StationSpace.atWork(arm, s, turned, at, Station.workHeights(arm, height)));
            RunOut runOut = RunOut.of(arm.liftMotion(), carriage.stopping().reactionTime());
            spaces.add(StationSpace.lifting(arm, s, turned, at, Station.heights(arm, height, runOut)));
            spaces.add(StationSpace.waiting(arm, sheet, turned, at));
            if (isSpot(kind)) {
                fixed = Optional.of(StationSpace.fixedAtWork(arm, s, turned, at, Station.workHeights(arm, height)));
            }
        } else {
            spaces.add(StationSpace.waiting(arm, sheet, turned, at));
        }
        double k = subject.policy().value().coverageFactor().value();
        int resting = kind.works() ? 2 : 1;
        Shape shape = new Shape(
                x, spaces, resting, fixed, ArmAllowance.of(arm, sheet, k).total());
        return known.computeIfAbsent(shape, s -> {
            shapes.add(s);
            return shapes.size() - 1;
        });
    }

    /** The y of one mount less that of the other at which the two are too near. */
    Optional<Interval> forbidden(int first, int second) {
        return pairs.computeIfAbsent(new PairKey(first, second), k -> {
            Shape a = shapes.get(first);
            Shape b = shapes.get(second);
            long required = required(subject.policy().value().armGap().value() + a.allowance() + b.allowance());
            return hull(a.spaces(), b.spaces(), required);
        });
    }

    /**
     * The same if the two may act in turn where that is enough: only what is filled while an arm rests counts against what
     * stands still or rests of the other. Heads that work without a stop can wait for nobody.
     */
    Optional<Interval> forbiddenInTurn(int first, int second) {
        return inTurn.computeIfAbsent(new PairKey(first, second), k -> {
            Shape a = shapes.get(first);
            Shape b = shapes.get(second);
            if (!a.canWait() || !b.canWait()) {
                return forbidden(first, second);
            }
            long required = required(subject.policy().value().armGap().value() + a.allowance() + b.allowance());
            Optional<Interval> resting = hull(a.always(), b.always(), required);
            Optional<Interval> stands = a.fixed().flatMap(f -> hull(List.of(f), b.always(), required));
            Optional<Interval> otherStands = b.fixed().flatMap(f -> hull(a.always(), List.of(f), required));
            return Stream.of(resting, stands, otherStands)
                    .flatMap(Optional::stream)
                    .reduce(Interval::hull);
        });
    }

    private static Optional<Interval> hull(List<Occupied> a, List<Occupied> b, long required) {
        return a.stream()
                .flatMap(one ->
                        b.stream().flatMap(other -> hull(ForbiddenOffsets.alongY(one, other, required)).stream()))
                .reduce(Interval::hull);
    }

    private static boolean isSpot(Kind kind) {
        return kind.mounting()
                .flatMap(m -> m.head().answers())
                .map(HeadAnswers::kind)
                .equals(Optional.of(HeadKind.SPOT));
    }

    private static Optional<Interval> hull(ForbiddenOffsets offsets) {
        return offsets.intervals().stream().reduce(Interval::hull);
    }

    private static long required(double gap) {
        return Math.max(1, Rounding.up(gap));
    }

    /** Where on its rail a mount has heights to work at; everywhere if it does not work. */
    List<Interval> workPlaces(Arm arm, Kind kind) {
        if (!kind.works()) {
            return List.of(arm.shift());
        }
        Case.Mounting mounting = kind.mounting().orElseThrow();
        return WorkPlaces.of(
                subject,
                arm,
                subject.carriage().value().beam(arm.beam()).orElseThrow().x(),
                mounting.head().sheet().orElseThrow(),
                mounting.turned());
    }

    /** Where on its rail a mount may be set in a stance, with the frame in its way. */
    List<Interval> allowed(Arm arm, int shape, boolean heedFrame) {
        if (!heedFrame || structure.isEmpty()) {
            return List.of(arm.shift());
        }
        ForbiddenOffsets forbidden = frame.computeIfAbsent(shape, s -> {
            Shape own = shapes.get(s);
            long required = required(subject.policy().value().frameGap().value() + own.allowance());
            ForbiddenOffsets all =
                    ForbiddenOffsets.alongY(structure, own.spaces().get(0), required);
            for (Occupied more : own.spaces().subList(1, own.spaces().size())) {
                all = all.and(ForbiddenOffsets.alongY(structure, more, required));
            }
            return all;
        });
        List<Interval> free = new ArrayList<>();
        long from = arm.shift().least();
        for (Interval no : forbidden.intervals()) {
            if (no.least() >= from && from <= arm.shift().most()) {
                free.add(new Interval(from, Math.min(no.least(), arm.shift().most())));
            }
            from = Math.max(from, no.most());
        }
        if (from <= arm.shift().most()) {
            free.add(new Interval(from, arm.shift().most()));
        }
        return free;
    }
}
