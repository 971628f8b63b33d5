package headgate.verifier.behaviour;

import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Point3;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import java.util.List;
import java.util.Optional;

/** The checks on single actions, in the order in which they are reported. */
final class ActionChecks {

    /** Sums of decimal durations are off by some units in the last place; the contract allows a relative 1e-9. */
    private static final double RELATIVE = 1e-9;

    static final List<ActionCheck> ALL = List.of(
            new StepCheck(Trait.KNOWN_POSTURE, (asked, step) -> true, ActionChecks::posture),
            new WholeCheck(Trait.ACTION_TIME, ActionChecks::time),
            new StepCheck(Trait.IN_REACH, (asked, step) -> posed(asked, step).isPresent(), ActionChecks::reach),
            new StepCheck(Trait.NO_JUMPS, (asked, step) -> true, ActionChecks::jump),
            new WholeCheck(Trait.RETURNS, ActionChecks::returns),
            new WholeCheck(Trait.TREATS, ActionChecks::treats),
            new StepCheck(
                    Trait.AIMS,
                    (asked, step) -> step.phase().treated().isPresent(),
                    (asked, step) -> overPlant(Trait.AIMS, asked, step)),
            new StepCheck(
                    Trait.GOES_WITH_GROUND,
                    (asked, step) -> contact(asked, step).equals(Contact.SOIL),
                    (asked, step) -> overPlant(Trait.GOES_WITH_GROUND, asked, step)),
            new StepCheck(
                    Trait.HONEST_CONTACT, (asked, step) -> posed(asked, step).isPresent(), ActionChecks::label));

    private ActionChecks() {}

    private static Optional<Violation> posture(Asked asked, Step step) {
        return posed(asked, step).isPresent()
                ? Optional.empty()
                : broken(
                        Trait.KNOWN_POSTURE,
                        asked,
                        step,
                        Double.NaN,
                        Double.NaN,
                        "names the posture \"" + step.phase().posture() + "\", which the sheet does not have");
    }

    private static Optional<Violation> time(Asked asked) {
        Optional<ActionTime> declared = asked.sheet().actionTime();
        if (declared.isEmpty()) {
            return Optional.of(
                    Violation.of(Trait.ACTION_TIME, asked.task(), "the sheet of a spot head must give an action time"));
        }
        double least = declared.orElseThrow().least().value();
        double most = declared.orElseThrow().most().value();
        double taken = asked.action().duration();
        boolean below = taken < least * (1 - RELATIVE);
        if (!below && taken <= most * (1 + RELATIVE)) {
            return Optional.empty();
        }
        double limit = below ? least : most;
        return Optional.of(Violation.measured(
                Trait.ACTION_TIME,
                asked.task(),
                Optional.empty(),
                taken,
                limit,
                "the action takes " + Violation.seconds(taken) + ", "
                        + (below ? "less than the sheet's least " : "more than the sheet's most ")
                        + Violation.seconds(limit)));
    }

    private static Optional<Violation> reach(Asked asked, Step step) {
        Reach region = posed(asked, step).orElseThrow().region();
        boolean inside = region.contains(step.from())
                && region.contains(step.to())
                && region.outline()
                        .map(o -> SegmentInside.test(
                                o, step.from().plan(), step.to().plan()))
                        .orElse(true);
        return inside
                ? Optional.empty()
                : broken(
                        Trait.IN_REACH,
                        asked,
                        step,
                        Double.NaN,
                        Double.NaN,
                        "goes from " + step.from() + " to " + step.to() + ", which leaves the region of posture \""
                                + step.phase().posture() + "\"");
    }

    private static Optional<Violation> jump(Asked asked, Step step) {
        return step.phase().duration() > 0 || step.from().equals(step.to())
                ? Optional.empty()
                : broken(
                        Trait.NO_JUMPS,
                        asked,
                        step,
                        0.0,
                        Double.NaN,
                        "moves from " + step.from() + " to " + step.to() + " in no time");
    }

    private static Optional<Violation> returns(Asked asked) {
        List<Phase> phases = asked.action().phases();
        Phase last = phases.get(phases.size() - 1);
        Point3 ready = asked.sheet().readyToolPoint();
        return last.toolPoint().equals(ready)
                ? Optional.empty()
                : Optional.of(Violation.measured(
                        Trait.RETURNS,
                        asked.task(),
                        Optional.of(last.name()),
                        Double.NaN,
                        Double.NaN,
                        "the action ends at " + last.toolPoint() + ", not at the ready tool point " + ready));
    }

    private static Optional<Violation> treats(Asked asked) {
        return asked.action().phases().stream().anyMatch(p -> p.treated().isPresent())
                ? Optional.empty()
                : Optional.of(Violation.of(Trait.TREATS, asked.task(), "no phase of the action treats any ground"));
    }

    private static Optional<Violation> overPlant(Trait trait, Asked asked, Step step) {
        double off = step.farthestFrom(asked.task());
        double allowed = AimTolerance.of(asked);
        return off <= allowed
                ? Optional.empty()
                : broken(
                        trait,
                        asked,
                        step,
                        off,
                        allowed,
                        "has the tool point " + Violation.mm(off) + " from the plant, over the allowed "
                                + Violation.mm(allowed));
    }

    private static Optional<Violation> label(Asked asked, Step step) {
        Contact said = step.phase().contact();
        Contact derived = derived(asked, step);
        if (said.compareTo(derived) >= 0) {
            return Optional.empty();
        }
        long lowest = ShapeContact.lowest(posed(asked, step).orElseThrow(), step.lowest());
        double above = (lowest - asked.task().position().z()) / 1e6;
        return broken(
                Trait.HONEST_CONTACT,
                asked,
                step,
                above,
                derived.equals(Contact.SOIL) ? 0.0 : asked.setting().canopy() / 1e6,
                "is labelled " + said + ", but its lowest material is " + Violation.mm(Math.abs(above))
                        + (above < 0 ? " below" : " above") + " the ground, which is " + derived);
    }

    private static Contact contact(Asked asked, Step step) {
        return step.phase().contact().stricter(derived(asked, step));
    }

    private static Contact derived(Asked asked, Step step) {
        return posed(asked, step)
                .map(p -> ShapeContact.of(
                        p,
                        step.lowest(),
                        asked.task().position().z(),
                        asked.setting().canopy()))
                .orElse(Contact.FREE);
    }

    private static Optional<Posture> posed(Asked asked, Step step) {
        return asked.sheet().posture(step.phase().posture());
    }

    private static Optional<Violation> broken(
            Trait trait, Asked asked, Step step, double measured, double limit, String what) {
        return Optional.of(Violation.measured(
                trait,
                asked.task(),
                Optional.of(step.phase().name()),
                measured,
                limit,
                "phase \"" + step.phase().name() + "\" " + what));
    }
}
