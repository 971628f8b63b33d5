package headgate.verifier.rules.mount;

import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Carriages on which one arm differs from the others. */
final class MountTestCarriage {

    private MountTestCarriage() {}

    /** Changes arm a3, the third of four. */
    static Cases withOddArm(Cases cases, UnaryOperator<Arm> change) {
        return cases.carriage(c -> {
            List<Arm> arms = new ArrayList<>(c.arms());
            arms.set(2, change.apply(arms.get(2)));
            return new Carriage(
                    c.name(), c.serial(), c.beams(), arms, c.structure(), c.ground(), c.stopping(), c.turning());
        });
    }
}
