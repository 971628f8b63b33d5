package headgate.runtime.cropplan;

import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.origin.Loaded;
import headgate.runtime.text.SourceFile;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Reads crop plan files. */
public final class CropPlanReader {

    /** The kind of file, with all that it may hold. */
    public static final FileKind<CropPlan> KIND =
            new FileKind<>("crop-plan", 1, CropPlanForm.FORM, CropPlanReader::plan);

    private CropPlanReader() {}

    /**
     * Reads a crop plan file.
     *
     * @param path the file
     * @return the crop plan, where its fields stand, and notes
     * @throws InvalidFileException if the file cannot be read or is not a crop plan; it holds every problem
     */
    public static Loaded<CropPlan> read(Path path) throws InvalidFileException {
        return KIND.read(SourceFile.read(path));
    }

    private static CropPlan plan(Fields file) {
        return new CropPlan(
                file.text("name"),
                rows(file.object("rows")),
                crop(file.object("crop")),
                soil(file.object("soil")),
                file.objectIfGiven("weeds").map(CropPlanReader::weeds),
                file.objectIfGiven("plugs").map(CropPlanReader::plugs),
                wanted(file.object("wanted")),
                field(file.object("field")),
                file.objectIfGiven("season").map(CropPlanReader::season),
                file.objectIfGiven("sun").map(s -> new CropPlan.Sun(s.si("latitude"), s.si("sunshine"))));
    }

    private static CropPlan.Rows rows(Fields rows) {
        return new CropPlan.Rows(
                rows.si("spacing"),
                rows.count("perPass"),
                rows.si("plantSpacing"),
                rows.si("wander"),
                rows.has("planterRows") ? Optional.of(rows.count("planterRows")) : Optional.empty(),
                rows.siOr("guessRowError", 0.0),
                rows.siIfGiven("radius"));
    }

    private static CropPlan.Crop crop(Fields crop) {
        return new CropPlan.Crop(crop.si("canopyHeight"), crop.si("canopyWidth"), crop.si("protectedRadius"));
    }

    private static CropPlan.Soil soil(Fields soil) {
        return new CropPlan.Soil(
                SoilClass.of(soil.text("texture")),
                soil.si("moisture"),
                soil.si("relief"),
                soil.objectIfGiven("ridges").map(r -> new CropPlan.Ridges(r.si("height"), r.si("topWidth"))));
    }

    private static CropPlan.Weeds weeds(Fields weeds) {
        return new CropPlan.Weeds(
                weeds.si("density"),
                weeds.si("bandWidth"),
                weeds.texts("classes").stream().map(PlantClass::of).toList(),
                weeds.pair("stem").get(0),
                weeds.pair("stem").get(1),
                weeds.pair("height").get(0),
                weeds.pair("height").get(1),
                weeds.siIfGiven("recall"),
                weeds.siIfGiven("falseAlarms"),
                weeds.objectIfGiven("clumps").map(c -> new CropPlan.Clumps(c.si("mean"), c.si("sigma"))),
                weeds.objects("sizes").stream()
                        .map(z -> new CropPlan.SizeClass(
                                z.text("name"), z.si("heightMost"), z.si("share"), z.si("recall")))
                        .toList(),
                weeds.siIfGiven("cropTaken"),
                weeds.objects("success").stream()
                        .map(s -> new CropPlan.Success(PlantClass.of(s.text("class")), s.si("share")))
                        .toList());
    }

    private static CropPlan.Plugs plugs(Fields plugs) {
        return new CropPlan.Plugs(
                plugs.si("diameter"),
                plugs.si("height"),
                plugs.si("depth"),
                plugs.objectIfGiven("quality")
                        .map(q -> new CropPlan.Quality(
                                q.si("emptyCells"), q.si("doubles"), q.si("upright"), q.si("covered"))));
    }

    private static CropPlan.Wanted wanted(Fields wanted) {
        return new CropPlan.Wanted(
                Operation.of(wanted.text("operation")),
                wanted.si("speed"),
                wanted.si("coverage"),
                wanted.siIfGiven("areaRate"),
                wanted.textIfGiven("ground").map(CropPlanReader::ground),
                wanted.siIfGiven("accuracy"),
                wanted.siIfGiven("cropLoss"));
    }

    private static CropPlan.Field field(Fields field) {
        return new CropPlan.Field(
                field.si("length"),
                field.si("width"),
                field.siIfGiven("headland"),
                field.siOr("slope", 0.0),
                field.siOr("crossSlope", 0.0));
    }

    private static CropPlan.Ground ground(String word) {
        return CropPlan.Ground.valueOf(word.replace('-', '_').toUpperCase(Locale.ROOT));
    }

    private static CropPlan.Season season(Fields season) {
        return new CropPlan.Season(
                CropPlanForm.dayOfYear(season.text("firstDay")),
                CropPlanForm.dayOfYear(season.text("lastDay")),
                season.count("fieldDays"),
                season.si("hoursPerDay"));
    }
}
