package headgate.runtime.form;

import headgate.api.problem.InvalidValueException;
import headgate.api.shape.Body;
import headgate.api.shape.Outline;
import headgate.api.shape.Point;
import headgate.api.shape.Prism;
import headgate.runtime.quantity.Kind;
import headgate.runtime.text.Node;
import java.util.List;

/** The forms of bodies in files, and what they stand for. */
public final class Shapes {

    private static final PairForm EXTENT = Forms.interval(Forms.coordinate("-40 mm"), "40 mm");
    private static final PairForm POINT =
            new PairForm(Forms.coordinate("120 mm"), Forms.coordinate("-50 mm"), false, List.of("120 mm", "-50 mm"));

    private static final ObjectForm RECTANGLE = ObjectForm.of("a rectangle", "A rectangle along the axes.")
            .required("x", EXTENT, "Extent along travel, rear end first.")
            .required("y", EXTENT, "Extent across travel, right-hand end first.")
            .rule(List.of("x", "y"), (fields, complaint) -> {
                someLength(fields, "x", complaint);
                someLength(fields, "y", complaint);
            })
            .build();

    private static final ObjectForm DISC = ObjectForm.of("a disc", "A disc; programs use a polygon that holds it.")
            .required("centre", POINT, "Its centre: along travel, then across.")
            .required("radius", Forms.aboveZero(Kind.LENGTH, "10 m", "60 mm"), "Its radius.")
            .build();

    /** One part of a body: an outline seen from above, over a height interval. */
    private static final ObjectForm PRISM = ObjectForm.of(
                    "a prism", "Material: an outline seen from above, over an interval of height.")
            .required("z", EXTENT, "Interval of height that it fills, lower end first.")
            .optional("rectangle", RECTANGLE, "The outline, if it is a rectangle along the axes.")
            .optional("outline", Forms.list(POINT, 3, 200), "The outline, corner by corner, if it is a polygon.")
            .optional("disc", DISC, "The outline, if it is a disc.")
            .exactlyOne("rectangle", "outline", "disc")
            .rule(List.of("z"), (fields, complaint) -> someLength(fields, "z", complaint))
            .rule(List.of("outline"), Shapes::checkOutline)
            .build();

    /** A body: some prisms. */
    public static final ListForm BODY = Forms.list(PRISM, 1, 100);

    private Shapes() {}

    private static void someLength(Fields fields, String name, ObjectForm.Complaint complaint) {
        if (fields.interval(name).length() == 0) {
            Node node = fields.node(name);
            complaint.at(node, "two equal ends", "an interval of some length", "");
        }
    }

    private static void checkOutline(Fields fields, ObjectForm.Complaint complaint) {
        try {
            Outline.of(points(fields));
        } catch (InvalidValueException broken) {
            complaint.at(
                    fields.node("outline"),
                    broken.problems().get(0).found(),
                    "a polygon with some area whose boundary does not cross or touch itself",
                    "check the order of the corners");
        }
    }

    private static List<Point> points(Fields fields) {
        return fields.pairs("outline").stream()
                .map(p -> Point.ofMetres(p.get(0), p.get(1)))
                .toList();
    }

    /**
     * Reads a body; without the field, the body without material.
     *
     * @param fields the object that has the body
     * @param name the field's name; its form is {@link #BODY}
     * @return the body
     */
    public static Body body(Fields fields, String name) {
        return Body.of(fields.objects(name).stream().map(Shapes::prism).toList());
    }

    private static Prism prism(Fields fields) {
        return Prism.of(outline(fields), fields.interval("z"));
    }

    private static Outline outline(Fields fields) {
        if (fields.has("rectangle")) {
            Fields rectangle = fields.object("rectangle");
            return Outline.rectangle(rectangle.interval("x"), rectangle.interval("y"));
        }
        if (fields.has("disc")) {
            Fields disc = fields.object("disc");
            List<Double> centre = disc.pair("centre");
            return Outline.aroundDisc(Point.ofMetres(centre.get(0), centre.get(1)), disc.si("radius"), 32);
        }
        return Outline.of(points(fields));
    }
}
