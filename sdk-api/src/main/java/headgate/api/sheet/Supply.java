package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.vocabulary.SupplyKind;
import java.util.List;

/**
 * Something that a head uses up, and how long it takes to refill.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Supply {

    private final SupplyKind kind;
    private final double capacity;
    private final double perAction;
    private final Figure refillTime;

    private Supply(SupplyKind kind, double capacity, double perAction, Figure refillTime) {
        this.kind = kind;
        this.capacity = capacity;
        this.perAction = perAction;
        this.refillTime = refillTime;
    }

    /**
     * Makes a supply.
     *
     * @param kind what it is
     * @param capacity how much a full head holds, a count or litres; more than 0, at most 1 000 000
     * @param perAction how much one action uses; 0 up to the capacity
     * @param refillTime how long one refill takes, s; 0 to 86 400
     * @return the supply
     * @throws headgate.api.problem.InvalidValueException if a figure is out of bounds
     */
    public static Supply of(SupplyKind kind, double capacity, double perAction, Figure refillTime) {
        ProblemCollector problems = new ProblemCollector("supply " + kind);
        problems.within("capacity", capacity, 1e-6, 1e6, "");
        problems.within("perAction", perAction, 0.0, 1e6, "");
        problems.demand(!(perAction > capacity), "perAction", perAction, "must not exceed the capacity");
        problems.within("refillTime", refillTime.value(), 0.0, 86_400.0, "s");
        problems.throwIfAny();
        return new Supply(kind, capacity, perAction, refillTime);
    }

    /** {@return what it is} */
    public SupplyKind kind() {
        return kind;
    }

    /** {@return how much a full head holds: a count, or litres for liquids} */
    public double capacity() {
        return capacity;
    }

    /** {@return how much one action uses} */
    public double perAction() {
        return perAction;
    }

    /** {@return how long one refill takes, s} */
    public Figure refillTime() {
        return refillTime;
    }

    private List<Object> parts() {
        return List.of(kind, capacity, perAction, refillTime);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Supply that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return kind and capacity} */
    @Override
    public String toString() {
        return kind + " " + capacity;
    }
}
