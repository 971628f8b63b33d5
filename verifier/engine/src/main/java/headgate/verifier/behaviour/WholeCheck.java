package headgate.verifier.behaviour;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Looks at an action as a whole.
 *
 * @param trait the trait
 * @param inspect the violation, or empty if the action keeps the trait
 */
record WholeCheck(Trait trait, Function<Asked, Optional<Violation>> inspect) implements ActionCheck {

    @Override
    public long examined(Asked asked) {
        return 1;
    }

    @Override
    public List<Violation> violations(Asked asked) {
        return inspect.apply(asked).stream().toList();
    }
}
