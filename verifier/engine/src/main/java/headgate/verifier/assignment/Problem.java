package headgate.verifier.assignment;

import java.util.List;

/**
 * Sliders, lanes and pitches.
 *
 * <p>Every slider does one of its choices. Each lane is served by exactly as many sliders as it needs. Sliders on one beam
 * keep their order; sliders of one link keep their offsets. Any two keep their pitch: on one beam the later one stays
 * beyond the upper end of the forbidden interval, on two beams on either side of it.
 *
 * @param sliders from the right to the left
 * @param needs how many sliders each lane needs, from the right to the left; at most 63 lanes
 * @param pitch how near two sliders may come
 */
public record Problem(List<Slider> sliders, List<Integer> needs, Pitch pitch) {

    /** Copies the lists. */
    public Problem {
        sliders = List.copyOf(sliders);
        needs = List.copyOf(needs);
    }
}
