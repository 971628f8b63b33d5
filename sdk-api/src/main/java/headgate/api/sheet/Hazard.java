package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One way in which a head can hurt somebody, and what is done about it.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Hazard {

    private final HazardKind kind;
    private final GuardKind guard;
    private final @Nullable Figure stopTime;

    private Hazard(HazardKind kind, GuardKind guard, @Nullable Figure stopTime) {
        this.kind = kind;
        this.guard = guard;
        this.stopTime = stopTime;
    }

    /**
     * Makes a hazard.
     *
     * @param kind what the hazard is
     * @param guard what keeps people from it
     * @param stopTime longest time from a stop command to rest, run-down included, s; 0 to 600
     * @return the hazard
     * @throws headgate.api.problem.InvalidValueException if the time is out of bounds
     */
    public static Hazard of(HazardKind kind, GuardKind guard, Figure stopTime) {
        ProblemCollector problems = new ProblemCollector("hazard " + kind);
        problems.within("stopTime", stopTime.value(), 0.0, 600.0, "s");
        problems.throwIfAny();
        return new Hazard(kind, guard, stopTime);
    }

    /**
     * Makes a hazard whose stop time nobody has determined; the verifier will not pass it.
     *
     * @param kind what the hazard is
     * @param guard what keeps people from it
     * @return the hazard
     */
    public static Hazard withUnknownStop(HazardKind kind, GuardKind guard) {
        return new Hazard(Objects.requireNonNull(kind, "kind"), Objects.requireNonNull(guard, "guard"), null);
    }

    /** {@return what the hazard is} */
    public HazardKind kind() {
        return kind;
    }

    /** {@return what keeps people from it} */
    public GuardKind guard() {
        return guard;
    }

    /** {@return the longest time from a stop command to rest, s; empty if nobody has determined it} */
    public Optional<Figure> stopTime() {
        return Optional.ofNullable(stopTime);
    }

    private List<@Nullable Object> parts() {
        return Arrays.<@Nullable Object>asList(kind, guard, stopTime);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Hazard that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return kind and guard} */
    @Override
    public String toString() {
        return kind + ", " + guard + ", stops in " + stopTime + " s";
    }
}
