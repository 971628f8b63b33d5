package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.assignment.Assigner;
import headgate.verifier.assignment.Assignment;
import headgate.verifier.assignment.Choice;
import headgate.verifier.assignment.Problem;
import headgate.verifier.assignment.Slider;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Sets a case up: states it as sliders and lanes, has it solved, and reads the answer back. */
final class SetupMaker {

    /** Most lanes that one head may serve. */
    private static final int MOST_LANES = 3;

    /** What a slider's choice means. */
    private record Meaning(ArmSpaces.Kind kind, List<Lane> lanes) {}

    private final Case subject;
    private final List<Lane> lanes;
    private final List<Arm> arms;
    private final List<Case.Mounting> working;
    private final Map<HeadUnderTest, Integer> stock;
    private final ArmSpaces spaces;
    private final List<List<ArmSpaces.Kind>> kinds = new ArrayList<>();
    private final List<int[]> shapes = new ArrayList<>();
    private final List<List<List<Interval>>> workPlaces = new ArrayList<>();

    private SetupMaker(Case subject) {
        this.subject = subject;
        Carriage carriage = subject.carriage().value();
        this.lanes = Lane.of(subject.plan().value());
        this.arms = carriage.arms().stream()
                .sorted(Comparator.comparingLong(
                                (Arm a) -> a.shift().least() + a.shift().most())
                        .thenComparing(Arm::id))
                .toList();
        this.working = Working.of(subject);
        this.stock = stock();
        this.spaces = new ArmSpaces(subject);
        for (Arm arm : arms) {
            List<ArmSpaces.Kind> own = kinds(arm);
            kinds.add(own);
            shapes.add(own.stream().mapToInt(k -> spaces.shape(arm, k)).toArray());
            workPlaces.add(own.stream().map(k -> spaces.workPlaces(arm, k)).toList());
        }
    }

    static Setup make(Case subject) {
        SetupMaker maker = new SetupMaker(subject);
        if (maker.lanes.isEmpty() || maker.lanes.size() > 60) {
            return maker.none();
        }
        // Without heed to heights, then to the frame, so that the rules that look at them can say what is in the way.
        return maker.make(true, true)
                .or(() -> maker.worksAnywhere() ? Optional.empty() : maker.make(true, false))
                .or(() -> maker.make(false, false))
                .orElseGet(maker::none);
    }

    private Setup none() {
        return new Setup(lanes, List.of(), List.of(), List.of(), Optional.empty(), Optional.empty());
    }

    /** Whether every arm has heights to work at wherever it is set, so that to heed them or not is the same. */
    private boolean worksAnywhere() {
        return IntStream.range(0, arms.size()).allMatch(i -> workPlaces.get(i).stream()
                .allMatch(List.of(arms.get(i).shift())::equals));
    }

    /** Heads of which there are only so many, with their numbers. */
    private Map<HeadUnderTest, Integer> stock() {
        Map<HeadUnderTest, Integer> stock = new LinkedHashMap<>();
        for (Case.Mounting m : subject.mountings()) {
            if (m.duty() instanceof Case.Duty.UpTo upTo) {
                stock.putIfAbsent(m.head(), upTo.inAll());
            }
        }
        return stock;
    }

    /** What an arm can fill: with each head at work and waiting, or without a head. */
    private List<ArmSpaces.Kind> kinds(Arm arm) {
        List<ArmSpaces.Kind> own = new ArrayList<>();
        boolean mayBeEmpty = true;
        for (Case.Mounting m : subject.mountings()) {
            if (m.armId().equals(arm.id()) && m.head().sheet().isPresent()) {
                if (!(m.duty() instanceof Case.Duty.Waits) && working.contains(m)) {
                    own.add(new ArmSpaces.Kind(Optional.of(m), true));
                }
                if (!(m.duty() instanceof Case.Duty.AsNeeded) && !(m.duty() instanceof Case.Duty.UpTo)) {
                    mayBeEmpty = false;
                    if (!(m.duty() instanceof Case.Duty.OnLanes)) {
                        own.add(new ArmSpaces.Kind(Optional.of(m), false));
                    }
                }
            }
        }
        if (mayBeEmpty) {
            own.add(new ArmSpaces.Kind(Optional.empty(), false));
        }
        return own;
    }

    private Optional<Setup> make(boolean heedFrame, boolean heedHeights) {
        List<Slider> sliders = new ArrayList<>();
        List<List<Meaning>> meanings = new ArrayList<>();
        List<String> beams = subject.carriage().value().beams().stream()
                .map(Carriage.Beam::id)
                .toList();
        List<Integer> needs = new ArrayList<>(lanes.stream().map(l -> 1).toList());
        for (int i = 0; i < arms.size(); i++) {
            Arm arm = arms.get(i);
            List<Choice> choices = new ArrayList<>();
            List<Meaning> own = new ArrayList<>();
            for (int k = 0; k < kinds.get(i).size(); k++) {
                List<Interval> allowed = spaces.allowed(arm, shapes.get(i)[k], heedFrame);
                if (heedHeights) {
                    allowed = common(allowed, workPlaces.get(i).get(k));
                }
                add(arm, kinds.get(i).get(k), k, allowed, choices, own, needs);
            }
            sliders.add(new Slider(arm.id(), beams.indexOf(arm.beam()), link(arm), choices));
            meanings.add(own);
        }
        Problem apart = new Problem(
                sliders,
                needs,
                (a, sa, b, sb) -> spaces.forbidden(shapes.get(a)[sa], shapes.get(b)[sb]),
                List.copyOf(stock.values()));
        return Assigner.best(apart).map(found -> setup(apartOrInTurn(apart, found), meanings));
    }

    private static List<Interval> common(List<Interval> some, List<Interval> others) {
        return some.stream()
                .flatMap(a -> others.stream()
                        .filter(b -> a.gapTo(b) == 0)
                        .map(b -> new Interval(Math.max(a.least(), b.least()), Math.min(a.most(), b.most()))))
                .toList();
    }

    /**
     * An assignment that keeps every pitch is taken as it is. Where there is none, arms may be so near that they must act in
     * turn: the one with the least that is missing if that is enough for it, else one for which it is.
     */
    private Assignment apartOrInTurn(Problem apart, Assignment found) {
        if (found.keepsPitches()) {
            return found;
        }
        Problem inTurn = new Problem(
                apart.sliders(),
                apart.needs(),
                (a, sa, b, sb) -> spaces.forbiddenInTurn(shapes.get(a)[sa], shapes.get(b)[sb]),
                apart.stock());
        if (keeps(inTurn, found)) {
            return found;
        }
        return Assigner.best(inTurn)
                .filter(Assignment::keepsPitches)
                .map(a -> new Assignment(a.choices(), a.setPoints(), found.margin(), found.mostMargin(), a.mostLanes()))
                .orElse(found);
    }

    private static boolean keeps(Problem problem, Assignment found) {
        List<Slider> sliders = problem.sliders();
        for (int i = 0; i < sliders.size(); i++) {
            for (int j = i + 1; j < sliders.size(); j++) {
                long offset = found.setPoints().get(j) - found.setPoints().get(i);
                int si = sliders.get(i).choices().get(found.choices().get(i)).stance();
                int sj = sliders.get(j).choices().get(found.choices().get(j)).stance();
                if (problem.pitch()
                        .forbidden(i, si, j, sj)
                        .filter(no -> no.least() < offset && offset < no.most())
                        .isPresent()) {
                    return false;
                }
            }
        }
        return true;
    }

    private Optional<Slider.Link> link(Arm arm) {
        List<Carriage.Link> links = subject.carriage().value().links();
        for (int g = 0; g < links.size(); g++) {
            for (Carriage.Link.Member m : links.get(g).members()) {
                if (m.arm().equals(arm.id())) {
                    return Optional.of(new Slider.Link(g, m.offset()));
                }
            }
        }
        return Optional.empty();
    }

    private void add(
            Arm arm,
            ArmSpaces.Kind kind,
            int stance,
            List<Interval> allowed,
            List<Choice> choices,
            List<Meaning> meanings,
            List<Integer> needs) {
        if (allowed.isEmpty()) {
            return;
        }
        if (!kind.works()) {
            long middle = Math.floorDiv(arm.shift().least() + arm.shift().most(), 2L);
            choices.add(new Choice(stance, 0, 0, allowed, Optional.empty(), middle));
            meanings.add(new Meaning(kind, List.of()));
            return;
        }
        Case.Mounting mounting = kind.mounting().orElseThrow();
        if (mounting.duty() instanceof Case.Duty.OnLanes byHand) {
            List<Lane> own = lanes.stream()
                    .filter(l -> byHand.numbers().contains(l.number()))
                    .toList();
            if (!own.isEmpty()) {
                // Lanes that were given by hand are served by that; the others share out the rest.
                own.forEach(l -> needs.set(l.number() - 1, 0));
                choices.add(choice(mounting, stance, own, 0, allowed));
                meanings.add(new Meaning(kind, own));
            }
            return;
        }
        for (int first = 0; first < lanes.size(); first++) {
            int most = mounting.duty() instanceof Case.Duty.UpTo upTo ? upTo.lanes() : MOST_LANES;
            for (int count = 1; count <= Math.min(Math.min(most, MOST_LANES), lanes.size() - first); count++) {
                List<Lane> run = lanes.subList(first, first + count);
                Choice choice = choice(mounting, stance, run, count, allowed);
                boolean covers = count == 1 || covers(mounting, run);
                if (covers && choice.mostCover().orElseThrow() >= 0) {
                    choices.add(choice);
                    meanings.add(new Meaning(kind, run));
                }
            }
        }
    }

    private Choice choice(Case.Mounting mounting, int stance, List<Lane> run, int count, List<Interval> allowed) {
        Interval strip = ServiceStrips.of(mounting.head().sheet().orElseThrow(), mounting.turned());
        long least = run.get(run.size() - 1).ground().most() - strip.most();
        long most = run.get(0).ground().least() - strip.least();
        long middle = Math.floorDiv(least + most, 2L);
        // A strip that is narrower than its lane lies in the middle of it: a rule says what is left out.
        Interval cover = least <= most ? new Interval(least, most) : Interval.at(middle);
        int item = new ArrayList<>(stock.keySet()).indexOf(mounting.head());
        return new Choice(
                stance,
                run.get(0).number() - 1,
                count,
                allowed,
                Optional.of(cover),
                middle,
                item < 0 ? OptionalInt.empty() : OptionalInt.of(item));
    }

    private static boolean covers(Case.Mounting mounting, List<Lane> run) {
        Interval strip = ServiceStrips.of(mounting.head().sheet().orElseThrow(), mounting.turned());
        return strip.length()
                >= run.get(run.size() - 1).ground().most() - run.get(0).ground().least();
    }

    private Setup setup(Assignment found, List<List<Meaning>> meanings) {
        List<Station> stations = new ArrayList<>();
        List<Station> waiting = new ArrayList<>();
        List<EmptyArm> empty = new ArrayList<>();
        for (int i = 0; i < arms.size(); i++) {
            Arm arm = arms.get(i);
            Meaning meaning = meanings.get(i).get(found.choices().get(i));
            long y = found.setPoints().get(i);
            long x = subject.carriage().value().beam(arm.beam()).orElseThrow().x();
            Point mount = new Point(x, y);
            Optional<Case.Mounting> mounting = meaning.kind().mounting();
            if (mounting.isEmpty()) {
                empty.add(new EmptyArm(arm, mount));
            } else {
                (meaning.kind().works() ? stations : waiting).add(station(arm, mounting.get(), meaning.lanes(), mount));
            }
        }
        stations.sort(Comparator.comparingInt((Station s) -> s.lane().number())
                .thenComparing(s -> s.arm().id()));
        return new Setup(lanes, stations, waiting, empty, limited(found.margin()), limited(found.mostMargin()));
    }

    private static Optional<Long> limited(long margin) {
        return margin >= Assigner.PLENTY ? Optional.empty() : Optional.of(margin);
    }

    private Station station(Arm arm, Case.Mounting mounting, List<Lane> served, Point mount) {
        HeadSheet sheet = mounting.head().sheet().orElseThrow();
        WorkHeight height = WorkHeight.at(subject, arm, mount, sheet, mounting.turned());
        RunOut runOut = RunOut.of(
                arm.liftMotion(), subject.carriage().value().stopping().reactionTime());
        return new Station(served, arm, mounting.head(), sheet, mounting.turned(), mount, height, runOut);
    }
}
