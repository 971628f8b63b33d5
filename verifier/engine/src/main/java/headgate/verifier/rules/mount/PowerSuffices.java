package headgate.verifier.rules.mount;

import headgate.api.sheet.PowerDraw;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** {@code mount.power}: the arm gives the electric power that the head takes. */
public final class PowerSuffices implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "mount.power",
            "The arm gives the head its power at work and its peak power",
            "A supply that is just too weak trips when all tools meet hard ground at once.",
            "Power at work <= continuous power of the weakest arm, and peak power <= the least peak that an arm gives.",
            "Supply: carriage file; draw: the head's sheet",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> check(subject, fitted));
    }

    private static List<Finding> check(Case subject, FittedHead fitted) {
        PowerDraw draw = fitted.sheet().power();
        return Stream.of(
                        compare(subject, fitted, "continuous", draw.working().value(), Arm.PowerSupply::continuous),
                        compare(subject, fitted, "peak", draw.peak().value(), Arm.PowerSupply::peak))
                .sorted(Comparator.comparing(Finding::outcome).reversed())
                .toList();
    }

    private static Finding compare(
            Case subject, FittedHead fitted, String which, double draw, ToDoubleFunction<Arm.PowerSupply> power) {
        Arm weakest = Collections.min(fitted.arms(), Comparator.comparingDouble(a -> power.applyAsDouble(a.supply())));
        double supply = power.applyAsDouble(weakest.supply());
        return Finding.of(INFO, fitted.label() + ", " + which + " power")
                .comparison(Comparison.atMost(draw, supply, Dimension.POWER))
                .field(ArmWords.field(subject, weakest, "supply." + which))
                .examined(fitted.arms().size())
                .decide("The head takes " + Dimension.POWER.text(draw) + " of " + which + " power; arm " + weakest.id()
                        + " gives " + Dimension.POWER.text(supply) + ".");
    }
}
