package headgate.verifier.rules.behaviour;

import headgate.verifier.behaviour.Tally;
import headgate.verifier.check.Case;
import headgate.verifier.check.FittedHead;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the probes of each head of a case found: looked at once, for all rules on behaviour. Confined to one thread. */
final class Tallies {

    private final Map<FittedHead, List<Tally>> known = new HashMap<>();

    private Tallies() {}

    static Tallies of(Case subject) {
        return subject.derived(Tallies.class, c -> new Tallies());
    }

    List<Tally> about(FittedHead fitted) {
        return known.computeIfAbsent(fitted, Examination::tallies);
    }
}
