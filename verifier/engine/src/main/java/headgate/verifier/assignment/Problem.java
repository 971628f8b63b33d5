package headgate.verifier.assignment;

import java.util.List;

/**
 * Sliders, lanes and pitches.
 *
 * <p>Every slider does one of its choices. Each lane is served by exactly as many sliders as it needs. Sliders on one beam
 * keep their order; sliders of one link keep their offsets. Any two keep their pitch: on one beam the later one stays
 * beyond the upper end of the forbidden interval, on two beams on either side of it. Of each item no more is taken than
 * the stock has.
 *
 * @param sliders from the right to the left
 * @param needs how many sliders each lane needs, from the right to the left; at most 63 lanes
 * @param pitch how near two sliders may come
 * @param stock how many there are of each item
 */
public record Problem(List<Slider> sliders, List<Integer> needs, Pitch pitch, List<Integer> stock) {

    /** Copies the lists. */
    public Problem {
        sliders = List.copyOf(sliders);
        needs = List.copyOf(needs);
        stock = List.copyOf(stock);
    }

    /**
     * A problem without a stock.
     *
     * @param sliders from the right to the left
     * @param needs how many sliders each lane needs
     * @param pitch how near two sliders may come
     */
    public Problem(List<Slider> sliders, List<Integer> needs, Pitch pitch) {
        this(sliders, needs, pitch, List.of());
    }
}
