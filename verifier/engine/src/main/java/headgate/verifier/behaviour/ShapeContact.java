package headgate.verifier.behaviour;

import headgate.api.answer.Contact;
import headgate.api.shape.Body;
import headgate.api.sheet.Posture;

/** What a head touches, taken from its shape and not from its word. */
public final class ShapeContact {

    private ShapeContact() {}

    /**
     * Compares the lowest material of a posture with the ground and the canopy.
     *
     * @param posture the posture
     * @param toolPoint lowest height of the tool point, micrometres
     * @param ground height of the ground, micrometres
     * @param canopy height of the canopy over the ground, micrometres; 0 if there is none
     * @return soil below the ground, canopy below its top, free from there on
     */
    public static Contact of(Posture posture, long toolPoint, long ground, long canopy) {
        long lowest = lowest(posture, toolPoint);
        if (lowest < ground) {
            return Contact.SOIL;
        }
        return lowest < ground + canopy ? Contact.CANOPY : Contact.FREE;
    }

    /**
     * The lowest material of a posture.
     *
     * @param posture the posture
     * @param toolPoint lowest height of the tool point, micrometres
     * @return its height, micrometres
     */
    public static long lowest(Posture posture, long toolPoint) {
        return Math.min(
                lowest(posture.fixed(), 0),
                Math.min(lowest(posture.moving(), toolPoint), lowest(posture.carried(), toolPoint)));
    }

    private static long lowest(Body body, long at) {
        return body.prisms().stream()
                .mapToLong(p -> p.height().least() + at)
                .min()
                .orElse(Long.MAX_VALUE);
    }
}
