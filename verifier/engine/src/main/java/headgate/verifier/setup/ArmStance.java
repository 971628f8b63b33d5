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
 * @param kind which stance
 * @param space what it fills, carriage frame, z over level ground
 * @param allowance how far it may be from there
 */
public record ArmStance(
        Arm arm, Optional<Station> station, Point mount, Kind kind, Occupied space, ArmAllowance allowance) {

    /** A stance. */
    public enum Kind {
        /** Anywhere in any posture but stowed, at any height of work: acting, or stuck there. */
        WORK("at work"),
        /** Ready, anywhere between work and lifted. */
        LIFTING("lifting"),
        /** Lifted, ready or stowed, after work or after a fault. */
        PARKED("parked"),
        /** Lifted for the whole pass, with a head that does not work. */
        WAITING("waiting lifted"),
        /** Lifted, with no head. */
        EMPTY("without a head");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** {@return the words that follow the arm's name} */
        public String label() {
            return label;
        }
    }

    /**
     * The stances of an arm that a neighbour can meet: at work, on the way from work to lifted, and parked; or waiting
     * lifted.
     *
     * @param station the arm with its head
     * @param coverageFactor the factor k that turns a standard deviation into a bound
     * @return the stances
     */
    public static List<ArmStance> of(Station station, double coverageFactor) {
        ArmAllowance allowance = ArmAllowance.of(station, coverageFactor);
        Occupied lifted = StationSpace.parked(station);
        if (!station.isAtWork()) {
            return List.of(of(station, Kind.WAITING, lifted, allowance));
        }
        return List.of(
                of(station, Kind.WORK, StationSpace.atWork(station), allowance),
                of(station, Kind.LIFTING, StationSpace.lifting(station), allowance),
                of(station, Kind.PARKED, lifted, allowance));
    }

    private static ArmStance of(Station station, Kind kind, Occupied space, ArmAllowance allowance) {
        return new ArmStance(station.arm(), Optional.of(station), station.mount(), kind, space, allowance);
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
                Kind.EMPTY,
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
        return "arm " + arm.id() + " " + kind.label();
    }
}
