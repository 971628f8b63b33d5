package headgate.verifier.interlock;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Cases;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.OtherEngine.Solid;
import headgate.verifier.geometry.Part;
import headgate.verifier.geometry.RandomBody;
import headgate.verifier.setup.ArmStance;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.RunOut;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.WorkHeight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Two arms with heads made at random, on one beam or on two, turned or not: convex or not, with a fixed body that may
 * differ from posture to posture. Each can say where its material is in one configuration, in the way of another engine
 * that is told only corners.
 */
record RandomPair(Side right, Side left) {

    private static final PostureName HOLDING = PostureName.of("holding");

    /** Bodies of one posture, with parts that fill them, and where its tool point can be. */
    record Shape(PostureName name, RandomBody fixed, RandomBody moving, RandomBody carried, Reach region) {

        Posture posture() {
            return Posture.named(name)
                    .fixed(fixed.body())
                    .moving(moving.body())
                    .carried(carried.body())
                    .region(region)
                    .build();
        }
    }

    /** One arm with its head. */
    record Side(List<Shape> shapes, Station station) {

        ArmStance atWork() {
            return ArmStance.of(station, 2).get(0);
        }

        /** The shapes that it may have while it acts. */
        List<Shape> acting() {
            return shapes.stream()
                    .filter(s -> !s.name().equals(PostureName.STOWED))
                    .toList();
        }

        Shape shape(PostureName name) {
            return shapes.stream()
                    .filter(s -> s.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        /** Where its material is, the tool point seen from the mount along the axes of the carriage, micrometres. */
        List<Solid> solids(Shape shape, double[] tool, double height) {
            double x = station.mount().x();
            double y = station.mount().y();
            List<Solid> solids = new ArrayList<>();
            solids.add(Solid.of(ARM, false, List.of(), Interval.at(0)).movedTo(x, y, height));
            for (Part p : shape.fixed().parts()) {
                solids.add(solid(p).movedTo(x, y, height));
            }
            for (RandomBody body : List.of(shape.moving(), shape.carried())) {
                for (Part p : body.parts()) {
                    solids.add(solid(p).movedTo(x + tool[0], y + tool[1], height + tool[2]));
                }
            }
            return solids;
        }

        private Solid solid(Part part) {
            return Solid.of(part, station.turned(), List.of(), Interval.at(0));
        }

        double[] ready() {
            Point3 p = station.sheet().readyToolPoint();
            return array(station.turned() ? p.turned() : p);
        }

        /** Whether the tool point, seen from the mount, is in the hull of its reach. */
        boolean reaches(Point3 seen) {
            Point3 inHead = station.turned() ? seen.turned() : seen;
            return Occupied.hullOf(List.of(shape(PostureName.WORK).region())).hullHolds(inHead);
        }

        /** A tool point on the straight way between two corners or inner points of the reach, on the grid. */
        Point3 somewhere(SplittableRandom random) {
            Reach reach = acting().get(random.nextInt(acting().size())).region();
            List<Point> corners = reach.corners();
            Point a = corners.get(random.nextInt(corners.size()));
            Point b = corners.get(random.nextInt(corners.size()));
            double t = random.nextBoolean() ? random.nextInt(2) : random.nextDouble();
            Point at = new Point(a.x() + (long) (t * (b.x() - a.x())), a.y() + (long) (t * (b.y() - a.y())));
            Point seen = station.turned() ? at.turned() : at;
            Interval heights = reach.height();
            long z = random.nextBoolean()
                    ? heights.least()
                    : heights.least() + (long) (random.nextDouble() * heights.length());
            return new Point3(seen.x(), seen.y(), z);
        }
    }

    /** The arm's own material in {@link Cases}. */
    private static final Part ARM = new Part(
            List.of(
                    new Point(-50_000, -50_000),
                    new Point(50_000, -50_000),
                    new Point(50_000, 50_000),
                    new Point(-50_000, 50_000)),
            new Interval(0, 300_000));

    static double[] array(Point3 p) {
        return new double[] {p.x(), p.y(), p.z()};
    }

    static RandomPair of(SplittableRandom random) {
        boolean twoBeams = random.nextInt(3) == 0;
        Point offset = new Point(
                twoBeams ? -random.nextLong(200_000, 700_001) : 0,
                twoBeams ? random.nextLong(0, 400_001) : random.nextLong(300_000, 900_001));
        return new RandomPair(side(random, "a1", new Point(0, 0)), side(random, "a3", offset));
    }

    private static Side side(SplittableRandom random, String armId, Point mount) {
        boolean convex = random.nextBoolean();
        RandomBody plate = plate(random, 220_000);
        RandomBody tool = RandomBody.of(random, convex, 1);
        Reach ready = Reach.at(new Point3(0, 0, -150_000));
        Reach work = reach(random, convex);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape(PostureName.STOWED, plate, tool, RandomBody.NOTHING, ready));
        shapes.add(new Shape(PostureName.READY, plate, tool, RandomBody.NOTHING, ready));
        RandomBody folded = random.nextInt(3) == 0 ? joined(plate, plate(random, 450_000)) : plate;
        shapes.add(new Shape(PostureName.WORK, folded, tool, RandomBody.NOTHING, work));
        if (random.nextInt(3) == 0) {
            shapes.add(new Shape(HOLDING, plate, tool, RandomBody.of(random, convex, 1), work));
        }
        HeadSheet sheet = Cases.weederSheet()
                .postures(shapes.stream().map(Shape::posture).toList())
                .build();
        Arm arm = Cases.arm(armId, "front", 0);
        long low = random.nextLong(400_000, 450_001);
        WorkHeight height = new WorkHeight(
                0, 0, 0, Optional.empty(), 0, low, low + random.nextLong(0, 60_001), new Interval(350_000, 950_000));
        Station station = new Station(
                List.of(new Lane(1, Lane.Kind.ON_ROW, Interval.at(0))),
                arm,
                new HeadUnderTest(Cases.facts(), Cases.weeding().head().run()),
                sheet,
                random.nextInt(3) == 0,
                mount,
                height,
                RunOut.of(arm.liftMotion(), 0.2));
        return new Side(List.copyOf(shapes), station);
    }

    /** What stands still: one rectangle under the mount. */
    private static RandomBody plate(SplittableRandom random, long widest) {
        long x = random.nextLong(20_000, 120_001);
        long y = random.nextLong(20_000, widest + 1);
        long dy = random.nextLong(-60_000, 60_001);
        Interval height = new Interval(-random.nextLong(40_000, 300_001), 0);
        Outline outline = Outline.rectangle(new Interval(-x, x), new Interval(dy - y, dy + y));
        return new RandomBody(Body.of(Prism.of(outline, height)), List.of(new Part(outline.vertices(), height)));
    }

    private static RandomBody joined(RandomBody one, RandomBody other) {
        List<Part> parts = new ArrayList<>(one.parts());
        parts.addAll(other.parts());
        return new RandomBody(one.body().and(other.body()), parts);
    }

    private static Reach reach(SplittableRandom random, boolean convex) {
        long low = random.nextLong(-300_000, -150_001);
        return Reach.over(
                RandomBody.plan(random, convex).outline(), new Interval(low, low + random.nextLong(0, 150_001)));
    }
}
