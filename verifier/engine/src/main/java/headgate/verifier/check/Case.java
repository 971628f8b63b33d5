package headgate.verifier.check;

import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.Loaded;
import headgate.runtime.policy.Policy;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * What is checked: heads on arms of a carriage, for a crop plan, held to a policy. It may hold a stand of plants that it is replayed
 * with. Two cases are equal if all of these are.
 *
 * <p>What several rules work out of a case (the set-up, how a head behaves) is worked out once and kept with it; since a
 * case does not change, that changes nothing but the time.
 */
public final class Case {

    private final Loaded<Carriage> carriage;
    private final Loaded<CropPlan> plan;
    private final Loaded<Policy> policy;
    private final List<Mounting> mountings;
    private final Optional<Stand> stand;
    private final Map<Class<?>, Object> derived = new ConcurrentHashMap<>();

    /**
     * Makes a case.
     *
     * @param carriage the carriage
     * @param plan the crop plan
     * @param policy the limits
     * @param mountings which head is or may be on which arm; several for one arm are alternatives
     */
    public Case(Loaded<Carriage> carriage, Loaded<CropPlan> plan, Loaded<Policy> policy, List<Mounting> mountings) {
        this(carriage, plan, policy, mountings, Optional.empty());
    }

    private Case(
            Loaded<Carriage> carriage,
            Loaded<CropPlan> plan,
            Loaded<Policy> policy,
            List<Mounting> mountings,
            Optional<Stand> stand) {
        this.carriage = carriage;
        this.plan = plan;
        this.policy = policy;
        this.mountings = List.copyOf(mountings);
        this.stand = stand;
    }

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

        /**
         * It is fitted only if the plan needs the arm, and then on no more than so many lanes; and no more of this head than
         * there are. Every mounting of one head says the same number.
         *
         * @param lanes the most lanes, at least 1
         * @param inAll how many of this head there are
         */
        record UpTo(int lanes, int inAll) implements Duty {}

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

    /** {@return the carriage} */
    public Loaded<Carriage> carriage() {
        return carriage;
    }

    /** {@return the crop plan} */
    public Loaded<CropPlan> plan() {
        return plan;
    }

    /** {@return the limits} */
    public Loaded<Policy> policy() {
        return policy;
    }

    /** {@return which head may be used on which arm} */
    public List<Mounting> mountings() {
        return mountings;
    }

    /** {@return the plants that it is replayed with; empty if it is judged without a stand} */
    public Optional<Stand> stand() {
        return stand;
    }

    /**
     * Replays the case with plants.
     *
     * @param plants the plants
     * @return the case with them
     */
    public Case withStand(Stand plants) {
        return new Case(carriage, plan, policy, mountings, Optional.of(plants));
    }

    /**
     * Works something out of the case, once.
     *
     * @param <T> its type, of which a case keeps one value
     * @param type its type
     * @param maker a pure function of the case
     * @return the value
     */
    public <T> T derived(Class<T> type, Function<Case, T> maker) {
        Object known = derived.get(type);
        if (known == null) {
            known = maker.apply(this);
            derived.put(type, known);
        }
        return type.cast(known);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Case that
                && carriage.equals(that.carriage)
                && plan.equals(that.plan)
                && policy.equals(that.policy)
                && mountings.equals(that.mountings)
                && stand.equals(that.stand);
    }

    @Override
    public int hashCode() {
        return Objects.hash(carriage, plan, policy, mountings, stand);
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
        return new Case(carriage, plan.with(change), policy, mountings, stand);
    }

    /**
     * Changes the carriage.
     *
     * @param change the change
     * @return the changed case
     */
    public Case withCarriage(UnaryOperator<Carriage> change) {
        return new Case(carriage.with(change), plan, policy, mountings, stand);
    }

    /**
     * Changes which head is on which arm.
     *
     * @param changed the mountings
     * @return the changed case
     */
    public Case withMountings(List<Mounting> changed) {
        return new Case(carriage, plan, policy, changed, stand);
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
                        .toList(),
                stand);
    }
}
