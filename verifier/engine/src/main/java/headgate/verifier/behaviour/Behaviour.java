package headgate.verifier.behaviour;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeSpotTask;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The traits of a head, looked for in its answers. */
public final class Behaviour {

    private Behaviour() {}

    /**
     * Looks for every trait that one run of probes can show: all but {@link Trait#PURE} and {@link Trait#SHEET_STAYS}.
     *
     * @param run probes and answers
     * @return one tally a trait, in the order of {@link Trait}
     */
    public static List<Tally> examine(ProbeRun run) {
        List<Tally> tallies = new ArrayList<>();
        tallies.add(total(run));
        tallies.add(accepts(run));
        tallies.add(noHoles(run));
        List<Asked> actions = actions(run);
        for (ActionCheck check : ActionChecks.ALL) {
            tallies.add(Tally.of(
                    check.trait(),
                    actions.stream().mapToLong(check::examined).sum(),
                    actions.stream().flatMap(a -> check.violations(a).stream()).toList()));
        }
        return List.copyOf(tallies);
    }

    /**
     * Asks the same tasks again, last first, of another instance of the head.
     *
     * @param run probes and answers
     * @param again the other instance; it must not remember what the first one said
     * @return the tally of {@link Trait#PURE}
     */
    public static Tally purity(ProbeRun run, HeadAnswers again) {
        List<SpotAnswer> second = new ArrayList<>(again.act(backwards(run)));
        Collections.reverse(second);
        List<Violation> violations = new ArrayList<>();
        for (int i = 0; i < second.size(); i++) {
            SpotAnswer before = run.answers().get(i);
            if (!Alike.test(before, second.get(i))) {
                violations.add(Violation.of(
                        Trait.PURE,
                        run.tasks().get(i),
                        "the first answer was " + say(before) + ", the second " + say(second.get(i))));
            }
        }
        return Tally.of(Trait.PURE, second.size(), violations);
    }

    /**
     * Tells another instance what {@link #purity} will ask it.
     *
     * @param run probes and answers
     * @param again the other instance
     */
    public static void announcePurity(ProbeRun run, HeadAnswers again) {
        again.willAct(backwards(run));
    }

    private static List<LatticeSpotTask> backwards(ProbeRun run) {
        List<LatticeSpotTask> backwards = new ArrayList<>(run.tasks());
        Collections.reverse(backwards);
        return backwards;
    }

    /**
     * Compares the sheets of two calls.
     *
     * @param sheet the first
     * @param again the second
     * @return the tally of {@link Trait#SHEET_STAYS}
     */
    public static Tally sheetStays(HeadSheet sheet, HeadSheet again) {
        List<Violation> violations = sheet.equals(again)
                ? List.of()
                : List.of(new Violation(
                        Trait.SHEET_STAYS,
                        Optional.empty(),
                        Optional.empty(),
                        Double.NaN,
                        Double.NaN,
                        "the sheet differs from one call to the next"));
        return Tally.of(Trait.SHEET_STAYS, 1, violations);
    }

    private static Tally total(ProbeRun run) {
        List<Violation> violations = new ArrayList<>();
        for (int i = 0; i < run.tasks().size(); i++) {
            if (run.answers().get(i) instanceof SpotAnswer.Failed failed) {
                violations.add(Violation.of(
                        Trait.TOTAL, run.tasks().get(i), failed.fault().sentence()));
            }
        }
        return Tally.of(Trait.TOTAL, run.tasks().size(), violations);
    }

    private static Tally accepts(ProbeRun run) {
        List<Violation> violations = run.corners().stream()
                .filter(c -> c.refusal().isPresent())
                .map(c -> Violation.measured(
                        Trait.ACCEPTS,
                        c.middle(),
                        Optional.empty(),
                        0,
                        1,
                        "this corner of the work range is refused from each of " + c.tried()
                                + " starts, first because \"" + c.refusal().orElseThrow() + "\""))
                .toList();
        return Tally.of(Trait.ACCEPTS, run.corners().size(), violations);
    }

    /** Where the reach has several pieces at one offset, a plant between two of them is rightly refused. */
    private static Tally noHoles(ProbeRun run) {
        List<ProbeRun.Followed> whole =
                run.followed().stream().filter(f -> f.path().whole()).toList();
        List<Violation> violations = new ArrayList<>();
        for (ProbeRun.Followed followed : whole) {
            int first = followed.accepted().indexOf(true);
            int last = followed.accepted().lastIndexOf(true);
            for (int i = first + 1; first >= 0 && i < last; i++) {
                if (!followed.accepted().get(i)) {
                    violations.add(Violation.of(
                            Trait.NO_HOLES,
                            followed.path().at((double) i / ProbeRun.FOLLOWED),
                            "this start is refused, though starts before and after it are accepted"));
                    break;
                }
            }
        }
        return Tally.of(Trait.NO_HOLES, whole.size(), violations);
    }

    private static List<Asked> actions(ProbeRun run) {
        List<Asked> actions = new ArrayList<>();
        for (int i = 0; i < run.tasks().size(); i++) {
            LatticeSpotTask task = run.tasks().get(i);
            ProbeRun.act(run.answers().get(i))
                    .ifPresent(action -> actions.add(Asked.of(run.sheet(), run.setting(), task, action)));
        }
        return actions;
    }

    private static String say(SpotAnswer answer) {
        String said = answer instanceof SpotAnswer.Answered answered
                ? answered.action().toString()
                : ((SpotAnswer.Failed) answer).fault().sentence();
        return said.length() <= 300 ? said : said.substring(0, 300) + "...";
    }
}
