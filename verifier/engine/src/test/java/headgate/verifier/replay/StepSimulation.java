package headgate.verifier.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A second simulation, in fixed steps of time, written from the physics alone: at every step it moves the plants, looks
 * which of them are in the cameras' band, and lets every arm that is free begin with the plant that is due first among
 * those whose tool could now be set off so that it touches the ground only while the plant is in reach. It shares nothing
 * with the replay but the statement of the case.
 */
final class StepSimulation {

    /** A plant: where it stands and how far it spreads, m, and the head's times for it, s. */
    record Weed(double x, double y, double radius, double approach, double inGround, double back) {}

    /** An arm: its mount, m; a reach of two rectangles side by side, m. */
    record Gripping(double mountX, double mountY) {}

    /** Far and near end of the reach ahead of the mount at a lateral offset: a wide half and a narrow half. */
    static double[] reach(double offset) {
        if (offset < -0.1 || offset > 0.1) {
            return new double[0];
        }
        return offset < 0 ? new double[] {0.4, 0.1} : new double[] {0.3, 0.2};
    }

    private final double speed;
    private final List<Gripping> arms;
    private final List<Weed> weeds;
    private final double bandFront;
    private final double latency;
    private final double frame;

    StepSimulation(
            double speed, List<Gripping> arms, List<Weed> weeds, double bandFront, double latency, double frame) {
        this.speed = speed;
        this.arms = arms;
        this.weeds = weeds;
        this.bandFront = bandFront;
        this.latency = latency;
        this.frame = frame;
    }

    /** Runs it and says when the action for each treated plant began, s. */
    Map<Integer, Double> run(double from, double to, double step) {
        Map<Integer, Double> begun = new HashMap<>();
        Map<Integer, Double> entered = new HashMap<>();
        Set<Integer> taken = new HashSet<>();
        double[] free = new double[arms.size()];
        java.util.Arrays.fill(free, from);
        double gone = arms.stream().mapToDouble(Gripping::mountX).min().orElseThrow();
        int first = 0;
        for (long tick = 0; from + tick * step <= to; tick++) {
            double now = from + tick * step;
            List<Integer> known = new ArrayList<>();
            for (int i = first; i < weeds.size(); i++) {
                double ahead = weeds.get(i).x() - speed * now;
                if (ahead > bandFront) {
                    break;
                }
                if (ahead < gone) {
                    first = i + 1;
                    continue;
                }
                if (ahead + weeds.get(i).radius() <= bandFront) {
                    entered.putIfAbsent(i, now);
                }
                if (!taken.contains(i) && entered.containsKey(i) && now >= entered.get(i) + latency + frame) {
                    known.add(i);
                }
            }
            for (int a = 0; a < arms.size(); a++) {
                if (now < free[a]) {
                    continue;
                }
                int best = -1;
                double bestDue = Double.POSITIVE_INFINITY;
                for (int i : known) {
                    if (taken.contains(i) || !mayBegin(arms.get(a), weeds.get(i), now)) {
                        continue;
                    }
                    double due = due(arms.get(a), weeds.get(i));
                    if (due < bestDue) {
                        best = i;
                        bestDue = due;
                    }
                }
                if (best >= 0) {
                    Weed weed = weeds.get(best);
                    taken.add(best);
                    begun.put(best, now);
                    free[a] = now + weed.approach() + weed.inGround() + weed.back();
                }
            }
        }
        return begun;
    }

    private boolean mayBegin(Gripping arm, Weed weed, double now) {
        double[] reach = reach(weed.y() - arm.mountY());
        if (reach.length == 0) {
            return false;
        }
        double atContact = weed.x() - arm.mountX() - speed * (now + weed.approach());
        double atEnd = atContact - speed * weed.inGround();
        return atContact <= reach[0] && atEnd >= reach[1];
    }

    /** When its action would be over if it began as late as it may. */
    private double due(Gripping arm, Weed weed) {
        double leaves = (weed.x() - arm.mountX() - reach(weed.y() - arm.mountY())[1]) / speed;
        return leaves + weed.back();
    }
}
