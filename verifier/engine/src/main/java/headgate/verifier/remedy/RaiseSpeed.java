package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Drive faster than the plan wants.
 *
 * @param speed the least speed, m/s; shown and applied rounded up to a whole millimetre per second
 */
public record RaiseSpeed(double speed) implements Edit {

    /** Rounds up, so that whoever drives at the speed that is shown gets what is wanted. */
    public RaiseSpeed {
        speed = Dimension.SPEED.rounded(speed, RoundingMode.CEILING);
    }

    @Override
    public Case apply(Case before) {
        return before.withPlan(plan -> plan.withWanted(plan.wanted().withSpeed(speed)));
    }

    @Override
    public String text() {
        return "drive at " + Dimension.SPEED.text(speed) + " or faster";
    }

    @Override
    public String kind() {
        return "raise-speed";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("speed", speed);
    }
}
