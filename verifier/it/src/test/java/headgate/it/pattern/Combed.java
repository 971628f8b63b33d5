package headgate.it.pattern;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import headgate.runtime.stand.StandWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A plot as a carriage combs it: lanes of one width, every second of which belongs to one pass and the rest to the next, so
 * that each plant lies in one lane of one pass. The lanes of a pass lie evenly to both sides of y = 0.
 */
final class Combed {

    private static final double LANE = 0.225;
    private static final int LANES = 8;

    private Combed() {}

    /** Writes a stand file for each pass that meets plants. */
    static List<Path> write(Pattern pattern, Path folder) throws IOException {
        int strips = (int) Math.ceil(pattern.side() / LANE);
        int blocks = (strips + 2 * LANES - 1) / (2 * LANES);
        List<Path> files = new ArrayList<>();
        for (int pass = 0; pass < 2 * blocks; pass++) {
            List<Plant> plants = new ArrayList<>();
            for (Pattern.Place place : pattern.places()) {
                int strip = Math.min(strips - 1, (int) (place.y() / LANE));
                if (strip / (2 * LANES) == pass / 2 && strip % 2 == pass % 2) {
                    int lane = strip % (2 * LANES) / 2;
                    double middle = (lane - (LANES - 1) / 2.0) * 2 * LANE;
                    plants.add(weed(place.x(), place.y() - (strip + 0.5) * LANE + middle));
                }
            }
            if (!plants.isEmpty()) {
                Path file = folder.resolve("pass-" + pass + ".csv");
                try (StandWriter writer =
                        new StandWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8), StandWriter.Form.CSV)) {
                    for (Plant plant : plants) {
                        writer.write(plant);
                    }
                }
                files.add(file);
            }
        }
        return files;
    }

    /** The files say nothing of the plants' sizes: all are taken as small and alike, as the crop plan says. */
    private static Plant weed(double x, double y) {
        return new Plant(
                new Plant.Position(Math.round(x * 1e6), Math.round(y * 1e6)), PlantClass.BROADLEAF, 0.003, 0.06, 0);
    }
}
