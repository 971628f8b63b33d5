package headgate.runtime.cropplan;

import headgate.runtime.form.CountForm;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.Forms;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.form.TermForm;
import headgate.runtime.quantity.Kind;
import java.util.List;

/** What a crop plan file may hold. */
final class CropPlanForm {

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

    private static final ObjectForm SOIL = ObjectForm.of("the soil", "The soil as it is when the operation is done.")
            .required("texture", TEXTURE, "How fine it is: fine (clay), medium (loam) or coarse (sand).")
            .required("moisture", Forms.share("22 %").usually("3 %", "60 %"), "Water content by volume.")
            .required(
                    "relief",
                    Forms.fromZero(Kind.LENGTH, "1 m", "20 mm").usually("0 mm", "150 mm"),
                    "How far the ground is above or below its mean.")
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
            .required("field", FIELD, "The ground that is worked.");

    private CropPlanForm() {}
}
