package headgate.verifier.rules.throughput;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.behaviour.Chord;
import headgate.verifier.behaviour.Halton;
import headgate.verifier.geometry.Box;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The times that a head takes for plants over its lane, asked from the head itself.
 *
 * <p>Plants lie evenly over the band across the row and over the plan's kinds and sizes (a Halton sequence). Each is asked
 * for at the middle of the reach, approached with four leads, and the first lead that the head accepts counts.
 *
 * @param planned how many plants of the band were looked at
 * @param times one entry for each plant that the reach covers and the head accepts
 * @param declined how many the reach covers and the head declines at every lead
 * @param keptOff how many the head accepts and an interlock keeps its tool off
 * @param fault how the head failed to answer; empty if it answered
 */
record SpotTimes(int planned, List<Time> times, int declined, int keptOff, Optional<HeadFault> fault) {

    /** How many plants are looked at; more change the coverage of the samples by less than 0.2 %. */
    private static final int PLANTS = 96;

    /** How long before the middle of the reach an action may start, s. */
    private static final double[] LEADS = {0.3, 0.6, 0.9, 1.2};

    /**
     * One plant.
     *
     * @param chord length of the reach along travel at the plant's lateral offset, m
     * @param inGround time in soil or treating, s: the plant must be in reach for all of it
     * @param busy time of the whole action, s
     * @param kind its class
     */
    record Time(double chord, double inGround, double busy, PlantClass kind) {

        /** How long the start may wait, s: the reach less what is travelled in the ground; negative if never. */
        double patience(double speed) {
            return chord / speed - inGround;
        }
    }

    /** A plant of the band: its place across the lane and what it is. */
    private record Plant(long y, Interval piece, PlantClass kind, double stem, double height) {}

    static SpotTimes weeds(
            Station station,
            Interlocks interlocks,
            HeadAnswers head,
            CropPlan plan,
            CropPlan.Weeds weeds,
            double speed) {
        List<Plant> plants = new ArrayList<>();
        for (int i = 1; i <= PLANTS; i++) {
            long across =
                    offset(station, station.lanes().get(i % station.lanes().size()))
                            + Micrometres.nearest((Halton.at(i, 0) - 0.5) * weeds.bandWidth());
            PlantClass kind =
                    weeds.classes().get((int) (Halton.at(i, 1) * weeds.classes().size()));
            double stem = between(weeds.stemLeast(), weeds.stemMost(), Halton.at(i, 2));
            double height = between(weeds.heightLeast(), weeds.heightMost(), Halton.at(i, 3));
            longest(station, across).ifPresent(piece -> plants.add(new Plant(across, piece, kind, stem, height)));
        }
        return ask(PLANTS, plants, station, interlocks, head, plan, speed);
    }

    static SpotTimes plugs(
            Station station,
            Interlocks interlocks,
            HeadAnswers head,
            CropPlan plan,
            CropPlan.Plugs plugs,
            double speed) {
        List<Plant> plants = new ArrayList<>();
        for (Lane lane : station.lanes()) {
            long across = offset(station, lane);
            longest(station, across)
                    .ifPresent(piece ->
                            plants.add(new Plant(across, piece, PlantClass.PLUG, plugs.diameter(), plugs.height())));
        }
        return ask(station.lanes().size(), plants, station, interlocks, head, plan, speed);
    }

    /** Where the middle of a lane is across travel, seen from the mount. */
    private static long offset(Station station, Lane lane) {
        return lane.y() - station.mount().y();
    }

    /** The plant that leaves the least: the longest action, and the shortest reach with the longest time in the ground. */
    Time worst() {
        return new Time(
                times.stream().mapToDouble(Time::chord).min().orElseThrow(),
                times.stream().mapToDouble(Time::inGround).max().orElseThrow(),
                times.stream().mapToDouble(Time::busy).max().orElseThrow(),
                times.get(0).kind());
    }

    private static double between(double least, double most, double share) {
        return least + (most - least) * share;
    }

    /** The longest piece of the reach along travel at a lateral offset; empty beside the reach. */
    private static Optional<Interval> longest(Station station, long across) {
        Outline reach = station.sheet().reach().outline().orElse(null);
        if (reach == null) {
            return Optional.empty();
        }
        long y = station.turned() ? -across : across;
        return Chord.at(reach, y).stream().max(Comparator.comparingLong(Interval::length));
    }

    private static SpotTimes ask(
            int planned,
            List<Plant> plants,
            Station station,
            Interlocks interlocks,
            HeadAnswers head,
            CropPlan plan,
            double speed) {
        List<LatticeSpotTask> tasks = new ArrayList<>();
        for (Plant plant : plants) {
            for (double lead : LEADS) {
                tasks.add(task(plant, lead, station, plan, speed));
            }
        }
        List<SpotAnswer> answers = head.act(tasks);
        List<Time> times = new ArrayList<>();
        int declined = 0;
        int keptOff = 0;
        for (int i = 0; i < plants.size(); i++) {
            List<SpotAnswer> own = answers.subList(i * LEADS.length, (i + 1) * LEADS.length);
            for (SpotAnswer answer : own) {
                if (answer instanceof SpotAnswer.Failed failed) {
                    return new SpotTimes(planned, List.of(), 0, 0, Optional.of(failed.fault()));
                }
            }
            Optional<Action> accepted = own.stream()
                    .map(a -> ((SpotAnswer.Answered) a).action())
                    .filter(a -> a.declined().isEmpty())
                    .findFirst();
            if (accepted.isEmpty()) {
                declined++;
            } else if (interlocks.mayActWithin(station.arm().id(), places(station, plants.get(i), accepted.get()))) {
                times.add(time(plants.get(i), accepted.get()));
            } else {
                keptOff++;
            }
        }
        return new SpotTimes(planned, List.copyOf(times), declined, keptOff, Optional.empty());
    }

    /** A box that holds the tool point whenever the action starts: the action's places, over the whole piece of the reach. */
    private static Box places(Station station, Plant plant, Action action) {
        Box box = point(station, station.sheet().readyToolPoint());
        for (Phase phase : action.phases()) {
            Point3 end = phase.toolPoint();
            for (long x :
                    new long[] {end.x(), plant.piece().least(), plant.piece().most()}) {
                box = box.hull(point(station, new Point3(x, end.y(), end.z())));
            }
        }
        return box;
    }

    private static Box point(Station station, Point3 toolPoint) {
        Point3 p = station.turned() ? toolPoint.turned() : toolPoint;
        return new Box(Interval.at(p.x()), Interval.at(p.y()), Interval.at(p.z()));
    }

    private static LatticeSpotTask task(Plant plant, double lead, Station station, CropPlan plan, double speed) {
        double direction = station.turned() ? 1 : -1;
        Interval heights = station.workHeights();
        double middle =
                Micrometres.toMetres((plant.piece().least() + plant.piece().most()) / 2);
        Point3 position = Point3.ofMetres(
                middle - direction * speed * lead,
                Micrometres.toMetres(station.turned() ? -plant.y() : plant.y()),
                -Micrometres.toMetres((heights.least() + heights.most()) / 2));
        return LatticeSpotTask.nearest(
                position,
                Velocity.ofMetresPerSecond(direction * speed, 0),
                plant.kind(),
                plant.stem(),
                plant.height(),
                plan.soil().texture(),
                plan.soil().moisture());
    }

    private static Time time(Plant plant, Action action) {
        double inGround = action.phases().stream()
                .filter(p -> p.contact().equals(Contact.SOIL) || p.treated().isPresent())
                .mapToDouble(Phase::duration)
                .sum();
        return new Time(Micrometres.toMetres(plant.piece().length()), inGround, action.duration(), plant.kind());
    }
}
