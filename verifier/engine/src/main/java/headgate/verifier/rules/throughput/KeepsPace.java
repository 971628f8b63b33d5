package headgate.verifier.rules.throughput;

import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Case;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code throughput.pace}: a spot head treats what is wanted at the speed that is wanted. */
public final class KeepsPace implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "throughput.pace",
            "The head keeps the carriage's pace at the wanted speed",
            "A head that is too slow for the speed leaves weeds standing or skips places, and nobody sees it before the"
                    + " field is done.",
            "One arm on one lane, in closed form. Weeding: weeds come as a Poisson stream of v w (density recall + false"
                    + " alarms); the arm treats one at a time, and a weed is lost unless its action starts within d = chord"
                    + " / v - t_g. The share that starts in time is that of an M/G/1 queue with constant patience d, with the"
                    + " action times that the head itself answers; the shortest window counts for all. Coverage is seen x"
                    + " allowed x reached x successful. Seen is the recall of each class of size, less what stands under the leaves of a"
                    + " taller crop plant (discs as wide as the canopy, one at each place of the row); a seen weed within the"
                    + " protected radius of a crop plant is not allowed. Planting: T <= s / v, and v t_g <= chord, with the longest of the sheet's and the"
                    + " answered times. Arms that an interlock makes wait for one another are judged as if only one of them acted"
                    + " at a time: their streams add (weeding), or their times (planting), and what an interlock keeps a tool"
                    + " off is not treated. Arms that share a lane each take"
                    + " their part of its plants. Look-ahead of the sensors and refills are not in it.",
            "Queue with constant patience: Bae and Kim, Queueing Systems 64 (2010) 253-265; T <= s / v: first principles",
            Severity.ERROR,
            "0.1.0",
            List.of("behaviour.total", "plan.operation", "plan.work-range", "rows.every-lane-has-an-arm"));

    /** Steps of the search for a speed, m/s: coarse, then fine. */
    private static final double COARSE = 0.01;

    private static final double FINE = 0.001;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> check(Case subject) {
        Map<String, Turns> different = new LinkedHashMap<>();
        for (Station station : Setup.of(subject).stations()) {
            Turns turns = Turns.of(subject, station);
            different.putIfAbsent(label(turns), turns);
        }
        List<Finding> findings = new ArrayList<>();
        different.forEach((label, turns) -> findings.addAll(check(subject.plan().value(), label, turns)));
        return findings;
    }

    /**
     * Finds the arms that do not keep the pace at the plan's speed.
     *
     * @param subject a case
     * @return the arms at work of which this rule finds that they fail
     */
    public static List<Station> tooSlow(Case subject) {
        Map<String, Boolean> slow = new LinkedHashMap<>();
        return Setup.of(subject).stations().stream()
                .filter(station -> {
                    Turns turns = Turns.of(subject, station);
                    return slow.computeIfAbsent(
                            label(turns), label -> check(subject.plan().value(), label, turns).stream()
                                    .anyMatch(Finding::breaksFit));
                })
                .toList();
    }

    /** Stations that are alike in all that the pace depends on have one label. */
    private static String label(Turns turns) {
        Station station = turns.own();
        String label = station.head().label() + (station.turned() ? ", turned" : "");
        if (!turns.alone() || turns.interlocks().restrict(station.arm().id())) {
            label += " on arm " + station.arm().id();
        }
        if (!turns.alone()) {
            label += ", in turn with " + turns.othersText();
        }
        if (station.lanes().size() > 1) {
            label += ", on " + station.lanes().size() + " lanes";
        }
        if (turns.lanesOf(station) != station.lanes().size()) {
            label += ", shared with other arms";
        }
        return station.laneOffset() == 0
                ? label
                : label + ", the middle of its ground at y = "
                        + Dimension.LENGTH.text(Micrometres.toMetres(station.laneOffset())) + " of the head";
    }

    private static List<Finding> check(CropPlan plan, String label, Turns turns) {
        Station station = turns.own();
        HeadAnswers head = station.head().answers().orElseThrow();
        Operation operation = plan.wanted().operation();
        if (head.kind() != HeadKind.SPOT) {
            return List.of(Finding.notApplicable(INFO, label, "Only spot heads have action times."));
        }
        if (!(plan.wanted().speed() > 0)) {
            return List.of(Finding.undecided(INFO, label, "The crop plan must want a speed above 0."));
        }
        if (operation.equals(Operation.SET_PLUGS)) {
            return plan.plugs()
                    .map(plugs -> planting(plan, plugs, label, turns))
                    .orElseGet(() -> List.of(Finding.undecided(
                            INFO,
                            label,
                            "The crop plan gives no plugs: add \"plugs\" with diameter, height and depth.")));
        }
        return plan.weeds()
                .map(weeds -> List.of(weeding(plan, weeds, label, turns)))
                .orElseGet(() -> List.of(Finding.undecided(
                        INFO,
                        label,
                        "The crop plan gives no weeds: add \"weeds\" with density, band width and kinds.")));
    }

    private static Finding weeding(CropPlan plan, CropPlan.Weeds weeds, String label, Turns turns) {
        double wanted = plan.wanted().coverage();
        WeedingPace pace = WeedingPace.of(turns, plan, weeds, plan.wanted().speed());
        if (pace.fault().isPresent()) {
            return Finding.undecided(
                    INFO,
                    label,
                    "The head did not answer: " + pace.fault().get().sentence() + ".");
        }
        Finding.Builder finding = Finding.of(INFO, label)
                .examined(pace.examined())
                .comparison(Comparison.atLeast(pace.coverage(), wanted, Dimension.SHARE))
                .field("crop-plan:wanted.coverage")
                .term("speed v", pace.speed(), Dimension.SPEED)
                .term("weeds and false alarms that the arm is asked to treat", pace.arrivals(), Dimension.RATE)
                .term("mean time of an action", pace.meanTime(), Dimension.TIME)
                .term("longest time in the ground t_g", pace.longestInGround(), Dimension.TIME)
                .term("shortest start window d = chord / v - t_g", pace.patience(), Dimension.TIME)
                .term("recall, by class of size", pace.sight().recall(), Dimension.SHARE)
                .term("seen: recall, less what leaves hide", pace.sight().seen(), Dimension.SHARE)
                .term("of the seen, outside of protected ground", pace.sight().unprotected(), Dimension.SHARE)
                .term("allowed: outside of protected ground, in reach and accepted", pace.allowed(), Dimension.SHARE)
                .term("reached: started within the window", pace.reached(), Dimension.SHARE)
                .term("successful: treated and not growing on", pace.successful(), Dimension.SHARE);
        if (!turns.alone()) {
            finding.term("time that the arms it takes turns with are asked for", pace.othersLoad(), Dimension.SHARE);
        }
        if (pace.keptOff() > 0) {
            finding.term("of the band, kept off by an interlock", pace.keptOff(), Dimension.SHARE);
        }
        List<PlantClass> unknown = weeds.withoutSuccess();
        String assumed = unknown.isEmpty()
                ? ""
                : " Treated weeds are taken not to grow on, since the crop plan gives no success for "
                        + unknown.stream().map(PlantClass::name).collect(Collectors.joining(", ")) + ".";
        String speed = Dimension.SPEED.text(pace.speed());
        String said = "At " + speed + " one arm treats " + Dimension.SHARE.text(pace.coverage())
                + (turns.own().lanes().size() == 1 ? " of its lane's weeds, where " : " of its lanes' weeds, where ")
                + Dimension.SHARE.text(wanted) + " are wanted";
        if (pace.coverage() < wanted) {
            bestSpeed(plan, weeds, turns).ifPresent(v -> finding.propose(new SetSpeed(v)));
            return finding.decide(said + ": " + cause(pace, wanted) + "." + assumed);
        }
        if (weeds.withoutRecall()) {
            return finding.end(
                    Outcome.CAUTION,
                    said + ". PERFECT PERCEPTION ASSUMED: the crop plan does not say how many are seen." + assumed);
        }
        return finding.decide(said + "." + assumed);
    }

    private static String cause(WeedingPace pace, double wanted) {
        if (pace.sight().seen() < wanted) {
            String hidden = pace.sight().hidden() > 0
                    ? ", as leaves of the crop hide "
                            + Dimension.SHARE.text(pace.sight().hidden())
                    : "";
            return "only " + Dimension.SHARE.text(pace.sight().seen()) + " are seen" + hidden
                    + ", whatever the head does";
        }
        if (pace.sight().seen() * pace.allowed() < wanted) {
            return "only " + Dimension.SHARE.text(pace.allowed())
                    + " of those seen may be treated (outside of protected ground, in reach, accepted), whatever the speed";
        }
        if (pace.sight().seen() * pace.allowed() * pace.successful() < wanted) {
            return "of the treated weeds " + Dimension.SHARE.text(1 - pace.successful())
                    + " grow on, whatever the speed";
        }
        if (pace.patience() < 0) {
            return "a weed leaves the reach " + Dimension.TIME.text(-pace.patience())
                    + " before the tool is out of the ground";
        }
        return Dimension.SHARE.text(1 - pace.reached()) + " leave the reach while the arm is busy"
                + (pace.othersLoad() > 0 ? " or waits for its turn" : "");
    }

    /** The largest speed up to which every speed of the grid reaches what is wanted, refined; empty if the first fails. */
    private static Optional<Double> bestSpeed(CropPlan plan, CropPlan.Weeds weeds, Turns turns) {
        double wanted = plan.wanted().coverage();
        int coarse = 0;
        int last = (int) Math.floor(plan.wanted().speed() / COARSE);
        while (coarse < last && reaches(wanted, (coarse + 1) * COARSE, plan, weeds, turns)) {
            coarse++;
        }
        int fine = (int) Math.round(coarse * COARSE / FINE);
        int end = (int) Math.round((coarse + 1) * COARSE / FINE);
        while (fine + 1 < end && reaches(wanted, (fine + 1) * FINE, plan, weeds, turns)) {
            fine++;
        }
        return fine > 0 ? Optional.of(fine * FINE) : Optional.empty();
    }

    private static boolean reaches(double wanted, double speed, CropPlan plan, CropPlan.Weeds weeds, Turns turns) {
        return WeedingPace.of(turns, plan, weeds, speed).coverage() >= wanted;
    }

    private static List<Finding> planting(CropPlan plan, CropPlan.Plugs plugs, String label, Turns turns) {
        double speed = plan.wanted().speed();
        Station station = turns.own();
        Map<Station, SpotTimes> all = new LinkedHashMap<>();
        for (Station s : turns.all()) {
            SpotTimes times =
                    SpotTimes.plugs(s, turns.interlocks(), s.head().answers().orElseThrow(), plan, plugs, speed);
            Optional<Finding> gap = gap(label, times, speed);
            if (gap.isPresent()) {
                return List.of(gap.get());
            }
            all.put(s, times);
        }
        SpotTimes times = Objects.requireNonNull(all.get(station));
        SpotTimes.Time time = times.worst();
        double busy = busy(station, time);
        // An arm on several rows sets a plug in each before the next place comes; arms on one row take every other
        // place.
        double spacing = plan.rows().plantSpacing() / turns.lanesOf(station);
        // Until all others had their turn, once for each of their rows and of its own other rows.
        double waits = turns.alone()
                ? 0
                : all.entrySet().stream()
                                .mapToDouble(e -> Math.ceil(turns.lanesOf(e.getKey()))
                                        * busy(e.getKey(), e.getValue().worst()))
                                .sum()
                        - busy;
        double inOneSpacing = all.entrySet().stream()
                .mapToDouble(e -> turns.lanesOf(e.getKey())
                        * busy(e.getKey(), e.getValue().worst()))
                .sum();
        double round = inOneSpacing / turns.lanesOf(station);
        SetSpeed slower = new SetSpeed(Math.min(spacing / round, time.chord() / (time.inGround() + waits)));
        Finding.Builder rate = Finding.of(INFO, label)
                .examined(times.planned())
                .comparison(Comparison.atMost(round, spacing / speed, Dimension.TIME))
                .field("crop-plan:wanted.speed")
                .term("speed v", speed, Dimension.SPEED)
                .term("plant spacing s, shared by the lanes of the arm", spacing, Dimension.LENGTH)
                .term("longest action T, of the sheet or answered", busy, Dimension.TIME)
                .propose(slower);
        Finding.Builder window = Finding.of(INFO, label)
                .examined(times.planned())
                .comparison(Comparison.atMost(speed * (time.inGround() + waits), time.chord(), Dimension.LENGTH))
                .field("crop-plan:wanted.speed")
                .term("speed v", speed, Dimension.SPEED)
                .term("time in the ground t_g", time.inGround(), Dimension.TIME)
                .term("length of the reach along travel", time.chord(), Dimension.LENGTH)
                .propose(slower);
        String turn = "";
        String wait = "";
        if (!turns.alone()) {
            rate.term("longest wait for the arms it takes turns with", waits, Dimension.TIME);
            window.term("longest wait for the arms it takes turns with", waits, Dimension.TIME);
            turn = ", in turn with " + turns.othersText();
            wait = " and its longest wait for a turn, " + Dimension.TIME.text(waits) + ",";
        }
        Finding rated = rate.decide("Every " + Dimension.TIME.text(spacing / speed)
                + " a place for a plug passes (s / v), and one action" + turn + " takes up to "
                + Dimension.TIME.text(round) + ".");
        Finding windowed = window.decide("While the tool is in the ground" + wait + " it goes "
                + Dimension.LENGTH.text(speed * (time.inGround() + waits)) + " with it, and the reach is "
                + Dimension.LENGTH.text(time.chord()) + " long.");
        return rated.outcome() == Outcome.FAIL || windowed.outcome() == Outcome.PASS
                ? List.of(rated, windowed)
                : List.of(windowed, rated);
    }

    /** What keeps the pace from being judged at all. */
    private static Optional<Finding> gap(String label, SpotTimes times, double speed) {
        if (times.fault().isPresent()) {
            return Optional.of(Finding.undecided(
                    INFO,
                    label,
                    "The head did not answer: " + times.fault().get().sentence() + "."));
        }
        if (times.keptOff() > 0) {
            return Optional.of(Finding.of(INFO, label)
                    .examined(times.planned())
                    .comparison(Comparison.atMost(times.keptOff(), 0, Dimension.COUNT))
                    .decide("An interlock keeps the tool off the places of plugs on " + times.keptOff() + " of "
                            + times.planned() + " lanes."));
        }
        if (times.times().size() < times.planned()) {
            return Optional.of(Finding.undecided(
                    INFO,
                    label,
                    "The head declines a plug in the middle of its reach at " + Dimension.SPEED.text(speed)
                            + ", so there is no time to judge."));
        }
        return Optional.empty();
    }

    private static double busy(Station station, SpotTimes.Time time) {
        return Math.max(
                time.busy(),
                station.sheet().actionTime().map(t -> t.most().value()).orElse(0.0));
    }
}
