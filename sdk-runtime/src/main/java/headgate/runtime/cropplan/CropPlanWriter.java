package headgate.runtime.cropplan;

import headgate.api.vocabulary.PlantClass;
import headgate.runtime.form.JsonText;
import headgate.runtime.quantity.Kind;
import java.time.LocalDate;
import java.util.Locale;

/** Writes crop plan files. What is written reads back as an equal plan; notes of the file it came from are gone. */
public final class CropPlanWriter {

    /** Any year without a 29 February: a plan means the same day in every year. */
    private static final int PLAIN_YEAR = 2001;

    private CropPlanWriter() {}

    /**
     * Writes a crop plan.
     *
     * @param plan the plan
     * @return the text of its file
     */
    public static String text(CropPlan plan) {
        return JsonText.file("headgate.crop-plan/1")
                .text("name", plan.name())
                .object("rows", rows(plan.rows()))
                .object(
                        "crop",
                        new JsonText()
                                .quantity("canopyHeight", plan.crop().canopyHeight(), Kind.LENGTH)
                                .quantity("canopyWidth", plan.crop().canopyWidth(), Kind.LENGTH)
                                .quantity("protectedRadius", plan.crop().protectedRadius(), Kind.LENGTH))
                .object("soil", soil(plan.soil()))
                .object("weeds", plan.weeds().map(CropPlanWriter::weeds))
                .object("plugs", plan.plugs().map(p -> new JsonText()
                        .quantity("diameter", p.diameter(), Kind.LENGTH)
                        .quantity("height", p.height(), Kind.LENGTH)
                        .quantity("depth", p.depth(), Kind.LENGTH)
                        .object("quality", p.quality().map(q -> new JsonText()
                                .quantity("emptyCells", q.emptyCells(), Kind.SHARE)
                                .quantity("doubles", q.doubles(), Kind.SHARE)
                                .quantity("upright", q.upright(), Kind.SHARE)
                                .quantity("covered", q.covered(), Kind.SHARE)))))
                .object("wanted", wanted(plan.wanted()))
                .object("field", field(plan.field()))
                .object("season", plan.season().map(CropPlanWriter::season))
                .object("sun", plan.sun().map(s -> new JsonText()
                        .quantity("latitude", s.latitude(), Kind.ANGLE)
                        .quantity("sunshine", s.sunshine(), Kind.SHARE)))
                .toString();
    }

    private static JsonText rows(CropPlan.Rows rows) {
        JsonText text = new JsonText()
                .quantity("spacing", rows.spacing(), Kind.LENGTH)
                .count("perPass", rows.perPass())
                .quantity("plantSpacing", rows.plantSpacing(), Kind.LENGTH)
                .quantity("wander", rows.wander(), Kind.LENGTH);
        rows.planterRows().ifPresent(planterRows -> text.count("planterRows", planterRows));
        return text.quantity("guessRowError", rows.guessRowError(), Kind.LENGTH)
                .quantity("radius", rows.radius(), Kind.LENGTH);
    }

    private static JsonText soil(CropPlan.Soil soil) {
        return new JsonText()
                .text("texture", soil.texture().name())
                .quantity("moisture", soil.moisture(), Kind.SHARE)
                .quantity("relief", soil.relief(), Kind.LENGTH)
                .object("ridges", soil.ridges().map(r -> new JsonText()
                        .quantity("height", r.height(), Kind.LENGTH)
                        .quantity("topWidth", r.topWidth(), Kind.LENGTH)));
    }

    private static JsonText weeds(CropPlan.Weeds weeds) {
        return new JsonText()
                .quantity("density", weeds.density(), Kind.DENSITY)
                .quantity("bandWidth", weeds.bandWidth(), Kind.LENGTH)
                .texts("classes", weeds.classes().stream().map(PlantClass::name).toList())
                .interval("stem", weeds.stemLeast(), weeds.stemMost(), Kind.LENGTH)
                .interval("height", weeds.heightLeast(), weeds.heightMost(), Kind.LENGTH)
                .quantity("recall", weeds.recall(), Kind.SHARE)
                .quantity("falseAlarms", weeds.falseAlarms(), Kind.DENSITY)
                .object("clumps", weeds.clumps().map(c -> new JsonText()
                        .number("mean", c.mean())
                        .quantity("sigma", c.sigma(), Kind.LENGTH)))
                .objects(
                        "sizes",
                        weeds.sizes().stream()
                                .map(s -> new JsonText()
                                        .text("name", s.name())
                                        .quantity("heightMost", s.heightMost(), Kind.LENGTH)
                                        .quantity("share", s.share(), Kind.SHARE)
                                        .quantity("recall", s.recall(), Kind.SHARE))
                                .toList())
                .quantity("cropTaken", weeds.cropTaken(), Kind.SHARE)
                .objects(
                        "success",
                        weeds.success().stream()
                                .map(s -> new JsonText()
                                        .text("class", s.kind().name())
                                        .quantity("share", s.share(), Kind.SHARE))
                                .toList());
    }

    private static JsonText wanted(CropPlan.Wanted wanted) {
        return new JsonText()
                .text("operation", wanted.operation().name())
                .quantity("speed", wanted.speed(), Kind.SPEED)
                .quantity("coverage", wanted.coverage(), Kind.SHARE)
                .quantity("areaRate", wanted.areaRate(), Kind.AREA_RATE)
                .text("ground", wanted.ground().map(g -> g.name()
                        .toLowerCase(Locale.ROOT)
                        .replace('_', '-')))
                .quantity("accuracy", wanted.accuracy(), Kind.LENGTH)
                .quantity("cropLoss", wanted.cropLoss(), Kind.SHARE);
    }

    private static JsonText field(CropPlan.Field field) {
        return new JsonText()
                .quantity("length", field.length(), Kind.LENGTH)
                .quantity("width", field.width(), Kind.LENGTH)
                .quantity("headland", field.headland(), Kind.LENGTH)
                .quantity("slope", field.slope(), Kind.ANGLE)
                .quantity("crossSlope", field.crossSlope(), Kind.ANGLE);
    }

    private static JsonText season(CropPlan.Season season) {
        return new JsonText()
                .text("firstDay", monthAndDay(season.firstDay()))
                .text("lastDay", monthAndDay(season.lastDay()))
                .count("fieldDays", season.fieldDays())
                .quantity("hoursPerDay", season.hoursPerDay(), Kind.TIME);
    }

    private static String monthAndDay(int dayOfYear) {
        return LocalDate.ofYearDay(PLAIN_YEAR, dayOfYear).toString().substring(5);
    }
}
