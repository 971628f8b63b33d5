package headgate.verifier.rules.throughput;

import headgate.api.sheet.Supply;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.Operation;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.formula.FieldEfficiency;
import headgate.verifier.remedy.RaiseSpeed;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.List;

/** {@code throughput.area-rate}: how much ground is done in an hour, turns and refills included. */
public final class AreaRate implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "throughput.area-rate",
            "The field is done at the rate that is wanted",
            "A head that keeps the pace in the row can still lose the day on the headland.",
            "C = v w E, with w rows per pass times spacing and E = (L / v) / ((L + X) / v + t_turn + t_lift + t_refill): L the"
                    + " row's length, X the fore-aft span of the tools. Heads that plant refill on the headland, each pass its"
                    + " share, all heads at once.",
            "ASABE EP496 in the form quoted by University of Kentucky AEN-73 (1991); time budget: derived",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.answers", "rows.every-lane-has-an-arm"));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        CropPlan plan = subject.plan().value();
        Carriage.Turning turning = subject.carriage().value().turning();
        List<Station> stations = Setup.of(subject).stations();
        double speed = plan.wanted().speed();
        String label = "crop plan " + plan.name();
        if (!(speed > 0)) {
            return List.of(Finding.undecided(INFO, label, "The crop plan must want a speed above 0."));
        }
        double span = span(stations);
        double refill = refill(plan, stations);
        double efficiency =
                FieldEfficiency.of(plan.field().length(), speed, span, turning.turnTime(), turning.liftTime(), refill);
        double width = plan.rows().servedWidth();
        double rate = speed * width * efficiency;
        Finding.Builder finding = Finding.of(INFO, label)
                .examined(1)
                .term("speed v", speed, Dimension.SPEED)
                .term("served width w", width, Dimension.LENGTH)
                .term("row length L", plan.field().length(), Dimension.LENGTH)
                .term("fore-aft span of the tools X", span, Dimension.LENGTH)
                .term("turn", turning.turnTime(), Dimension.TIME)
                .term("lifting beside the turn", turning.liftTime(), Dimension.TIME)
                .term("refilling, per pass", refill, Dimension.TIME)
                .term("field efficiency E", efficiency, Dimension.SHARE)
                .term("area rate C", rate, Dimension.AREA_RATE);
        double lost = turning.turnTime() + turning.liftTime() + refill;
        String said = "At " + Dimension.SPEED.text(speed) + " the carriage does " + Dimension.AREA_RATE.text(rate)
                + ", turns and refills included";
        return List.of(plan.wanted()
                .areaRate()
                .map(wanted -> proposing(finding, fastEnough(plan, wanted, span, lost), speed)
                        .comparison(Comparison.atLeast(rate, wanted, Dimension.AREA_RATE))
                        .field("crop-plan:wanted.areaRate")
                        .decide(said + ", where " + Dimension.AREA_RATE.text(wanted) + " are wanted."))
                .orElseGet(() ->
                        finding.end(Outcome.NOT_APPLICABLE, said + "; the crop plan wants no rate to hold it to.")));
    }

    /**
     * The speed at which the rate is just reached: v with v w (L / v) / ((L + X) / v + lost) = C; infinite or negative if
     * the time lost alone is too much.
     */
    private static double fastEnough(CropPlan plan, double rate, double span, double lost) {
        double length = plan.field().length();
        return (length + span) / (plan.rows().servedWidth() * length / rate - lost);
    }

    private static Finding.Builder proposing(Finding.Builder finding, double needed, double speed) {
        return needed > speed && Double.isFinite(needed) ? finding.propose(new RaiseSpeed(needed)) : finding;
    }

    /** From the foremost to the rearmost beam in use, m. */
    private static double span(List<Station> stations) {
        long most = stations.stream().mapToLong(s -> s.mount().x()).max().orElse(0);
        long least = stations.stream().mapToLong(s -> s.mount().x()).min().orElse(0);
        return Micrometres.toMetres(most - least);
    }

    /** The longest refill of all heads, spread over the passes that one filling lasts, s. */
    private static double refill(CropPlan plan, List<Station> stations) {
        if (!plan.wanted().operation().equals(Operation.SET_PLUGS)) {
            return 0;
        }
        double longest = 0;
        for (Station station : stations) {
            for (Supply supply : station.sheet().supplies()) {
                double actionsPerFilling =
                        supply.perAction() > 0 ? supply.capacity() / supply.perAction() : Double.POSITIVE_INFINITY;
                double actionsPerPass = plan.field().length() / plan.rows().plantSpacing();
                longest = Math.max(
                        longest,
                        actionsPerPass / actionsPerFilling * supply.refillTime().value());
            }
        }
        return longest;
    }
}
