package headgate.verifier.rules.sheet;

import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code sheet.connected}: the bodies hang together and on the plate, wherever the tool point is. */
public final class Connected implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "sheet.connected",
            "The head's bodies are one solid that touches the plate, wherever the tool point is",
            "A part that hangs in the air is one whose link was left out, and what was left out is what meets a neighbour.",
            "For every posture, the tool point is put on every corner of its region, at both ends of its heights. There"
                    + " the fixed body and the moving body, with a disc as large as the plate's pitch circle in the plane of"
                    + " the plate, must be one connected solid: prisms that touch or overlap hang together. What is carried"
                    + " does not count.",
            "first principles; pitch circle: the plate's designation after ISO 9409-1",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    /** The plate is as thin as can be, and lies on the arm's side of its plane. */
    private static final double THIN = 1e-6;

    /** Where a head falls apart most. */
    private record Loose(Posture posture, Point3 toolPoint, double gap) {}

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> List.of(check(fitted)));
    }

    private static Finding check(FittedHead fitted) {
        HeadSheet sheet = fitted.sheet();
        Occupied plate =
                Occupied.of(List.of(Prism.aroundCylinder(0, 0, sheet.plate().pitchCircle() / 2, 0, THIN)));
        Optional<Loose> worst = Optional.empty();
        long examined = 0;
        for (Posture posture : sheet.postures()) {
            List<Occupied> standing = Occupied.of(posture.fixed()).and(plate).connectedParts();
            List<Occupied> moving = Occupied.of(posture.moving()).connectedParts();
            for (Point3 toolPoint : posture.region().corners3()) {
                examined++;
                double gap = looseBy(standing, moving, plate, toolPoint);
                if (gap > worst.map(Loose::gap).orElse(0.0)) {
                    worst = Optional.of(new Loose(posture, toolPoint, gap));
                }
            }
        }
        Finding.Builder finding = Finding.of(INFO, fitted.label())
                .examined(examined)
                .comparison(Comparison.atMost(worst.map(Loose::gap).orElse(0.0), 0, Dimension.LENGTH));
        String where = examined + (examined == 1 ? " place" : " places") + " of the tool point";
        return worst.map(l -> finding.decide("In posture " + l.posture().name() + " with the tool point at "
                        + l.toolPoint() + " a part of the head is " + Dimension.LENGTH.text(l.gap())
                        + " away from what hangs on the plate: give the link between the two as a prism of the fixed or"
                        + " the moving body."))
                .orElseGet(() -> finding.decide("The bodies hang together and on the plate at " + where + "."));
    }

    /** How far the nearest loose part is from what hangs on the plate, m; 0 if all hangs together. */
    private static double looseBy(List<Occupied> standing, List<Occupied> moving, Occupied plate, Point3 toolPoint) {
        List<Occupied> loose = new ArrayList<>(standing);
        moving.forEach(m -> loose.add(m.shifted(toolPoint)));
        Occupied hanging = plate;
        while (!loose.isEmpty()) {
            Occupied held = hanging;
            List<Occupied> next =
                    loose.stream().filter(part -> gap(part, held) == 0).toList();
            if (next.isEmpty()) {
                return loose.stream().mapToDouble(part -> gap(part, held)).min().orElseThrow();
            }
            for (Occupied part : next) {
                hanging = hanging.and(part);
            }
            loose.removeAll(next);
        }
        return 0;
    }

    private static double gap(Occupied one, Occupied other) {
        return Gap.between(one, other).orElseThrow().metres();
    }
}
