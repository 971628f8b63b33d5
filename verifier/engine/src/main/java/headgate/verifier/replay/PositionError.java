package headgate.verifier.replay;

import headgate.verifier.formula.Uncertainty;

/**
 * How far a tool may be off where it should touch the ground. What clocks are off by grows with the speed; the rest does not.
 *
 * @param across expanded uncertainty across travel, and of the head itself, m
 * @param along expanded uncertainty along travel at standstill, m
 * @param clock expanded uncertainty of the time between image and contact, s; at a speed it is a way along travel
 */
public record PositionError(double across, double along, double clock) {

    /** Tools are where they should be. */
    public static final PositionError NONE = new PositionError(0, 0, 0);

    /**
     * The larger of the two.
     *
     * @param speed of the carriage, m/s
     * @return the error to reckon with, m
     */
    public double at(double speed) {
        return Math.max(across, Uncertainty.combined(along, speed * clock));
    }
}
