package headgate.verifier.session;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Place;
import headgate.runtime.scratch.TemporaryFolder;
import headgate.runtime.stand.Plant;
import headgate.verifier.check.Stand;
import headgate.verifier.plot.Plot;
import headgate.verifier.plot.RecordedPlot;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Recorded stands as the stands of cases. Their plants are read from the disk as they are asked for, and none are held. */
final class RecordedStands implements Closeable {

    private final List<Closeable> open = new ArrayList<>();

    /** Reads a stand, or adds what is wrong with it and gives none. */
    Optional<Stand> read(Path file, List<FileProblem> problems) {
        try {
            TemporaryFolder scratch = TemporaryFolder.make("headgate-plots-");
            open.add(scratch);
            RecordedPlot plot = RecordedPlot.of(file, scratch.folder());
            open.add(plot);
            return Optional.of(Stand.recorded(plot.name(), plot.sha256(), () -> new Plants(read(plot))));
        } catch (InvalidFileException invalid) {
            problems.addAll(invalid.problems());
        } catch (IOException full) {
            problems.add(new FileProblem(
                    Place.ofFile(file.toString()),
                    "",
                    "no room to put its plants in order (" + full.getMessage() + ")",
                    "a folder for temporary files that can be written",
                    ""));
        }
        return Optional.empty();
    }

    private Plot.Reading read(RecordedPlot plot) {
        try {
            Plot.Reading reading = plot.read();
            open.add(reading);
            return reading;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Lets go of everything, what was opened last first. */
    @Override
    public void close() {
        for (int i = open.size() - 1; i >= 0; i--) {
            try {
                open.get(i).close();
            } catch (IOException left) {
                // Files of ours among the temporary ones; the system clears those away.
            }
        }
        open.clear();
    }

    /** Goes through a reading once, and lets go of it at its end. */
    private static final class Plants implements Iterator<Plant> {
        private final Plot.Reading reading;
        private @Nullable Plant next;

        Plants(Plot.Reading reading) {
            this.reading = reading;
            step();
        }

        private void step() {
            next = reading.plants().next();
            if (next == null) {
                try {
                    reading.close();
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            }
        }

        @Override
        public boolean hasNext() {
            return next != null;
        }

        @Override
        public Plant next() {
            Plant plant = next;
            if (plant == null) {
                throw new NoSuchElementException("the stand has no more plants");
            }
            step();
            return plant;
        }
    }
}
