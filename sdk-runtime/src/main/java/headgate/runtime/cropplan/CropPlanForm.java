package headgate.runtime.cropplan;

import headgate.runtime.form.CountForm;
import headgate.runtime.form.Fields;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.Forms;
import headgate.runtime.form.NumberForm;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.Rules;
import headgate.runtime.form.TermForm;
import headgate.runtime.form.TextForm;
import headgate.runtime.form.WordForm;
import headgate.runtime.quantity.Kind;
import headgate.runtime.quantity.Quantities;
import java.time.Month;
import java.util.List;

/** What a crop plan file may hold. */
final class CropPlanForm {

    /** What rounding of shares to a tenth of a percent may leave over. */
    private static final double SHARE_SLACK = 0.005;

    private static final TermForm OPERATION =
            new TermForm("an operation", List.of("pull-weeds", "set-plugs", "hoe", "press", "trim"));
    private static final TermForm PLANT_CLASS =
            new TermForm("a class of plants", List.of("broadleaf", "rosette", "grass", "plug"));
    private static final TermForm TEXTURE = new TermForm("a soil texture", List.of("fine", "medium", "coarse"));

    private static final ObjectForm ROWS = ObjectForm.of("the rows", "How the crop stands.")
            .required(
                    "spacing",
                    Forms.aboveZero(Kind.LENGTH, "5 m", "45 cm").usually("15 cm", "1.5 m"),
                    "Distance from row to row.")
            .required(
                    "perPass",
                    new CountForm(1, 100, 8),
                    "Rows that the carriage works in one pass. The served width is this times the spacing.")
            .required(
                    "plantSpacing",
                    Forms.aboveZero(Kind.LENGTH, "5 m", "30 cm").usually("2 cm", "1 m"),
                    "Distance from plant to plant within a row.")
            .required(
                    "wander",
                    Forms.fromZero(Kind.LENGTH, "0.5 m", "15 mm").usually("0 mm", "60 mm"),
                    "How far a row wanders to either side of its line.")
            .optional(
                    "planterRows",
                    new CountForm(1, 100, 8),
                    "Rows that the planter set in one pass. Left out, it is not known whether passes match.")
            .optional(
                    "guessRowError",
                    Forms.fromZero(Kind.LENGTH, "0.5 m", "30 mm").usually("0 mm", "150 mm"),
                    "How much wider or narrower than the spacing the gap between two planter passes may be. Left out, 0.")
            .optional(
                    "radius",
                    Forms.aboveZero(Kind.LENGTH, "100000 m", "200 m").usually("10 m", "10000 m"),
                    "Radius of the rows' curve. Left out, they are straight.")
            .build();

    private static final ObjectForm CROP = ObjectForm.of(
                    "the crop", "The crop's plants as they stand when the operation is done.")
            .required(
                    "canopyHeight",
                    Forms.fromZero(Kind.LENGTH, "3 m", "15 cm").usually("0 cm", "1 m"),
                    "Height of the leaves over the ground; 0 if nothing stands yet.")
            .required(
                    "canopyWidth",
                    Forms.fromZero(Kind.LENGTH, "3 m", "20 cm").usually("0 cm", "1 m"),
                    "Width of the leaves of one plant; 0 if nothing stands yet.")
            .required(
                    "protectedRadius",
                    Forms.fromZero(Kind.LENGTH, "1 m", "30 mm").usually("0 mm", "200 mm"),
                    "Radius about a plant that no tool may touch.")
            .build();

    private static final ObjectForm RIDGES = ObjectForm.of("the ridges", "Ridges, one under each row.")
            .required(
                    "height",
                    Forms.aboveZero(Kind.LENGTH, "1 m", "15 cm").usually("3 cm", "40 cm"),
                    "Height of their top over the furrow.")
            .required(
                    "topWidth",
                    Forms.fromZero(Kind.LENGTH, "3 m", "20 cm").usually("2 cm", "1 m"),
                    "Width of the flat top.")
            .build();

    private static final ObjectForm SOIL = ObjectForm.of("the soil", "The soil as it is when the operation is done.")
            .required("texture", TEXTURE, "How fine it is: fine (clay), medium (loam) or coarse (sand).")
            .required("moisture", Forms.share("22 %").usually("3 %", "60 %"), "Water content by volume.")
            .required(
                    "relief",
                    Forms.fromZero(Kind.LENGTH, "1 m", "20 mm").usually("0 mm", "150 mm"),
                    "How far the ground is above or below its mean; ridges not counted.")
            .optional("ridges", RIDGES, "The ridges that the crop grows on. Left out, the ground is flat.")
            .build();

    private static final ObjectForm CLUMPS = ObjectForm.of("the clumps", "How weeds stand in clumps.")
            .required("mean", new NumberForm("0.1", "1000", "5"), "Mean number of weeds in a clump.")
            .required(
                    "sigma",
                    Forms.aboveZero(Kind.LENGTH, "10 m", "10 cm").usually("1 cm", "2 m"),
                    "Standard deviation of a weed's distance from the clump's centre, along travel and across alike.")
            .build();

    private static final ObjectForm SIZE_CLASS = ObjectForm.of("a size class", "Weeds of one class of size.")
            .required("name", Forms.id("seedling"), "What the grower calls it.")
            .required(
                    "heightMost",
                    Forms.aboveZero(Kind.LENGTH, "3 m", "40 mm").usually("2 mm", "1 m"),
                    "Largest height of the class.")
            .required("share", Forms.share("60 %"), "Share of all weeds.")
            .required("recall", Forms.share("90 %").usually("20 %", "100 %"), "Share of them that the sensors find.")
            .build();

    private static final ObjectForm SUCCESS = ObjectForm.of("a success", "What becomes of treated weeds of one class.")
            .required("class", PLANT_CLASS, "The class.")
            .required(
                    "share",
                    Forms.share("98 %").usually("50 %", "100 %"),
                    "Share of the treated weeds of the class that do not grow on, in this soil. A trial tells.")
            .build();

    private static final ObjectForm WEEDS = ObjectForm.of("the weeds", "The weeds expected.")
            .required(
                    "density",
                    Forms.fromZero(Kind.DENSITY, "10000 1/m2", "2 1/m2").usually("0 1/m2", "500 1/m2"),
                    "Weeds per square metre in the band to be treated.")
            .required(
                    "bandWidth",
                    Forms.aboveZero(Kind.LENGTH, "5 m", "25 cm").usually("2 cm", "1 m"),
                    "Width of the band to be treated, centred on each row.")
            .required("classes", Forms.list(PLANT_CLASS, 1, 20), "Their kinds.")
            .required(
                    "stem",
                    Forms.interval(Forms.fromZero(Kind.LENGTH, "0.2 m", "1 mm").usually("0.2 mm", "40 mm"), "8 mm"),
                    "Least and largest stem diameter.")
            .required(
                    "height",
                    Forms.interval(Forms.fromZero(Kind.LENGTH, "3 m", "10 mm").usually("2 mm", "1 m"), "150 mm"),
                    "Least and largest height.")
            .optional(
                    "recall",
                    Forms.share("92 %").usually("40 %", "100 %"),
                    "Share of them that the carriage's sensors find. Left out, perfect perception is assumed, and said.")
            .optional(
                    "falseAlarms",
                    Forms.fromZero(Kind.DENSITY, "10000 1/m2", "0.2 1/m2").usually("0 1/m2", "50 1/m2"),
                    "Things taken for a weed, per square metre. Left out, none are assumed, and said.")
            .optional("clumps", CLUMPS, "How they stand in clumps. Left out, they stand at random.")
            .optional(
                    "sizes",
                    Forms.list(SIZE_CLASS, 1, 20),
                    "Classes of size, from small to large, whose shares add up to 100 %. Left out, one recall holds for all.")
            .optional(
                    "cropTaken",
                    Forms.share("0.5 %").usually("0 %", "20 %"),
                    "Chance that a crop plant is taken for a weed. Left out, none is assumed, and said.")
            .optional(
                    "success",
                    Forms.list(SUCCESS, 1, 20),
                    "What becomes of treated weeds, by class. Classes left out are taken not to grow on, and that is said.")
            .rule(List.of("sizes"), CropPlanForm::checkSizes)
            .rule(List.of("success"), (weeds, complaint) -> Rules.distinct(weeds, "success", "class", complaint))
            .build();

    private static final ObjectForm QUALITY = ObjectForm.of("the plugs' quality", "What becomes of the plugs.")
            .required(
                    "emptyCells",
                    Forms.share("2 %").usually("0 %", "20 %"),
                    "Share of the tray's cells that hold no plant. The nursery knows.")
            .required(
                    "doubles",
                    Forms.share("1 %").usually("0 %", "20 %"),
                    "Share of the tray's cells that hold two. The nursery knows.")
            .required(
                    "upright",
                    Forms.share("98 %").usually("60 %", "100 %"),
                    "Share of the plugs that stand upright once set, in this soil. A trial tells.")
            .required(
                    "covered",
                    Forms.share("99 %").usually("60 %", "100 %"),
                    "Share of the plugs whose root ball is covered once set, in this soil. A trial tells.")
            .build();

    private static final ObjectForm PLUGS = ObjectForm.of("the plugs", "The plug plants to be set.")
            .required(
                    "diameter",
                    Forms.aboveZero(Kind.LENGTH, "0.5 m", "38 mm").usually("8 mm", "100 mm"),
                    "Diameter of the plug.")
            .required(
                    "height",
                    Forms.fromZero(Kind.LENGTH, "1 m", "80 mm").usually("10 mm", "300 mm"),
                    "Height of the plant over the ground once set.")
            .required(
                    "depth",
                    Forms.aboveZero(Kind.LENGTH, "0.5 m", "45 mm").usually("10 mm", "150 mm"),
                    "Depth of the plug's foot below the ground once set.")
            .optional(
                    "quality",
                    QUALITY,
                    "What becomes of them. Left out, perfect plugs are assumed in a replay, and said.")
            .build();

    private static final ObjectForm WANTED = ObjectForm.of("what is wanted", "What is to be done, and how well.")
            .required("operation", OPERATION, "What is to be done.")
            .required(
                    "speed",
                    Forms.aboveZero(Kind.SPEED, "10 m/s", "0.2 m/s").usually("0.01 m/s", "4 m/s"),
                    "The carriage's speed at work.")
            .required(
                    "coverage",
                    Forms.share("85 %").usually("30 %", "100 %"),
                    "Share of the target plants that must be treated or set.")
            .optional(
                    "areaRate",
                    Forms.fromZero(Kind.AREA_RATE, "100 ha/h", "0.2 ha/h").usually("0.01 ha/h", "20 ha/h"),
                    "Area per time that must be reached. Left out, the rate is worked out but not judged.")
            .optional(
                    "ground",
                    WordForm.of("on-row", "between-rows", "full-surface"),
                    "Where the ground to be treated lies. Left out: between rows for a hoe, else on the row.")
            .optional(
                    "accuracy",
                    Forms.aboveZero(Kind.LENGTH, "0.5 m", "10 mm").usually("1 mm", "100 mm"),
                    "Largest distance of a treated plant or position from where it should be. Left out, not judged.")
            .optional(
                    "cropLoss",
                    Forms.share("1 %").usually("0 %", "20 %"),
                    "Largest share of crop plants that may be lost. Left out, the policy's limit holds.")
            .build();

    private static final ObjectForm FIELD = ObjectForm.of("the field", "The ground that is worked.")
            .required(
                    "length",
                    Forms.aboveZero(Kind.LENGTH, "10000 m", "200 m").usually("10 m", "2000 m"),
                    "Length of a row.")
            .required(
                    "width",
                    Forms.aboveZero(Kind.LENGTH, "10000 m", "72 m").usually("2 m", "2000 m"),
                    "Width across the rows.")
            .optional(
                    "headland",
                    Forms.fromZero(Kind.LENGTH, "100 m", "8 m").usually("2 m", "40 m"),
                    "Depth of the headland at each end. Left out, there is room enough to turn.")
            .optional(
                    "slope",
                    Forms.fromZero(Kind.ANGLE, "45 deg", "2 deg").usually("0 deg", "20 deg"),
                    "Largest slope along the rows. Left out, level.")
            .optional(
                    "crossSlope",
                    Forms.fromZero(Kind.ANGLE, "45 deg", "1 deg").usually("0 deg", "15 deg"),
                    "Largest slope across the rows. Left out, level.")
            .build();

    private static final TextForm DAY =
            new TextForm("a day as month-day", "^(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$", 5, "05-15");

    private static final ObjectForm SEASON = ObjectForm.of("the season", "When the work can be done.")
            .required("firstDay", DAY, "First day, as month-day.")
            .required("lastDay", DAY, "Last day, as month-day; not before the first.")
            .required("fieldDays", new CountForm(1, 366, 18), "Days in it on which the ground can be driven on.")
            .required(
                    "hoursPerDay",
                    Forms.aboveZero(Kind.TIME, "24 h", "10 h").usually("2 h", "20 h"),
                    "Working time on such a day.")
            .rule(List.of("firstDay", "lastDay"), CropPlanForm::checkDays)
            .build();

    private static final ObjectForm SUN = ObjectForm.of("the sun", "Where the field lies to the sun.")
            .required(
                    "latitude",
                    Forms.between(Kind.ANGLE, "-66 deg", "66 deg", "52 deg"),
                    "Latitude of the field, north positive; between the polar circles.")
            .required(
                    "sunshine",
                    Forms.share("45 %"),
                    "Share of the possible sunshine that there is: n / N of FAO irrigation and drainage paper 56.")
            .build();

    static final ObjectForm.Builder FORM = FileKind.form(
                    "crop-plan", 1, "a crop plan", "What is grown, and what is wanted done to it.")
            .required("name", Forms.text("Lettuce at 45 cm, weeding"), "What the grower calls it.")
            .required("rows", ROWS, "How the crop stands.")
            .required("crop", CROP, "The crop's plants as they stand when the operation is done.")
            .required("soil", SOIL, "The soil as it is when the operation is done.")
            .optional("weeds", WEEDS, "The weeds expected. Given if the operation is about weeds.")
            .optional("plugs", PLUGS, "The plugs to be set. Given if the operation plants.")
            .required("wanted", WANTED, "What is to be done, and how well.")
            .required("field", FIELD, "The ground that is worked.")
            .optional("season", SEASON, "When the work can be done. Left out, days are not judged.")
            .optional("sun", SUN, "Where the field lies to the sun. Left out, panels give nothing.");

    private CropPlanForm() {}

    private static void checkSizes(Fields weeds, ObjectForm.Complaint complaint) {
        Rules.distinct(weeds, "sizes", "name", complaint);
        double sum = 0;
        double before = 0;
        for (Fields size : weeds.objects("sizes")) {
            sum += size.si("share");
            if (size.si("heightMost") <= before) {
                complaint.at(
                        size.node("heightMost"),
                        size.node("heightMost").found(),
                        "more than the class before it",
                        "put the classes in order, from small to large");
            }
            before = size.si("heightMost");
        }
        if (Math.abs(sum - 1) > SHARE_SLACK) {
            complaint.at(
                    weeds.node("sizes"),
                    "shares that add up to " + Quantities.rounded(sum, Kind.SHARE),
                    "shares that add up to 100 %",
                    "");
        }
    }

    private static void checkDays(Fields season, ObjectForm.Complaint complaint) {
        int first = dayOfYear(season, "firstDay", complaint);
        int last = dayOfYear(season, "lastDay", complaint);
        if (first > 0 && last > 0 && last < first) {
            complaint.at(
                    season.node("lastDay"),
                    season.node("lastDay").found(),
                    "a day not before the first",
                    "a season does not go over the turn of the year");
        }
    }

    private static int dayOfYear(Fields season, String name, ObjectForm.Complaint complaint) {
        int day = dayOfYear(season.text(name));
        if (day == 0) {
            complaint.at(season.node(name), season.node(name).found(), "a day that the month has", "");
        }
        return day;
    }

    /** The day of a year that is no leap year, so that a plan means the same in every year; 0 if there is none. */
    static int dayOfYear(String monthAndDay) {
        Month month = Month.of(Integer.parseInt(monthAndDay.substring(0, 2)));
        int day = Integer.parseInt(monthAndDay.substring(3));
        return day <= month.length(false) ? month.firstDayOfYear(false) + day - 1 : 0;
    }
}
