package headgate.verifier.fitting;

import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.origin.Loaded;
import headgate.runtime.policy.Policy;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Makes the case of a fitting. */
public final class FittingCase {

    private FittingCase() {}

    /**
     * Makes the case: each head on its arm, on the lanes that are given by hand, waiting, or where it is best.
     *
     * @param fitting the fitting
     * @param heads its heads, by what it calls them; all that it uses
     * @param carriage the carriage
     * @param plan the crop plan
     * @param policy the limits
     * @return the case
     */
    public static Case of(
            Fitting fitting,
            Map<String, HeadUnderTest> heads,
            Loaded<Carriage> carriage,
            Loaded<CropPlan> plan,
            Loaded<Policy> policy) {
        List<Case.Mounting> mountings = fitting.arms().stream()
                .map(p -> new Case.Mounting(p.arm(), Objects.requireNonNull(heads.get(p.head())), p.turned(), duty(p)))
                .toList();
        return new Case(carriage, plan, policy, mountings);
    }

    private static Case.Duty duty(Fitting.Place place) {
        if (place.waits()) {
            return new Case.Duty.Waits();
        }
        return place.lanes().isEmpty() ? new Case.Duty.Fitted() : new Case.Duty.OnLanes(place.lanes());
    }
}
