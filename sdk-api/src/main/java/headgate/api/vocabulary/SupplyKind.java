package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** What a head uses up and somebody refills. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class SupplyKind extends Term {

    /** Plug plants, counted. */
    public static final SupplyKind PLUGS = new SupplyKind("plugs");

    /** Water, litres. */
    public static final SupplyKind WATER = new SupplyKind("water");

    /** Room for pulled weeds, counted. */
    public static final SupplyKind COLLECTED_WEEDS = new SupplyKind("collected-weeds");

    private SupplyKind(String name) {
        super("supply", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static SupplyKind of(String name) {
        return new SupplyKind(name);
    }
}
