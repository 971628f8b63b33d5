package headgate.verifier.report.drawing;

import headgate.verifier.report.markup.Markup;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Samples of the ways of drawing. */
final class Legend {

    private Legend() {}

    private static final Set<Ink> AT_WORK = EnumSet.of(
            Ink.HEAD,
            Ink.SWEPT,
            Ink.REACH,
            Ink.LIFTED,
            Ink.ARM,
            Ink.FRAME,
            Ink.RAIL,
            Ink.CANOPY,
            Ink.PROTECTED,
            Ink.BAND,
            Ink.GROUND,
            Ink.HEIGHTS);

    private static final Set<Ink> FOLDED = EnumSet.of(Ink.CARRIED, Ink.LOOSE, Ink.ARM, Ink.FRAME, Ink.LIMIT, Ink.WAY);

    static List<Pictures.Sample> samples(Scene scene) {
        Set<Ink> drawn = EnumSet.copyOf(AT_WORK);
        scene.gap().map(Ink::of).ifPresent(drawn::add);
        return samples("key-", drawn);
    }

    static List<Pictures.Sample> samples(Folding folding, String id) {
        Set<Ink> drawn = EnumSet.copyOf(FOLDED);
        if (folding.shapes().stream().flatMap(s -> s.arms().stream()).noneMatch(Folding.Carried::loose)) {
            drawn.remove(Ink.LOOSE);
        }
        if (folding.steps().isEmpty()) {
            drawn.remove(Ink.WAY);
        }
        return samples(id + "-key-", drawn);
    }

    private static List<Pictures.Sample> samples(String prefix, Set<Ink> drawn) {
        return drawn.stream()
                .map(ink -> new Pictures.Sample(sample(ink, prefix), ink.words()))
                .toList();
    }

    private static Markup sample(Ink ink, String prefix) {
        String id = prefix + ink.name().toLowerCase(Locale.ROOT);
        Markup svg = new Markup();
        svg.open("svg", "viewBox", "0 0 30 18", "width", "30", "height", "18", "aria-hidden", "true");
        svg.open("defs");
        Ink.patterns(svg, id);
        svg.close();
        if (ink == Ink.GAP || ink == Ink.GAP_HOLDS) {
            Mark.line(svg, 4, 9, 26, 9, ink.dash(), ink.width(), ink);
        } else if (ink == Ink.HEIGHTS) {
            Mark.bar(svg, 15, 2, 16);
        } else if (ink == Ink.WAY) {
            Mark.arrow(svg, 3, 9, 27, 9);
        } else if (ink == Ink.LIMIT) {
            svg.empty(
                    "path",
                    "d",
                    "M2 9h26",
                    "stroke",
                    ink.stroke(),
                    "stroke-width",
                    ink.width(),
                    "stroke-dasharray",
                    ink.dash());
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
