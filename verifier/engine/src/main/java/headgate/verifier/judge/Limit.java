package headgate.verifier.judge;

import headgate.verifier.check.Dimension;
import java.math.RoundingMode;

/**
 * A restriction that must be kept during work for the verdict to hold: a closed interval of one quantity, rounded inward
 * to what is shown.
 *
 * @param subject what it restricts, in words
 * @param quantity which quantity of it
 * @param least lower end, SI
 * @param most upper end, SI
 * @param dimension the quantity's kind
 */
public record Limit(String subject, String quantity, double least, double most, Dimension dimension) {

    /** {@return the limit as a sentence} */
    public String text() {
        return subject + ": " + quantity + " from " + dimension.text(least, RoundingMode.CEILING) + " to "
                + dimension.text(most, RoundingMode.FLOOR);
    }
}
