package headgate.verifier.geometry;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.unit.Micrometres;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Areas seen from above that overlap: union, part inside, part left over. Corners of the result are snapped to whole
 * micrometres, each by at most 0.71 micrometres, so an area is right to about its perimeter times one micrometre.
 *
 * <p>This is for shares and pictures. It is no outer bound; distances never pass through it.
 */
public final class PlanArea {

    private static final GeometryFactory GRID = new GeometryFactory(new PrecisionModel(1));

    private final Geometry area;

    private PlanArea(Geometry area) {
        this.area = area;
    }

    /**
     * The union of some outlines.
     *
     * @param outlines the outlines, overlapping or not
     * @return the area that at least one of them covers
     */
    public static PlanArea of(List<Outline> outlines) {
        List<Geometry> polygons =
                outlines.stream().<Geometry>map(PlanArea::polygon).toList();
        return new PlanArea(polygons.isEmpty() ? GRID.createPolygon() : OverlayNGRobust.union(polygons));
    }

    /**
     * The area seen from above of a volume.
     *
     * @param volume the volume
     * @return the union of its prisms' outlines
     */
    public static PlanArea of(Occupied volume) {
        return of(volume.pieces().stream().map(p -> p.ring().outline()).toList());
    }

    /**
     * What this area covers and the other does not.
     *
     * @param other the other area
     * @return the difference
     */
    public PlanArea minus(PlanArea other) {
        return new PlanArea(OverlayNGRobust.overlay(area, other.area, OverlayNG.DIFFERENCE));
    }

    /**
     * What both areas cover.
     *
     * @param other the other area
     * @return the common area
     */
    public PlanArea common(PlanArea other) {
        return new PlanArea(OverlayNGRobust.overlay(area, other.area, OverlayNG.INTERSECTION));
    }

    /**
     * What at least one of the areas covers.
     *
     * @param other the other area
     * @return the union
     */
    public PlanArea and(PlanArea other) {
        return new PlanArea(OverlayNGRobust.overlay(area, other.area, OverlayNG.UNION));
    }

    /** {@return the area, square metres} */
    public double squareMetres() {
        return area.getArea() / ((double) Micrometres.PER_METRE * Micrometres.PER_METRE);
    }

    /**
     * The boundary, for pictures: fill it by the even-odd rule.
     *
     * @return closed rings without a repeated end, outer ones and holes, in a fixed order
     */
    public List<List<Point>> rings() {
        List<List<Point>> rings = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                rings.add(ring(polygon.getExteriorRing()));
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    rings.add(ring(polygon.getInteriorRingN(k)));
                }
            }
        }
        rings.sort((a, b) -> {
            int byFirst = a.get(0).compareTo(b.get(0));
            return byFirst != 0 ? byFirst : a.get(1).compareTo(b.get(1));
        });
        return List.copyOf(rings);
    }

    private static List<Point> ring(LinearRing ring) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            Coordinate c = ring.getCoordinateN(i);
            points.add(new Point(Math.round(c.x), Math.round(c.y)));
        }
        Collections.rotate(points, -points.indexOf(Collections.min(points)));
        return List.copyOf(points);
    }

    private static Polygon polygon(Outline outline) {
        List<Point> vertices = outline.vertices();
        Coordinate[] closed = new Coordinate[vertices.size() + 1];
        for (int i = 0; i <= vertices.size(); i++) {
            Point p = vertices.get(i % vertices.size());
            closed[i] = new Coordinate(p.x(), p.y());
        }
        return GRID.createPolygon(closed);
    }

    /** {@return the area in square metres} */
    @Override
    public String toString() {
        return squareMetres() + " m2";
    }
}
