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
 * @param mountings which head is or may be on which arm; several for one arm are alternatives
 */
public record Case(Loaded<Carriage> carriage, Loaded<CropPlan> plan, Loaded<Policy> policy, List<Mounting> mountings) {

    /**
     * A head on an arm.
     *
     * @param armId the arm
     * @param head the head
     * @param turned true if it is fitted turned by 180 degrees about the vertical axis
     * @param duty what it is there for
     */
    public record Mounting(String armId, HeadUnderTest head, boolean turned, Duty duty) {

        /**
         * A head that may be fitted to an arm if the plan needs it.
         *
         * @param armId the arm
         * @param head the head
         * @param turned true if it is turned
         */
        public Mounting(String armId, HeadUnderTest head, boolean turned) {
            this(armId, head, turned, new Duty.AsNeeded());
        }
    }

    /** What a head is on an arm for. */
    public sealed interface Duty {

        /** It is fitted only if the plan needs the arm; otherwise the arm stays empty. */
        record AsNeeded() implements Duty {}

        /** It is fitted. It works where that is best, or waits lifted. */
        record Fitted() implements Duty {}

        /**
         * It is fitted and works on these lanes.
         *
         * @param numbers their numbers, ascending, one next to the other
         */
        record OnLanes(List<Integer> numbers) implements Duty {

            /** Copies the list. */
            public OnLanes {
                numbers = List.copyOf(numbers);
            }
        }

        /** It is fitted and waits lifted. */
        record Waits() implements Duty {}
    }

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
     * Changes which head is on which arm.
     *
     * @param changed the mountings
     * @return the changed case
     */
    public Case withMountings(List<Mounting> changed) {
        return new Case(carriage, plan, policy, changed);
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
                            return new Mounting(m.armId(), changed[0], m.turned(), m.duty());
                        })
                        .toList());
    }
}
