package headgate.verifier.rules.throughput;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.formula.BoundedWait;
import headgate.verifier.formula.ServiceTime;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much of a lane's weeds one arm treats at one speed, in closed form. Weeds come as a Poisson stream; the arm serves
 * one at a time; a weed leaves unless the action starts within its window (M/G/1 with constant patience). The shortest
 * window of all weeds looked at counts for all, so the share is on the low side. Arms that take turns are one server: their
 * streams add, and what each of them may hold up the server with counts in full.
 *
 * @param speed m/s
 * @param arrivals weeds and false alarms that the arm is asked to treat, 1/s
 * @param meanTime mean time that the arm is busy with one, s
 * @param othersLoad share of the time for which the arms that it takes turns with would be busy with theirs; 0 if it waits
 *     for nobody
 * @param longestInGround longest time in the ground, s
 * @param patience shortest start window, s
 * @param sight what is seen of the weeds, and how much of that stands off the crop plants
 * @param allowed share of the seen weeds that may be treated: outside of the protected radius, covered by the reach and
 *     accepted by the head, 0 to 1
 * @param reached share of those whose action starts in time, 0 to 1
 * @param successful share of those reached that do not grow on, 0 to 1; of classes of which nobody knows, all
 * @param keptOff share of the band's weeds that an interlock keeps the tool off, 0 to 1
 * @param examined how many plants were looked at
 * @param fault how the head failed to answer; empty if it answered
 */
record WeedingPace(
        double speed,
        double arrivals,
        double meanTime,
        double othersLoad,
        double longestInGround,
        double patience,
        Sight sight,
        double allowed,
        double reached,
        double successful,
        double keptOff,
        int examined,
        Optional<HeadFault> fault) {

    /** What one arm asks of the server that it is or shares. */
    private record Demand(SpotTimes times, double arrivals, double patience) {

        static Demand of(Turns turns, Station station, CropPlan plan, CropPlan.Weeds weeds, double speed) {
            HeadAnswers head = station.head().answers().orElseThrow();
            SpotTimes times = SpotTimes.weeds(station, turns.interlocks(), head, plan, weeds, speed);
            Sight sight = Sight.of(plan, weeds);
            // Nobody knows that a false alarm is one, nor that a crop plant is none: each costs an action.
            double perSquareMetre = weeds.density() * sight.seen() * sight.unprotected()
                    + weeds.falseAlarms().orElse(0.0)
                    + weeds.cropTaken().orElse(0.0) / (plan.rows().plantSpacing() * weeds.bandWidth());
            double arrivals = speed * turns.lanesOf(station) * weeds.bandWidth() * perSquareMetre * accepted(times);
            double patience = times.times().stream()
                    .mapToDouble(t -> t.patience(speed))
                    .min()
                    .orElse(-1);
            return new Demand(times, arrivals, patience);
        }

        /** Its times as often as they come. */
        List<ServiceTime.Atom> atoms() {
            double weight = arrivals / times.times().size();
            return times.times().stream()
                    .map(t -> new ServiceTime.Atom(t.busy(), weight))
                    .toList();
        }

        boolean asks() {
            return arrivals > 0 && patience >= 0;
        }
    }

    static WeedingPace of(Turns turns, CropPlan plan, CropPlan.Weeds weeds, double speed) {
        Demand own = Demand.of(turns, turns.own(), plan, weeds, speed);
        List<Demand> others = turns.others().stream()
                .map(s -> Demand.of(turns, s, plan, weeds, speed))
                .filter(Demand::asks)
                .toList();
        SpotTimes times = own.times();
        Sight sight = Sight.of(plan, weeds);
        double keptOff = (double) times.keptOff() / times.planned();
        Optional<HeadFault> fault = Stream.concat(
                        Stream.of(times), others.stream().map(Demand::times))
                .flatMap(t -> t.fault().stream())
                .findFirst();
        if (times.times().isEmpty()) {
            return new WeedingPace(speed, 0, 0, 0, 0, 0, sight, 0, 0, 0, keptOff, times.planned(), fault);
        }
        ServiceTime service = ServiceTime.ofSamples(
                times.times().stream().mapToDouble(SpotTimes.Time::busy).toArray());
        return new WeedingPace(
                speed,
                own.arrivals(),
                service.mean(),
                others.stream()
                        .mapToDouble(d ->
                                d.arrivals() * ServiceTime.ofAtoms(d.atoms()).mean())
                        .sum(),
                times.times().stream()
                        .mapToDouble(SpotTimes.Time::inGround)
                        .max()
                        .orElse(0),
                own.patience(),
                sight,
                sight.unprotected() * accepted(times),
                reached(own, others, service),
                times.times().stream()
                        .mapToDouble(t -> weeds.success(t.kind()).orElse(1.0))
                        .average()
                        .orElseThrow(),
                keptOff,
                times.planned(),
                fault);
    }

    /** The share of the band that the reach covers and the head accepts. */
    private static double accepted(SpotTimes times) {
        return (double) times.times().size() / times.planned();
    }

    private static double reached(Demand own, List<Demand> others, ServiceTime service) {
        if (own.patience() < 0) {
            return 0;
        }
        if (others.isEmpty()) {
            return 1 - BoundedWait.of(own.arrivals(), service, own.patience()).mostLoss();
        }
        List<ServiceTime.Atom> atoms = new ArrayList<>(own.atoms());
        double arrivals = own.arrivals();
        double longest = own.patience();
        for (Demand other : others) {
            atoms.addAll(other.atoms());
            arrivals += other.arrivals();
            longest = Math.max(longest, other.patience());
        }
        ServiceTime all = ServiceTime.ofAtoms(atoms);
        double rho = arrivals * all.mean();
        double h = waiting(1 - BoundedWait.of(arrivals, all, own.patience()).mostLoss(), rho);
        double most = waiting(1 - BoundedWait.of(arrivals, all, longest).leastLoss(), rho);
        // Whoever waits longest lets the most work pile up: its share of time is what the others find.
        return h / (1 + rho * most);
    }

    /** H of the share s that a queue with one patience serves, s = H / (1 + rho H). */
    private static double waiting(double served, double rho) {
        double idle = 1 - rho * served;
        return idle <= 0 ? Double.MAX_VALUE : served / idle;
    }

    /** The share of the target weeds that is killed: seen times allowed times reached times successful. */
    double coverage() {
        return sight.seen() * allowed * reached * successful;
    }
}
