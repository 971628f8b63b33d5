package headgate.verifier.session;

import headgate.verifier.check.Case;
import headgate.verifier.check.Family;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.fitting.FittingSearch;
import headgate.verifier.rules.RuleBook;
import headgate.verifier.rules.throughput.KeepsPace;
import headgate.verifier.setup.Station;
import java.util.List;

/** What the rule book says of heads while a search puts them on arms: by the families that look at one arm alone. */
enum RuleOpinion implements FittingSearch.Opinion {
    INSTANCE;

    private static final List<Rule> ALONE = RuleBook.all().stream()
            .filter(r -> r.info().family() == Family.MOUNT || r.info().family() == Family.PLAN)
            .toList();

    @Override
    public boolean suits(Case alone) {
        return ALONE.stream().flatMap(r -> r.check(alone).stream()).noneMatch(Finding::breaksFit);
    }

    @Override
    public List<Station> tooSlow(Case subject) {
        return KeepsPace.tooSlow(subject);
    }
}
