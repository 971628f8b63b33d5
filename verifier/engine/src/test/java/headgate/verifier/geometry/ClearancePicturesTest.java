package headgate.verifier.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Reach;
import headgate.verifier.picture.Plot;
import headgate.verifier.picture.ShownPicture;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The drawings of docs/explanation/clearance.md are what the kernel computes. */
class ClearancePicturesTest {

    private static final String BLUE = "#d5e3ec";
    private static final String DARK_BLUE = "#3f6f92";
    private static final String ORANGE = "#f4d9b8";
    private static final String DARK_ORANGE = "#b3671a";
    private static final String GREY = "#6d777d";
    private static final String SOLID = "none";

    @Test
    void whatAMovingBodyFillsOverAReachWithANotch() throws IOException {
        Outline notched = Outline.ofMetres(0, 0, 0.3, 0, 0.3, 0.1, 0.1, 0.1, 0.1, 0.3, 0, 0.3);
        Interval level = Interval.at(0);
        Occupied tool = Occupied.of(Body.of(Prism.aroundCylinder(0, 0, 0.03, 0, 0.1)));
        Occupied used = tool.over(Reach.over(notched, level));
        Occupied needed = ConvexParts.of(notched).stream()
                .map(part -> tool.over(Reach.over(part, level)))
                .reduce(Occupied.NOTHING, Occupied::and);
        PlanArea more = PlanArea.of(used).minus(PlanArea.of(needed));
        long share = Math.round(100 * more.squareMetres() / PlanArea.of(used).squareMetres());

        String svg = new Plot("A reach with a notch, and what its tool fills", -70, 570, -60, 360)
                .area(PlanArea.of(needed).rings(), BLUE, DARK_BLUE)
                .area(more.rings(), ORANGE, DARK_ORANGE)
                .area(notched, "#ffffff", "#20292f")
                .dashed(notched.convexHull(), "#20292f")
                .text(12, 40, "reach")
                .text(350, 310, "dashed: its convex hull")
                .text(350, 270, "blue: what the tool fills over the reach")
                .text(350, 230, "orange: what it may fill on a straight")
                .text(350, 210, "way across the notch, counted too:")
                .text(350, 190, share + " % of the whole")
                .svg();

        assertThat(share).isBetween(5L, 40L);
        ShownPicture.assertShows("clearance-reach.svg", svg);
    }

    @Test
    void theGapOfTwoPrismsSeenFromTheSide() throws IOException {
        // Drawn with z upward: as if y were z.
        Occupied low = Occupied.of(Body.of(Prism.box(0, 0.2, -0.05, 0.05, 0, 0.15)));
        Occupied high = Occupied.of(Body.of(Prism.box(0.32, 0.5, -0.05, 0.05, 0.24, 0.33)));
        Gap gap = Gap.between(low, high).orElseThrow();
        Point3 a = gap.first();
        Point3 b = gap.second();

        String svg = new Plot("The gap of two upright prisms, seen from the side", -40, 600, -30, 390)
                .area(Outline.rectangle(0, 0.2, 0, 0.15), BLUE, DARK_BLUE)
                .area(Outline.rectangle(0.32, 0.5, 0.24, 0.33), BLUE, DARK_BLUE)
                .line(mm(a.x()), mm(a.z()), mm(b.x()), mm(a.z()), GREY, "1", "4 4")
                .line(mm(b.x()), mm(a.z()), mm(b.x()), mm(b.z()), GREY, "1", "4 4")
                .line(mm(a.x()), mm(a.z()), mm(b.x()), mm(b.z()), DARK_ORANGE, "3", SOLID)
                .text(215, 128, "seen from above " + Math.round(mm(b.x() - a.x())) + " mm")
                .text(328, 190, "heights " + Math.round(mm(b.z() - a.z())) + " mm")
                .text(130, 205, "gap " + Math.round(gap.metres() * 1000) + " mm")
                .svg();

        // 120 mm and 90 mm: 150 mm.
        assertThat(gap.metres()).isEqualTo(0.150);
        ShownPicture.assertShows("clearance-gap.svg", svg);
    }

    @Test
    void theSideShiftsThatAGapForbids() throws IOException {
        Outline fork =
                Outline.ofMetres(0, 0, 0.12, 0, 0.12, 0.04, 0.04, 0.04, 0.04, 0.16, 0.12, 0.16, 0.12, 0.20, 0, 0.20);
        Outline peg = Outline.rectangle(0.08, 0.20, -0.02, 0.02);
        Interval height = Interval.ofMetres(0, 0.1);
        ForbiddenOffsets offsets = ForbiddenOffsets.alongY(
                Occupied.of(List.of(Prism.of(fork, height))), Occupied.of(List.of(Prism.of(peg, height))), 20_000);
        List<Interval> forbidden = offsets.intervals();

        // Lying on its side: y to the right, x downward.
        Plot plot = new Plot("The side shifts that a gap of 20 mm forbids", -200, 400, -280, 30)
                .area(onItsSide(fork), BLUE, DARK_BLUE)
                .area(onItsSide(peg), ORANGE, DARK_ORANGE)
                .text(210, -30, "a fork that stands")
                .text(-180, -180, "a peg that slides,")
                .text(-180, -196, "drawn at shift 0")
                .line(-120, -225, 320, -225, GREY, "1", SOLID);
        for (Interval no : forbidden) {
            plot.line(mm(no.least()), -225, mm(no.most()), -225, DARK_ORANGE, "6", SOLID);
        }
        double least = Math.rint(mm(offsets.leastPitch()));
        plot.line(least, -233, least, -217, GREY, "1.5", SOLID)
                .text(least + 5, -212, "least pitch " + Math.round(least) + " mm")
                .text(-40, -262, "side shift; thick: forbidden; between: a window");

        // Peg and tine are 40 mm wide: 20 + 20 mm besides each tine's edges.
        assertThat(forbidden).containsExactly(Interval.ofMetres(-0.04, 0.08), Interval.ofMetres(0.12, 0.24));
        ShownPicture.assertShows("clearance-offsets.svg", plot.svg());
    }

    private static Outline onItsSide(Outline outline) {
        return Outline.of(
                outline.vertices().stream().map(p -> new Point(p.y(), -p.x())).toList());
    }

    private static double mm(long micrometres) {
        return micrometres / 1000.0;
    }
}
