package headgate.verifier.plot;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TravelOrderTest {

    @TempDir
    private Path scratch = Path.of("");

    private static Plant plant(long x, long y, double stem) {
        return new Plant(new Plant.Position(x, y), PlantClass.BROADLEAF, stem, 0.05, 0.1);
    }

    private static List<Plant> read(List<Path> runs) throws Exception {
        List<Plant> plants = new ArrayList<>();
        try (Plot.Reading reading = TravelOrder.merged(runs)) {
            for (Plant plant = reading.plants().next();
                    plant != null;
                    plant = reading.plants().next()) {
                plants.add(plant);
            }
        }
        return plants;
    }

    /** Whatever the order and however few are held at once, what comes out is the list, sorted as a list is. */
    @ParameterizedTest
    @ValueSource(ints = {1, 7, 100, 1000})
    void sortsAsAListIsSorted(int atOnce) throws Exception {
        SplittableRandom random = new SplittableRandom(atOnce);
        List<Plant> plants = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            // Few places, so that many plants share one; the stem tells them apart.
            plants.add(plant(random.nextInt(40) * 1000L, random.nextInt(-3, 3) * 1000L, i * 1e-4));
        }
        List<Path> runs;
        try (TravelOrder order = new TravelOrder(scratch, atOnce)) {
            plants.forEach(order);
            runs = order.finish();
        }

        List<Plant> sorted = new ArrayList<>(plants);
        sorted.sort(Comparator.<Plant>comparingLong(p -> p.position().x())
                .thenComparingLong(p -> p.position().y()));
        assertThat(read(runs)).isEqualTo(sorted);
    }

    @Test
    void whatIsInOrderAlreadyIsOneRun() throws Exception {
        List<Path> runs;
        try (TravelOrder order = new TravelOrder(scratch, 3)) {
            for (int i = 0; i < 20; i++) {
                order.accept(plant(i * 1000L, 0, 0.001));
            }
            runs = order.finish();
        }
        assertThat(runs).hasSize(1);
        assertThat(read(runs)).hasSize(20);
    }

    @Test
    void noPlantsAreNoRuns() throws Exception {
        try (TravelOrder order = new TravelOrder(scratch)) {
            assertThat(order.finish()).isEmpty();
        }
        assertThat(read(List.of())).isEmpty();
    }

    @Test
    void whatIsNotFinishedLeavesNothingBehind() throws Exception {
        try (TravelOrder order = new TravelOrder(scratch, 2)) {
            for (int i = 0; i < 9; i++) {
                order.accept(plant(-i * 1000L, 0, 0.001));
            }
        }
        try (Stream<Path> left = Files.list(scratch)) {
            assertThat(left).isEmpty();
        }
    }
}
