package headgate.verifier.remedy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Fit narrower tyres to every wheel that has a wider one.
 *
 * @param width the largest width, m; shown and applied rounded down to a whole millimetre
 */
public record NarrowTyres(double width) implements Edit {

    /** Rounds down, so that whoever fits the width that is shown is safe. */
    public NarrowTyres {
        width = Math.floor(Dimension.LENGTH.rounded(width, RoundingMode.FLOOR) * 1000) / 1000;
    }

    @Override
    public Case apply(Case before) {
        return before.withCarriage(c -> c.withWheels(c.wheels().stream()
                .map(w -> w.withTyreWidth(Math.min(w.tyreWidth(), width)))
                .toList()));
    }

    @Override
    public String text() {
        return "fit tyres at most " + Dimension.LENGTH.text(width) + " wide";
    }

    @Override
    public String kind() {
        return "narrow-tyres";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("width", width);
    }
}
