package headgate.verifier.rules.sheet;

import headgate.api.shape.Body;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.MassPoint;
import headgate.api.sheet.Posture;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.FittedHead;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code sheet.plausible}: mass, volume, centre of mass and tool point can belong to one head. */
public final class Plausible implements Rule {

    private static final double LEAST_DENSITY = 100;
    private static final double MOST_DENSITY = 8000;
    private static final double THOUSAND = 1000;

    private static final RuleInfo INFO = new RuleInfo(
            "sheet.plausible",
            "Mass, volume, centre of mass and tool point can belong to one head",
            "A figure in millimetres where metres are meant, or in grams where kilograms are meant, makes every other rule"
                    + " right about another head.",
            "With V the volume of the ready posture's fixed and moving bodies, 100 kg/m³ <= m / V <= 8000 kg/m³ for the least"
                    + " and the largest of the masses empty, full and soiled: bodies are hulls of thin parts, so they may be as"
                    + " light as balsa, but nothing is denser than steel. Each centre of mass lies in the convex hull of all"
                    + " bodies of the ready posture, what is carried included. In every posture that has a moving body, the tool"
                    + " point lies in it or on it.",
            "steel weighs up to 78.5 kN/m³: EN 1991-1-1:2002, table A.4, from memory; the lower bound: common practice, no source",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        return FittedHead.each(subject, INFO, fitted -> {
            List<Finding> findings = new ArrayList<>();
            findings.add(density(fitted));
            findings.add(centres(fitted));
            findings.add(toolPoint(fitted));
            return findings;
        });
    }

    private static Map<String, MassPoint> masses(HeadSheet sheet) {
        Map<String, MassPoint> masses = new LinkedHashMap<>();
        masses.put("empty", sheet.empty());
        masses.put("full", sheet.full());
        masses.put("soiled", sheet.soiled());
        return masses;
    }

    private static Finding density(FittedHead fitted) {
        HeadSheet sheet = fitted.sheet();
        Posture ready = sheet.posture(PostureName.READY).orElseThrow();
        double volume = Occupied.of(ready.fixed(), ready.moving(), Body.NONE, ready.region())
                .cubicMetres();
        double least = masses(sheet).values().stream()
                .mapToDouble(m -> m.mass().value())
                .min()
                .orElseThrow();
        double most = masses(sheet).values().stream()
                .mapToDouble(m -> m.mass().value())
                .max()
                .orElseThrow();
        boolean light = least / volume < LEAST_DENSITY;
        Comparison comparison = light
                ? Comparison.atLeast(least / volume, LEAST_DENSITY, Dimension.MASS_DENSITY)
                : Comparison.atMost(most / volume, MOST_DENSITY, Dimension.MASS_DENSITY);
        Finding.Builder finding = Finding.of(INFO, fitted.label() + ": mass against volume")
                .examined(2)
                .comparison(comparison)
                .term("volume of the ready posture's bodies", volume, Dimension.VOLUME);
        masses(sheet)
                .forEach((state, m) -> finding.term("mass " + state, m.mass().value(), Dimension.MASS));
        String found = Dimension.MASS.text(light ? least : most) + " in " + Dimension.VOLUME.text(volume) + " are "
                + Dimension.MASS_DENSITY.text((light ? least : most) / volume);
        if (comparison.holds()) {
            return finding.decide(found + ", as heads are.");
        }
        return finding.decide(found + (light ? ", lighter than any head" : ", denser than steel") + ": "
                + slip((light ? least : most) / volume) + ".");
    }

    /** What was most likely written where something else was meant. */
    private static String slip(double density) {
        if (isPlausible(density / THOUSAND)) {
            return "the masses look a thousand times too large, as if grams were given as kilograms";
        }
        if (isPlausible(density * THOUSAND)) {
            return "the masses look a thousand times too small, as if kilograms were given as grams";
        }
        double cube = THOUSAND * THOUSAND * THOUSAND;
        if (isPlausible(density / cube)) {
            return "the lengths look a thousand times too small, as if metres were given as millimetres";
        }
        if (isPlausible(density * cube)) {
            return "the lengths look a thousand times too large, as if millimetres were given as metres";
        }
        return "see whether the bodies hold all material and nothing else, and whether the masses are right";
    }

    private static boolean isPlausible(double density) {
        return density >= LEAST_DENSITY && density <= MOST_DENSITY;
    }

    private static Finding centres(FittedHead fitted) {
        Posture ready = fitted.sheet().posture(PostureName.READY).orElseThrow();
        Occupied bodies = Occupied.of(ready);
        List<String> outside = new ArrayList<>();
        boolean thousandth = true;
        for (Map.Entry<String, MassPoint> state : masses(fitted.sheet()).entrySet()) {
            Point3 centre = state.getValue().centre();
            if (!bodies.hullHolds(centre)) {
                outside.add(state.getKey() + " at " + centre);
                thousandth &= bodies.hullHolds(new Point3(centre.x() / 1000, centre.y() / 1000, centre.z() / 1000));
            }
        }
        Finding.Builder finding = Finding.of(INFO, fitted.label() + ": centre of mass")
                .examined(masses(fitted.sheet()).size());
        if (outside.isEmpty()) {
            return finding.end(Outcome.PASS, "Each centre of mass lies in the hull of the ready posture's bodies.");
        }
        return finding.end(
                Outcome.FAIL,
                "The centre of mass lies outside of the hull of the ready posture's bodies: "
                        + String.join(", ", outside)
                        + (thousandth
                                ? ". A thousandth of it would lie inside, as if millimetres were given as metres."
                                : ". See whether it is given in the head frame, from the middle of the plate."));
    }

    private static Finding toolPoint(FittedHead fitted) {
        List<Posture> postures = fitted.sheet().postures().stream()
                .filter(p -> !p.moving().isEmpty())
                .toList();
        String label = fitted.label() + ": tool point";
        if (postures.isEmpty()) {
            return Finding.notApplicable(INFO, label, "No posture has a body that moves with the tool point.");
        }
        Occupied toolPoint = Occupied.at(Point3.ORIGIN);
        double farthest = -1;
        Posture worst = postures.get(0);
        for (Posture posture : postures) {
            double away = Gap.between(Occupied.of(posture.moving()), toolPoint)
                    .orElseThrow()
                    .metres();
            if (away > farthest) {
                farthest = away;
                worst = posture;
            }
        }
        return Finding.of(INFO, label)
                .examined(postures.size())
                .comparison(Comparison.atMost(farthest, 0, Dimension.LENGTH))
                .decide(
                        farthest > 0
                                ? "In posture " + worst.name() + " the moving body is "
                                        + Dimension.LENGTH.text(farthest)
                                        + " away from the tool point: a moving body is given as it lies when the tool"
                                        + " point is at the origin."
                                : "The tool point lies in or on the moving body in every posture.");
    }
}
