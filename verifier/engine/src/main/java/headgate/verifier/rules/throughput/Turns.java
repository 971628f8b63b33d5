package headgate.verifier.rules.throughput;

import headgate.verifier.check.Case;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The arms that an interlock makes wait for one another. They are judged as if only one of them acted at a time, each plant
 * in the order in which it asks. A carriage can always work like that, so what is worked out is reached; where two
 * actions may coincide it does better.
 *
 * @param own the arm that is judged
 * @param all the arms that take turns, this one among them
 * @param interlocks all interlocks of the case
 * @param setup the set-up of the case
 */
record Turns(Station own, List<Station> all, Interlocks interlocks, Setup setup) {

    /** Copies the list. */
    Turns {
        all = List.copyOf(all);
    }

    static Turns of(Case subject, Station own) {
        Interlocks interlocks = Interlocks.of(subject);
        Set<String> arms = interlocks.inTurnWith(own.arm().id());
        List<Station> all = Setup.of(subject).stations().stream()
                .filter(s -> arms.contains(s.arm().id()))
                .toList();
        return new Turns(own, all, interlocks, Setup.of(subject));
    }

    /** The arms that it waits for. */
    List<Station> others() {
        return all.stream().filter(s -> !s.equals(own)).toList();
    }

    /** How many lanes an arm has to itself. */
    double lanesOf(Station station) {
        return setup.lanesOf(station);
    }

    /** Whether it waits for nobody. */
    boolean alone() {
        return all.size() == 1;
    }

    /** The arms' names, to be read after "with". */
    String othersText() {
        return others().stream().map(s -> "arm " + s.arm().id()).collect(Collectors.joining(", "));
    }
}
