package headgate.verifier.remedy;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Treat a narrower band along each row than the plan wants.
 *
 * @param width width of the band, m; shown and applied rounded down to a tenth of a millimetre
 */
public record NarrowBand(double width) implements Edit {

    /** Rounds down, so that whoever treats the band that is shown can. */
    public NarrowBand {
        width = Dimension.LENGTH.rounded(width, RoundingMode.FLOOR);
    }

    @Override
    public Case apply(Case before) {
        return before.withPlan(plan -> plan.withWeeds(plan.weeds().map(this::narrowed)));
    }

    private CropPlan.Weeds narrowed(CropPlan.Weeds weeds) {
        return new CropPlan.Weeds(
                weeds.density(),
                Math.min(weeds.bandWidth(), width),
                weeds.classes(),
                weeds.stemLeast(),
                weeds.stemMost(),
                weeds.heightLeast(),
                weeds.heightMost(),
                weeds.recall(),
                weeds.falseAlarms(),
                weeds.clumps(),
                weeds.sizes(),
                weeds.cropTaken(),
                weeds.success());
    }

    @Override
    public String text() {
        return "weed a band of " + Dimension.LENGTH.text(width) + " along each row";
    }

    @Override
    public String kind() {
        return "narrow-band";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("width", width);
    }
}
