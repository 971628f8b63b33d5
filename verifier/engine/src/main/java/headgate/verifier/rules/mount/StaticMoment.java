package headgate.verifier.rules.mount;

import headgate.api.shape.Point3;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.remedy.MoveCentreOfMass;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** {@code mount.static-moment}: the arm bears the moments of the head's weight at its mount. */
public final class StaticMoment implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "mount.static-moment",
            "The arm bears the moments of the head's weight about its mount",
            "A head that reaches far out tips its mount: the guides wear, the tool point sags, and the gaps that clearance"
                    + " counts on are gone.",
            "M = r x F with the weight m g on a frame tilted by its largest roll and pitch, taken to the safe side:"
                    + " M_x <= m g (|y| + |z| sin roll), M_y <= m g (|x| + |z| sin pitch), M_z <= m g (|x| sin roll + |y| sin pitch),"
                    + " (x, y, z) the centre of mass from the middle of the plate; for the masses empty, full and soiled. Each is"
                    + " at most the share of the arm's moment that the policy allows. Working forces and shocks are not in it.",
            "Statics; standard gravity 9.80665 m/s2 (3rd General Conference on Weights and Measures, 1901)",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    /** The moment about one axis, of one state, on one arm. */
    private record Load(MassState state, Arm arm, String axis, double moment, double borne, double share) {

        double allowed() {
            return borne * share;
        }

        double use() {
            return allowed() > 0 ? moment / allowed() : moment > 0 ? Double.POSITIVE_INFINITY : 0;
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> List.of(check(subject, fitted)));
    }

    private static Finding check(Case subject, FittedHead fitted) {
        double share = subject.policy().value().momentUse().value();
        Carriage.GroundMotion ground = subject.carriage().value().ground();
        List<Load> loads = new ArrayList<>();
        for (MassState state : MassState.of(fitted.sheet())) {
            fitted.arms().forEach(arm -> loads.addAll(loads(state, arm, ground, share)));
        }
        Load worst = Collections.max(loads, Comparator.comparingDouble(Load::use));
        Point3 centre = worst.state().point().centre();
        Finding.Builder finding = Finding.of(INFO, fitted.label())
                .comparison(Comparison.atMost(worst.moment(), worst.allowed(), Dimension.MOMENT))
                .term("mass " + worst.state().label(), worst.state().mass(), Dimension.MASS)
                .term("centre of mass, x", centre.xMetres(), Dimension.LENGTH)
                .term("centre of mass, y", centre.yMetres(), Dimension.LENGTH)
                .term("centre of mass, z", centre.zMetres(), Dimension.LENGTH)
                .term("roll", ground.roll(), Dimension.ANGLE)
                .term("pitch", ground.pitch(), Dimension.ANGLE)
                .term("moment that arm " + worst.arm().id() + " bears", worst.borne(), Dimension.MOMENT)
                .term("share that may be used", share, Dimension.SHARE)
                .field(ArmWords.field(subject, worst.arm(), "payload.moment" + worst.axis()))
                .examined(loads.size());
        remedy(fitted, worst, ground).ifPresent(finding::propose);
        return finding.decide("The weight of the " + worst.state().label() + " head turns its mount about the "
                + worst.axis() + " axis with " + Dimension.MOMENT.text(worst.moment()) + "; arm "
                + worst.arm().id() + " bears " + Dimension.MOMENT.text(worst.borne()) + ", of which "
                + Dimension.SHARE.text(share) + " may be used: " + Dimension.MOMENT.text(worst.allowed()) + ".");
    }

    private static List<Load> loads(MassState state, Arm arm, Carriage.GroundMotion ground, double share) {
        Point3 c = state.point().centre();
        double x = Math.abs(c.xMetres());
        double y = Math.abs(c.yMetres());
        double z = Math.abs(c.zMetres());
        double roll = StrictMath.sin(ground.roll());
        double pitch = StrictMath.sin(ground.pitch());
        double weight = state.weight();
        Arm.Payload p = arm.payload();
        return List.of(
                new Load(state, arm, "X", weight * (y + z * roll), p.momentX(), share),
                new Load(state, arm, "Y", weight * (x + z * pitch), p.momentY(), share),
                new Load(state, arm, "Z", weight * (x * roll + y * pitch), p.momentZ(), share));
    }

    /** The distance from the middle at which the moment is just borne, if there is one. */
    private static Optional<MoveCentreOfMass> remedy(FittedHead fitted, Load worst, Carriage.GroundMotion ground) {
        if (worst.axis().equals("Z")) {
            return Optional.empty();
        }
        boolean aboutY = worst.axis().equals("Y");
        double tilt = StrictMath.sin(aboutY ? ground.pitch() : ground.roll());
        double height = Math.abs(worst.state().point().centre().zMetres());
        double distance = worst.allowed() / worst.state().weight() - height * tilt;
        MoveCentreOfMass.Axis along = aboutY ? MoveCentreOfMass.Axis.X : MoveCentreOfMass.Axis.Y;
        return distance > 0 ? Optional.of(new MoveCentreOfMass(fitted.head().id(), along, distance)) : Optional.empty();
    }
}
