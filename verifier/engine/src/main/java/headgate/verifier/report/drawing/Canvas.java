package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import java.util.List;

/**
 * Where the plot lies on the page and how large a metre is on it.
 *
 * @param right what is seen across, micrometres
 * @param up what is seen upwards, micrometres
 * @param scale pixels a metre
 * @param left left edge of the plot, pixels
 * @param top upper edge of the plot, pixels
 * @param headroom pixels between the upper edge of the plot and the upper end of what is seen
 * @param foot pixels between the lower end of what is seen and the lower edge of the plot
 */
record Canvas(Interval right, Interval up, double scale, double left, double top, double headroom, double foot) {

    /** The largest scale at which a window fits into a width and a height. */
    static double fit(Interval right, Interval up, double width, double height) {
        return Math.min(
                width / Micrometres.toMetres(Math.max(1, right.length())),
                height / Micrometres.toMetres(Math.max(1, up.length())));
    }

    double width() {
        return length(right.length());
    }

    double height() {
        return headroom + length(up.length()) + foot;
    }

    double end() {
        return left + width();
    }

    double bottom() {
        return top + height();
    }

    double length(double micrometres) {
        return micrometres / Micrometres.PER_METRE * scale;
    }

    double length(long micrometres) {
        return length((double) micrometres);
    }

    double x(long flatRight) {
        return x((double) flatRight);
    }

    double y(long flatUp) {
        return y((double) flatUp);
    }

    double x(double flatRight) {
        return left + length(flatRight - (double) right.least());
    }

    double y(double flatUp) {
        return top + headroom + length((double) up.most() - flatUp);
    }

    /** The path of a closed ring about the origin of its own frame, pixels. */
    String path(List<Flat> ring) {
        StringBuilder path = new StringBuilder();
        String last = "";
        for (Flat p : ring) {
            String at = px(length(p.right())) + " " + px(-length(p.up()));
            // A corner closer than a hundredth of a pixel is no corner.
            if (!at.equals(last)) {
                path.append(path.isEmpty() ? "M" : "L").append(at);
                last = at;
            }
        }
        return path.append('Z').toString();
    }

    /** The path of a closed ring in the frame of the scene, pixels of the page. */
    String placed(List<Flat> ring) {
        StringBuilder path = new StringBuilder();
        for (Flat p : ring) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(px(x(p.right())))
                    .append(' ')
                    .append(px(y(p.up())));
        }
        return path.append('Z').toString();
    }

    /** Pixels as text: two digits, no exponent, no locale. */
    static String px(double pixels) {
        long hundredths = Math.round(pixels * 100);
        String sign = hundredths < 0 ? "-" : "";
        long size = Math.abs(hundredths);
        long rest = size % 100;
        if (rest == 0) {
            return sign + size / 100;
        }
        return sign + size / 100 + (rest % 10 == 0 ? "." + rest / 10 : rest < 10 ? ".0" + rest : "." + rest);
    }
}
