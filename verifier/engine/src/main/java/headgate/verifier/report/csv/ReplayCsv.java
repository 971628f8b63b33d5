package headgate.verifier.report.csv;

import headgate.verifier.plot.PlotResult;
import headgate.verifier.replay.Miss;
import headgate.verifier.replay.ReplayOutcome;
import headgate.verifier.report.ReplayReport;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a replay as tables. */
public final class ReplayCsv {

    private static final MathContext DIGITS = new MathContext(12);

    private ReplayCsv() {}

    /**
     * One row for each stand and speed.
     *
     * @param report the replay
     * @return the table, lines ended by a line feed
     */
    public static String rows(ReplayReport report) {
        StringBuilder table = new StringBuilder();
        table.append("stand,density [1/m2],speed [m/s],targets,seen,allowed,reached,successful,coverage,false actions,"
                + "outside of the ground,crop plants,crop lost,crop touched,travelled [m],stopped [s]\n");
        for (PlotResult plot : report.plots()) {
            for (PlotResult.Pass pass : plot.passes()) {
                ReplayOutcome o = pass.outcome();
                table.append(line(
                        text(plot.name()),
                        number(plot.density()),
                        number(o.speed()),
                        o.targets(),
                        o.seen(),
                        o.allowed(),
                        o.reached(),
                        o.successful(),
                        o.targets() == 0 ? "" : number(o.coverage()),
                        o.falseActions(),
                        o.beside(),
                        o.crop().plants(),
                        o.crop().lost(),
                        o.crop().touched(),
                        number(o.travelled()),
                        number(o.stopped())));
            }
        }
        return table.toString();
    }

    /**
     * One row for each stand, speed and reason.
     *
     * @param report the replay
     * @return the table, lines ended by a line feed
     */
    public static String misses(ReplayReport report) {
        StringBuilder table = new StringBuilder("stand,density [1/m2],speed [m/s],reason,plants\n");
        for (PlotResult plot : report.plots()) {
            for (PlotResult.Pass pass : plot.passes()) {
                for (Miss why : Miss.values()) {
                    table.append(line(
                            text(plot.name()),
                            number(plot.density()),
                            number(pass.outcome().speed()),
                            text(why.label()),
                            pass.outcome().missed(why)));
                }
            }
        }
        return table.toString();
    }

    private static String line(Object... cells) {
        return Stream.of(cells).map(String::valueOf).collect(Collectors.joining(",")) + "\n";
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Quoted where the standard asks for it; a spreadsheet would take a first = + - or @ for a formula. */
    private static String text(String words) {
        String harmless =
                List.of('=', '+', '-', '@').stream().anyMatch(c -> words.indexOf(c) == 0) ? "'" + words : words;
        return harmless.matches("(?s).*[\",\\r\\n].*") ? "\"" + harmless.replace("\"", "\"\"") + "\"" : harmless;
    }
}
