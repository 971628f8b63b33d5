package headgate.verifier.behaviour;

import headgate.api.sheet.HeadSheet;
import headgate.api.task.Velocity;
import java.util.List;

/** How a head is fitted, which says from where the ground comes in the head frame. */
public enum Facing {
    /** At 0 degrees: plants come from +x. */
    FORWARD(-1),
    /** Turned by 180 degrees about the vertical axis: plants come from -x. */
    TURNED(1);

    private final int sign;

    Facing(int sign) {
        this.sign = sign;
    }

    /**
     * How the ground moves.
     *
     * @param speed speed of the carriage, m/s; 0 or more
     * @return the ground's velocity in the head frame
     */
    public Velocity ground(double speed) {
        return Velocity.ofMetresPerSecond(sign * speed, 0.0);
    }

    /** {@return -1 or +1: the sign of the ground's velocity along x} */
    public int sign() {
        return sign;
    }

    /**
     * The ways in which a head may be fitted.
     *
     * @param sheet what the head says of itself
     * @return forward, and turned if the sheet allows it
     */
    public static List<Facing> allowedBy(HeadSheet sheet) {
        return sheet.turnable() ? List.of(FORWARD, TURNED) : List.of(FORWARD);
    }
}
