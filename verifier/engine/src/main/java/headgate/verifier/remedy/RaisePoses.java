package headgate.verifier.remedy;

import headgate.api.shape.Point3;
import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.util.Map;

/**
 * Hold all arms higher in a stance, and in the steps to it.
 *
 * @param stance the stance's name
 * @param by by how much, micrometres, more than 0
 */
public record RaisePoses(String stance, long by) implements Edit {

    @Override
    public Case apply(Case before) {
        return StancePoses.changed(
                before,
                stance,
                p -> p.withMount(
                        new Point3(p.mount().x(), p.mount().y(), p.mount().z() + by)));
    }

    @Override
    public String text() {
        return "hold the arms " + Dimension.LENGTH.text(Micrometres.toMetres(by)) + " higher in stance \"" + stance
                + "\"";
    }

    @Override
    public String kind() {
        return "raise-poses";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("stance", stance, "by", Micrometres.toMetres(by));
    }
}
