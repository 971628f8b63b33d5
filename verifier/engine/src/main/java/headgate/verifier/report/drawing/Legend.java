package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Samples of the ways of drawing. */
final class Legend {

    private Legend() {}

    static List<Pictures.Sample> samples(Scene scene) {
        Set<Ink> absent = EnumSet.of(Ink.GAP, Ink.GAP_HOLDS);
        scene.gap().map(Ink::of).ifPresent(absent::remove);
        return Arrays.stream(Ink.values())
                .filter(ink -> !absent.contains(ink))
                .map(ink -> new Pictures.Sample(sample(ink), ink.words()))
                .toList();
    }

    private static Markup sample(Ink ink) {
        String id = "key-" + ink.name().toLowerCase(Locale.ROOT);
        Markup svg = new Markup();
        svg.open("svg", "viewBox", "0 0 30 18", "width", "30", "height", "18", "aria-hidden", "true");
        svg.open("defs");
        Ink.patterns(svg, id);
        svg.close();
        if (ink == Ink.GAP || ink == Ink.GAP_HOLDS) {
            Mark.line(svg, 4, 9, 26, 9, ink.dash(), ink.width(), ink);
        } else if (ink == Ink.RAIL) {
            svg.empty("path", "d", "M2 9h26", "stroke", ink.stroke(), "stroke-width", ink.width());
        } else {
            svg.empty(
                    "rect",
                    "x",
                    "2",
                    "y",
                    "2",
                    "width",
                    "26",
                    "height",
                    "14",
                    "fill",
                    ink.fill(id),
                    "stroke",
                    ink.stroke(),
                    "stroke-width",
                    ink == Ink.LIFTED ? "1.5" : ink.width(),
                    "stroke-dasharray",
                    ink.dash());
        }
        return svg.close();
    }
}
