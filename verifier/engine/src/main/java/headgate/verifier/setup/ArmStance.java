package headgate.verifier.setup;

import headgate.api.shape.Point;
import headgate.runtime.carriage.Arm;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An arm with what it fills in one stance and how far it may be from where it is set.
 *
 * @param arm the arm
 * @param station the arm with its head; empty if it carries none
 * @param mount where its mount is set, carriage frame
 * @param stance which stance, in words that follow the arm's name
 * @param space what it fills, carriage frame, z over level ground
 * @param allowance how far it may be from there
 */
public record ArmStance(
        Arm arm, Optional<Station> station, Point mount, String stance, Occupied space, ArmAllowance allowance) {

    /**
     * The stances of an arm that a neighbour can meet: at work, and on the way from work to lifted; or waiting lifted.
     *
     * @param station the arm with its head
     * @param coverageFactor the factor k that turns a standard deviation into a bound
     * @return the stances
     */
    public static List<ArmStance> of(Station station, double coverageFactor) {
        ArmAllowance allowance = ArmAllowance.of(station, coverageFactor);
        Optional<Station> held = Optional.of(station);
        if (!station.isAtWork()) {
            Occupied space = StationSpace.waiting(
                    station.arm(), Optional.of(station.sheet()), station.turned(), station.mount());
            return List.of(new ArmStance(station.arm(), held, station.mount(), "waiting lifted", space, allowance));
        }
        return List.of(
                new ArmStance(station.arm(), held, station.mount(), "at work", StationSpace.atWork(station), allowance),
                new ArmStance(
                        station.arm(), held, station.mount(), "lifting", StationSpace.lifting(station), allowance));
    }

    /**
     * The stance of an arm without a head.
     *
     * @param empty the arm
     * @param coverageFactor the factor k
     * @return the stance
     */
    public static ArmStance of(EmptyArm empty, double coverageFactor) {
        return new ArmStance(
                empty.arm(),
                Optional.empty(),
                empty.mount(),
                "without a head",
                StationSpace.waiting(empty.arm(), Optional.empty(), false, empty.mount()),
                ArmAllowance.of(empty.arm(), Optional.empty(), coverageFactor));
    }

    /**
     * The stances of every arm of a set-up, arm by arm from the right to the left.
     *
     * @param setup the set-up
     * @param coverageFactor the factor k
     * @return a list for each arm
     */
    public static List<List<ArmStance>> all(Setup setup, double coverageFactor) {
        List<List<ArmStance>> all = new ArrayList<>();
        setup.stations().forEach(s -> all.add(of(s, coverageFactor)));
        setup.waiting().forEach(s -> all.add(of(s, coverageFactor)));
        setup.empty().forEach(e -> all.add(List.of(of(e, coverageFactor))));
        all.sort(
                Comparator.comparingLong((List<ArmStance> s) -> s.get(0).mount().y())
                        .thenComparing(s -> s.get(0).arm().id()));
        return List.copyOf(all);
    }

    /** {@return how reports name it} */
    public String label() {
        return "arm " + arm.id() + " " + stance;
    }
}
