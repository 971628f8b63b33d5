package headgate.verifier.plot;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.stand.Plant;
import headgate.verifier.replay.PlantSource;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Puts plants into the order of travel. As many as fit are sorted at once and written as a run; runs are merged as they are
 * read. A stand that is in order already becomes one run. Plants at one place keep the order of the file.
 */
final class TravelOrder implements Consumer<Plant>, Closeable {

    /** Plants that are sorted at once: about 20 MB. */
    static final int AT_ONCE = 100_000;

    private static final int BUFFER = 1 << 16;

    private static final Comparator<Plant> IN_TRAVEL = Comparator.<Plant>comparingLong(
                    p -> p.position().x())
            .thenComparingLong(p -> p.position().y());

    private final Path scratch;
    private final int atOnce;
    private final List<Path> runs = new ArrayList<>();
    private final List<Plant> held = new ArrayList<>();
    private @Nullable DataOutputStream open;
    private @Nullable Plant last;
    private boolean finished;

    TravelOrder(Path scratch) {
        this(scratch, AT_ONCE);
    }

    TravelOrder(Path scratch, int atOnce) {
        this.scratch = scratch;
        this.atOnce = atOnce;
    }

    @Override
    public void accept(Plant plant) {
        held.add(plant);
        if (held.size() >= atOnce) {
            writeHeld();
        }
    }

    /** {@return the runs, each in the order of travel, to be merged} */
    List<Path> finish() {
        writeHeld();
        closeRun();
        finished = true;
        return List.copyOf(runs);
    }

    /** A new run begins only where the plants held cannot follow the run that is open. */
    private void writeHeld() {
        if (held.isEmpty()) {
            return;
        }
        held.sort(IN_TRAVEL);
        try {
            if (open == null || last == null || IN_TRAVEL.compare(last, held.get(0)) > 0) {
                closeRun();
                Path run = Files.createTempFile(scratch, "stand-", ".run");
                runs.add(run);
                open = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(run), BUFFER));
            }
            for (Plant plant : held) {
                write(plant, open);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        last = held.get(held.size() - 1);
        held.clear();
    }

    private void closeRun() {
        try {
            if (open != null) {
                open.close();
                open = null;
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Lets go of the file that is open; if it was not finished, what was written goes away. */
    @Override
    public void close() throws IOException {
        closeRun();
        if (!finished) {
            for (Path run : runs) {
                Files.deleteIfExists(run);
            }
        }
    }

    private static void write(Plant plant, DataOutputStream out) throws IOException {
        out.writeLong(plant.position().x());
        out.writeLong(plant.position().y());
        out.writeUTF(plant.kind().name());
        out.writeDouble(plant.stem());
        out.writeDouble(plant.height());
        out.writeDouble(plant.canopy());
    }

    /** Reads runs as one source. */
    static Plot.Reading merged(List<Path> runs) throws IOException {
        Merge merge = new Merge();
        try {
            for (Path run : runs) {
                merge.add(new DataInputStream(new BufferedInputStream(Files.newInputStream(run), BUFFER)));
            }
            return new Plot.Reading(merge, merge);
        } catch (IOException broken) {
            merge.close();
            throw broken;
        }
    }

    /** A run with its next plant. */
    private static final class Run {
        private final int number;
        private final DataInputStream in;
        private final Map<String, PlantClass> kinds;
        private @Nullable Plant head;

        Run(int number, DataInputStream in, Map<String, PlantClass> kinds) {
            this.number = number;
            this.in = in;
            this.kinds = kinds;
        }

        Plant head() {
            if (head == null) {
                throw new IllegalStateException("this run has ended");
            }
            return head;
        }

        /** Steps to the next plant; false at the end. */
        boolean step() throws IOException {
            long x;
            try {
                x = in.readLong();
            } catch (EOFException end) {
                head = null;
                return false;
            }
            head = new Plant(
                    new Plant.Position(x, in.readLong()),
                    kinds.computeIfAbsent(in.readUTF(), PlantClass::of),
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble());
            return true;
        }
    }

    /** Gives the plants of all runs in the order of travel. */
    private static final class Merge implements PlantSource, Closeable {
        private final Map<String, PlantClass> kinds = new HashMap<>();
        private final List<Run> all = new ArrayList<>();
        private final PriorityQueue<Run> next =
                new PriorityQueue<>(Comparator.comparing(Run::head, IN_TRAVEL).thenComparingInt(r -> r.number));

        void add(DataInputStream in) throws IOException {
            Run run = new Run(all.size(), in, kinds);
            all.add(run);
            if (run.step()) {
                next.add(run);
            }
        }

        @Override
        public @Nullable Plant next() {
            Run first = next.poll();
            if (first == null) {
                return null;
            }
            Plant plant = first.head();
            try {
                if (first.step()) {
                    next.add(first);
                }
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
            return plant;
        }

        @Override
        public void close() throws IOException {
            for (Run run : all) {
                run.in.close();
            }
        }
    }
}
