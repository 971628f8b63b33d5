package headgate.verifier.replay;

import headgate.api.shape.Body;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Transition;
import headgate.verifier.geometry.Occupied;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds what an action sweeps over the ground against the crop's plants. In the ground frame a phase sweeps each convex
 * piece of the posture's bodies along a straight way: what is fixed goes with the carriage, what moves with the tool point
 * too. Whatever is lower than the leaves, with the ground at its highest, can meet a plant.
 */
final class CropSweep {

    /** What an action does to a plant. */
    enum Meeting {
        NONE,
        LEAVES,
        PLANT
    }

    /** No plant is wider to one side, nor protected farther, micrometres. */
    static final double WIDEST = 500_000;

    private final ReplayArm arm;
    private final CropCare care;
    private final double perSecond;

    /** How far bodies must keep from a plant's middle, micrometres. */
    private final double kept;

    private final int sign;
    private final List<List<Piece>> ofPosture = new ArrayList<>();
    private final List<Change> changes = new ArrayList<>();
    private final double rear;

    /** A convex piece, seen from the mount along travel, micrometres. */
    private static final class Piece {
        private final double[] x;
        private final double[] y;

        /** Its lowest material, over the mount. */
        private final long low;

        /** Whether it goes with the tool point. */
        private final boolean moves;

        Piece(double[] x, double[] y, long low, boolean moves) {
            this.x = x;
            this.y = y;
            this.low = low;
            this.moves = moves;
        }
    }

    /** What is swept in going from one posture to another. */
    private record Change(int from, int to, List<Piece> pieces) {}

    CropSweep(ReplayArm arm, HeadSheet sheet, CropCare care, double perSecond) {
        this.arm = arm;
        this.care = care;
        this.perSecond = perSecond;
        this.kept = (care.protectedRadius() + care.positionError().at(perSecond / 1e6)) * 1e6;
        this.sign = -arm.facing().sign();
        for (Posture posture : sheet.postures()) {
            List<Piece> pieces = new ArrayList<>();
            pieces.addAll(pieces(posture.fixed(), false));
            pieces.addAll(pieces(posture.moving(), true));
            pieces.addAll(pieces(posture.carried(), true));
            ofPosture.add(pieces);
        }
        List<String> names =
                sheet.postures().stream().map(p -> p.name().toString()).toList();
        for (Transition t : sheet.transitions()) {
            changes.add(new Change(
                    names.indexOf(t.from().toString()), names.indexOf(t.to().toString()), pieces(t.swept(), false)));
        }
        double least = 0;
        for (List<Piece> pieces : ofPosture) {
            for (Piece piece : pieces) {
                for (double x : piece.x) {
                    least = Math.min(least, x);
                }
            }
        }
        this.rear = least;
    }

    /** Whether there is anything to hold against. */
    static boolean isNeeded(CropCare care) {
        return care.protectedRadius() > 0 || care.canopyWidth() > 0 || care.canopyHeight() > 0;
    }

    private List<Piece> pieces(Body body, boolean moves) {
        List<Piece> pieces = new ArrayList<>();
        for (Prism prism : Occupied.of(body).prisms()) {
            List<Point> corners = prism.outline().vertices();
            pieces.add(new Piece(
                    corners.stream().mapToDouble(p -> (double) sign * p.x()).toArray(),
                    corners.stream().mapToDouble(p -> (double) sign * p.y()).toArray(),
                    prism.height().least(),
                    moves));
        }
        return pieces;
    }

    /** How far behind the mount there is material, micrometres; 0 or less. */
    double rear() {
        return rear;
    }

    /**
     * How far ahead of the mount, as it is when the action starts, anything of an action may come, micrometres: an outer
     * bound of both ends.
     */
    double[] extent(HeadAction action) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (HeadAction.Leg leg : action.legs()) {
            double tool = sign * (double) leg.from().x();
            double toolThen = sign * (double) leg.to().x();
            for (Piece piece : of(leg)) {
                for (double x : piece.x) {
                    least = Math.min(least, x + (piece.moves ? Math.min(tool, toolThen) : 0));
                    most = Math.max(most, x + (piece.moves ? Math.max(tool, toolThen) : 0));
                }
            }
        }
        return new double[] {least, most + perSecond * action.busy()};
    }

    private List<Piece> of(HeadAction.Leg leg) {
        return leg.posture() < 0 ? List.of() : ofPosture.get(leg.posture());
    }

    /**
     * What an action does to a plant.
     *
     * @param action the action
     * @param plant the plant
     * @param mountX where the mount is along travel as the action starts, ground frame, micrometres
     * @param mountY where the mount is across travel, micrometres
     * @return the worst that it does
     */
    Meeting meeting(HeadAction action, Target plant, double mountX, double mountY) {
        double x = plant.x - mountX;
        double y = plant.y - mountY;
        Meeting worst = Meeting.NONE;
        int before = -1;
        for (HeadAction.Leg leg : action.legs()) {
            for (Piece piece : of(leg)) {
                worst = worse(worst, meeting(leg, piece, plant, x, y));
            }
            for (Change change : changes) {
                if (change.from() == before && change.to() == leg.posture() && before != leg.posture()) {
                    for (Piece piece : change.pieces()) {
                        worst = worse(worst, meeting(leg, piece, plant, x, y));
                    }
                }
            }
            if (worst == Meeting.PLANT) {
                return worst;
            }
            before = leg.posture();
        }
        return worst;
    }

    private static Meeting worse(Meeting a, Meeting b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private Meeting meeting(HeadAction.Leg leg, Piece piece, Target plant, double x, double y) {
        double low = arm.height() + piece.low;
        if (piece.moves) {
            low += Math.min(leg.from().z(), leg.to().z());
        }
        double ground = care.groundMotion() * 1e6;
        if (low >= plant.height * 1e6 + ground) {
            return Meeting.NONE;
        }
        double ax = perSecond * leg.start()
                + (piece.moves ? sign * (double) leg.from().x() : 0);
        double ay = piece.moves ? sign * (double) leg.from().y() : 0;
        double bx =
                perSecond * leg.end() + (piece.moves ? sign * (double) leg.to().x() : 0);
        double by = piece.moves ? sign * (double) leg.to().y() : 0;
        boolean digs = !piece.moves || (leg.soil() && low < ground);
        double protectedReach = digs ? kept : -1;
        double leaves = plant.canopy * 5e5;
        double far = Math.max(protectedReach, leaves);
        if (far < 0 || isFarther(far, piece, x, y, ax, ay, bx, by)) {
            return Meeting.NONE;
        }
        double apart = distance(piece, x - ax, y - ay, x - bx, y - by);
        if (apart <= protectedReach) {
            return Meeting.PLANT;
        }
        return apart <= leaves ? Meeting.LEAVES : Meeting.NONE;
    }

    /** A quick look at boxes. */
    private static boolean isFarther(
            double far, Piece piece, double x, double y, double ax, double ay, double bx, double by) {
        double leastX = Double.POSITIVE_INFINITY;
        double mostX = Double.NEGATIVE_INFINITY;
        double leastY = Double.POSITIVE_INFINITY;
        double mostY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < piece.x.length; i++) {
            leastX = Math.min(leastX, piece.x[i]);
            mostX = Math.max(mostX, piece.x[i]);
            leastY = Math.min(leastY, piece.y[i]);
            mostY = Math.max(mostY, piece.y[i]);
        }
        return x < leastX + Math.min(ax, bx) - far
                || x > mostX + Math.max(ax, bx) + far
                || y < leastY + Math.min(ay, by) - far
                || y > mostY + Math.max(ay, by) + far;
    }

    /**
     * The distance of a convex polygon from a segment. A point is as far from a polygon that is swept along a way as the
     * polygon is from that way turned round and begun at the point.
     */
    private static double distance(Piece piece, double ax, double ay, double bx, double by) {
        if (contains(piece, ax, ay)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        int n = piece.x.length;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            least = Math.min(least, betweenSegments(piece.x[j], piece.y[j], piece.x[i], piece.y[i], ax, ay, bx, by));
        }
        return least;
    }

    private static boolean contains(Piece piece, double px, double py) {
        int n = piece.x.length;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double cross =
                    (piece.x[i] - piece.x[j]) * (py - piece.y[j]) - (piece.y[i] - piece.y[j]) * (px - piece.x[j]);
            if (cross < 0) {
                return false;
            }
        }
        return true;
    }

    private static double betweenSegments(
            double px, double py, double qx, double qy, double ax, double ay, double bx, double by) {
        if (cross(px, py, qx, qy, ax, ay) * cross(px, py, qx, qy, bx, by) < 0
                && cross(ax, ay, bx, by, px, py) * cross(ax, ay, bx, by, qx, qy) < 0) {
            return 0;
        }
        return Math.min(
                Math.min(fromSegment(px, py, ax, ay, bx, by), fromSegment(qx, qy, ax, ay, bx, by)),
                Math.min(fromSegment(ax, ay, px, py, qx, qy), fromSegment(bx, by, px, py, qx, qy)));
    }

    private static double cross(double ax, double ay, double bx, double by, double px, double py) {
        return (bx - ax) * (py - ay) - (by - ay) * (px - ax);
    }

    private static double fromSegment(double px, double py, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((px - ax) * dx + (py - ay) * dy) / square;
        double at = Math.max(0, Math.min(1, share));
        double ex = ax + at * dx - px;
        double ey = ay + at * dy - py;
        return Math.sqrt(ex * ex + ey * ey);
    }
}
