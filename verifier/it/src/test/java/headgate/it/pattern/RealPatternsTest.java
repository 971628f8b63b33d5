package headgate.it.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.it.Checkout;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Real patterns of plants under the sample gripper, against plants at random of equal density: clumps cost coverage. Bramble
 * canes stand in clumps, Japanese pines nearly at random; where they come from stands beside their files. They are wild
 * plants, not weeds among a crop.
 */
class RealPatternsTest {

    private static final List<Double> SPEEDS = List.of(0.05, 0.1, 0.15, 0.2, 0.25, 0.3);

    private static final Pattern BRAMBLES = Pattern.read("bramble-canes.csv", 9);
    private static final Pattern PINES = Pattern.read("japanese-pines.csv", 5.7);

    private static Treated brambles;
    private static Treated asDenseAsBrambles;
    private static Treated pines;
    private static Treated asDenseAsPines;

    @BeforeAll
    static void replay(@TempDir Path work) throws Exception {
        brambles = Treated.real(BRAMBLES, SPEEDS, work);
        asDenseAsBrambles = Treated.random(BRAMBLES.side(), BRAMBLES.density(), SPEEDS, work);
        pines = Treated.real(PINES, SPEEDS, work);
        asDenseAsPines = Treated.random(PINES.side(), PINES.density(), SPEEDS, work);
    }

    /**
     * What is published of the patterns: numbers of plants and sides of the plots on the help pages of spatstat.data; the
     * others were computed from the package's own data with R, without correction for edges.
     */
    @Test
    void thePatternsAreThoseThatWerePublished() {
        assertThat(BRAMBLES.places()).hasSize(823);
        assertThat(BRAMBLES.density()).isCloseTo(10.1605, within(5e-5));
        assertThat(BRAMBLES.nearestNeighbour()).isCloseTo(0.0709, within(5e-5));
        assertThat(BRAMBLES.clarkEvans()).isCloseTo(0.4523, within(5e-5));
        assertThat(BRAMBLES.quadrats(9)[0]).isCloseTo(10.1605, within(5e-5));
        assertThat(BRAMBLES.quadrats(9)[1]).isCloseTo(60.9364, within(5e-5));
        assertThat(PINES.places()).hasSize(65);
        assertThat(PINES.density()).isCloseTo(2.0006, within(5e-5));
        assertThat(PINES.nearestNeighbour()).isCloseTo(0.3761, within(5e-5));
        assertThat(PINES.clarkEvans()).isCloseTo(1.0640, within(5e-5));
        assertThat(PINES.quadrats(5)[0]).isCloseTo(2.60, within(5e-5));
        assertThat(PINES.quadrats(5)[1]).isCloseTo(1.8333, within(5e-5));
    }

    /** The random plots are what they are called: a Poisson process has an index near 1 (Clark and Evans 1954). */
    @Test
    void theRandomPlotsAreRandom() {
        double index = 0;
        for (long seed = 1; seed <= Treated.SEEDS; seed++) {
            index += Pattern.random(BRAMBLES.side(), BRAMBLES.density(), seed).clarkEvans() / Treated.SEEDS;
        }
        // Its standard error is 0.26 / n over the square root of the density, in units of the mean (same paper).
        assertThat(index).isCloseTo(1, within(0.05));
    }

    @Test
    void eachPlantIsInOneLaneOfOnePass() {
        for (double speed : SPEEDS) {
            assertThat(brambles.at(speed).targets()).isEqualTo(823);
            assertThat(pines.at(speed).targets()).isEqualTo(65);
        }
    }

    /** The upper bound of the clumped plants is below the lower bound of those at random: at every speed. */
    @Test
    void clumpsCostCoverage() {
        for (double speed : SPEEDS) {
            assertThat(brambles.at(speed).coverage().upper())
                    .as("brambles at %s m/s", speed)
                    .isLessThan(asDenseAsBrambles.at(speed).coverage().lower());
        }
        assertThat(asDenseAsBrambles.at(0.2).coverage().mean()
                        - brambles.at(0.2).coverage().mean())
                .isGreaterThan(0.15);
    }

    /** The bounds of plants that stand nearly at random and of those at random overlap, at every speed. */
    @Test
    void plantsNearlyAtRandomFareAsThoseAtRandom() {
        for (double speed : SPEEDS) {
            assertThat(pines.at(speed).coverage().lower())
                    .isLessThanOrEqualTo(asDenseAsPines.at(speed).coverage().upper());
            assertThat(asDenseAsPines.at(speed).coverage().lower())
                    .isLessThanOrEqualTo(pines.at(speed).coverage().upper());
            assertThat(pines.at(speed).coverage().mean())
                    .isCloseTo(asDenseAsPines.at(speed).coverage().mean(), within(0.08));
        }
    }

    @Test
    void thePageShowsTheFigures() {
        StringBuilder table = new StringBuilder("""
                | speed | bramble canes | at random, 10.2 1/m2 | Japanese pines | at random, 2.0 1/m2 |
                |---|---|---|---|---|
                """);
        for (double speed : SPEEDS) {
            table.append("| ").append(speed).append(" m/s");
            for (Treated each : List.of(brambles, asDenseAsBrambles, pines, asDenseAsPines)) {
                Treated.Cell cell = each.at(speed);
                table.append(String.format(
                        Locale.ROOT,
                        " | %.1f %% (%.1f to %.1f)",
                        100 * cell.coverage().mean(),
                        100 * cell.coverage().lower(),
                        100 * cell.coverage().upper()));
            }
            table.append(" |\n");
        }
        assertThat(Checkout.text("docs/explanation/replay.md"))
                .as("the table of real patterns; it is now\n%s", table)
                .contains(table);
    }

    @Test
    void thePageShowsThePicture() throws IOException {
        String drawn = new PatternPicture(SPEEDS)
                .map("bramble canes", BRAMBLES)
                .map("at random, as dense", Pattern.random(BRAMBLES.side(), BRAMBLES.density(), 1))
                .map("Japanese pines", PINES)
                .map("at random, as dense", Pattern.random(PINES.side(), PINES.density(), 1))
                .line("bramble canes", brambles)
                .line("at random, 10.2 1/m2", asDenseAsBrambles)
                .line("Japanese pines", pines)
                .line("at random, 2.0 1/m2", asDenseAsPines)
                .svg();
        Path shown = Checkout.folder().resolve("docs/images/replay-patterns.svg");
        if (Boolean.getBoolean("headgate.docs.write")) {
            Files.writeString(shown, drawn, StandardCharsets.UTF_8);
        }
        assertThat(shown)
                .as("to draw it again run this test with -Dheadgate.docs.write=true")
                .hasContent(drawn);
    }
}
