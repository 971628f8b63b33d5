package headgate.verifier.plot;

import headgate.verifier.replay.PlantSource;
import java.io.Closeable;
import java.io.IOException;
import java.util.OptionalDouble;

/** A plot that is to be replayed: its plants can be read as often as there are speeds. */
public interface Plot extends Closeable {

    /** {@return what people call it: a file's name, or how it was made up} */
    String name();

    /** {@return the digest of all that its plants follow from, lower-case hexadecimal} */
    String sha256();

    /** {@return weeds per square metre, if it was made up with a given density} */
    OptionalDouble density();

    /** {@return true if it was made up from a seed; false if somebody recorded it} */
    boolean madeUp();

    /** {@return its plants from the first on}
     * @throws IOException if they cannot be read
     */
    Reading read() throws IOException;

    /** Lets go of what it holds on the disk. It can be read again all the same. */
    @Override
    void close() throws IOException;

    /**
     * A stand that is being read.
     *
     * @param plants the plants, in the order of travel
     * @param end lets go of what is read from
     */
    record Reading(PlantSource plants, Closeable end) implements Closeable {
        @Override
        public void close() throws IOException {
            end.close();
        }
    }
}
