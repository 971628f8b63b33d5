package headgate.verifier.geometry;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import java.util.List;

/** A convex part of a random body as its maker knows it: no code of ours cut it. */
public record Part(List<Point> corners, Interval height) {}
