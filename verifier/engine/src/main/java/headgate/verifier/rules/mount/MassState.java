package headgate.verifier.rules.mount;

import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.MassPoint;
import java.util.List;

/**
 * A state in which a head is weighed.
 *
 * @param label the state, in lower case
 * @param point mass and centre in it
 */
record MassState(String label, MassPoint point) {

    /** Standard gravity, m/s², by definition (3rd General Conference on Weights and Measures, 1901). */
    static final double GRAVITY = 9.80665;

    static List<MassState> of(HeadSheet sheet) {
        return List.of(
                new MassState("empty", sheet.empty()),
                new MassState("full", sheet.full()),
                new MassState("soiled", sheet.soiled()));
    }

    double mass() {
        return point.mass().value();
    }

    double weight() {
        return mass() * GRAVITY;
    }
}
