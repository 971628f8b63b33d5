package headgate.sample.gripper;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.head.SpotHead;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.WorkRange;
import headgate.api.task.SpotTask;
import headgate.api.task.Velocity;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.SoilClass;
import java.util.ArrayList;
import java.util.List;
import org.pf4j.Extension;

/**
 * Pulls single weeds. Two fingers on a ram come down over the weed, close below the crown, pull it out with its root, and
 * drop it beside the row. From the moment the fingers come down over the weed until the root is out of the ground they
 * go with the ground.
 */
@Extension
public final class Gripper implements SpotHead {

    /** The fingers open to this height over the top of the weed before they come down around it, micrometres. */
    private static final long OVER_THE_WEED = 30_000;

    /** The root that hangs from the fingers, and how far it must be out of the ground, micrometres. */
    private static final long ROOT = GripperSheet.ROOT + 10_000;

    private static final Axis ACROSS = new Axis(1_000_000, 8_000_000);
    private static final Axis RAM = new Axis(1_500_000, 15_000_000);

    /** Shortest and longest approach that the controller plans, milliseconds. */
    private static final long SHORTEST_APPROACH = 100;

    private static final long LONGEST_APPROACH = 450;

    /** Time to open the fingers and let the weed fall, milliseconds. */
    private static final long RELEASE = 80;

    /** Below this water content the soil holds the root harder. */
    private static final double DRY = 0.15;

    private static final HeadSheet SHEET = GripperSheet.make();
    private static final Outline REACH = SHEET.reach().outline().orElseThrow();
    private static final Point3 READY = SHEET.readyToolPoint();
    private static final Outline TREATED = Outline.insideDisc(Point.ORIGIN, 0.02, 16);

    /** Makes a gripper. */
    public Gripper() {}

    @Override
    public HeadSheet sheet() {
        return SHEET;
    }

    @Override
    public Action act(SpotTask task) {
        WorkRange range = SHEET.workRange();
        if (!range.plantClasses().contains(task.plantClass())
                || !range.stemDiameter().contains(task.stemDiameter())
                || !range.plantHeight().contains(task.plantHeight())) {
            return Action.decline("not a weed that the fingers can hold");
        }
        if (!range.soils().contains(task.soil()) || !range.moisture().contains(task.moisture())) {
            return Action.decline("not a soil that the gripper is made for");
        }
        if (task.groundVelocity().speed() > range.groundSpeed().most()) {
            return Action.decline("the ground moves too fast");
        }
        Pull pull = Pull.plan(task);
        if (pull.deepest() < SHEET.reach().height().least()) {
            return Action.decline("the ground is too low for the ram");
        }
        if (pull.highest() > READY.z()) {
            return Action.decline("the weed is too tall to come down over it");
        }
        return begin(task, pull);
    }

    /**
     * Finds the first tick at which the fingers can come down over the weed and go with the ground until its root is
     * out. A weed that is still ahead of the reach is waited for as long as the longest approach allows.
     */
    private static Action begin(SpotTask task, Pull pull) {
        Velocity ground = task.groundVelocity();
        Point weed = task.position().plan();
        Point atSoonest = after(weed, ground, SHORTEST_APPROACH + pull.descend());
        for (long approach = SHORTEST_APPROACH; approach <= LONGEST_APPROACH; approach += Axis.TICK) {
            Point meeting = after(weed, ground, approach + pull.descend());
            Point leaving = after(weed, ground, approach + pull.descend() + pull.inGround());
            if (REACH.contains(meeting)
                    && REACH.contains(leaving)
                    && ACROSS.time(distance(READY.plan(), meeting)) <= approach) {
                return Action.of(phases(pull, weed, ground, approach));
            }
        }
        if (!REACH.yExtent().contains(weed.y())) {
            return Action.decline("the weed is beside the reach");
        }
        boolean ahead = (atSoonest.x() - READY.x()) * ground.x() < 0;
        return Action.decline(
                ahead ? "the weed is not yet in reach, or leaves it before it is out" : "the weed is out of reach");
    }

    private static List<Phase> phases(Pull pull, Point weed, Velocity ground, long approach) {
        long time = approach + pull.descend();
        Point meeting = after(weed, ground, time);
        List<Phase> phases = new ArrayList<>();
        phases.add(step("approach", approach, at(meeting, READY.z()), PostureName.WORK, Contact.FREE));
        phases.add(step("descend", pull.descend(), at(meeting, pull.hover()), PostureName.WORK, Contact.CANOPY));
        time += pull.insert();
        phases.add(step(
                "insert", pull.insert(), at(after(weed, ground, time), pull.tip()), PostureName.WORK, Contact.SOIL));
        time += pull.close();
        phases.add(
                step("close", pull.close(), at(after(weed, ground, time), pull.tip()), PostureName.WORK, Contact.SOIL));
        time += pull.draw();
        Point out = after(weed, ground, time);
        phases.add(Phase.named("pull")
                .lasting(pull.draw() / 1000.0)
                .endingAt(at(out, pull.pulled()))
                .in(GripperSheet.CARRYING)
                .touching(Contact.SOIL)
                .treating(TREATED)
                .build());
        phases.add(step(
                "lift",
                RAM.time(READY.z() - pull.pulled()),
                at(out, READY.z()),
                GripperSheet.CARRYING,
                Contact.CANOPY));
        Point drop = new Point(
                READY.x(),
                weed.y() < 0 ? REACH.yExtent().least() : REACH.yExtent().most());
        phases.add(step(
                "carry aside",
                ACROSS.time(distance(out, drop)),
                at(drop, READY.z()),
                GripperSheet.CARRYING,
                Contact.FREE));
        phases.add(step("release", RELEASE, at(drop, READY.z()), GripperSheet.CARRYING, Contact.FREE));
        phases.add(step("return", ACROSS.time(distance(drop, READY.plan())), READY, PostureName.WORK, Contact.FREE));
        return phases;
    }

    private static Phase step(String name, long milliseconds, Point3 to, PostureName posture, Contact contact) {
        return Phase.named(name)
                .lasting(milliseconds / 1000.0)
                .endingAt(to)
                .in(posture)
                .touching(contact)
                .build();
    }

    /** Where a point of the ground is after a time in milliseconds, rounded to the grid. */
    private static Point after(Point start, Velocity ground, long milliseconds) {
        return new Point(
                start.x() + Math.floorDiv(ground.x() * milliseconds + 500, 1000),
                start.y() + Math.floorDiv(ground.y() * milliseconds + 500, 1000));
    }

    private static Point3 at(Point plan, long z) {
        return new Point3(plan.x(), plan.y(), z);
    }

    /** The distance, micrometres, rounded up. */
    private static long distance(Point a, Point b) {
        double dx = a.x() - b.x();
        double dy = a.y() - b.y();
        return (long) StrictMath.ceil(StrictMath.sqrt(dx * dx + dy * dy));
    }

    /**
     * The heights of one pull, head frame, micrometres, and its times on the controller's ticks, milliseconds.
     *
     * @param hover tool point over the top of the weed
     * @param tip tool point in the soil
     * @param pulled tool point with the root out of the ground
     * @param descend time from ready height to over the weed
     * @param insert time from over the weed into the soil
     * @param close time to close the fingers
     * @param draw time to draw the root out
     */
    private record Pull(long hover, long tip, long pulled, long descend, long insert, long close, long draw) {

        static Pull plan(SpotTask task) {
            long ground = task.position().z();
            long hover = ground + Micrometres.nearest(task.plantHeight()) + OVER_THE_WEED;
            long tip = ground - depth(task.plantClass());
            long pulled = ground + ROOT;
            double stem = task.stemDiameter() * 1000.0;
            return new Pull(
                    hover,
                    tip,
                    pulled,
                    RAM.time(Math.max(0, READY.z() - hover)),
                    RAM.time(hover - tip),
                    Axis.toTick(80.0 + 5.0 * stem),
                    Axis.toTick(50.0 + 1000.0 * (pulled - tip) / drawSpeed(task)));
        }

        long deepest() {
            return tip;
        }

        long highest() {
            return Math.max(hover, pulled);
        }

        long inGround() {
            return insert + close + draw;
        }

        /** A rosette holds itself just below the surface by a taproot; a grass by a shallow tuft. */
        private static long depth(PlantClass plant) {
            if (plant.equals(PlantClass.ROSETTE)) {
                return 30_000;
            }
            return plant.equals(PlantClass.GRASS) ? 25_000 : 20_000;
        }

        /** The root tears off if it is drawn fast out of heavy or dry soil. */
        private static double drawSpeed(SpotTask task) {
            double loose = task.soil().equals(SoilClass.COARSE)
                    ? 450_000
                    : task.soil().equals(SoilClass.MEDIUM) ? 360_000 : 300_000;
            return task.moisture() < DRY ? 0.8 * loose : loose;
        }
    }
}
