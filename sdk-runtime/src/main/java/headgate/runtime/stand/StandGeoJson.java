package headgate.runtime.stand;

import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FormReader;
import headgate.runtime.form.Forms;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.TermForm;
import headgate.runtime.form.TupleForm;
import headgate.runtime.form.WordForm;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.quantity.Kind;
import headgate.runtime.text.JsonStream;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;

/**
 * Stands as GeoJSON (RFC 7946): a collection of points. The standard means longitude and latitude; here coordinates are
 * local metres, as the member {@code "format": "headgate.stand/1"} says, which the standard allows as a foreign member.
 */
final class StandGeoJson {

    private static final NumberForm COORDINATE = new NumberForm("-10000", "10000", "1.25");

    private static final ObjectForm POINT = ObjectForm.of("a point", "Where the plant stands.")
            .required("type", WordForm.of("Point"), "What it is.")
            .required("coordinates", new TupleForm(COORDINATE, 2), "Along travel and to the left, in metres.")
            .build();

    private static final ObjectForm PROPERTIES = ObjectForm.of("the properties", "What was recorded of the plant.")
            .required(
                    "class",
                    new TermForm("crop, or a class of weeds", List.of("crop", "broadleaf", "rosette", "grass")),
                    "Its class.")
            .optional("stem", Forms.fromZero(Kind.LENGTH, "5 m", "3 mm"), "Stem diameter.")
            .optional("height", Forms.fromZero(Kind.LENGTH, "5 m", "45 mm"), "Height over the ground.")
            .optional("canopy", Forms.fromZero(Kind.LENGTH, "5 m", "60 mm"), "Diameter of its leaves seen from above.")
            .build();

    private static final ObjectForm FEATURE = ObjectForm.of("a feature", "A plant.")
            .required("type", WordForm.of("Feature"), "What it is.")
            .required("geometry", POINT, "Where the plant stands.")
            .required("properties", PROPERTIES, "What was recorded of the plant.")
            .build();

    static final ObjectForm COLLECTION = ObjectForm.of("a stand", "The plants of a plot.")
            .required("type", WordForm.of("FeatureCollection"), "What it is.")
            .required("format", WordForm.of("headgate.stand/1"), "Says that coordinates are local metres.")
            .required("features", Forms.list(FEATURE, 0, Integer.MAX_VALUE), "The plants.")
            .build();

    private StandGeoJson() {}

    static void read(String file, Reader text, StandTally tally) throws InvalidFileException {
        FormReader collection = new FormReader(COLLECTION);
        JsonStream.read(
                file,
                text,
                "features",
                tally.problems(),
                feature -> {
                    FormReader reader = new FormReader(FEATURE);
                    reader.read(feature, tally.problems()).ifPresent(fields -> tally.plant(plant(fields)));
                    tally.stopIfTooMany();
                },
                rest -> collection.read(rest, tally.problems()));
    }

    private static Plant plant(Fields feature) {
        List<Double> at = feature.object("geometry").numbers("coordinates");
        Fields properties = feature.object("properties");
        return new Plant(
                new Plant.Position(micrometres(at.get(0)), micrometres(at.get(1))),
                PlantClass.of(properties.text("class")),
                properties.siOr("stem", 0.0),
                properties.siOr("height", 0.0),
                properties.siOr("canopy", 0.0));
    }

    private static long micrometres(double metres) {
        return (long) Math.rint(metres * Micrometres.PER_METRE);
    }

    static void writeHeading(Writer out) throws IOException {
        out.write("{\"type\": \"FeatureCollection\", \"format\": \"headgate.stand/1\", \"features\": [");
    }

    static void write(Plant plant, boolean begun, Writer out) throws IOException {
        out.write(begun ? ",\n" : "\n");
        out.write("{\"type\": \"Feature\", \"geometry\": {\"type\": \"Point\", \"coordinates\": [");
        out.write(decimal(plant.position().x(), 6) + ", "
                + decimal(plant.position().y(), 6));
        out.write("]}, \"properties\": {\"class\": \"" + plant.kind().name() + "\"");
        length("stem", plant.stem(), out);
        length("height", plant.height(), out);
        length("canopy", plant.canopy(), out);
        out.write("}}");
    }

    private static void length(String name, double metres, Writer out) throws IOException {
        if (metres != 0) {
            out.write(", \"" + name + "\": \"" + decimal(Math.round(metres * Micrometres.PER_METRE), 3) + " mm\"");
        }
    }

    private static String decimal(long micrometres, int places) {
        return BigDecimal.valueOf(micrometres, places).stripTrailingZeros().toPlainString();
    }

    static void writeEnd(Writer out) throws IOException {
        out.write("\n]}\n");
    }
}
