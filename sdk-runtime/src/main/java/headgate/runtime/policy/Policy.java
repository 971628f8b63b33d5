package headgate.runtime.policy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The limits that rules hold a case to, each with its source.
 *
 * @param armGap least gap between two arms after all tolerances, m
 * @param canopyGap least gap from a lifted or ready head to the canopy, m
 * @param coverageFactor the factor k that turns a standard deviation into a bound
 * @param massUse largest share of an arm's payload, 0 to 1
 * @param momentUse largest share of an arm's moment limits, 0 to 1
 * @param frameGap least gap from an arm or a head to the frame after all tolerances, m
 * @param groundGap least gap from a lifted head to the ground, m
 * @param wheelGap least gap from a tyre to the canopy, m
 * @param shockAtWork factor on weight for shocks at work
 * @param shockInTransport factor on weight for shocks on the road
 * @param boltUse largest share of a bolt's proof load, 0 to 1
 * @param powerUse largest share of an arm's electric supply, 0 to 1
 * @param sensorShadow largest share of a sensor's band that a head may hide, 0 to 1
 * @param cropLoss largest share of crop plants that may be lost, 0 to 1
 * @param confidence level of confidence of a bound over seeds, 0 to 1
 * @param transportWidth largest width on the road, m
 * @param transportHeight largest height on the road, m
 * @param transportGroundGap least gap to the ground on the road, m
 * @param armsInTurn most arms that may have to wait for one another so as not to meet; 1 allows no interlocks
 */
public record Policy(
        Limit armGap,
        Limit canopyGap,
        Limit coverageFactor,
        Limit massUse,
        Limit momentUse,
        Limit frameGap,
        Limit groundGap,
        Limit wheelGap,
        Limit shockAtWork,
        Limit shockInTransport,
        Limit boltUse,
        Limit powerUse,
        Limit sensorShadow,
        Limit cropLoss,
        Limit confidence,
        Limit transportWidth,
        Limit transportHeight,
        Limit transportGroundGap,
        Limit armsInTurn) {

    /**
     * A limit.
     *
     * @param value the limit, SI
     * @param source where it comes from: a published source, "common practice, no source", or who decided it
     */
    public record Limit(double value, String source) {}

    /**
     * A limit that is looser than another policy's.
     *
     * @param name the limit's name in the file, such as {@code armGap}
     * @param limit the looser limit
     * @param other the other policy's limit
     */
    public record Looser(String name, Limit limit, Limit other) {}

    /** A limit's name, the side on which it is strict, and how to get it. */
    private record Entry(String name, boolean moreIsStricter, Function<Policy, Limit> get) {}

    private static final List<Entry> ENTRIES = List.of(
            new Entry("armGap", true, Policy::armGap),
            new Entry("canopyGap", true, Policy::canopyGap),
            new Entry("coverageFactor", true, Policy::coverageFactor),
            new Entry("massUse", false, Policy::massUse),
            new Entry("momentUse", false, Policy::momentUse),
            new Entry("frameGap", true, Policy::frameGap),
            new Entry("groundGap", true, Policy::groundGap),
            new Entry("wheelGap", true, Policy::wheelGap),
            new Entry("shockAtWork", true, Policy::shockAtWork),
            new Entry("shockInTransport", true, Policy::shockInTransport),
            new Entry("boltUse", false, Policy::boltUse),
            new Entry("powerUse", false, Policy::powerUse),
            new Entry("sensorShadow", false, Policy::sensorShadow),
            new Entry("cropLoss", false, Policy::cropLoss),
            new Entry("confidence", true, Policy::confidence),
            new Entry("transportWidth", false, Policy::transportWidth),
            new Entry("transportHeight", false, Policy::transportHeight),
            new Entry("transportGroundGap", true, Policy::transportGroundGap),
            new Entry("armsInTurn", false, Policy::armsInTurn));

    /** {@return the names of all limits, as they stand in a file} */
    public static List<String> names() {
        return ENTRIES.stream().map(Entry::name).toList();
    }

    /**
     * Finds a limit by its name.
     *
     * @param name the name, one of {@link #names()}
     * @return the limit
     */
    public Limit limit(String name) {
        return ENTRIES.stream()
                .filter(entry -> entry.name.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no limit " + name))
                .get
                .apply(this);
    }

    /**
     * Finds the limits that let more pass than another policy does. A stricter limit is nobody's concern; a looser one is
     * shown to everybody who reads a verdict.
     *
     * @param other the other policy, usually the built-in one
     * @return the looser limits, in the order of the file
     */
    public List<Looser> looserThan(Policy other) {
        List<Looser> looser = new ArrayList<>();
        for (Entry entry : ENTRIES) {
            Limit mine = entry.get.apply(this);
            Limit its = entry.get.apply(other);
            int compared = Double.compare(mine.value(), its.value());
            if (entry.moreIsStricter ? compared < 0 : compared > 0) {
                looser.add(new Looser(entry.name, mine, its));
            }
        }
        return looser;
    }
}
