package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import java.util.Map;
import java.util.Optional;

/** How a figure is known. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Basis {

    /** Measured on a head of this hardware revision. */
    public static final Basis MEASURED = new Basis("measured");

    /** Calculated from drawings or data sheets. */
    public static final Basis CALCULATED = new Basis("calculated");

    /** Assumed: nobody has measured or calculated it yet. */
    public static final Basis ASSUMED = new Basis("assumed");

    private static final Map<String, Basis> BY_NAME =
            Map.of(MEASURED.name, MEASURED, CALCULATED.name, CALCULATED, ASSUMED.name, ASSUMED);

    private final String name;

    private Basis(String name) {
        this.name = name;
    }

    /**
     * Finds a basis by its name.
     *
     * @param name {@code measured}, {@code calculated} or {@code assumed}
     * @return the basis, or empty if the name is another
     */
    public static Optional<Basis> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    /** {@return the name} */
    public String name() {
        return name;
    }

    /** {@return the name} */
    @Override
    public String toString() {
        return name;
    }
}
