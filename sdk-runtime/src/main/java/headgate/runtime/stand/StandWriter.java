package headgate.runtime.stand;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;

/** Writes a stand as a stream, one plant after the other. */
public final class StandWriter implements Closeable {

    /** How a stand is written. */
    public enum Form {
        /** Comma-separated values. */
        CSV,
        /** GeoJSON points in local metres. */
        GEOJSON
    }

    private final Writer out;
    private final Form form;
    private boolean begun;

    /**
     * Begins a stand.
     *
     * @param out where it goes; closed with this writer
     * @param form how it is written
     * @throws IOException if writing fails
     */
    public StandWriter(Writer out, Form form) throws IOException {
        this.out = out;
        this.form = form;
        if (form == Form.CSV) {
            StandCsv.writeHeading(out);
        } else {
            StandGeoJson.writeHeading(out);
        }
    }

    /**
     * Writes one plant. Its lengths are rounded to whole micrometres.
     *
     * @param plant the plant
     * @throws IOException if writing fails
     */
    public void write(Plant plant) throws IOException {
        if (form == Form.CSV) {
            StandCsv.write(plant, out);
        } else {
            StandGeoJson.write(plant, begun, out);
        }
        begun = true;
    }

    /** Ends the stand and closes what it is written to. */
    @Override
    public void close() throws IOException {
        try (Writer closing = out) {
            if (form == Form.GEOJSON) {
                StandGeoJson.writeEnd(closing);
            }
        }
    }
}
