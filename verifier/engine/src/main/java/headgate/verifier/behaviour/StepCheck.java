package headgate.verifier.behaviour;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;

/**
 * Looks at the phases of an action one by one.
 *
 * @param trait the trait
 * @param concerns whether a phase is looked at
 * @param inspect the violation, or empty if the phase keeps the trait
 */
record StepCheck(Trait trait, BiPredicate<Asked, Step> concerns, BiFunction<Asked, Step, Optional<Violation>> inspect)
        implements ActionCheck {

    @Override
    public long examined(Asked asked) {
        return asked.steps().stream().filter(s -> concerns.test(asked, s)).count();
    }

    @Override
    public List<Violation> violations(Asked asked) {
        return asked.steps().stream()
                .filter(s -> concerns.test(asked, s))
                .flatMap(s -> inspect.apply(asked, s).stream())
                .toList();
    }
}
