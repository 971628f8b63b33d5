package headgate.verifier.interlock;

import headgate.api.shape.Interval;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the difference of two tool points, each anywhere on its own straight way, can lie in a zone. Each coordinate of
 * the difference is linear in the two places on the ways, s and t from 0 to 1; so the pairs (s, t) that put it into the
 * zone are what six straight cuts leave of a square.
 *
 * <p>Cuts are made in floating point, a thousandth of a micrometre wide of the zone's faces, so rounding never lets a
 * meeting pass; a way along a face is allowed, since that thousandth is taken off again from what touches in whole
 * micrometres.
 */
final class Meeting {

    private Meeting() {}

    /** Whether a - b can lie inside the open zone. */
    static boolean differenceMeets(ToolWay a, ToolWay b, Zone zone) {
        double[][] region = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
        long[][] axes = {
            axis(a.from().x(), a.to().x(), b.from().x(), b.to().x()),
            axis(a.from().y(), a.to().y(), b.from().y(), b.to().y()),
            axis(a.from().z(), a.to().z(), b.from().z(), b.to().z())
        };
        Interval[] sides = {zone.x(), zone.y(), zone.z()};
        for (int i = 0; i < axes.length; i++) {
            if (staysOut(axes[i], sides[i])) {
                return false;
            }
        }
        List<double[]> left = List.of(region);
        for (int i = 0; i < axes.length; i++) {
            left = cut(left, axes[i], sides[i].least(), 1);
            left = cut(left, axes[i], sides[i].most(), -1);
            if (left.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** The coordinate at s = t = 0, what it gains as s goes to 1, and what it gains as t goes to 1. */
    private static long[] axis(long aFrom, long aTo, long bFrom, long bTo) {
        return new long[] {aFrom - bFrom, aTo - aFrom, bFrom - bTo};
    }

    /** Exact: whether a coordinate never comes inside an open interval. */
    private static boolean staysOut(long[] axis, Interval side) {
        long least = axis[0] + Math.min(0, axis[1]) + Math.min(0, axis[2]);
        long most = axis[0] + Math.max(0, axis[1]) + Math.max(0, axis[2]);
        return most <= side.least() || least >= side.most();
    }

    private static final double SLACK = 1e-3;

    /** What is left of a convex region where sign times the coordinate is at least sign times the bound. */
    private static List<double[]> cut(List<double[]> region, long[] axis, long bound, int sign) {
        List<double[]> left = new ArrayList<>();
        for (int i = 0; i < region.size(); i++) {
            double[] p = region.get(i);
            double[] q = region.get(i + 1 == region.size() ? 0 : i + 1);
            double inP = sign * (axis[0] + axis[1] * p[0] + axis[2] * p[1] - bound) + SLACK;
            double inQ = sign * (axis[0] + axis[1] * q[0] + axis[2] * q[1] - bound) + SLACK;
            if (inP >= 0) {
                left.add(p);
            }
            if ((inP > 0 && inQ < 0) || (inP < 0 && inQ > 0)) {
                double share = inP / (inP - inQ);
                left.add(new double[] {p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])});
            }
        }
        return left;
    }
}
