package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** How heavy the soil is, in the three textures of the draft tables of ASAE D497. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class SoilClass extends Term {

    /** Fine textured: clay. */
    public static final SoilClass FINE = new SoilClass("fine");

    /** Medium textured: loam. */
    public static final SoilClass MEDIUM = new SoilClass("medium");

    /** Coarse textured: sand. */
    public static final SoilClass COARSE = new SoilClass("coarse");

    private SoilClass(String name) {
        super("soil", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static SoilClass of(String name) {
        return new SoilClass(name);
    }
}
