package headgate.verifier.replay;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.verifier.behaviour.Facing;
import headgate.verifier.behaviour.ShapeContact;
import headgate.verifier.behaviour.Step;
import headgate.verifier.interlock.ToolWay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a head answered, as far as a replay needs it: when it touches the ground, how long it is busy, what it treats and
 * where its tool goes. Contact is the stricter of what the head says and what its shape is.
 */
public final class HeadAction {

    /** A refusal. */
    static final HeadAction DECLINED = new HeadAction(List.of(), 0, 0, 0);

    private final List<Leg> legs;
    private final double approach;
    private final double inGround;
    private final double busy;
    private final double treatedRadius;

    private HeadAction(List<Leg> legs, double approach, double inGround, double busy) {
        this.legs = List.copyOf(legs);
        this.treatedRadius = legs.stream().mapToDouble(HeadAction::radius).max().orElse(0);
        this.approach = approach;
        this.inGround = inGround;
        this.busy = busy;
    }

    /**
     * One phase of an action.
     *
     * @param start after the action's start, s
     * @param end after the action's start, s
     * @param from tool point at the start, head frame
     * @param to tool point at the end, head frame
     * @param posture index of the posture in the sheet; -1 if the sheet does not have it
     * @param soil true if the head is in the soil
     * @param treated the ground treated, about the tool point; null if none
     * @param halfTreated how far ahead of or behind the tool point ground is treated at most, micrometres
     */
    record Leg(
            double start,
            double end,
            Point3 from,
            Point3 to,
            int posture,
            boolean soil,
            @Nullable Outline treated,
            long halfTreated) {}

    /**
     * Takes from an answer what is needed.
     *
     * @param sheet what the head says of itself
     * @param action the answer
     * @param ground height of the ground, head frame, micrometres
     * @param canopy height of the canopy over the ground, micrometres
     * @return the action
     */
    static HeadAction of(HeadSheet sheet, Action action, long ground, long canopy) {
        if (action.declined().isPresent()) {
            return DECLINED;
        }
        List<Leg> legs = new ArrayList<>();
        double from = Double.NaN;
        double to = Double.NaN;
        double end = 0;
        for (Step step : Step.of(sheet, action)) {
            Phase phase = step.phase();
            int posture = index(sheet, phase);
            Contact contact = posture < 0
                    ? phase.contact()
                    : phase.contact()
                            .stricter(ShapeContact.of(sheet.postures().get(posture), step.lowest(), ground, canopy));
            boolean soil = contact.equals(Contact.SOIL);
            Outline treated = phase.treated().orElse(null);
            if (soil || treated != null) {
                from = Double.isNaN(from) ? step.start() : from;
                to = step.end();
            }
            end = step.end();
            legs.add(new Leg(step.start(), step.end(), step.from(), step.to(), posture, soil, treated, half(treated)));
        }
        // A head that touches nothing has no window to keep: its plant must be in reach when the action ends.
        double approach = Double.isNaN(from) ? end : from;
        double inGround = Double.isNaN(from) ? 0 : to - from;
        return new HeadAction(legs, approach, inGround, end);
    }

    private static long half(@Nullable Outline treated) {
        if (treated == null) {
            return 0;
        }
        Interval x = treated.xExtent();
        return Math.max(Math.abs(x.least()), Math.abs(x.most()));
    }

    private static int index(HeadSheet sheet, Phase phase) {
        List<Posture> postures = sheet.postures();
        for (int i = 0; i < postures.size(); i++) {
            if (postures.get(i).name().equals(phase.posture())) {
                return i;
            }
        }
        return -1;
    }

    /** {@return true if the head refused} */
    public boolean declined() {
        return legs.isEmpty();
    }

    /** {@return time from the start until the head is in the soil or treats, t_a, s} */
    public double approach() {
        return approach;
    }

    /** {@return time from first to last contact with the soil, or while treating, t_g, s} */
    public double inGround() {
        return inGround;
    }

    /** {@return time of the whole action, t_a + t_g + t_r, s} */
    public double busy() {
        return busy;
    }

    private static double radius(Leg leg) {
        return leg.treated() == null
                ? 0
                : leg.treated().vertices().stream()
                        .mapToDouble(p -> Math.hypot((double) p.x(), (double) p.y()))
                        .max()
                        .orElse(0);
    }

    /** How far from the tool point ground is treated, micrometres. */
    double treatedRadius() {
        return treatedRadius;
    }

    List<Leg> legs() {
        return legs;
    }

    /** The ways of the tool point, seen from the mount along the axes of the carriage. */
    List<ToolWay> ways(Facing facing) {
        boolean turned = facing == Facing.TURNED;
        return legs.stream()
                .map(leg -> turned
                        ? new ToolWay(leg.from().turned(), leg.to().turned())
                        : new ToolWay(leg.from(), leg.to()))
                .toList();
    }
}
