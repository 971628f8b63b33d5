package headgate.verifier.plot;

import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.stand.StandReader;
import headgate.runtime.stand.StandSummary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plot that was recorded. The file may list its plants in any order; when they are first read, they are put into the order
 * of travel on the disk, so that a plot of any size is replayed with the same memory.
 */
public final class RecordedPlot implements Plot {

    private final Path file;
    private final StandSummary summary;
    private final Path scratch;
    private List<Path> runs = List.of();
    private boolean ordered;

    private RecordedPlot(Path file, StandSummary summary, Path scratch) {
        this.file = file;
        this.summary = summary;
        this.scratch = scratch;
    }

    /**
     * Reads a stand to its end, and says whether it is one. Nothing of it is held.
     *
     * @param file the stand
     * @param scratch a folder that can be written to; what is put there goes away when the plot is closed
     * @return the plot
     * @throws InvalidFileException if the file is not a stand
     */
    public static RecordedPlot of(Path file, Path scratch) throws InvalidFileException {
        return new RecordedPlot(file, StandReader.read(file, plant -> {}), scratch);
    }

    /** {@return what the stand holds} */
    public StandSummary summary() {
        return summary;
    }

    @Override
    public String name() {
        return String.valueOf(file.getFileName());
    }

    @Override
    public String sha256() {
        return summary.sha256();
    }

    @Override
    public OptionalDouble density() {
        return OptionalDouble.empty();
    }

    @Override
    public boolean madeUp() {
        return false;
    }

    @Override
    public Reading read() throws IOException {
        if (!ordered) {
            runs = order();
            ordered = true;
        }
        return TravelOrder.merged(runs);
    }

    private List<Path> order() throws IOException {
        try (TravelOrder order = new TravelOrder(scratch)) {
            if (!StandReader.read(file, order).sha256().equals(summary.sha256())) {
                throw changed();
            }
            return order.finish();
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        } catch (InvalidFileException notAStandAnyMore) {
            throw changed();
        }
    }

    private IOException changed() {
        return new IOException(name() + " was changed while it was being replayed");
    }

    @Override
    public void close() throws IOException {
        for (Path run : runs) {
            Files.deleteIfExists(run);
        }
        runs = List.of();
        ordered = false;
    }
}
