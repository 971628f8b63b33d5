package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** A way in which a head can hurt somebody. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class HazardKind extends Term {

    /** A gap that closes. */
    public static final HazardKind CRUSHING = new HazardKind("crushing");

    /** A blade or a sharp edge. */
    public static final HazardKind CUTTING = new HazardKind("cutting");

    /** A tine or a point. */
    public static final HazardKind PIERCING = new HazardKind("piercing");

    /** A roller, belt or chain. */
    public static final HazardKind DRAWING_IN = new HazardKind("drawing-in");

    /** Stones or parts that fly off. */
    public static final HazardKind THROWN_OBJECTS = new HazardKind("thrown-objects");

    /** A spring, a pressure vessel or a raised mass. */
    public static final HazardKind STORED_ENERGY = new HazardKind("stored-energy");

    private HazardKind(String name) {
        super("hazard", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static HazardKind of(String name) {
        return new HazardKind(name);
    }
}
