package headgate.verifier.stand;

/** Where weeds stand. Each pattern is the same all over the ground: no edge of a plot thins it out. */
public sealed interface WeedPattern permits RandomWeeds, ClumpedWeeds, QuadratWeeds {

    /** {@return the mean number of weeds per square metre} */
    double density();

    /** Draws places over a plot, in the order of travel. */
    Places over(Ground ground, Draws draws);
}
