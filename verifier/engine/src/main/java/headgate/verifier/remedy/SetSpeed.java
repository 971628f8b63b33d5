package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Drive at another speed than the plan wants.
 *
 * @param speed the speed, m/s; shown and applied rounded down to a whole millimetre per second
 */
public record SetSpeed(double speed) implements Edit {

    /** Rounds down, so that whoever drives at the speed that is shown is safe. */
    public SetSpeed {
        speed = Dimension.SPEED.rounded(speed, RoundingMode.FLOOR);
    }

    @Override
    public Case apply(Case before) {
        return before.withPlan(plan -> plan.withWanted(plan.wanted().withSpeed(speed)));
    }

    @Override
    public String text() {
        return "drive at up to " + Dimension.SPEED.text(speed);
    }

    @Override
    public String kind() {
        return "set-speed";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("speed", speed);
    }
}
