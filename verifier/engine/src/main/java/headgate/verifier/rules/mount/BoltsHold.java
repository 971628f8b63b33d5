package headgate.verifier.rules.mount;

import headgate.api.sheet.Breakaway;
import headgate.api.sheet.Figure;
import headgate.api.sheet.Forces;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.PlateDesignation;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.formula.BoltCircle;
import headgate.verifier.formula.Screw;
import java.util.List;
import java.util.Optional;

/** {@code mount.bolts}: the screws of the plate hold weight and working forces. */
public final class BoltsHold implements Rule {

    /** Share of the proof load that the loads of work may take up. */
    private static final double SHARE = 0.5;

    private static final RuleInfo INFO = new RuleInfo(
            "mount.bolts",
            "The screws of the plate hold weight, working forces and the breakaway force",
            "A head that tears off falls in front of a wheel.",
            "On the screws of the head's plate, taken as property class 8.8: tension T = 4 M / (n D) + F_n / n, shear"
                    + " S = F_t / n + 2 M_n / (n D), and sqrt(T^2 + 3 S^2) <= 50 % of the proof load. n screws on a pitch circle D."
                    + " The soiled head on a tilted frame; the tool point at the farthest corner of the reach; pull or press,"
                    + " sideways force, and the greater of draft and breakaway force, all at once in their worst directions, so"
                    + " that the true load is lower. Shocks of transport are not in it.",
            "Elastic screw group on a circle (statics); proof loads of ISO 898-1, class 8.8; half the proof load and the"
                    + " way in which tension and shear combine: common practice, no source",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(
                subject,
                INFO,
                fitted -> List.of(check(fitted, subject.carriage().value().ground())));
    }

    private static Finding check(FittedHead fitted, Carriage.GroundMotion ground) {
        HeadSheet sheet = fitted.sheet();
        PlateDesignation plate = sheet.plate();
        Optional<Screw> screw = Screw.metric(plate.thread());
        if (screw.isEmpty()) {
            return Finding.undecided(
                    INFO,
                    fitted.label(),
                    "No proof load is known for a screw M" + plate.thread() + " in plate " + plate
                            + ": take a plate with M5, M6, M8 or M10, or have the screws calculated by hand.");
        }
        Optional<Breakaway> breakaway = sheet.forces().breakaway();
        if (breakaway.isEmpty() && sheet.workRange().depth().most() > 0) {
            return Finding.undecided(
                    INFO,
                    fitted.label(),
                    "The tool goes into the soil, but the sheet gives no breakaway force: a stone loads the screws without"
                            + " limit. Give force and stroke at which the tool gives way.");
        }
        double give = breakaway.map(Breakaway::force).map(Figure::value).orElse(0.0);
        PlateLoad load = PlateLoad.of(sheet, give, ground);
        BoltCircle circle = BoltCircle.of(plate.holes(), plate.pitchCircle());
        double tension = circle.bendingTension(load.bending()) + circle.directTension(load.pullOff());
        double shear = circle.shear(load.inPlane(), load.torque());
        double together = Math.sqrt(tension * tension + 3 * shear * shear);
        double proof = screw.get().proofLoad(Screw.PropertyClass.C8_8);
        Forces forces = sheet.forces();
        return Finding.of(INFO, fitted.label())
                .comparison(Comparison.atMost(together, SHARE * proof, Dimension.FORCE))
                .term("bending moment", load.bending(), Dimension.MOMENT)
                .term("pull along the plate's normal", load.pullOff(), Dimension.FORCE)
                .term("force in the plate", load.inPlane(), Dimension.FORCE)
                .term("torque about the plate's normal", load.torque(), Dimension.MOMENT)
                .term("upward pull on the plant", forces.pull().value(), Dimension.FORCE)
                .term("breakaway force", give, Dimension.FORCE)
                .term("tension of the worst screw", tension, Dimension.FORCE)
                .term("shear of the worst screw", shear, Dimension.FORCE)
                .term("proof load of M" + plate.thread() + ", class 8.8", proof, Dimension.FORCE)
                .examined(1)
                .decide("The worst of " + plate.holes() + " screws M" + plate.thread() + " is loaded with "
                        + Dimension.FORCE.text(together) + "; half of its proof load, class 8.8, is "
                        + Dimension.FORCE.text(SHARE * proof) + ".");
    }
}
