package headgate.verifier.report.drawing;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import java.util.List;

/**
 * A stance for transport as it is seen: its shapes, and what bounds it on the road. Carriage frame, whole micrometres.
 *
 * @param stance its name
 * @param width from the right to the left, where what is carried may be: as wide as is allowed, about the middle of it
 * @param height how high it may be
 * @param ground how high over level ground everything must stay: the least gap, the suspension's travel and the largest
 *     motion of the ground under any arm
 * @param shapes its fold steps in order, and last the stance itself
 */
public record Folding(String stance, Interval width, long height, long ground, List<Shape> shapes) {

    /** Copies the list. */
    public Folding {
        shapes = List.copyOf(shapes);
    }

    /** {@return the shape on the road} */
    public Shape road() {
        return shapes.get(shapes.size() - 1);
    }

    /** {@return the shapes on the way to it, in order} */
    public List<Shape> steps() {
        return shapes.subList(0, shapes.size() - 1);
    }

    /**
     * The carriage in one shape.
     *
     * @param name what the carriage's file calls it
     * @param arms what the arms carry
     * @param frame parts of the frame
     * @param spots places that findings measured in it
     */
    public record Shape(String name, List<Carried> arms, List<Scene.Part> frame, List<Spot> spots) {

        /** Copies the lists. */
        public Shape {
            arms = List.copyOf(arms);
            frame = List.copyOf(frame);
            spots = List.copyOf(spots);
        }
    }

    /**
     * An arm with what it carries.
     *
     * @param name arm and head in words
     * @param before where its mount was in the shape before
     * @param mount where its mount is
     * @param space all that arm and head fill
     * @param head what the head fills
     * @param loose true if nothing holds the head's moving parts, so that it counts wherever they can be
     */
    public record Carried(
            String name, Point3 before, Point3 mount, List<Prism> space, List<Prism> head, boolean loose) {

        /** Copies the lists. */
        public Carried {
            space = List.copyOf(space);
            head = List.copyOf(head);
        }
    }
}
