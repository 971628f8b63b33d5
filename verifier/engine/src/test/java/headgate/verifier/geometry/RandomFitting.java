package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.sheet.Reach;
import headgate.verifier.geometry.OtherEngine.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Some arms with heads made at random: convex or not, on one or two beams, linked or free, turned or not. Each arm can
 * say what it occupies in our way, and in the way of another engine that is told only corners.
 */
record RandomFitting(List<Arm> arms, boolean convex, boolean twoBeams, boolean linked) {

    /** The region of tool points: its reach, and convex corner lists that fill it seen from above. */
    record Region(Reach reach, List<List<Point>> parts) {}

    /** One arm; its ranges are those of its own set-point. */
    record Arm(
            RandomBody fixed,
            RandomBody moving,
            RandomBody carried,
            Region region,
            boolean turned,
            Point3 mount,
            Interval shift,
            Interval lift) {

        /** All that is occupied, over the ranges of shift and lift unless the arm is linked to the one it meets. */
        Occupied occupied(boolean linked) {
            Occupied head = Occupied.of(fixed.body(), moving.body(), carried.body(), region.reach());
            Occupied placed = (turned ? head.turned() : head).shifted(mount);
            return linked ? placed : placed.overShift(shift).overLift(lift);
        }

        /** The same for the other engine. */
        List<Solid> solids(boolean linked) {
            List<Point> shifts = linked
                    ? List.of(mount.plan())
                    : List.of(
                            mount.plan().plus(new Point(0, shift.least())),
                            mount.plan().plus(new Point(0, shift.most())));
            Interval rise = linked ? Interval.at(mount.z()) : lift.shifted(mount.z());
            List<Point> tools = region.reach().corners().stream()
                    .map(p -> turned ? p.turned() : p)
                    .toList();
            List<Solid> solids = new ArrayList<>();
            fixed.parts().forEach(p -> solids.add(Solid.of(p, turned, List.of(shifts), rise)));
            for (RandomBody body : List.of(moving, carried)) {
                body.parts()
                        .forEach(p -> solids.add(Solid.of(
                                p,
                                turned,
                                List.of(tools, shifts),
                                rise.plus(region.reach().height()))));
            }
            return solids;
        }

        /** The head as it stands at tool point 0, mount 0, for the other engine. */
        Single single() {
            return new Single(this, unmoved(List.of(fixed)), unmoved(List.of(moving, carried)));
        }

        private List<Solid> unmoved(List<RandomBody> bodies) {
            return bodies.stream()
                    .flatMap(b -> b.parts().stream())
                    .map(p -> Solid.of(p, turned, List.of(), Interval.at(0)))
                    .toList();
        }

        /** A tool point on the straight way between two random points of the region, micrometres. */
        double[] onTheWay(SplittableRandom random) {
            double[] a = somewhere(random);
            double[] b = somewhere(random);
            double t = random.nextDouble();
            return new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2])};
        }

        private double[] somewhere(SplittableRandom random) {
            List<Point> part = region.parts().get(random.nextInt(region.parts().size()));
            double x = 0;
            double y = 0;
            double sum = 0;
            boolean corner = random.nextBoolean();
            int only = random.nextInt(part.size());
            for (int i = 0; i < part.size(); i++) {
                double weight = corner ? (i == only ? 1 : 0) : random.nextDouble();
                x += weight * part.get(i).x();
                y += weight * part.get(i).y();
                sum += weight;
            }
            return new double[] {x / sum, y / sum, within(random, region.reach().height())};
        }
    }

    /** One head in one configuration, for the other engine. */
    record Single(Arm arm, List<Solid> fixed, List<Solid> moving) {

        /** With the tool on the straight way between two random points of its region. */
        List<Solid> placed(SplittableRandom random, double shift, double lift) {
            double[] tool = arm.onTheWay(random);
            double sign = arm.turned() ? -1 : 1;
            double x = arm.mount().x();
            double y = arm.mount().y() + shift;
            double z = arm.mount().z() + lift;
            List<Solid> solids = new ArrayList<>();
            fixed.forEach(s -> solids.add(s.movedTo(x, y, z)));
            moving.forEach(s -> solids.add(s.movedTo(x + sign * tool[0], y + sign * tool[1], z + tool[2])));
            return solids;
        }
    }

    static RandomFitting of(SplittableRandom random) {
        boolean convex = random.nextBoolean();
        boolean twoBeams = random.nextBoolean();
        boolean linked = random.nextInt(3) == 0;
        int count = random.nextInt(2, 4);
        long pitch = random.nextLong(200_000, 800_001);
        List<Arm> arms = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            long x = twoBeams && i % 2 == 1 ? -random.nextLong(300_000, 1_200_001) : 0;
            arms.add(arm(random, convex, new Point3(x, i * pitch, random.nextLong(-20_000, 20_001))));
        }
        return new RandomFitting(List.copyOf(arms), convex, twoBeams, linked);
    }

    private static Arm arm(SplittableRandom random, boolean convex, Point3 mount) {
        RandomBody carried = random.nextInt(3) == 0 ? RandomBody.of(random, convex, 1) : RandomBody.NOTHING;
        long side = random.nextLong(0, 60_001);
        long low = random.nextLong(-50_000, 1);
        return new Arm(
                RandomBody.of(random, convex, random.nextInt(1, 3)),
                RandomBody.of(random, convex, 1),
                carried,
                region(random, convex),
                random.nextInt(3) == 0,
                mount,
                new Interval(-side, random.nextLong(0, 60_001)),
                new Interval(low, low + random.nextLong(0, 200_001)));
    }

    private static Region region(SplittableRandom random, boolean convex) {
        if (random.nextInt(6) == 0) {
            Point3 at = new Point3(
                    random.nextLong(-100_000, 100_001),
                    random.nextLong(-100_000, 100_001),
                    random.nextLong(-50_000, 1));
            return new Region(Reach.at(at), List.of(List.of(at.plan())));
        }
        RandomBody.Plan plan = RandomBody.plan(random, convex);
        Outline outline = plan.outline();
        long low = random.nextLong(-60_000, 1);
        return new Region(Reach.over(outline, new Interval(low, low + random.nextLong(0, 60_001))), plan.convexParts());
    }

    /** A number in an interval, micrometres: an end as often as anything between. */
    static double within(SplittableRandom random, Interval interval) {
        return switch (random.nextInt(4)) {
            case 0 -> interval.least();
            case 1 -> interval.most();
            default -> interval.least() + random.nextDouble() * interval.length();
        };
    }
}
