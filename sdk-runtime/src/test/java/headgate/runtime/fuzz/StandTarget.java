package headgate.runtime.fuzz;

import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.stand.Plant;
import headgate.runtime.stand.StandReader;
import headgate.runtime.stand.StandSummary;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** What the fuzzer drives: any bytes are either a stand, all of whose plants come by, or are refused. */
public final class StandTarget {

    private StandTarget() {}

    /**
     * Reads bytes as a stand.
     *
     * @param bytes any bytes
     * @throws IOException never: the bytes are in memory
     */
    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        List<Plant> plants = new ArrayList<>();
        try {
            StandSummary summary = StandReader.read("fuzz", new ByteArrayInputStream(bytes), plants::add);
            if (summary.plants() != plants.size()) {
                throw new AssertionError(summary.plants() + " plants counted, " + plants.size() + " came by");
            }
        } catch (InvalidFileException refused) {
            FileTarget.checkPlaces(refused.problems());
        }
    }
}
