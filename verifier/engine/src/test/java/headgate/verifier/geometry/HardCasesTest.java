package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.sheet.Transition;
import headgate.api.vocabulary.PostureName;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Cases in which a plausible way to measure clearance says too much. Values are derived. */
class HardCasesTest {

    private static final Interval LAYER = Interval.ofMetres(0, 0.1);
    private static final Interval LOW = Interval.ofMetres(0, 0.01);

    @Test
    @DisplayName("an L-shaped reach with a strut in its notch: a straight way between its ends meets the strut")
    void strutInTheNotchOfAnL() {
        Outline ell = Outline.ofMetres(0, 0, 0.4, 0, 0.4, 0.05, 0.05, 0.05, 0.05, 0.4, 0, 0.4);
        Body tool = Body.of(Prism.box(-0.01, 0.01, -0.01, 0.01, 0, 0.1));
        Occupied strut = Occupied.of(List.of(Prism.box(0.15, 0.17, 0.15, 0.17, 0, 0.1)));

        Occupied occupied = Occupied.of(Body.NONE, tool, Body.NONE, Reach.over(ell, LOW));

        assertThat(metres(occupied, strut)).isZero();
        // Placed only at points of the L itself, the tool would seem to keep 90 mm, though on the straight way from
        // (0.32, 0) to (0, 0.32) it runs into the strut.
        Occupied onlyAtPoints = Occupied.NOTHING;
        for (Outline part : ConvexParts.of(ell)) {
            onlyAtPoints = onlyAtPoints.and(Occupied.of(Body.NONE, tool, Body.NONE, Reach.over(part, LOW)));
        }
        assertThat(metres(onlyAtPoints, strut)).isCloseTo(0.09, within(1e-9));
        Occupied onTheWay = Occupied.of(tool).shifted(Point3.ofMetres(0.16, 0.16, 0));
        assertThat(metres(onTheWay, strut)).isZero();
    }

    @Test
    @DisplayName("a part that folds between postures: both ends are clear, what it sweeps is not")
    void partThatFoldsBetweenPostures() {
        // A bar of 0.3 m swings from +x to +y about the mount; a post stands at 45 degrees, 0.2 m out.
        Body alongX = Body.of(Prism.box(0, 0.3, -0.01, 0.01, 0, 0.1));
        Body alongY = Body.of(Prism.box(-0.01, 0.01, 0, 0.3, 0, 0.1));
        Posture ready = Posture.named(PostureName.READY)
                .fixed(alongX)
                .region(Reach.at(Point3.ORIGIN))
                .build();
        Posture stowed = Posture.named(PostureName.STOWED)
                .fixed(alongY)
                .region(Reach.at(Point3.ORIGIN))
                .build();
        Transition fold = Transition.between(
                PostureName.READY,
                PostureName.STOWED,
                Body.of(Prism.of(Outline.aroundDisc(Point.ORIGIN, 0.31, 64), LAYER)));
        Occupied post = Occupied.of(List.of(Prism.box(0.14, 0.16, 0.14, 0.16, 0, 0.1)));

        Occupied ends = Occupied.of(ready).and(Occupied.of(stowed));

        assertThat(metres(ends, post)).isCloseTo(0.13, within(1e-9));
        assertThat(metres(ends.and(Occupied.of(fold.swept())), post)).isZero();
    }

    @Test
    @DisplayName("heads interleaved across beams: the tightest pair is on different beams")
    void headsInterleavedAcrossBeams() {
        // Heads 0.36 m wide, 0.9 m apart on each beam; the rear beam is 0.5 m behind and half a pitch across, and its
        // heads reach forward between those in front.
        Occupied front = Occupied.of(List.of(Prism.box(-0.1, 0.1, -0.18, 0.18, 0, 0.3)));
        Occupied rear = Occupied.of(
                List.of(Prism.box(-0.1, 0.1, -0.18, 0.18, 0, 0.3), Prism.box(0.1, 0.55, -0.25, 0.25, 0.1, 0.2)));
        Occupied frontNeighbour = front.shifted(Point3.ofMetres(0, 0.9, 0));
        Occupied between = rear.shifted(Point3.ofMetres(-0.5, 0.45, 0));

        assertThat(metres(front, frontNeighbour)).isCloseTo(0.54, within(1e-9));
        assertThat(metres(front, between)).isCloseTo(0.45 - 0.25 - 0.18, within(1e-9));
        assertThat(metres(between, frontNeighbour)).isCloseTo(0.02, within(1e-9));
        // Side by side in x they must stay 0.46 m apart for a gap of 30 mm, at every larger offset too.
        assertThat(ForbiddenOffsets.alongY(front, rear.shifted(Point3.ofMetres(-0.5, 0, 0)), 30_000)
                        .leastPitch())
                .isEqualTo(460_000);
    }

    @Test
    @DisplayName("one polygon inside another: gap 0, though the boundaries are far apart")
    void oneInsideAnother() {
        Occupied outer = Occupied.of(List.of(Prism.box(-1, 1, -1, 1, 0, 0.1)));
        Occupied inner = Occupied.of(List.of(Prism.box(-0.01, 0.01, -0.01, 0.01, 0.02, 0.03)));

        assertThat(metres(outer, inner)).isZero();
        assertThat(metres(inner, outer)).isZero();
    }

    @Test
    @DisplayName("a peg in the hollow of a C: the gap to its walls, for the hollow is not material")
    void pegInAHollow() {
        Outline c = Outline.ofMetres(0, 0, 0.3, 0, 0.3, 0.1, 0.05, 0.1, 0.05, 0.3, 0.3, 0.3, 0.3, 0.4, 0, 0.4);
        Occupied peg = Occupied.of(List.of(Prism.box(0.1, 0.2, 0.15, 0.28, 0, 0.1)));

        Gap gap = Gap.between(Occupied.of(List.of(Prism.of(c, LAYER))), peg).orElseThrow();

        assertThat(gap.metres()).isCloseTo(0.02, within(1e-9));
        assertThat(gap.first().yMetres()).isCloseTo(0.30, within(1e-9));
        assertThat(gap.second().yMetres()).isCloseTo(0.28, within(1e-9));
    }

    @Test
    @DisplayName(
            "touching exactly: gap 0, one micrometre away gap 1 micrometre, and no required gap holds when touching")
    void touchingExactly() {
        Occupied a = Occupied.of(List.of(Prism.box(0, 0.1, 0, 0.1, 0, 0.1)));
        Occupied b = Occupied.of(List.of(Prism.box(0.1, 0.2, 0, 0.1, 0, 0.1)));

        assertThat(metres(a, b)).isZero();
        Gap hair = Gap.between(a, b.shifted(new Point3(1, 0, 0))).orElseThrow();
        assertThat(hair.nanometres()).isEqualTo(1000);
        assertThat(hair.isAtLeast(1)).isTrue();
        assertThat(hair.isAtLeast(2)).isFalse();
        assertThat(ForbiddenOffsets.alongY(a, b, 1).leastPitch()).isEqualTo(100_001);
    }

    @Test
    @DisplayName("long slanted edges near the ends of the grid: the gap to the last nanometre, where doubles give out")
    void longSlantedEdgesAtTheEndOfTheGrid() {
        Occupied sliver = Occupied.of(List.of(Prism.of(
                Outline.of(List.of(
                        new Point(-99_999_999, -99_999_998),
                        new Point(99_999_999, 99_999_997),
                        new Point(-99_999_999, -99_999_990))),
                LAYER)));
        Occupied speck = Occupied.of(
                List.of(Prism.of(Outline.of(List.of(new Point(3, 0), new Point(5, -4), new Point(6, -3))), LAYER)));

        Gap gap = Gap.between(sliver, speck).orElseThrow();

        // By hand: the lower edge runs from (-99999999, -99999998) by (199999998, 199999995); its distance from (3, 0)
        // is the cross product over its length, here with 40 digits.
        BigInteger ex = BigInteger.valueOf(199_999_998);
        BigInteger ey = BigInteger.valueOf(199_999_995);
        BigInteger cross =
                ex.multiply(BigInteger.valueOf(99_999_998)).subtract(ey.multiply(BigInteger.valueOf(100_000_002)));
        BigDecimal distance = new BigDecimal(cross.abs())
                .divide(
                        new BigDecimal(ex.multiply(ex).add(ey.multiply(ey))).sqrt(new MathContext(40)),
                        new MathContext(40));
        assertThat(BigDecimal.valueOf(gap.nanometres()))
                .isEqualTo(distance.movePointRight(3).setScale(0, RoundingMode.FLOOR));
        assertThat(gap.nanometres()).isPositive();
    }

    private static double metres(Occupied a, Occupied b) {
        return Gap.between(a, b).orElseThrow().metres();
    }
}
