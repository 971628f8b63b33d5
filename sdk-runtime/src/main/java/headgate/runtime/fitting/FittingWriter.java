package headgate.runtime.fitting;

import headgate.runtime.form.JsonText;
import headgate.runtime.quantity.Kind;

/** Writes fitting files. What is written reads back as an equal fitting; what is as if left out is left out. */
public final class FittingWriter {

    private FittingWriter() {}

    /**
     * Writes a fitting.
     *
     * @param fitting the fitting
     * @return the text of its file
     */
    public static String text(Fitting fitting) {
        return JsonText.file("headgate.fitting/1")
                .text("name", fitting.name())
                .text("carriage", fitting.carriage())
                .text("cropPlan", fitting.cropPlan())
                .text("policy", fitting.policy())
                .objectsEvenIfNone(
                        "heads",
                        fitting.heads().stream().map(FittingWriter::head).toList())
                .objectsEvenIfNone(
                        "arms",
                        fitting.arms().stream().map(FittingWriter::place).toList())
                .quantities("spacings", fitting.spacings(), Kind.LENGTH)
                .toString();
    }

    private static JsonText head(Fitting.Head head) {
        JsonText text = new JsonText().text("id", head.id()).text("package", head.file());
        head.count().ifPresent(n -> text.count("count", n));
        return text;
    }

    private static JsonText place(Fitting.Place place) {
        JsonText arm = new JsonText().text("arm", place.arm()).text("head", place.head());
        if (place.turned()) {
            arm.flag("turned", true);
        }
        if (place.waits()) {
            arm.flag("waits", true);
        }
        arm.counts("lanes", place.lanes());
        return place.shares() ? arm.flag("shares", true) : arm;
    }
}
