package headgate.verifier.remedy;

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
        return before.withPlan(plan -> plan.withRows(plan.rows().withPerPass(rows)));
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
