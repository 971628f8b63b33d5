package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.WorkRange;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.carriage.Arm;
import headgate.runtime.task.TaskLattice;
import headgate.verifier.dispatch.Dispatch;
import headgate.verifier.formula.RestToRest;
import headgate.verifier.interlock.ToolWay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An arm during a replay: where it is, until when it is busy, what waits for it, and what it did so far. */
final class ArmState {

    final int index;
    final ReplayArm arm;
    final ReplayTool tool;
    final ReachLine reach;
    final Dispatch dispatch;
    private final Velocity ground;
    private final SoilClass soil;
    private final double moisture;
    private final WorkRange range;
    private final boolean takesHere;
    private final Map<PlantClass, Boolean> classes = new HashMap<>();
    final @Nullable CropSweep sweep;

    /** Leads with which the head is asked, one after the other until it accepts, s before the plant is in reach. */
    final double[] leads;

    /** Longest time that an action may take by the sheet, s; 0 if the sheet does not say. */
    final double most;

    /** The arms that shift with it, itself among them. */
    List<ArmState> linked = List.of(this);

    /** Where its mount may be; narrowed by the arms that shift with it. */
    Interval shift;

    long mount;
    double freeAt = Double.NEGATIVE_INFINITY;
    double heldUntil = Double.NEGATIVE_INFINITY;

    /** The ways of its tool point in the action that it does, or did last. */
    List<ToolWay> doing = List.of();

    boolean mustDecide;

    /** For when it was woken last; that time may be over. */
    double wakesAt = Double.NaN;

    double charge;
    long row;

    /** The arm of its group that waits for the others to come to rest, so that all can shift. */
    @Nullable
    Candidate waitsToShift;

    final List<Candidate> waiting = new ArrayList<>();

    long actions;
    double acting;
    double shifting;
    long refills;

    ArmState(int index, ReplaySetting setting, Dispatch dispatch) {
        this.index = index;
        this.arm = setting.arms().get(index);
        this.tool = setting.tools().get(arm.tool());
        this.dispatch = dispatch;
        HeadSheet sheet = tool.sheet();
        this.reach = ReachLine.of(sheet.reach(), arm.facing());
        this.range = sheet.workRange();
        this.takesHere = range.soils().contains(setting.soil())
                && range.moisture().contains(setting.moisture())
                && range.groundSpeed().contains(setting.speed());
        this.ground = TaskLattice.nearest(arm.facing().ground(setting.speed()));
        this.soil = setting.soil();
        this.moisture = TaskLattice.MOISTURE.nearest(setting.moisture());
        this.sweep = CropSweep.isNeeded(setting.crop())
                ? new CropSweep(arm, sheet, setting.crop(), setting.speed() * 1e6)
                : null;
        double typical = sheet.actionTime().map(t -> t.typical().value()).orElse(1.0);
        this.leads = new double[] {0, typical / 4, typical / 2, typical};
        this.most = sheet.actionTime().map(ActionTime::most).map(f -> f.value()).orElse(0.0);
        this.shift = arm.shift();
        this.mount = arm.setPoint();
        this.charge = tool.magazine().map(Magazine::capacity).orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether its reach comes over a plant somewhere in its shift. */
    boolean covers(long y) {
        return y >= shift.least() + reach.least() && y <= shift.most() + reach.most();
    }

    /** When it knows of a plant; infinite if it never does. */
    double known(Target target, double speed, double ahead) {
        if (arm.bands().isEmpty()) {
            return (target.x - arm.mountX() - ahead * 1e6) / (speed * 1e6);
        }
        long radius = Math.round(Math.max(target.stem, target.canopy) * 5e5);
        double known = Double.POSITIVE_INFINITY;
        for (SensorBand band : arm.bands()) {
            known = Math.min(known, band.known(target.x, target.y, radius, speed));
        }
        return known;
    }

    /** When it knows of something at x = 0 at the soonest; at any other place, by so much travel later, s. */
    double soonestKnown(double speed, double ahead) {
        double known = Double.POSITIVE_INFINITY;
        for (SensorBand band : arm.bands()) {
            known = Math.min(known, -band.x().most() / (speed * 1e6) + band.latency() + band.frame());
        }
        return arm.bands().isEmpty() ? -(arm.mountX() + ahead * 1e6) / (speed * 1e6) : known;
    }

    /** Whether its head is meant for a plant, in this soil and at this speed. */
    boolean takes(Target target) {
        return takesHere
                && classes.computeIfAbsent(target.kind, range.plantClasses()::contains)
                // A recorded plant may be larger than any task can say.
                && target.stem <= TaskLattice.STEM.most()
                && target.height <= TaskLattice.HEIGHT.most()
                && range.stemDiameter().contains(TaskLattice.STEM.nearest(target.stem))
                && range.plantHeight().contains(TaskLattice.HEIGHT.nearest(target.height));
    }

    /** The kind of task that a plant is. */
    TaskKind kind(Target target) {
        return new TaskKind(
                ground,
                target.kind,
                TaskLattice.STEM.nearest(target.stem),
                TaskLattice.HEIGHT.nearest(target.height),
                soil,
                moisture);
    }

    /** The place in a task for a plant that is some way ahead of the mount, micrometres. */
    long place(Target target, long mountY, double ahead) {
        int sign = -arm.facing().sign();
        return TaskKind.place(sign * Math.round(ahead), sign * (target.y - mountY), -arm.height());
    }

    /** How long it takes to shift, s. */
    double shiftTime(long to) {
        if (to == mount) {
            return 0;
        }
        double time = 0;
        for (ArmState each : linked) {
            Arm.AxisMotion motion = each.arm.motion();
            time = Math.max(
                    time,
                    RestToRest.of(
                                    Math.abs(to - mount) / 1e6,
                                    motion.speed(),
                                    motion.acceleration(),
                                    motion.deceleration())
                            .duration());
        }
        return time;
    }

    Optional<Magazine> magazine() {
        return tool.magazine();
    }
}
