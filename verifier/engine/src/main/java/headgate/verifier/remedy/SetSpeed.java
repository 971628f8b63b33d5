package headgate.verifier.remedy;

import headgate.runtime.cropplan.CropPlan;
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
        return before.withPlan(plan -> new CropPlan(
                plan.name(),
                plan.rows(),
                plan.crop(),
                plan.soil(),
                plan.weeds(),
                plan.plugs(),
                new CropPlan.Wanted(
                        plan.wanted().operation(),
                        speed,
                        plan.wanted().coverage(),
                        plan.wanted().areaRate()),
                plan.field()));
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
