package headgate.verifier.report;

import headgate.api.shape.Interval;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Dimension;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Station;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where an arm with a head is set, as the verifier chose it.
 *
 * @param arm the arm
 * @param beam its beam
 * @param lanes numbers of its lanes, from 1 at the right-hand side; none if it waits lifted
 * @param head the head that it carries
 * @param turned true if the head is turned by 180 degrees
 * @param x where the mount is along travel, m, carriage frame
 * @param y where the mount is set across travel, m, carriage frame
 * @param workHeights mount heights over level ground at which it works, m; empty if there are none, or if it waits
 * @param liftTop top of the lift, m over level ground
 * @param groundMotion how far the ground under the arm may be above or below its mean, m
 */
public record SetPoint(
        String arm,
        String beam,
        List<Integer> lanes,
        String head,
        boolean turned,
        double x,
        double y,
        Optional<Span> workHeights,
        double liftTop,
        double groundMotion) {

    /** Copies the list. */
    public SetPoint {
        lanes = List.copyOf(lanes);
    }

    /** {@return its lanes for people} */
    public String lanesText() {
        return lanes.isEmpty() ? "waits" : lanes.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /**
     * A closed interval of heights.
     *
     * @param least lower end, m
     * @param most upper end, m
     */
    public record Span(double least, double most) {

        /** {@return the ends for people, each rounded to the inside} */
        public String text() {
            return Dimension.LENGTH.text(least, RoundingMode.CEILING) + " to "
                    + Dimension.LENGTH.text(most, RoundingMode.FLOOR);
        }

        private static Span of(Interval heights) {
            return new Span(Micrometres.toMetres(heights.least()), Micrometres.toMetres(heights.most()));
        }
    }

    static SetPoint of(Station station) {
        return new SetPoint(
                Plain.line(station.arm().id()),
                Plain.line(station.arm().beam()),
                station.lanes().stream().map(Lane::number).toList(),
                Plain.line(station.head().label()),
                station.turned(),
                station.mount().xMetres(),
                station.mount().yMetres(),
                station.isAtWork() ? station.height().allowed().map(Span::of) : Optional.empty(),
                Micrometres.toMetres(station.arm().lift().most()),
                Micrometres.toMetres(station.height().groundMotion()));
    }
}
