package headgate.verifier.setup;

import headgate.runtime.carriage.Arm;

/**
 * How far an axis of an arm that moves may run past where it should stop: its overshoot, and what it travels from the
 * command to stop until it stands, v t_r + v² / 2b.
 *
 * @param overshoot how far it may run past its set-point, m
 * @param reaction what it travels at full speed before it brakes, v t_r, m
 * @param braking what it travels while it brakes, v² / 2b, m
 */
public record RunOut(double overshoot, double reaction, double braking) {

    /**
     * The run-out of an axis at its highest speed.
     *
     * @param motion how the axis moves
     * @param reactionTime from the command to braking, s
     * @return the run-out
     */
    public static RunOut of(Arm.AxisMotion motion, double reactionTime) {
        return new RunOut(
                motion.overshoot(),
                motion.speed() * reactionTime,
                motion.speed() * motion.speed() / (2 * motion.deceleration()));
    }

    /** {@return from the command to stop until it stands, m} */
    public double stopping() {
        return reaction + braking;
    }

    /** {@return all of it, m} */
    public double total() {
        return overshoot + stopping();
    }
}
