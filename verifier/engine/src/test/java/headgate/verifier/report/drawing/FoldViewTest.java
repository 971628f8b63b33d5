package headgate.verifier.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.runtime.carriage.Stance;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Rule;
import headgate.verifier.check.Severity;
import headgate.verifier.check.Witness;
import headgate.verifier.report.Judgements;
import headgate.verifier.report.Marked;
import headgate.verifier.report.Report;
import headgate.verifier.report.html.HtmlReport;
import headgate.verifier.rules.clearance.TransportClears;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The carriage of {@link Cases} with one step before the road. Hand arithmetic as in {@code TransportClearsTest}: the frame is
 * a beam from -1.2 to 1.2 m; 3 m wide and 4 m high is allowed, and everything stays 250 mm over the ground, which moves by
 * 20 mm, on a suspension that gives 80 mm.
 */
class FoldViewTest {

    private final Report report = report(road(true));
    private final Folding folding = report.foldings().get(0);

    @Test
    void theLimitsAreThoseOfThePolicyAboutTheMiddleOfWhatIsCarried() {
        assertThat(folding.width()).isEqualTo(Interval.ofMetres(-1.5, 1.5));
        assertThat(folding.height()).isEqualTo(4_000_000);
        assertThat(folding.ground()).isEqualTo(350_000);
    }

    @Test
    void theLimitsAreDrawnToScaleAndWhereTheyAre() {
        String svg = Pictures.road(folding, "r").get(0).toString();
        List<MatchResult> posts = Pattern.compile("d=\"M([0-9.]+) ([0-9.]+)V([0-9.]+)\" stroke=\"" + Ink.LIMIT.stroke())
                .matcher(svg)
                .results()
                .toList();
        assertThat(posts).hasSize(2);
        double scale = Math.abs(number(posts.get(0), 1) - number(posts.get(1), 1)) / 3.0;
        double ground = number(posts.get(0), 2);
        assertThat((ground - number(posts.get(0), 3)) / scale).isCloseTo(4.0, within(1e-3));
        MatchResult level = Pattern.compile("d=\"M([0-9.]+) ([0-9.]+)H[0-9.]+\" stroke=\"" + Ink.LIMIT.stroke())
                .matcher(svg)
                .results()
                .filter(r -> number(r, 2) > number(posts.get(0), 3) + 1)
                .findFirst()
                .orElseThrow();
        assertThat((ground - number(level, 2)) / scale).isCloseTo(0.35, within(1e-3));
        assertThat(svg).contains("at most 3 m wide", "4 m high", "350 mm up");
    }

    @Test
    void aHeadIsDrawnWhereItsPosePutsIt() {
        // Latched at y = -300 mm, 950 mm up: 150 mm to either side; the tool point 200 mm down, its rod from there 450
        // mm up.
        Folding.Carried arm = folding.road().arms().stream()
                .filter(a -> a.name().startsWith("arm a3"))
                .findFirst()
                .orElseThrow();
        Interval y = arm.head().stream()
                .map(p -> p.outline().yExtent())
                .reduce(Interval::hull)
                .orElseThrow();
        Interval z =
                arm.head().stream().map(Prism::height).reduce(Interval::hull).orElseThrow();
        assertThat(y).isEqualTo(Interval.ofMetres(-0.45, -0.15));
        assertThat(z).isEqualTo(Interval.ofMetres(0.75, 1.2));
        assertThat(arm.space())
                .containsAll(arm.head())
                .hasSizeGreaterThan(arm.head().size());
    }

    @Test
    void aHeadThatNothingHoldsIsStriped() {
        Folding loose = report(road(false)).foldings().get(0);
        assertThat(loose.road().arms()).filteredOn(Folding.Carried::loose).hasSize(1);
        assertThat(Pictures.road(loose, "r").get(1).toString()).contains("fill=\"url(#r-above-stripes)\"");
        assertThat(Pictures.legend(loose, "r"))
                .extracting(Pictures.Sample::words)
                .contains(Ink.LOOSE.words());
        assertThat(Pictures.road(folding, "r").get(1).toString()).doesNotContain("fill=\"url(#r-above-stripes)\"");
        assertThat(Pictures.legend(folding, "r"))
                .extracting(Pictures.Sample::words)
                .doesNotContain(Ink.LOOSE.words());
    }

    @Test
    void everyStepHasItsPictureAndItsArrows() {
        List<String> steps =
                Pictures.steps(folding, "r").stream().map(Object::toString).toList();
        assertThat(steps).hasSize(1);
        // One arm moves, from its work place.
        assertThat(Pattern.compile("<circle [^>]*r=\"2.5\"")
                        .matcher(steps.get(0))
                        .results())
                .hasSize(1);
        assertThat(steps.get(0)).contains("shift a3").doesNotContain(Ink.LIMIT.stroke());
    }

    @Test
    void aPlaceIsMarkedInItsOwnShapeOnly() {
        // In the step a3 comes to within 2 mm of a1; on the road the two are apart.
        Marked gap = marked(0);
        assertThat(gap.entry().witness().orElseThrow().fold()).contains(new Witness.Fold("road", 1));
        String disc = disc(gap);
        assertThat(Pictures.steps(folding, "r").get(0).toString()).contains(disc);
        assertThat(Pictures.road(folding, "r").get(1).toString()).doesNotContain(disc);
        // What fails has a heavier rim.
        assertThat(Pictures.steps(folding, "r").get(0).toString()).contains("stroke-width=\"3\"/><text");
    }

    @Test
    void everyMarkedPlaceIsSeenInSomePictureAndNamedBesideThem() {
        String page = HtmlReport.of(report);
        String pictures = Pictures.road(folding, "r") + "" + Pictures.steps(folding, "r");
        assertThat(report.marked()).hasSize(4);
        for (Marked each : report.marked()) {
            assertThat(pictures).contains(disc(each));
            assertThat(page).contains("<b>" + each.number() + "</b><a href=\"#finding-");
        }
        assertThat(page).contains("<section id=\"road\"", "<a href=\"#road\">On the road</a>");
    }

    @Test
    void withoutAStanceForTheRoadThereIsNoSuchSection() {
        assertThat(HtmlReport.of(Judgements.everyKindReport())).doesNotContain("id=\"road\"");
    }

    /** Ticks are not bold. */
    private static String disc(Marked marked) {
        return "font-weight=\"bold\">" + marked.number() + "</text>";
    }

    private Marked marked(int which) {
        return report.marked().get(which);
    }

    private static double number(MatchResult found, int group) {
        return Double.parseDouble(found.group(group));
    }

    private static Stance road(boolean latched) {
        Stance.Pose near = new Stance.Pose("a3", Point3.ofMetres(0, -0.448, 0.95), List.of(), true);
        Stance.Pose far = new Stance.Pose("a3", Point3.ofMetres(0.6, -0.3, 0.95), List.of(), latched);
        return new Stance(
                "road",
                Stance.Use.TRANSPORT,
                Map.of(),
                List.of(far),
                List.of(new Stance.Step("shift a3", List.of(near), List.of())),
                List.of(),
                0.080);
    }

    private static Report report(Stance stance) {
        Case subject =
                Cases.weeding().carriage(c -> c.withStances(List.of(stance))).build();
        // The rules that this one needs first are not asked: the case is sound.
        Rule alone = Judgements.rule(
                Judgements.info("clearance.transport", "Folded, everything is clear", Severity.ERROR),
                new TransportClears()::check);
        return Judgements.report(Judgements.judge(subject, List.of(alone)));
    }
}
