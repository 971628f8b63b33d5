package headgate.verifier.check;

import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.Loaded;
import headgate.runtime.policy.Policy;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What is checked: heads on arms of a carriage, for a crop plan, held to a policy.
 *
 * @param carriage the carriage
 * @param plan the crop plan
 * @param policy the limits
 * @param mountings which head may be used on which arm; arms that the plan does not need stay empty
 */
public record Case(Loaded<Carriage> carriage, Loaded<CropPlan> plan, Loaded<Policy> policy, List<Mounting> mountings) {

    /**
     * A head on an arm.
     *
     * @param armId the arm
     * @param head the head
     * @param turned true if it is fitted turned by 180 degrees about the vertical axis
     */
    public record Mounting(String armId, HeadUnderTest head, boolean turned) {}

    /** Copies the list. */
    public Case {
        mountings = List.copyOf(mountings);
    }

    /**
     * One head on every arm, not turned.
     *
     * @param head the head
     * @param carriage the carriage
     * @param plan the crop plan
     * @param policy the limits
     * @return the case
     */
    public static Case ofOneHead(
            HeadUnderTest head, Loaded<Carriage> carriage, Loaded<CropPlan> plan, Loaded<Policy> policy) {
        return new Case(
                carriage,
                plan,
                policy,
                carriage.value().arms().stream()
                        .map(a -> new Mounting(a.id(), head, false))
                        .toList());
    }

    /** {@return the different heads of the case, in the order in which they are mounted} */
    public List<HeadUnderTest> heads() {
        return mountings.stream().map(Mounting::head).distinct().toList();
    }

    /**
     * Changes the crop plan.
     *
     * @param change the change
     * @return the changed case
     */
    public Case withPlan(UnaryOperator<CropPlan> change) {
        return new Case(carriage, plan.with(change), policy, mountings);
    }

    /**
     * Changes the carriage.
     *
     * @param change the change
     * @return the changed case
     */
    public Case withCarriage(UnaryOperator<Carriage> change) {
        return new Case(carriage.with(change), plan, policy, mountings);
    }

    /**
     * Changes every head of one id.
     *
     * @param headId the id
     * @param change the change
     * @return the changed case
     */
    public Case withHead(String headId, UnaryOperator<HeadUnderTest> change) {
        HeadUnderTest[] changed = new HeadUnderTest[1];
        return new Case(
                carriage,
                plan,
                policy,
                mountings.stream()
                        .map(m -> {
                            if (!m.head().id().equals(headId)) {
                                return m;
                            }
                            if (changed[0] == null) {
                                changed[0] = change.apply(m.head());
                            }
                            return new Mounting(m.armId(), changed[0], m.turned());
                        })
                        .toList());
    }
}
