package headgate.verifier.geometry;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.Posture;
import headgate.api.sheet.Reach;
import headgate.api.unit.Micrometres;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A volume: the union of convex prisms, which may overlap. It is exact: every operation here gives precisely the sum,
 * sweep or union that it names. What it stands for is an outer bound only where its maker says so, such as the convex
 * hull that is taken of a region of tool points.
 */
public final class Occupied {

    /** The empty volume. */
    public static final Occupied NOTHING = new Occupied(List.of());

    private final List<Piece> pieces;
    private final Optional<Box> bounds;

    private Occupied(List<Piece> pieces) {
        this.pieces = List.copyOf(new LinkedHashSet<>(pieces));
        this.bounds = this.pieces.stream().map(Piece::box).reduce(Box::hull);
    }

    /**
     * The volume of a body.
     *
     * @param body the body
     * @return its volume, in the same frame
     */
    public static Occupied of(Body body) {
        return of(body.prisms());
    }

    /**
     * The volume of some prisms.
     *
     * @param prisms the prisms, convex or not
     * @return their union, in the same frame
     */
    public static Occupied of(List<Prism> prisms) {
        return new Occupied(prisms.stream().flatMap(p -> Piece.of(p).stream()).toList());
    }

    static Occupied ofPieces(List<Piece> pieces) {
        return new Occupied(pieces);
    }

    /**
     * All that a head can occupy: what is fixed, with what moves placed at every point of the convex hull of the
     * region. The hull, since a straight way between two points of a region that is not convex leaves the region.
     *
     * @param fixed what does not move with the tool point, head frame
     * @param moving what moves with the tool point, placed for a tool point at the origin
     * @param carried what the head holds, placed for a tool point at the origin; {@link Body#NONE} if nothing
     * @param region where the tool point can be, head frame
     * @return the volume, head frame
     */
    public static Occupied of(Body fixed, Body moving, Body carried, Reach region) {
        Occupied placed = of(moving).and(of(carried)).over(region);
        return of(fixed).and(placed);
    }

    /**
     * All that a head can occupy in a posture, what it may carry included.
     *
     * @param posture the posture
     * @return the volume, head frame
     */
    public static Occupied of(Posture posture) {
        return of(posture.fixed(), posture.moving(), posture.carried(), posture.region());
    }

    /**
     * The hull of some regions of tool points, as a volume that may be flat, a line or a point: the convex hull seen from
     * above, over all heights. It is for sums and distances; a flat one has no prisms.
     *
     * @param regions the regions; at least one
     * @return an upright prism that holds every straight way between two of their points; exact for one region
     */
    public static Occupied hullOf(List<Reach> regions) {
        List<Point> corners =
                regions.stream().flatMap(r -> r.corners().stream()).toList();
        Interval heights =
                regions.stream().map(Reach::height).reduce(Interval::hull).orElseThrow();
        return new Occupied(List.of(Piece.of(Ring.hull(corners), heights)));
    }

    /**
     * A place, as a volume of one point.
     *
     * @param place the place
     * @return the point; it has no prisms
     */
    public static Occupied at(Point3 place) {
        return hullOf(List.of(Reach.at(place)));
    }

    /**
     * The volume placed at every point of the convex hull of a region.
     *
     * @param region the region of displacements
     * @return the sum of this volume and the hull
     */
    public Occupied over(Reach region) {
        return plus(Ring.hull(region.corners()), region.height());
    }

    /**
     * The volume swept by a side shift.
     *
     * @param shift the range of the displacement along y, micrometres
     * @return all that is occupied at some shift of the range
     */
    public Occupied overShift(Interval shift) {
        return plus(Ring.hull(List.of(new Point(0, shift.least()), new Point(0, shift.most()))), Interval.at(0));
    }

    /**
     * The volume swept by a lift straight up and down.
     *
     * @param lift the range of the displacement along z, micrometres
     * @return all that is occupied at some height of the range
     */
    public Occupied overLift(Interval lift) {
        return plus(Ring.hull(List.of(Point.ORIGIN)), lift);
    }

    /**
     * The volume swept along a straight way over the ground.
     *
     * @param from the displacement at one end
     * @param to the displacement at the other end
     * @return all that is occupied at some point of the way
     */
    public Occupied along(Point from, Point to) {
        return plus(Ring.hull(List.of(from, to)), Interval.at(0));
    }

    private Occupied plus(Ring region, Interval rise) {
        return new Occupied(pieces.stream().map(p -> p.plus(region, rise)).toList());
    }

    /**
     * Moves the volume.
     *
     * @param by the displacement
     * @return the moved volume
     */
    public Occupied shifted(Point3 by) {
        return new Occupied(
                pieces.stream().map(p -> p.shifted(by.x(), by.y(), by.z())).toList());
    }

    /** {@return the volume turned by 180 degrees about the z axis} */
    public Occupied turned() {
        return new Occupied(pieces.stream().map(Piece::turned).toList());
    }

    /**
     * The volume turned by quarters about the z axis, seen from above counter-clockwise.
     *
     * @param quarters how many quarter turns; any whole number
     * @return the turned volume
     */
    public Occupied quarterTurned(int quarters) {
        return new Occupied(pieces.stream().map(p -> p.quarterTurned(quarters)).toList());
    }

    /**
     * The volume turned by quarters about the x axis, right-handed. Upright prisms then lie on their side, so each convex prism
     * is replaced by the box about it first: exact for boxes along the axes, an outer bound for others.
     *
     * @param quarters how many quarter turns; any whole number
     * @return a volume that holds the turned one; this volume if the turns are full
     */
    public Occupied tippedAboutX(int quarters) {
        return tipped(quarters, b -> new Box(b.x(), negative(b.z()), b.y()));
    }

    /**
     * The volume turned by quarters about the y axis, right-handed; as {@link #tippedAboutX}.
     *
     * @param quarters how many quarter turns; any whole number
     * @return a volume that holds the turned one; this volume if the turns are full
     */
    public Occupied tippedAboutY(int quarters) {
        return tipped(quarters, b -> new Box(b.z(), b.y(), negative(b.x())));
    }

    private Occupied tipped(int quarters, UnaryOperator<Box> quarter) {
        int turns = Math.floorMod(quarters, 4);
        if (turns == 0) {
            return this;
        }
        List<Prism> turned = new ArrayList<>();
        for (Piece p : pieces) {
            Box box = p.box();
            for (int i = 0; i < turns; i++) {
                box = quarter.apply(box);
            }
            turned.add(Prism.of(Outline.rectangle(box.x(), box.y()), box.z()));
        }
        return of(turned);
    }

    private static Interval negative(Interval extent) {
        return new Interval(-extent.most(), -extent.least());
    }

    /**
     * The set of all differences: a point of this volume less a point of the other. It holds the displacements of the
     * other volume at which the two meet.
     *
     * @param other the other volume
     * @return the differences; exact
     */
    public Occupied minus(Occupied other) {
        List<Piece> all = new ArrayList<>();
        for (Piece a : pieces) {
            for (Piece b : other.pieces) {
                all.add(a.plus(
                        b.ring().turned(),
                        new Interval(-b.height().most(), -b.height().least())));
            }
        }
        return new Occupied(all);
    }

    /**
     * An outer bound of all places that are nearer to the volume than a gap: a polygon of 16 sides that holds a disc is
     * added seen from above, and the gap above and below.
     *
     * @param gap the gap, micrometres; 0 or more
     * @return a volume that holds every place within the gap; what it holds is within 1.43 times the gap plus 3
     *     micrometres, and within 1.02 times the gap plus 2 micrometres beside the volume
     * @throws IllegalArgumentException if the gap is negative
     */
    public Occupied grown(long gap) {
        if (gap < 0) {
            throw new IllegalArgumentException("a gap must be at least 0 micrometres, but is " + gap);
        }
        if (gap == 0) {
            return this;
        }
        // Two micrometres are the least radius that a polygon can be put around.
        double radius = Micrometres.toMetres(Math.max(2, gap));
        return plus(Ring.of(Outline.aroundDisc(Point.ORIGIN, radius, 16)), new Interval(-gap, gap));
    }

    /**
     * Puts two volumes together.
     *
     * @param other the other volume, in the same frame
     * @return the union
     */
    public Occupied and(Occupied other) {
        List<Piece> all = new ArrayList<>(pieces);
        all.addAll(other.pieces);
        return new Occupied(all);
    }

    /**
     * The part of the volume in a height band, such as what lies among the canopy.
     *
     * @param band the band of z
     * @return what the volume has in common with the band; parts that only touch it are left out
     */
    public Occupied within(Interval band) {
        List<Piece> kept = new ArrayList<>();
        for (Piece p : pieces) {
            long least = Math.max(p.height().least(), band.least());
            long most = Math.min(p.height().most(), band.most());
            if (least < most) {
                kept.add(Piece.of(p.ring(), new Interval(least, most)));
            }
        }
        return new Occupied(kept);
    }

    /** {@return the smallest box that holds the volume, as a volume; nothing if there is none} */
    public Occupied boxed() {
        return bounds.map(b -> of(List.of(Prism.of(Outline.rectangle(b.x(), b.y()), b.z()))))
                .orElse(NOTHING);
    }

    /**
     * A box around the part of each convex prism that lies in a region, seen from above.
     *
     * @param region the region
     * @return the boxes, without repeats, over the prisms' heights; each is an outer bound, by as much as the prism's extent
     *     along one axis shrinks as it is cut along the other, and by less than a micrometre of rounding
     */
    public List<Box> boxesWithin(Box region) {
        return pieces.stream()
                .flatMap(p -> p.boxWithin(region).stream())
                .distinct()
                .toList();
    }

    /** {@return a box around each convex prism, without repeats} */
    public List<Box> boxes() {
        return pieces.stream().map(Piece::box).distinct().toList();
    }

    /** {@return the convex prisms, without repeats} */
    public List<Prism> prisms() {
        return pieces.stream().map(Piece::prism).toList();
    }

    /** {@return the smallest box that holds the volume, or empty if there is none} */
    public Optional<Box> bounds() {
        return bounds;
    }

    /** {@return the convex hull seen from above, or empty if there is no volume} */
    public Optional<Outline> planHull() {
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        List<Point> corners = new ArrayList<>();
        for (Piece p : pieces) {
            for (int i = 0; i < p.ring().size(); i++) {
                corners.add(p.ring().vertex(i));
            }
        }
        return Optional.of(Outline.hullOf(corners));
    }

    /**
     * Says whether the convex hull of the volume holds a point.
     *
     * @param point the point
     * @return true if it lies inside or on the boundary; the hull is cut at the point's height, and the corners of the cut
     *     are rounded outward, by less than a micrometre each way
     */
    public boolean hullHolds(Point3 point) {
        Map<Long, List<Point>> levels = new TreeMap<>();
        for (Piece p : pieces) {
            for (int i = 0; i < p.ring().size(); i++) {
                for (long z : new long[] {p.height().least(), p.height().most()}) {
                    levels.computeIfAbsent(z, k -> new ArrayList<>())
                            .add(p.ring().vertex(i));
                }
            }
        }
        List<Point> cut = new ArrayList<>();
        levels.forEach((low, below) -> levels.forEach((high, above) -> {
            if (low == point.z() && high.equals(low)) {
                cut.addAll(below);
            } else if (low < point.z() && point.z() < high) {
                addCrossings(cut, Ring.hull(below), low, Ring.hull(above), high, point.z());
            }
        }));
        return !cut.isEmpty() && Planar.holds(Ring.hull(cut), point.x(), point.y());
    }

    /** Where straight lines from one level to another cross a height between, with the grid points around. */
    private static void addCrossings(List<Point> cut, Ring below, long low, Ring above, long high, long z) {
        for (int i = 0; i < below.size(); i++) {
            for (int j = 0; j < above.size(); j++) {
                long dx = (above.x[j] - below.x[i]) * (z - low);
                long dy = (above.y[j] - below.y[i]) * (z - low);
                long span = high - low;
                for (long x : new long[] {Math.floorDiv(dx, span), -Math.floorDiv(-dx, span)}) {
                    for (long y : new long[] {Math.floorDiv(dy, span), -Math.floorDiv(-dy, span)}) {
                        cut.add(new Point(below.x[i] + x, below.y[i] + y));
                    }
                }
            }
        }
    }

    /**
     * The volume's connected parts: prisms that touch or overlap belong together.
     *
     * @return the parts, in the order of their first prisms; exact
     */
    public List<Occupied> connectedParts() {
        List<List<Piece>> parts = new ArrayList<>();
        for (Piece next : pieces) {
            List<List<Piece>> met = parts.stream()
                    .filter(part -> part.stream().anyMatch(next::meets))
                    .toList();
            List<Piece> joined = new ArrayList<>();
            met.forEach(joined::addAll);
            joined.add(next);
            int at = met.isEmpty() ? parts.size() : parts.indexOf(met.get(0));
            parts.removeAll(met);
            parts.add(at, joined);
        }
        return parts.stream().map(Occupied::new).toList();
    }

    /**
     * The convex prisms that are near another volume.
     *
     * @param other the other volume
     * @param distance how near, micrometres; more than 0
     * @return this volume without the prisms whose gap to the other is at least the distance; exact
     */
    public Occupied nearerThan(long distance, Occupied other) {
        return new Occupied(pieces.stream()
                .filter(p -> other.pieces.stream().anyMatch(q -> p.isNearerThan(distance, q)))
                .toList());
    }

    /**
     * How much space is filled, what overlaps counted once.
     *
     * @return cubic metres; the areas between are snapped to whole micrometres as {@link PlanArea} says
     */
    public double cubicMetres() {
        long[] levels = pieces.stream()
                .flatMap(p -> Stream.of(p.height().least(), p.height().most()))
                .mapToLong(Long::longValue)
                .sorted()
                .distinct()
                .toArray();
        double sum = 0;
        for (int i = 0; i + 1 < levels.length; i++) {
            Interval layer = new Interval(levels[i], levels[i + 1]);
            sum += PlanArea.of(within(layer)).squareMetres() * Micrometres.toMetres(layer.length());
        }
        return sum;
    }

    /** {@return true if there is no volume} */
    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    List<Piece> pieces() {
        return pieces;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Occupied that && pieces.equals(that.pieces);
    }

    @Override
    public int hashCode() {
        return pieces.hashCode();
    }

    /** {@return the prisms} */
    @Override
    public String toString() {
        return "occupied " + prisms();
    }
}
