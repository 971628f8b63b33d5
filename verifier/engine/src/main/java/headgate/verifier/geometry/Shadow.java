package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.unit.Micrometres;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a sensor above the ground cannot see of it: the shadow of a volume on the plane z = 0, from the sensor's point.
 * A point at height h is thrown from the sensor at (c, H) to {@code c + (p - c) H / (H - h)}; the shadow of a convex
 * prism is the convex hull of its thrown bottom and top. Derived from similar triangles.
 */
public final class Shadow {

    private Shadow() {}

    /**
     * Throws the shadow of a volume.
     *
     * @param volume the volume; what lies under the ground throws none
     * @param sensor the sensor's point, in the same frame; over the ground
     * @return outlines whose union is the shadow, each rounded outward by at most 1.5 micrometres; empty if some of the
     *     volume is as high as the sensor or throws its shadow over 100 m away, so that the shadow has no bound
     */
    public static Optional<List<Outline>> onGround(Occupied volume, Point3 sensor) {
        List<Outline> result = new ArrayList<>();
        for (Prism p : volume.prisms()) {
            if (p.height().most() <= 0) {
                continue;
            }
            if (p.height().most() >= sensor.z()) {
                return Optional.empty();
            }
            Optional<Outline> one = ofPrism(p, sensor);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            result.add(one.get());
        }
        return Optional.of(List.copyOf(result));
    }

    /**
     * Throws the part of a volume's shadow that can fall into a band on the ground. Material that is higher than the sensor
     * throws none; of other material, what is so high that its shadow falls beyond the band is left out.
     *
     * @param volume the volume
     * @param sensor the sensor's point, in the same frame; over the ground
     * @param band the band on the ground
     * @return outlines that together hold all of the shadow within the band; empty if all of the band may be hidden, since
     *     material may stand at the sensor's own place
     */
    public static Optional<List<Outline>> within(Outline band, Occupied volume, Point3 sensor) {
        double farthest = band.vertices().stream()
                .mapToDouble(p -> Math.hypot((double) (p.x() - sensor.x()), (double) (p.y() - sensor.y())))
                .max()
                .orElseThrow();
        List<Outline> result = new ArrayList<>();
        for (Piece piece : volume.pieces()) {
            if (piece.height().least() >= sensor.z()) {
                continue;
            }
            long dx = piece.box().x().gapTo(Interval.at(sensor.x()));
            long dy = piece.box().y().gapTo(Interval.at(sensor.y()));
            // A point at distance r and height h is thrown to r H / (H - h): beyond the band from this height on.
            double beyond = sensor.z() * (1 - Math.hypot((double) dx, (double) dy) / farthest);
            long top = Math.min(piece.height().most(), (long) Math.ceil(Math.max(0, beyond)) + 1);
            if (top >= sensor.z()) {
                return Optional.empty();
            }
            if (top <= piece.height().least()) {
                continue;
            }
            Prism low =
                    Prism.of(piece.ring().outline(), new Interval(piece.height().least(), top));
            if (top > 0) {
                Optional<Outline> one = ofPrism(low, sensor);
                if (one.isEmpty()) {
                    return Optional.empty();
                }
                result.add(one.get());
            }
        }
        return Optional.of(List.copyOf(result));
    }

    private static Optional<Outline> ofPrism(Prism prism, Point3 sensor) {
        List<Point> thrown = new ArrayList<>();
        for (Point corner : prism.outline().vertices()) {
            for (long z : new long[] {
                Math.max(0, prism.height().least()), prism.height().most()
            }) {
                long[] x = thrown(corner.x(), sensor.x(), z, sensor.z());
                long[] y = thrown(corner.y(), sensor.y(), z, sensor.z());
                for (long px : x) {
                    for (long py : y) {
                        if (Math.abs(px) > Micrometres.LIMIT || Math.abs(py) > Micrometres.LIMIT) {
                            return Optional.empty();
                        }
                        thrown.add(new Point(px, py));
                    }
                }
            }
        }
        return Optional.of(Outline.hullOf(thrown));
    }

    /** The two grid values around the thrown coordinate: a hull of all four corners holds the exact one. */
    private static long[] thrown(long p, long c, long z, long sensorZ) {
        BigInteger[] q = BigInteger.valueOf(p - c)
                .multiply(BigInteger.valueOf(sensorZ))
                .divideAndRemainder(BigInteger.valueOf(sensorZ - z));
        // Capped, since a shadow that long is refused by the caller whatever its exact end.
        BigInteger cap = BigInteger.valueOf(Micrometres.LIMIT * 10);
        long whole = c + q[0].min(cap).max(cap.negate()).longValueExact();
        return q[1].signum() == 0 ? new long[] {whole} : new long[] {whole, whole + q[1].signum()};
    }
}
