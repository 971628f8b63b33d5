package headgate.verifier.rules.clearance;

import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Sensor;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.PlanArea;
import headgate.verifier.geometry.Shadow;
import headgate.verifier.remedy.MoveSensor;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** {@code clearance.sensor-view}: arms and heads hide no more of a sensor's band than the policy allows. */
public final class SensorView implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "clearance.sensor-view",
            "Arms and heads leave the sensors enough of their view of the ground",
            "A plant that a head hides from the camera is never treated, and no figure of the head's shows it.",
            "The shadow of a point at height h over the ground, seen from a sensor at height H, falls at c + (p - c) H / (H -"
                    + " h), c being the sensor's place; the shadow of a prism is the convex hull of that of its bottom and"
                    + " its top. Every arm throws the shadow of all that it can fill at work or waiting, at every height at"
                    + " which it works: more than at any one moment. The share is the area of the union of all shadows"
                    + " within the sensor's band over the area of the band, on level ground. What is higher than the sensor"
                    + " hides nothing; if material may stand at the sensor's own place, all of the band counts as hidden."
                    + " Where the carriage's file names no sensor, there is nothing to hide.",
            "first principles (similar triangles); largest share from the policy",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    /** How finely a sensor is moved to find a better place, micrometres, and how far at most. */
    private static final long STEP = 10_000;

    private static final long FARTHEST = 2_000_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    /** A sensor with the part of its band that is hidden. */
    private record View(Sensor sensor, PlanArea hidden, double share) {}

    @Override
    public List<Finding> check(Case subject) {
        List<Sensor> sensors = subject.carriage().value().sensors();
        if (sensors.isEmpty()) {
            return List.of(Finding.notApplicable(
                    INFO, "the sensors", "The carriage's file names no sensor whose view could be hidden."));
        }
        double k = subject.policy().value().coverageFactor().value();
        List<ArmStance> working = ArmStance.all(Setup.of(subject), k).stream()
                .flatMap(List::stream)
                .filter(SensorView::standsThereAtWork)
                .toList();
        List<Sensor> below = sensors.stream()
                .filter(s -> s.position().z() <= 0
                        || s.bandX().length() == 0
                        || s.bandY().length() == 0)
                .toList();
        if (!below.isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    "sensor " + below.get(0).id(),
                    "A sensor must stand over the ground and see a band with an area: give its position and its bandX and"
                            + " bandY."));
        }
        List<View> views = sensors.stream().map(s -> view(s, working)).toList();
        View worst = views.stream().max(Comparator.comparingDouble(View::share)).orElseThrow();
        return List.of(finding(subject, worst, views, working));
    }

    private static boolean standsThereAtWork(ArmStance stance) {
        return switch (stance.kind()) {
            case WORK, WAITING, EMPTY -> true;
            case LIFTING, PARKED -> false;
        };
    }

    private static View view(Sensor sensor, List<ArmStance> stances) {
        Outline band = Outline.rectangle(sensor.bandX(), sensor.bandY());
        PlanArea area = PlanArea.of(List.of(band));
        List<Outline> shadows = new ArrayList<>();
        for (ArmStance stance : stances) {
            Optional<List<Outline>> own = Shadow.within(band, stance.space(), sensor.position());
            if (own.isEmpty()) {
                return new View(sensor, area, 1.0);
            }
            shadows.addAll(own.get());
        }
        if (shadows.isEmpty()) {
            return new View(sensor, PlanArea.of(Occupied.NOTHING), 0.0);
        }
        PlanArea hidden = PlanArea.of(shadows).common(area);
        return new View(sensor, hidden, hidden.squareMetres() / area.squareMetres());
    }

    private static Finding finding(Case subject, View worst, List<View> views, List<ArmStance> working) {
        double limit = subject.policy().value().sensorShadow().value();
        Sensor sensor = worst.sensor();
        Comparison comparison = Comparison.atMost(worst.share(), limit, Dimension.SHARE);
        Finding.Builder finding = Finding.of(INFO, "sensor " + sensor.id())
                .examined((long) views.size() * working.size())
                .comparison(comparison)
                .term("height of the sensor", sensor.position().zMetres(), Dimension.LENGTH)
                .term(
                        "band along travel from",
                        Micrometres.toMetres(sensor.bandX().least()),
                        Dimension.LENGTH)
                .term(
                        "band along travel to",
                        Micrometres.toMetres(sensor.bandX().most()),
                        Dimension.LENGTH)
                .term(
                        "band across travel from",
                        Micrometres.toMetres(sensor.bandY().least()),
                        Dimension.LENGTH)
                .term(
                        "band across travel to",
                        Micrometres.toMetres(sensor.bandY().most()),
                        Dimension.LENGTH)
                .field("policy:sensorShadow");
        worst.hidden().rings().stream()
                .findFirst()
                .ifPresent(ring -> finding.witness(new Witness(
                        sensor.position(),
                        new Point3(ring.get(0).x(), ring.get(0).y(), 0),
                        Dimension.SHARE.text(worst.share()) + " hidden")));
        String share = Dimension.SHARE.text(worst.share());
        String allowed = Dimension.SHARE.text(limit);
        if (comparison.holds()) {
            return finding.decide("Of what sensor " + sensor.id() + " sees, arms and heads at work hide " + share
                    + " where " + allowed + " is allowed"
                    + (views.size() == 1 ? "." : "; it is the worst of " + views.size() + " sensors."));
        }
        betterPlace(sensor, working, limit).ifPresent(finding::propose);
        return finding.decide("Arms and heads at work hide " + share + " of what sensor " + sensor.id()
                + " sees, where " + allowed + " is allowed.");
    }

    /** The least way forward that a sensor, with its band, must be moved so that enough of it is free. */
    private static Optional<MoveSensor> betterPlace(Sensor sensor, List<ArmStance> working, double limit) {
        long enough = FARTHEST;
        if (view(sensor.forward(enough), working).share() > limit) {
            return Optional.empty();
        }
        long tooLittle = 0;
        while (enough - tooLittle > STEP) {
            long middle = (tooLittle + enough) / 2 / STEP * STEP;
            if (middle <= tooLittle) {
                break;
            }
            if (view(sensor.forward(middle), working).share() <= limit) {
                enough = middle;
            } else {
                tooLittle = middle;
            }
        }
        return Optional.of(new MoveSensor(sensor.id(), enough));
    }
}
