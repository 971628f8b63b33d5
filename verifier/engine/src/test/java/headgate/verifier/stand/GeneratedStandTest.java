package headgate.verifier.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.stand.Plant;
import headgate.runtime.stand.StandReader;
import headgate.runtime.stand.StandWriter;
import headgate.verifier.check.Cases;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GeneratedStandTest {

    private static final Ground GROUND = new Ground(50, -1.8, 1.8);

    private static GeneratedStand mixed(long seed) {
        return new GeneratedStand(
                GROUND,
                Optional.of(new GeneratedStand.Sown(
                        new SownRows(8, 0.45, 0.3, 0.02, 0.01, 0.01, 0.03),
                        Plant.CROP,
                        SizeLaw.UNKNOWN,
                        SizeLaw.always(0.13),
                        SizeLaw.always(0.18))),
                List.of(
                        weeds(new ClumpedWeeds(5, 4, 0.1)),
                        weeds(new RandomWeeds(2)),
                        weeds(new QuadratWeeds(3, 0.8, 0.5))),
                seed);
    }

    private static GeneratedStand.Weeds weeds(WeedPattern pattern) {
        return new GeneratedStand.Weeds(
                pattern,
                List.of(),
                List.of(PlantClass.BROADLEAF, PlantClass.GRASS),
                SizeLaw.even(0.001, 0.008),
                new SizeLaw(0.01, List.of(new SizeLaw.Part(0.05, 0.75), new SizeLaw.Part(0.15, 0.25))),
                SizeLaw.UNKNOWN);
    }

    private static List<Plant> plants(Iterable<Plant> stand) {
        List<Plant> plants = new ArrayList<>();
        stand.forEach(plants::add);
        return plants;
    }

    @Test
    void plantsComeInTheOrderOfTravelAndStandOnThePlot() {
        List<Plant> plants = plants(mixed(1));

        assertThat(plants).hasSizeGreaterThan(2000);
        assertThat(plants)
                .isSortedAccordingTo(
                        (a, b) -> Long.compare(a.position().x(), b.position().x()));
        assertThat(plants).allMatch(p -> p.position().x() >= 0 && p.position().x() <= 50_000_000);
    }

    @Test
    void oneSeedGivesTheSamePlantsEachTimeAndAnotherOthers() {
        GeneratedStand stand = mixed(1);

        assertThat(plants(stand)).isEqualTo(plants(stand)).isEqualTo(plants(mixed(1)));
        assertThat(plants(stand.withSeed(2))).isNotEqualTo(plants(stand));
    }

    /** Written down on JDK 17, so that another JDK or machine that draws other plants is found out. */
    @Test
    void theFirstPlantsAreTheSameOnEveryMachine() throws IOException {
        assertThat(csv(mixed(20260101))).startsWith("""
                # headgate.stand/1
                x [m],y [m],class,stem [mm],height [mm],canopy [mm]
                0.012412,0.17705,grass,6.1,28.465,
                0.040532,-0.084996,broadleaf,7.053,88.488,
                0.094522,-0.044548,grass,2.866,20.853,
                0.12675,0.861083,grass,4.661,56.577,
                0.12786,-0.344398,broadleaf,1.254,13.337,
                0.139241,1.540891,grass,5.859,34.628,
                0.143436,0.225109,crop,,130,180
                """);
    }

    @Test
    void aStandIsTheSameOnceItWasWrittenAndRead() throws IOException, InvalidFileException {
        GeneratedStand stand = mixed(12);
        List<Plant> read = new ArrayList<>();

        StandReader.read("stand.csv", new ByteArrayInputStream(csv(stand).getBytes(StandardCharsets.UTF_8)), read::add);

        assertThat(read).isEqualTo(plants(stand));
    }

    private static String csv(GeneratedStand stand) throws IOException {
        StringWriter text = new StringWriter();
        try (StandWriter writer = new StandWriter(text, StandWriter.Form.CSV)) {
            for (Plant plant : stand) {
                writer.write(plant);
            }
        }
        return text.toString();
    }

    @Test
    void aLongerPlotBeginsLikeAShorterOne() {
        GeneratedStand shorter = mixed(3);
        List<Plant> longer = plants(new GeneratedStand(
                new Ground(80, GROUND.right(), GROUND.left()), shorter.sown(), shorter.weeds(), shorter.seed()));
        List<Plant> plants = plants(shorter);

        // A plant whose step or quadrat is cut off by the shorter plot's end may be missing at the very end only.
        int same =
                (int) plants.stream().filter(p -> p.position().x() < 49_000_000).count();
        assertThat(longer.subList(0, same)).isEqualTo(plants.subList(0, same));
    }

    @Test
    void moreRowsLeaveTheWeedsAsTheyAre() {
        GeneratedStand one = mixed(4);
        GeneratedStand other = new GeneratedStand(GROUND, Optional.empty(), one.weeds(), 4);

        assertThat(plants(one).stream().filter(p -> !p.isCrop())).containsExactlyElementsOf(plants(other));
    }

    @Test
    void classesAndSizesFollowTheirLaws() {
        List<Plant> plants = plants(new GeneratedStand(
                new Ground(1000, -1.8, 1.8), Optional.empty(), List.of(weeds(new RandomWeeds(10))), 6));

        int n = plants.size();
        assertThat(n).isCloseTo(36_000, within(4 * 190));
        assertThat(share(plants, p -> p.kind().equals(PlantClass.GRASS)))
                .isCloseTo(0.5, within(4 * 0.5 / Math.sqrt(n)));
        assertThat(share(plants, p -> p.height() < 0.05)).isCloseTo(0.75, within(4 * 0.44 / Math.sqrt(n)));
        assertThat(share(plants, p -> p.height() < 0.10)).isCloseTo(0.875, within(4 * 0.34 / Math.sqrt(n)));
        assertThat(share(plants, p -> p.stem() < 0.0045)).isCloseTo(0.5, within(4 * 0.5 / Math.sqrt(n)));
        assertThat(plants).allMatch(p -> p.stem() >= 0.001 && p.stem() <= 0.008 && p.canopy() == 0);
    }

    private static double share(List<Plant> plants, Predicate<Plant> what) {
        return plants.stream().filter(what).count() / (double) plants.size();
    }

    @Test
    void anEndedStandHasNoNext() {
        Iterator<Plant> empty = new GeneratedStand(GROUND, Optional.empty(), List.of(), 1).iterator();

        assertThat(empty.hasNext()).isFalse();
        assertThatThrownBy(empty::next).isInstanceOf(NoSuchElementException.class);
    }

    /** Invented: 8 rows of 0.45 m with a plant each 0.3 m, and bands 0.24 m wide with 1.5 weeds per square metre. */
    private static CropPlan plan() {
        CropPlan plan = Cases.weedingPlan();
        return new CropPlan(
                plan.name(),
                new CropPlan.Rows(0.45, 8, 0.3, 0.01),
                new CropPlan.Crop(0.13, 0.18, 0.03),
                plan.soil(),
                Optional.of(new CropPlan.Weeds(
                        1.5,
                        0.24,
                        List.of(PlantClass.BROADLEAF, PlantClass.ROSETTE),
                        0.001,
                        0.008,
                        0.01,
                        0.15,
                        Optional.empty(),
                        Optional.empty())),
                plan.plugs(),
                plan.wanted(),
                plan.field());
    }

    @Test
    void aPlanSaysWhatItsStandLooksLike() {
        CropPlan plan = plan();

        List<Plant> plants = plants(PlannedStand.of(plan, 600, 8));

        List<Plant> weeds = plants.stream().filter(p -> !p.isCrop()).toList();
        double band = 8 * 0.24 * 600;
        assertThat(weeds.size() / band).isCloseTo(1.5, within(4 * Math.sqrt(1.5 / band)));
        assertThat(weeds).allMatch(p -> IntStream.range(0, 8)
                .anyMatch(row -> Math.abs(p.position().y() - (row - 3.5) * 450_000) <= 120_000));
        assertThat(plants.size() - weeds.size()).isCloseTo((int) (8 * 2000 * 0.97), within((int) (4 * 21.6)));
        assertThat(plants.stream().filter(Plant::isCrop)).allMatch(p -> p.height() == 0.13 && p.canopy() == 0.18);
    }

    @Test
    void aPlanThatPlantsSaysWhereThePlugsGo() {
        CropPlan plan = Cases.plantingPlan();

        List<Plant> places = plants(PlannedStand.of(plan, 40, 8));

        // 4 rows of 0.5 m with a place each 0.4 m, the first one in the middle of its step.
        assertThat(places).hasSize(4 * 100);
        assertThat(places).allMatch(p -> p.kind().equals(PlantClass.PLUG) && p.stem() == 0.03 && p.height() == 0.08);
        assertThat(places.subList(0, 5))
                .extracting(p -> p.position().x(), p -> p.position().y())
                .containsExactly(
                        tuple(200_000L, -750_000L),
                        tuple(200_000L, -250_000L),
                        tuple(200_000L, 250_000L),
                        tuple(200_000L, 750_000L),
                        tuple(600_000L, -750_000L));
    }

    @Test
    void aPlansClumpsAreClumps() {
        CropPlan plan = plan();
        CropPlan.Weeds random = plan.weeds().orElseThrow();
        CropPlan.Weeds clumped = new CropPlan.Weeds(
                random.density(),
                random.bandWidth(),
                random.classes(),
                random.stemLeast(),
                random.stemMost(),
                random.heightLeast(),
                random.heightMost(),
                random.recall(),
                random.falseAlarms(),
                Optional.of(new CropPlan.Clumps(6, 0.08)),
                List.of(new CropPlan.SizeClass("small", 0.05, 0.8, 0.9), new CropPlan.SizeClass("large", 0.3, 0.2, 1)),
                random.cropTaken(),
                random.success());
        CropPlan changed = new CropPlan(
                plan.name(),
                plan.rows(),
                plan.crop(),
                plan.soil(),
                Optional.of(clumped),
                plan.plugs(),
                plan.wanted(),
                plan.field());

        GeneratedStand.Weeds weeds = PlannedStand.of(changed, 100, 1).weeds().get(0);

        assertThat(weeds.pattern()).isEqualTo(new ClumpedWeeds(1.5, 6, 0.08));
        assertThat(weeds.height().at(0.8 - 1e-9)).isCloseTo(0.05, within(1e-6));
        assertThat(weeds.height().at(1 - 1e-12)).isCloseTo(0.15, within(1e-6));
    }

    @Test
    void whatIsNoStandIsRefused() {
        assertThatThrownBy(() -> new Ground(0, -1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Ground(10, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RandomWeeds(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a density per square metre must be from 0.0 to 20000.0, not -1.0");
        assertThatThrownBy(() -> new ClumpedWeeds(10, 0, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new QuadratWeeds(10, 2, 100))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the mean number of weeds in a quadrat");
        assertThatThrownBy(() -> new SizeLaw(0.02, List.of(new SizeLaw.Part(0.01, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("in order from small to large");
    }
}
