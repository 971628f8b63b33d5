package headgate.verifier.rules.rows;

import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import java.util.List;

/** {@code rows.planter-passes}: a pass has as many rows as the planter set at once, or a number that divides it. */
public final class PlanterPasses implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "rows.planter-passes",
            "A pass has the planter's rows, or a number that divides them",
            "The gap between two passes of the planter is a guess. A pass that spans it works rows that are not where the"
                    + " plan says.",
            "The rows per pass must divide the rows that the planter set in one pass. Where they do not, every lane is wider"
                    + " to both sides by the guess-row error, and other rules reckon with that.",
            "common practice, no source",
            Severity.CAUTION,
            "0.1.0",
            List.of());

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        CropPlan plan = subject.plan().value();
        CropPlan.Rows rows = plan.rows();
        String of = "crop plan " + plan.name();
        if (plan.plugs().isPresent()) {
            return List.of(Finding.notApplicable(INFO, of, "The carriage is the planter: it sets the rows itself."));
        }
        if (rows.planterRows().isEmpty()) {
            return List.of(Finding.undecided(
                    INFO,
                    of,
                    "The crop plan does not say how many rows the planter set in one pass: give planterRows."));
        }
        int planter = rows.planterRows().orElseThrow();
        Finding.Builder finding = Finding.of(INFO, of)
                .examined(rows.perPass())
                .field("crop-plan:rows.perPass")
                .term("rows per pass", rows.perPass(), Dimension.COUNT)
                .term("rows of the planter", planter, Dimension.COUNT)
                .comparison(Comparison.atMost(planter % rows.perPass(), 0, Dimension.COUNT));
        if (planter % rows.perPass() == 0) {
            return List.of(finding.decide("The " + planter + " rows of the planter make "
                    + (planter == rows.perPass() ? "one pass" : planter / rows.perPass() + " passes") + " of "
                    + rows.perPass() + "."));
        }
        Changes.dividing(subject, planter).ifPresent(finding::propose);
        return List.of(finding.end(
                Outcome.FAIL,
                "A pass of " + rows.perPass() + " rows spans passes of the planter, which set " + planter
                        + " at once: "
                        + (rows.guessRowError() == 0
                                ? "the crop plan gives no guess-row error, so the gap between them is taken as exact."
                                : "every lane is wider by " + Dimension.LENGTH.text(rows.guessRowError())
                                        + " to both sides.")));
    }
}
