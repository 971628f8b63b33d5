package headgate.verifier.behaviour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.answer.Contact;
import headgate.api.problem.InvalidValueException;
import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.vocabulary.PostureName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

class ProbeGeometryTest {

    /** A U, open at the front: two arms along x, joined at the back. */
    private static final Outline U = Outline.of(List.of(
            new Point(0, 0),
            new Point(100, 0),
            new Point(100, 30),
            new Point(40, 30),
            new Point(40, 70),
            new Point(100, 70),
            new Point(100, 100),
            new Point(0, 100)));

    /** Halton (1960): the digits of the index mirrored at the point, so 6 = 110 in base 2 gives 0.011 = 3/8. */
    @Test
    void mirrorsTheDigitsOfTheIndex() {
        assertThat(IntStream.rangeClosed(1, 6).mapToDouble(i -> Halton.at(i, 0)).toArray())
                .containsExactly(1 / 2.0, 1 / 4.0, 3 / 4.0, 1 / 8.0, 5 / 8.0, 3 / 8.0);
        assertThat(IntStream.rangeClosed(1, 6).mapToDouble(i -> Halton.at(i, 1)).toArray())
                .containsExactly(1 / 3.0, 2 / 3.0, 1 / 9.0, 4 / 9.0, 7 / 9.0, 2 / 9.0);
    }

    /** In 512 probes each sixteenth of each axis holds about 32. The evenness of the sequence, not its values. */
    @Test
    void fillsEveryAxisEvenly() {
        for (int axis = 0; axis < 8; axis++) {
            int[] counts = new int[16];
            for (int i = 1; i <= 512; i++) {
                counts[(int) (Halton.at(i, axis) * 16)]++;
            }
            for (int count : counts) {
                assertThat((double) count).isCloseTo(32.0, within(4.0));
            }
        }
    }

    @Test
    void cutsAReachIntoItsPieces() {
        assertThat(Chord.at(U, 15)).containsExactly(new Interval(0, 100));
        assertThat(Chord.at(U, 50)).containsExactly(new Interval(0, 40));
        assertThat(Chord.at(U, 85)).containsExactly(new Interval(0, 100));
        assertThat(Chord.at(U, 101)).isEmpty();
        Outline turned = Outline.of(
                U.vertices().stream().map(p -> new Point(-p.y(), p.x())).toList());
        assertThat(Chord.at(turned, 70)).containsExactly(new Interval(-100, -70), new Interval(-30, 0));
    }

    /** A triangle with corners (0, 0), (300, 0), (0, 100): at y = 25 the slanted edge is at x = 300 x 0.75 = 225. */
    @Test
    void cutsASlantedEdgeInward() {
        Outline triangle = Outline.of(List.of(new Point(0, 0), new Point(300, 0), new Point(0, 100)));
        assertThat(Chord.at(triangle, 25)).containsExactly(new Interval(0, 225));
        assertThat(Chord.at(triangle, 33)).containsExactly(new Interval(0, 201));
    }

    @Test
    void seesAPathThatLeavesAHollowReach() {
        assertThat(SegmentInside.test(U, new Point(90, 10), new Point(90, 90))).isFalse();
        assertThat(SegmentInside.test(U, new Point(90, 10), new Point(10, 10))).isTrue();
        assertThat(SegmentInside.test(U, new Point(40, 30), new Point(40, 70))).isTrue();
        assertThat(SegmentInside.test(U, new Point(100, 30), new Point(100, 70)))
                .as("both ends are corners, and no edge is crossed, but the way between is outside")
                .isFalse();
        assertThat(SegmentInside.test(U, new Point(40, 30), new Point(100, 30))).isTrue();
        assertThat(SegmentInside.test(U, new Point(20, 50), new Point(110, 50))).isFalse();
    }

    /** Against the covers predicate of the JTS Topology Suite, written by other authors, on small grids full of ties. */
    @Test
    void agreesWithATopologyLibrary() {
        GeometryFactory jts = new GeometryFactory();
        Random random = new Random(20_240_611);
        int inside = 0;
        int outside = 0;
        for (int round = 0; round < 400; round++) {
            Outline outline = star(random);
            List<Coordinate> ring = new ArrayList<>(outline.vertices().stream()
                    .map(p -> new Coordinate(p.x(), p.y()))
                    .toList());
            ring.add(ring.get(0));
            Polygon polygon = jts.createPolygon(ring.toArray(Coordinate[]::new));
            for (int i = 0; i < 50; i++) {
                Point a = new Point(random.nextInt(25) - 12, random.nextInt(25) - 12);
                Point b = new Point(random.nextInt(25) - 12, random.nextInt(25) - 12);
                if (a.equals(b)) {
                    continue;
                }
                LineString path = jts.createLineString(
                        new Coordinate[] {new Coordinate(a.x(), a.y()), new Coordinate(b.x(), b.y())});
                boolean expected = polygon.covers(path);
                assertThat(SegmentInside.test(outline, a, b))
                        .as("%s from %s to %s", outline, a, b)
                        .isEqualTo(expected);
                inside += expected ? 1 : 0;
                outside += expected ? 0 : 1;
            }
        }
        assertThat(inside).isGreaterThan(1000);
        assertThat(outside).isGreaterThan(1000);
    }

    /** Rounded to a coarse grid, some stars touch themselves and are no outlines: then another is taken. */
    private static Outline star(Random random) {
        Optional<Outline> made = Optional.empty();
        while (made.isEmpty()) {
            int corners = 5 + random.nextInt(6);
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < corners; i++) {
                double angle = 2 * Math.PI * i / corners;
                double radius = 3 + random.nextInt(10);
                points.add(new Point(
                        Math.round(radius * StrictMath.cos(angle)), Math.round(radius * StrictMath.sin(angle))));
            }
            made = outline(points);
        }
        return made.orElseThrow();
    }

    private static Optional<Outline> outline(List<Point> points) {
        try {
            return Optional.of(Outline.of(points));
        } catch (InvalidValueException touching) {
            return Optional.empty();
        }
    }

    @Test
    void takesTheContactFromTheLowestMaterial() {
        Posture posture = Posture.named(PostureName.WORK)
                .fixed(Body.of(Prism.box(-0.1, 0.1, -0.1, 0.1, -0.30, 0.0)))
                .moving(Body.of(Prism.box(-0.01, 0.01, -0.01, 0.01, 0.0, 0.3)))
                .carried(Body.of(Prism.box(-0.01, 0.01, -0.01, 0.01, -0.08, 0.0)))
                .region(Reach.over(Outline.rectangle(-0.1, 0.1, -0.1, 0.1), Interval.ofMetres(-0.6, -0.3)))
                .build();
        assertThat(ShapeContact.lowest(posture, -400_000)).isEqualTo(-480_000);
        assertThat(ShapeContact.of(posture, -400_000, -479_999, 0)).isEqualTo(Contact.SOIL);
        assertThat(ShapeContact.of(posture, -400_000, -480_000, 0)).isEqualTo(Contact.FREE);
        assertThat(ShapeContact.of(posture, -400_000, -500_000, 20_000)).isEqualTo(Contact.FREE);
        assertThat(ShapeContact.of(posture, -400_000, -500_000, 20_001)).isEqualTo(Contact.CANOPY);
        assertThat(ShapeContact.of(posture, -100_000, -250_000, 0))
                .as("the fixed body is lower than what moves")
                .isEqualTo(Contact.SOIL);
    }
}
