package headgate.verifier.fitting;

import headgate.runtime.carriage.Arm;
import headgate.verifier.formula.RestToRest;
import java.util.List;

/**
 * A side shift from rest to rest over time: speeding up, running, slowing down.
 *
 * @param distance how far it goes, m; negative to the right
 * @param motion how the axis moves
 */
record Travel(double distance, Arm.AxisMotion motion) {

    static final Travel NONE = new Travel(0, new Arm.AxisMotion(1, 1, 1, 0));

    private RestToRest move() {
        return RestToRest.of(Math.abs(distance), motion.speed(), motion.acceleration(), motion.deceleration());
    }

    /** {@return how long it takes, s} */
    double duration() {
        return move().duration();
    }

    /** {@return when it stops speeding up, when it begins to slow down, and when it rests again, s} */
    List<Double> knots() {
        RestToRest move = move();
        return List.of(
                move.peakSpeed() / motion.acceleration(),
                move.duration() - move.peakSpeed() / motion.deceleration(),
                move.duration());
    }

    /** {@return its velocity at a time, m/s} */
    double velocity(double time) {
        RestToRest move = move();
        if (time <= 0 || time >= move.duration()) {
            return 0;
        }
        double speed = Math.min(
                move.peakSpeed(),
                Math.min(motion.acceleration() * time, motion.deceleration() * (move.duration() - time)));
        return Math.signum(distance) * speed;
    }

    /** {@return how far it has gone at a time, m} */
    double position(double time) {
        RestToRest move = move();
        double t = Math.max(0, Math.min(move.duration(), time));
        double up = move.peakSpeed() / motion.acceleration();
        double left = move.duration() - t;
        double gone;
        if (t <= up) {
            gone = motion.acceleration() * t * t / 2;
        } else if (left <= move.peakSpeed() / motion.deceleration()) {
            gone = Math.abs(distance) - motion.deceleration() * left * left / 2;
        } else {
            gone = move.peakSpeed() * (t - up / 2);
        }
        return Math.signum(distance) * gone;
    }
}
