package headgate.verifier.geometry;

import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a simple polygon into convex ones along diagonals between its corners. No corner is added, so the parts lie on
 * the grid and fill the polygon exactly. Ears are clipped first, then parts are joined again over each diagonal that can
 * go: at most four times as many parts as the least possible (Hertel and Mehlhorn 1983).
 */
public final class ConvexParts {

    private ConvexParts() {}

    /**
     * Cuts an outline.
     *
     * @param outline the outline
     * @return convex outlines whose union is the outline and whose insides do not meet; the outline itself if convex
     */
    public static List<Outline> of(Outline outline) {
        if (outline.isConvex()) {
            return List.of(outline);
        }
        return joined(triangles(outline.vertices())).stream().map(Outline::of).toList();
    }

    private static List<List<Point>> triangles(List<Point> ring) {
        List<Point> rest = new ArrayList<>(ring);
        List<List<Point>> triangles = new ArrayList<>();
        while (rest.size() > 3) {
            int ear = firstEar(rest);
            int n = rest.size();
            triangles.add(List.of(rest.get((ear + n - 1) % n), rest.get(ear), rest.get((ear + 1) % n)));
            rest.remove(ear);
        }
        triangles.add(List.copyOf(rest));
        return triangles;
    }

    private static int firstEar(List<Point> ring) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Point a = ring.get((i + n - 1) % n);
            Point b = ring.get(i);
            Point c = ring.get((i + 1) % n);
            // A corner on the cut would make the rest touch itself, so it blocks the ear like one inside.
            if (Point.cross(a, b, c) > 0 && ring.stream().noneMatch(p -> inTriangle(a, b, c, p))) {
                return i;
            }
        }
        throw new IllegalStateException("a simple polygon has an ear, but none was found in " + ring);
    }

    /** Whether p lies in the triangle or on it, corners apart. */
    private static boolean inTriangle(Point a, Point b, Point c, Point p) {
        return !p.equals(a)
                && !p.equals(b)
                && !p.equals(c)
                && Point.cross(a, b, p) >= 0
                && Point.cross(b, c, p) >= 0
                && Point.cross(c, a, p) >= 0;
    }

    private static List<List<Point>> joined(List<List<Point>> parts) {
        List<List<Point>> result = new ArrayList<>(parts);
        for (int i = 0; i < result.size(); i++) {
            int j = i + 1;
            while (j < result.size()) {
                List<Point> both = joined(result.get(i), result.get(j));
                if (both.isEmpty()) {
                    j++;
                } else {
                    result.set(i, both);
                    result.remove(j);
                    j = i + 1;
                }
            }
        }
        return result;
    }

    /** The union of two parts over a shared edge if that is convex, else an empty list. */
    private static List<Point> joined(List<Point> a, List<Point> b) {
        for (int i = 0; i < a.size(); i++) {
            Point from = a.get(i);
            Point to = a.get((i + 1) % a.size());
            int j = b.indexOf(to);
            if (j >= 0 && b.get((j + 1) % b.size()).equals(from)) {
                List<Point> union = new ArrayList<>();
                for (int k = 1; k <= a.size(); k++) {
                    union.add(a.get((i + k) % a.size()));
                }
                for (int k = 2; k < b.size(); k++) {
                    union.add(b.get((j + k) % b.size()));
                }
                return isConvex(union) ? union : List.of();
            }
        }
        return List.of();
    }

    private static boolean isConvex(List<Point> ring) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            if (Point.cross(ring.get(i), ring.get((i + 1) % n), ring.get((i + 2) % n)) < 0) {
                return false;
            }
        }
        return true;
    }
}
