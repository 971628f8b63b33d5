package headgate.verifier.remedy;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Edit;
import java.util.Map;

/**
 * Work another number of rows in one pass.
 *
 * @param rows rows per pass, at least 1
 */
public record SetRowsPerPass(int rows) implements Edit {

    @Override
    public Case apply(Case before) {
        return before.withPlan(plan -> new CropPlan(
                plan.name(),
                new CropPlan.Rows(
                        plan.rows().spacing(),
                        rows,
                        plan.rows().plantSpacing(),
                        plan.rows().wander()),
                plan.crop(),
                plan.soil(),
                plan.weeds(),
                plan.plugs(),
                plan.wanted(),
                plan.field()));
    }

    @Override
    public String text() {
        return "work " + rows + (rows == 1 ? " row" : " rows") + " in one pass";
    }

    @Override
    public String kind() {
        return "set-rows-per-pass";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("rows", rows);
    }
}
