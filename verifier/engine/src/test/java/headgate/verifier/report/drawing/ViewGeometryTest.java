package headgate.verifier.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.verifier.report.Judgements;
import headgate.verifier.report.markup.Markup;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ViewGeometryTest {

    private final Scene scene = Judgements.everyKindReport().scene();

    /** ISO 8855: x forward, y left, z up. From above and from behind, left of the carriage must be left of the picture. */
    @Test
    void leftIsLeftAndForwardIsForward() {
        Point3 here = Point3.ofMetres(1, 2, 3);
        assertThat(Projection.ABOVE.of(here)).isEqualTo(new Flat(-2_000_000, 1_000_000));
        assertThat(Projection.BEHIND.of(here)).isEqualTo(new Flat(-2_000_000, 3_000_000));
        assertThat(Projection.SIDE.of(here)).isEqualTo(new Flat(1_000_000, 3_000_000));
    }

    /** The union of parts is filled by the non-zero rule, which needs them all to turn the same way. */
    @ParameterizedTest
    @EnumSource(Projection.class)
    void allPartsTurnTheSameWay(Projection seen) {
        long sign = 0;
        for (Scene.Worker worker : scene.workers()) {
            for (Prism prism : worker.shape().moving()) {
                long area = twiceArea(seen.ring(prism));
                assertThat(area).isNotZero();
                sign = sign == 0 ? Long.signum(area) : sign;
                assertThat(Long.signum(area)).isEqualTo(sign);
            }
        }
    }

    private static long twiceArea(List<Flat> ring) {
        long sum = 0;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            sum += ring.get(j).right() * ring.get(i).up()
                    - ring.get(i).right() * ring.get(j).up();
        }
        return sum;
    }

    /** A metre is as long upwards as across, and the scale bar says how long it is. */
    @ParameterizedTest
    @EnumSource(Projection.class)
    void theScaleBarIsTrue(Projection seen) {
        Canvas canvas = View.canvas(scene, seen);
        assertThat(canvas.x(1_000_000L) - canvas.x(0L)).isCloseTo(canvas.scale(), within(1e-9));
        assertThat(canvas.y(0L) - canvas.y(1_000_000L)).isCloseTo(canvas.scale(), within(1e-9));
        String svg = View.of(scene, seen).toString();
        Matcher bar = Pattern.compile("v10h([0-9.]+)v-10\"[^>]*/><text[^>]*>([0-9.]+) (mm|m)<")
                .matcher(svg);
        assertThat(bar.find()).isTrue();
        double metres = Double.parseDouble(bar.group(2)) / (bar.group(3).equals("mm") ? 1000 : 1);
        assertThat(Double.parseDouble(bar.group(1)) / metres).isCloseTo(canvas.scale(), within(0.05));
    }

    /** The line that marks the gap is as long, to scale, as the gap. */
    @Test
    void theGapIsDrawnToScaleAndWhereItIs() {
        Scene.GapMark gap = scene.gap().orElseThrow();
        Canvas canvas = View.canvas(scene, Projection.ABOVE);
        String svg = View.of(scene, Projection.ABOVE).toString();
        Matcher line = Pattern.compile("d=\"M([0-9.]+) ([0-9.]+)L([0-9.]+) ([0-9.]+)\" stroke=\"" + Ink.GAP.stroke())
                .matcher(svg);
        assertThat(line.find()).isTrue();
        double x1 = Double.parseDouble(line.group(1));
        double x2 = Double.parseDouble(line.group(3));
        assertThat(Math.abs(x2 - x1) / canvas.scale()).isCloseTo(0.48, within(2e-4));
        // Pixel x of the plot is minus y of the carriage: undo it by hand.
        double y = -((x1 - canvas.left()) / canvas.scale() + canvas.right().least() / 1e6);
        assertThat(y).isCloseTo(gap.from().yMetres(), within(2e-4));
        assertThat(svg).contains("gap 480 mm, must be at least 560 mm");
    }

    @Test
    void whatIsTightAcrossTravelIsNotMarkedFromTheSide() {
        assertThat(View.of(scene, Projection.SIDE).toString()).doesNotContain("gap 480 mm");
        assertThat(View.of(scene, Projection.BEHIND).toString()).contains("gap 480 mm");
    }

    @Test
    void theInsetShowsBothLengthsToOneScale() {
        String svg = Inset.of(scene, scene.gap().orElseThrow()).toString();
        assertThat(svg)
                .contains("gap 480 mm")
                .contains("must be at least 560 mm")
                .contains("seen from above");
        List<Double> lengths = Pattern.compile("d=\"M([0-9.]+) ([0-9.]+)L([0-9.]+) ([0-9.]+)\" stroke=\"#a3122f\"")
                .matcher(svg)
                .results()
                .map(m -> Math.hypot(
                        Double.parseDouble(m.group(3)) - Double.parseDouble(m.group(1)),
                        Double.parseDouble(m.group(4)) - Double.parseDouble(m.group(2))))
                .toList();
        assertThat(lengths.get(0) / lengths.get(1)).isCloseTo(560.0 / 480, within(1e-3));
    }

    /** Two failures: the tighter one is the tightest place, the other has the next number, in each picture that shows it. */
    @Test
    void otherPlacesAreMarkedWithTheirNumbers() {
        assertThat(scene.spots()).extracting(Spot::number).containsExactly(2);
        assertThat(View.of(scene, Projection.ABOVE).toString())
                .contains("1: gap 480 mm")
                .contains(">2</text>");
        assertThat(View.of(scene, Projection.SIDE).toString()).doesNotContain(">2</text>");
    }

    @Test
    void numbersKeepApartHoweverManyPlacesFallTogether() {
        List<Spot> spots = IntStream.rangeClosed(2, 25)
                .mapToObj(i -> new Spot(i, Point3.ofMetres(0.3, 0, 0.4), Point3.ofMetres(0.3, 0.01, 0.4), i % 2 == 0))
                .toList();
        Markup svg = new Markup();
        Canvas canvas = View.canvas(scene, Projection.ABOVE);
        Numbers.draw(svg, Projection.ABOVE, canvas, spots, 36, 0);
        List<Flat> discs = Pattern.compile("cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"11\" fill=\"#fff\"")
                .matcher(svg.toString())
                .results()
                .map(m -> new Flat(
                        Math.round(Double.parseDouble(m.group(1)) * 100),
                        Math.round(Double.parseDouble(m.group(2)) * 100)))
                .toList();
        assertThat(discs).hasSize(24);
        for (int i = 0; i < discs.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(discs.get(i).distance(discs.get(j))).isGreaterThan(2200);
            }
            assertThat(discs.get(i).up()).isGreaterThan(Math.round(100 * (canvas.top() + 36 + 11)));
        }
    }

    /** The bar at a mount is as long, to scale, as the interval of its heights at work. */
    @Test
    void heightsOfWorkAreDrawnToScale() {
        Scene.Worker worker = scene.workers().get(0);
        Canvas canvas = View.canvas(scene, Projection.BEHIND);
        Matcher bar = Pattern.compile("h8M([0-9.]+) ([0-9.]+)V([0-9.]+)M[^\"]*\" stroke=\"" + Ink.HEIGHTS.stroke())
                .matcher(View.of(scene, Projection.BEHIND).toString());
        assertThat(bar.find()).isTrue();
        assertThat((Double.parseDouble(bar.group(3)) - Double.parseDouble(bar.group(2))) / canvas.scale())
                .isCloseTo(worker.heights().length() / 1e6, within(2e-4));
        assertThat(canvas.y(worker.heights().most())).isCloseTo(Double.parseDouble(bar.group(2)), within(0.01));
    }

    @Test
    void aTurnedHeadIsDrawnTurned() {
        Scene turned = Judgements.report(
                        Judgements.judge(Judgements.eightArms().turned().build(), Judgements.everyKind()))
                .scene();
        Scene.HeadShape shape = turned.workers().get(0).shape();
        Interval x = shape.fixed().stream()
                .map(p -> p.outline().xExtent())
                .reduce(Interval::hull)
                .orElseThrow();
        assertThat(x).isEqualTo(Interval.ofMetres(-0.48, 0.06));
        assertThat(shape.reach()).allMatch(p -> p.x() < 0);
    }

    @ParameterizedTest
    @CsvSource({"100, 64, 1000000", "270, 64, 500000", "6000, 70, 20000", "1, 70, 100000000"})
    void roundLengthsAreOneTwoOrFive(double scale, double pixels, long length) {
        assertThat(Scale.round(scale, pixels)).isEqualTo(length);
    }

    @Test
    void labelsNeverTouchAndKeepTheEndsOfTheirNames() {
        for (int count = 2; count < 60; count++) {
            double pitch = 800.0 / count;
            List<Label> labels = IntStream.range(0, count)
                    .mapToObj(i -> new Label(100 + pitch * i, "a-long-name-for-arm-" + i))
                    .toList();
            List<Label> kept = Label.apart(labels, 60, 900);
            assertThat(kept).isNotEmpty();
            double end = 60;
            for (Label label : kept) {
                assertThat(label.at() - Label.width(label.text()) / 2).isGreaterThanOrEqualTo(end - 1e-9);
                end = label.at() + Label.width(label.text()) / 2;
                assertThat(label.text()).matches(".*[0-9]");
            }
            assertThat(end).isLessThanOrEqualTo(900);
        }
    }

    @Test
    void pixelsAreWrittenWithoutLocaleOrExponent() {
        assertThat(Canvas.px(0)).isEqualTo("0");
        assertThat(Canvas.px(-0.004)).isEqualTo("0");
        assertThat(Canvas.px(-0.5)).isEqualTo("-0.5");
        assertThat(Canvas.px(12.05)).isEqualTo("12.05");
        assertThat(Canvas.px(1e7)).isEqualTo("10000000");
    }
}
