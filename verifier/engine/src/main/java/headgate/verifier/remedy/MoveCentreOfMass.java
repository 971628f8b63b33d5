package headgate.verifier.remedy;

import headgate.api.shape.Point3;
import headgate.api.sheet.MassPoint;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Bring a head's centre of mass nearer to the middle of its mount plate.
 *
 * @param headId the head
 * @param along the axis along which it moves
 * @param most largest distance from the middle along that axis, m; shown and applied rounded down to a tenth of a
 *     millimetre
 */
public record MoveCentreOfMass(String headId, Axis along, double most) implements Edit {

    /** A horizontal axis of the head frame. */
    public enum Axis {
        /** Along travel. */
        X("along travel"),
        /** Across travel. */
        Y("across travel");

        private final String label;

        Axis(String label) {
            this.label = label;
        }

        /** {@return the words that reports use} */
        public String label() {
            return label;
        }
    }

    /** Rounds down, so that whoever builds to the distance that is shown is safe. */
    public MoveCentreOfMass {
        most = Dimension.LENGTH.rounded(most, RoundingMode.FLOOR);
    }

    @Override
    public Case apply(Case before) {
        return before.withHead(
                headId,
                head -> head.withSheet(sheet -> sheet.toBuilder()
                        .mass(moved(sheet.empty()), moved(sheet.full()), moved(sheet.soiled()))
                        .build()));
    }

    private MassPoint moved(MassPoint point) {
        Point3 c = point.centre();
        return MassPoint.of(
                point.mass(),
                along == Axis.X ? new Point3(nearer(c.x()), c.y(), c.z()) : new Point3(c.x(), nearer(c.y()), c.z()));
    }

    private long nearer(long coordinate) {
        long limit = Micrometres.nearest(most);
        return Math.max(-limit, Math.min(limit, coordinate));
    }

    @Override
    public String text() {
        return "bring the centre of mass of head " + headId + " to within " + Dimension.LENGTH.text(most)
                + " of the middle of its plate, " + along.label();
    }

    @Override
    public String kind() {
        return "move-centre-of-mass";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("along", along.label(), "headId", headId, "most", most);
    }
}
