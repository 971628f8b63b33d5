package headgate.verifier.rules.throughput;

import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.remedy.PutMoreArms;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Arms that have nothing to do and could help on a lane of an arm of another beam. */
final class SpareArms {

    private SpareArms() {}

    /**
     * Finds one more arm for as many lanes as there are spare arms for, each the arm whose rail lies nearest.
     *
     * @param subject the case
     * @return the change; empty if no arm is to spare
     */
    static Optional<PutMoreArms> of(Case subject) {
        Setup setup = Setup.of(subject);
        Set<String> busy = new HashSet<>();
        setup.stations().forEach(s -> busy.add(s.arm().id()));
        List<PutMoreArms.Put> more = new ArrayList<>();
        List<PutMoreArms.Put> atWork = new ArrayList<>();
        for (Station station : setup.stations()) {
            mounting(subject, station)
                    .ifPresent(m -> atWork.add(new PutMoreArms.Put(
                            m, station.lanes().stream().map(Lane::number).toList())));
            for (Lane lane : station.lanes()) {
                Optional<Case.Mounting> spare = subject.mountings().stream()
                        .filter(m -> !busy.contains(m.armId()) && m.duty() instanceof Case.Duty.AsNeeded)
                        .filter(m -> arm(subject, m)
                                .map(a -> !a.beam().equals(station.arm().beam()))
                                .orElse(false))
                        .filter(m -> distance(subject, m, lane) == 0)
                        .min(Comparator.comparingLong(m -> fromMiddle(subject, m, lane)));
                if (spare.isPresent()) {
                    busy.add(spare.get().armId());
                    more.add(new PutMoreArms.Put(spare.get(), List.of(lane.number())));
                }
            }
        }
        return more.isEmpty() ? Optional.empty() : Optional.of(new PutMoreArms(more, atWork));
    }

    private static Optional<Case.Mounting> mounting(Case subject, Station station) {
        return subject.mountings().stream()
                .filter(m -> m.armId().equals(station.arm().id())
                        && m.head().equals(station.head())
                        && m.turned() == station.turned())
                .findFirst();
    }

    private static Optional<Arm> arm(Case subject, Case.Mounting mounting) {
        return subject.carriage().value().arm(mounting.armId());
    }

    /** How far the middle of a lane lies outside of an arm's rail, micrometres. */
    private static long distance(Case subject, Case.Mounting mounting, Lane lane) {
        return arm(subject, mounting)
                .map(a -> Math.max(
                        0,
                        Math.max(
                                a.shift().least() - lane.y(),
                                lane.y() - a.shift().most())))
                .orElse(Long.MAX_VALUE);
    }

    private static long fromMiddle(Case subject, Case.Mounting mounting, Lane lane) {
        return arm(subject, mounting)
                .map(a -> Math.abs(a.shift().least() + a.shift().most() - 2 * lane.y()))
                .orElse(Long.MAX_VALUE);
    }
}
