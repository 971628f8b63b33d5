package headgate.sample.planter;

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
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.SoilClass;
import java.util.List;
import org.pf4j.Extension;

/**
 * Sets plug plants. A beak with a plug in it goes into the soil, opens, firms the soil around the plug, and lifts off
 * over the plant; then the next plug falls from the tray into the beak. While the beak is in the soil or over the plant
 * it goes with the ground.
 */
@Extension
public final class PlugPlanter implements SpotHead {

    /** The beak comes to this height over the ground before it goes in, micrometres. */
    private static final long OVER_THE_GROUND = 30_000;

    /** The beak lifts to this height over the top of the plant before it leaves it, micrometres. */
    private static final long OVER_THE_PLANT = 20_000;

    private static final Axis STAGE = new Axis(1_200_000, 10_000_000);
    private static final Axis RAM = new Axis(1_200_000, 12_000_000);

    /** Shortest and longest approach that the controller plans, milliseconds. */
    private static final long SHORTEST_APPROACH = 100;

    private static final long LONGEST_APPROACH = 360;

    /** Time for the next plug to fall into the beak, milliseconds. */
    private static final long LOAD = 140;

    private static final HeadSheet SHEET = PlanterSheet.make();
    private static final Outline REACH = SHEET.reach().outline().orElseThrow();
    private static final Point3 READY = SHEET.readyToolPoint();
    private static final Outline TREATED = Outline.insideDisc(Point.ORIGIN, 0.025, 16);

    /** Makes a planter. */
    public PlugPlanter() {}

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
            return Action.decline("not a plug that the beak can take");
        }
        if (!range.soils().contains(task.soil()) || !range.moisture().contains(task.moisture())) {
            return Action.decline("not a soil that the planter is made for");
        }
        if (!range.groundSpeed().contains(task.groundVelocity().speed())) {
            return Action.decline("the ground moves too slowly or too fast");
        }
        Planting planting = Planting.plan(task);
        if (planting.tip() < SHEET.reach().height().least()) {
            return Action.decline("the ground is too low for the beak");
        }
        if (planting.clear() > READY.z()) {
            return Action.decline("the plant is too tall to lift off over it");
        }
        return begin(task, planting);
    }

    /** Finds the first tick at which the beak can go in and stay with the ground until it has lifted off. */
    private static Action begin(SpotTask task, Planting planting) {
        Velocity ground = task.groundVelocity();
        Point place = task.position().plan();
        for (long approach = SHORTEST_APPROACH; approach <= LONGEST_APPROACH; approach += Axis.TICK) {
            Point3 entry = at(after(place, ground, approach), planting.above());
            Point exit = after(place, ground, approach + planting.inGround());
            if (REACH.contains(entry.plan())
                    && REACH.contains(exit)
                    && STAGE.time(distance(READY, entry)) <= approach) {
                return Action.of(phases(planting, place, ground, approach));
            }
        }
        if (!REACH.yExtent().contains(place.y())) {
            return Action.decline("the place is beside the reach");
        }
        boolean ahead = (after(place, ground, SHORTEST_APPROACH).x() - READY.x()) * ground.x() < 0;
        return Action.decline(
                ahead
                        ? "the place is not yet in reach, or leaves it before the plug is set"
                        : "the place is out of reach");
    }

    private static List<Phase> phases(Planting planting, Point place, Velocity ground, long approach) {
        long entered = approach + planting.insert();
        long released = entered + planting.release();
        long firmed = released + planting.firm();
        long lifted = firmed + planting.lift();
        Point3 off = at(after(place, ground, lifted), planting.clear());
        return List.of(
                step("approach", approach, at(after(place, ground, approach), planting.above()))
                        .in(PostureName.WORK)
                        .touching(Contact.CANOPY)
                        .build(),
                step("insert", planting.insert(), at(after(place, ground, entered), planting.tip()))
                        .in(PostureName.WORK)
                        .touching(Contact.SOIL)
                        .build(),
                step("release", planting.release(), at(after(place, ground, released), planting.tip()))
                        .in(PlanterSheet.OPEN)
                        .touching(Contact.SOIL)
                        .build(),
                step("firm", planting.firm(), at(after(place, ground, firmed), planting.tip()))
                        .in(PlanterSheet.OPEN)
                        .touching(Contact.SOIL)
                        .treating(TREATED)
                        .build(),
                step("lift off", planting.lift(), off)
                        .in(PlanterSheet.OPEN)
                        .touching(Contact.SOIL)
                        .build(),
                step("return", STAGE.time(distance(off, READY)), READY)
                        .in(PlanterSheet.OPEN)
                        .touching(Contact.CANOPY)
                        .build(),
                step("load", LOAD, READY)
                        .in(PostureName.READY)
                        .touching(Contact.FREE)
                        .build());
    }

    private static Phase.Builder step(String name, long milliseconds, Point3 to) {
        return Phase.named(name).lasting(milliseconds / 1000.0).endingAt(to);
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
    private static long distance(Point3 a, Point3 b) {
        double dx = a.x() - b.x();
        double dy = a.y() - b.y();
        double dz = a.z() - b.z();
        return (long) StrictMath.ceil(StrictMath.sqrt(dx * dx + dy * dy + dz * dz));
    }

    /**
     * The heights of one planting, head frame, micrometres, and its times on the controller's ticks, milliseconds.
     *
     * @param above tool point over the ground
     * @param tip tool point in the soil
     * @param clear tool point over the top of the plant
     * @param insert time to go in
     * @param release time to open the beak
     * @param firm time to firm the soil
     * @param lift time to lift off over the plant
     */
    private record Planting(long above, long tip, long clear, long insert, long release, long firm, long lift) {

        static Planting plan(SpotTask task) {
            long ground = task.position().z();
            long above = ground + OVER_THE_GROUND;
            long tip = ground - depth(task.soil());
            long clear = ground + Micrometres.nearest(task.plantHeight()) + OVER_THE_PLANT;
            return new Planting(
                    above,
                    tip,
                    clear,
                    RAM.time(above - tip),
                    Axis.toTick(150.0 + 1000.0 * task.stemDiameter()),
                    firm(task.soil()),
                    RAM.time(clear - tip));
        }

        long inGround() {
            return insert + release + firm + lift;
        }

        /** Light soil dries from the top, so the plug goes deeper. */
        private static long depth(SoilClass soil) {
            if (soil.equals(SoilClass.COARSE)) {
                return 60_000;
            }
            return soil.equals(SoilClass.MEDIUM) ? 50_000 : 40_000;
        }

        private static long firm(SoilClass soil) {
            if (soil.equals(SoilClass.COARSE)) {
                return 180;
            }
            return soil.equals(SoilClass.MEDIUM) ? 160 : 140;
        }
    }
}
