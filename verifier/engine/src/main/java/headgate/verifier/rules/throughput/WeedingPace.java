package headgate.verifier.rules.throughput;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.formula.BoundedWait;
import headgate.verifier.formula.ServiceTime;
import headgate.verifier.setup.Station;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of a lane's weeds one arm treats at one speed, in closed form. Weeds come as a Poisson stream; the arm serves
 * one at a time; a weed leaves unless the action starts within its window (M/G/1 with constant patience). The shortest
 * window of all weeds looked at counts for all, so the share is on the low side.
 *
 * @param speed m/s
 * @param arrivals weeds and false alarms that the arm is asked to treat, 1/s
 * @param meanTime mean time that the arm is busy with one, s
 * @param longestInGround longest time in the ground, s
 * @param patience shortest start window, s
 * @param recall share of weeds that is seen, 0 to 1
 * @param unprotected share of the band that lies outside of the crop plants' protected radius, 0 to 1
 * @param allowed share of the band's weeds that may be treated: outside of the protected radius, covered by the reach and
 *     accepted by the head, 0 to 1
 * @param reached share of those whose action starts in time, 0 to 1
 * @param examined how many plants were looked at
 * @param fault how the head failed to answer; empty if it answered
 */
record WeedingPace(
        double speed,
        double arrivals,
        double meanTime,
        double longestInGround,
        double patience,
        double recall,
        double unprotected,
        double allowed,
        double reached,
        int examined,
        Optional<HeadFault> fault) {

    static WeedingPace of(Station station, HeadAnswers head, CropPlan plan, CropPlan.Weeds weeds, double speed) {
        SpotTimes times = SpotTimes.weeds(station, head, plan, weeds, speed);
        double recall = weeds.recall().orElse(1.0);
        double unprotected = ProtectedGround.shareOutside(
                plan.crop().protectedRadius(), plan.rows().plantSpacing(), weeds.bandWidth());
        double allowed = unprotected * times.times().size() / times.planned();
        double perSquareMetre = weeds.density() * recall + weeds.falseAlarms().orElse(0.0);
        double arrivals = speed * station.lanes().size() * weeds.bandWidth() * perSquareMetre * allowed;
        OptionalDouble patience =
                times.times().stream().mapToDouble(t -> t.patience(speed)).min();
        if (patience.isEmpty()) {
            return new WeedingPace(speed, 0, 0, 0, 0, recall, unprotected, 0, 0, times.planned(), times.fault());
        }
        ServiceTime service = ServiceTime.ofSamples(
                times.times().stream().mapToDouble(SpotTimes.Time::busy).toArray());
        double reached = patience.getAsDouble() < 0
                ? 0
                : 1 - BoundedWait.of(arrivals, service, patience.getAsDouble()).mostLoss();
        return new WeedingPace(
                speed,
                arrivals,
                service.mean(),
                times.times().stream()
                        .mapToDouble(SpotTimes.Time::inGround)
                        .max()
                        .orElse(0),
                patience.getAsDouble(),
                recall,
                unprotected,
                allowed,
                reached,
                times.planned(),
                times.fault());
    }

    /** The share of the target weeds that is treated: seen times allowed times reached. */
    double coverage() {
        return recall * allowed * reached;
    }
}
