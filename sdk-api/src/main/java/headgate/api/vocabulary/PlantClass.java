package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** What kind of plant a task is about. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class PlantClass extends Term {

    /** An upright broad-leaved weed. */
    public static final PlantClass BROADLEAF = new PlantClass("broadleaf");

    /** A weed whose leaves lie flat on the ground. */
    public static final PlantClass ROSETTE = new PlantClass("rosette");

    /** A grass weed. */
    public static final PlantClass GRASS = new PlantClass("grass");

    /** A crop plant to be set, raised in a plug of soil. */
    public static final PlantClass PLUG = new PlantClass("plug");

    private PlantClass(String name) {
        super("plant class", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static PlantClass of(String name) {
        return new PlantClass(name);
    }
}
