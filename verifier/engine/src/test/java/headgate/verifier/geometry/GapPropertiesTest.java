package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every volume, over explicit seeds: gaps move only the way they must. */
class GapPropertiesTest {

    private static final int ROUNDS = 150;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void swappingChangesNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Occupied a = volume(random);
            Occupied b = volume(random);

            assertThat(nanometres(b, a)).isEqualTo(nanometres(a, b));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void movingTurningOrMirroringBothChangesNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Body a = body(random);
            Body b = body(random);
            long gap = nanometres(Occupied.of(a), Occupied.of(b));
            Point3 by = somewhere(random, 5_000_000);

            assertThat(nanometres(Occupied.of(a).shifted(by), Occupied.of(b).shifted(by)))
                    .isEqualTo(gap);
            assertThat(nanometres(Occupied.of(a).turned(), Occupied.of(b).turned()))
                    .isEqualTo(gap);
            assertThat(nanometres(Occupied.of(mirrored(a)), Occupied.of(mirrored(b))))
                    .isEqualTo(gap);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void moreMaterialOrAWiderRangeNeverWidensTheGap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Occupied a = volume(random);
            Occupied b = volume(random);
            long gap = nanometres(a, b);
            long far = random.nextLong(1, 100_000);

            assertThat(nanometres(a.and(volume(random)), b)).isLessThanOrEqualTo(gap);
            assertThat(nanometres(a.overShift(new Interval(-far, far)), b)).isLessThanOrEqualTo(gap);
            assertThat(nanometres(a.overLift(new Interval(0, far)), b)).isLessThanOrEqualTo(gap);
            assertThat(nanometres(a.along(Point.ORIGIN, new Point(far, -far)), b))
                    .isLessThanOrEqualTo(gap);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {10, 11, 12})
    void aWiderRegionNeverWidensTheGapAndAPointIsAShift(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Body fixed = body(random);
            Body moving = body(random);
            Occupied other = volume(random);
            Outline narrow = RandomBody.plan(random, false).outline();
            List<Point> more = new ArrayList<>(narrow.vertices());
            more.add(somewhere(random, 300_000).plan());
            Interval low = new Interval(-10_000, random.nextLong(-9_999, 50_000));
            Reach region = Reach.over(narrow, low);
            Reach wider = Reach.over(Outline.hullOf(more), new Interval(low.least() - 5_000, low.most()));

            long gap = nanometres(Occupied.of(fixed, moving, Body.NONE, region), other);
            assertThat(nanometres(Occupied.of(fixed, moving, Body.NONE, wider), other))
                    .isLessThanOrEqualTo(gap);
            assertThat(nanometres(Occupied.of(fixed, moving, body(random), region), other))
                    .isLessThanOrEqualTo(gap);

            Point3 at = somewhere(random, 300_000);
            assertThat(Occupied.of(Body.NONE, moving, Body.NONE, Reach.at(at)))
                    .isEqualTo(Occupied.of(moving).shifted(at));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {13, 14})
    void witnessesLieInTheirVolumesAndAreAsFarApartAsTheGapSays(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Occupied a = volume(random);
            Occupied b = volume(random);
            Gap gap = Gap.between(a, b).orElseThrow();
            double dx = gap.first().xMetres() - gap.second().xMetres();
            double dy = gap.first().yMetres() - gap.second().yMetres();
            double dz = gap.first().zMetres() - gap.second().zMetres();

            // Each witness is rounded by at most 0.71 um.
            assertThat(Math.sqrt(dx * dx + dy * dy + dz * dz)).isBetween(gap.metres() - 1.5e-6, gap.metres() + 1.5e-6);
            assertThat(nanometres(a, speck(gap.first()))).isLessThanOrEqualTo(1_000);
            assertThat(nanometres(b, speck(gap.second()))).isLessThanOrEqualTo(1_000);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {15, 16})
    void aLimitLeavesOutOnlyWhatIsFarther(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Occupied a = volume(random);
            Occupied b = volume(random).shifted(somewhere(random, 300_000));
            Gap gap = Gap.between(a, b).orElseThrow();
            long limit = random.nextLong(0, 400_000);

            if (gap.nanometres() <= limit * 1000) {
                assertThat(Gap.atMost(limit, a, b)).contains(gap);
            } else {
                assertThat(Gap.atMost(limit, a, b)).isEmpty();
            }
            assertThat(gap.isAtLeast(limit)).isEqualTo(gap.nanometres() >= limit * 1000);
        }
    }

    /** The forbidden offsets against the gap itself, at offsets around each end and at random. */
    @ParameterizedTest
    @ValueSource(longs = {17, 18, 19, 20})
    void forbiddenOffsetsAreThoseWhereTheGapDoesNotHold(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 60; i++) {
            Occupied a = volume(random);
            Occupied b = volume(random);
            long required = random.nextLong(1, 80_000);
            assertThatOffsetsAreThoseOfTheGap(
                    random, ForbiddenOffsets.alongX(a, b, required), a, b, required, p -> new Point3(p, 0, 0));
            assertThatOffsetsAreThoseOfTheGap(
                    random, ForbiddenOffsets.alongY(a, b, required), a, b, required, p -> new Point3(0, p, 0));
            assertThatOffsetsAreThoseOfTheGap(
                    random, ForbiddenOffsets.alongZ(a, b, required), a, b, required, p -> new Point3(0, 0, p));
        }
    }

    private static void assertThatOffsetsAreThoseOfTheGap(
            SplittableRandom random,
            ForbiddenOffsets offsets,
            Occupied a,
            Occupied b,
            long required,
            LongFunction<Point3> along) {
        List<Long> probes = new ArrayList<>();
        for (Interval forbidden : offsets.intervals()) {
            for (long d = -2; d <= 2; d++) {
                probes.add(forbidden.least() + d);
                probes.add(forbidden.most() + d);
            }
        }
        for (int k = 0; k < 20; k++) {
            probes.add(random.nextLong(-900_000, 900_001));
        }
        probes.add(offsets.leastPitch());
        probes.add(offsets.leastPitch() + random.nextLong(0, 500_000));

        for (long p : probes) {
            boolean holds =
                    Gap.between(a, b.shifted(along.apply(p))).orElseThrow().isAtLeast(required);
            assertThat(offsets.allows(p)).as("offset %s", along.apply(p)).isEqualTo(holds);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22})
    void aStricterGapForbidsMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < ROUNDS; i++) {
            Occupied a = volume(random);
            Occupied b = volume(random);
            long required = random.nextLong(1, 50_000);
            ForbiddenOffsets mild = ForbiddenOffsets.alongY(a, b, required);
            ForbiddenOffsets strict = ForbiddenOffsets.alongY(a, b, required + random.nextLong(0, 50_000));

            assertThat(strict.leastPitch()).isGreaterThanOrEqualTo(mild.leastPitch());
            assertThat(strict.and(mild)).isEqualTo(strict);
        }
    }

    private static long nanometres(Occupied a, Occupied b) {
        return Gap.between(a, b).orElseThrow().nanometres();
    }

    /** A cube of two micrometres about a place. */
    private static Occupied speck(Point3 at) {
        return Occupied.of(List.of(Prism.of(
                Outline.rectangle(new Interval(at.x() - 1, at.x() + 1), new Interval(at.y() - 1, at.y() + 1)),
                new Interval(at.z() - 1, at.z() + 1))));
    }

    private static Occupied volume(SplittableRandom random) {
        return Occupied.of(body(random)).shifted(somewhere(random, 250_000));
    }

    private static Body body(SplittableRandom random) {
        return RandomBody.of(random, false, random.nextInt(1, 4)).body();
    }

    private static Point3 somewhere(SplittableRandom random, long far) {
        return new Point3(
                random.nextLong(-far, far + 1), random.nextLong(-far, far + 1), random.nextLong(-far, far + 1));
    }

    private static Body mirrored(Body body) {
        return Body.of(body.prisms().stream()
                .map(p -> Prism.of(
                        Outline.of(p.outline().vertices().stream()
                                .map(v -> new Point(v.x(), -v.y()))
                                .toList()),
                        p.height()))
                .toList());
    }
}
