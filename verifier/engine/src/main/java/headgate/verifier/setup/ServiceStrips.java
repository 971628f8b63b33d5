package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;

/** Service strips: what arms reach across travel at their set-points. */
public final class ServiceStrips {

    private ServiceStrips() {}

    /**
     * What an arm reaches across travel.
     *
     * @param station the arm with its head
     * @return from the right to the left, micrometres, carriage frame
     */
    public static Interval of(Station station) {
        return of(station.sheet(), station.turned()).shifted(station.mount().y());
    }

    /** What a head reaches across travel, its mount at y = 0. */
    static Interval of(HeadSheet sheet, boolean turned) {
        long[] ys = sheet.reach().corners().stream().mapToLong(Point::y).toArray();
        long least = LongStream.of(ys).min().orElse(0);
        long most = LongStream.of(ys).max().orElse(0);
        return turned ? new Interval(-most, -least) : new Interval(least, most);
    }

    /**
     * What the arms on a lane leave out of it.
     *
     * @param lane the lane
     * @param stations the arms that serve it
     * @return the parts that no strip covers, from the right to the left; none if the lane is covered
     */
    public static List<Interval> uncovered(Lane lane, List<Station> stations) {
        List<Interval> strips = stations.stream()
                .map(ServiceStrips::of)
                .sorted(Comparator.comparingLong(Interval::least))
                .toList();
        List<Interval> gaps = new ArrayList<>();
        long from = lane.ground().least();
        for (Interval strip : strips) {
            if (strip.least() > from && from < lane.ground().most()) {
                gaps.add(
                        new Interval(from, Math.min(strip.least(), lane.ground().most())));
            }
            from = Math.max(from, strip.most());
        }
        if (from < lane.ground().most()) {
            gaps.add(new Interval(from, lane.ground().most()));
        }
        return List.copyOf(gaps);
    }
}
