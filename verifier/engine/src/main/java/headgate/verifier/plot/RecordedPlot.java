package headgate.verifier.plot;

import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.stand.StandReader;
import headgate.runtime.stand.StandSummary;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plot that was recorded. The file may list its plants in any order; they are put into the order of travel on the disk,
 * so that a plot of any size is replayed with the same memory.
 */
public final class RecordedPlot implements Plot, Closeable {

    private final String name;
    private final StandSummary summary;
    private final List<Path> runs;

    private RecordedPlot(String name, StandSummary summary, List<Path> runs) {
        this.name = name;
        this.summary = summary;
        this.runs = List.copyOf(runs);
    }

    /**
     * Reads a stand.
     *
     * @param file the stand
     * @param scratch a folder that can be written to; what is put there goes away when the plot is closed
     * @return the plot
     * @throws InvalidFileException if the file is not a stand
     * @throws IOException if the folder cannot be written
     */
    public static RecordedPlot of(Path file, Path scratch) throws InvalidFileException, IOException {
        try (TravelOrder order = new TravelOrder(scratch)) {
            StandSummary summary = StandReader.read(file, order);
            return new RecordedPlot(String.valueOf(file.getFileName()), summary, order.finish());
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    /** {@return what the stand holds} */
    public StandSummary summary() {
        return summary;
    }

    @Override
    public String name() {
        return name;
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
        return TravelOrder.merged(runs);
    }

    @Override
    public void close() throws IOException {
        for (Path run : runs) {
            Files.deleteIfExists(run);
        }
    }
}
