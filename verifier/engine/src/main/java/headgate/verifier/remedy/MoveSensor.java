package headgate.verifier.remedy;

import headgate.api.unit.Micrometres;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Edit;
import java.util.Map;

/**
 * Put a sensor, with the band that it sees, further forward, out of what arms and heads hide.
 *
 * @param sensorId the sensor
 * @param forward by how much, micrometres, more than 0
 */
public record MoveSensor(String sensorId, long forward) implements Edit {

    @Override
    public Case apply(Case before) {
        return before.withCarriage(c -> c.withSensors(c.sensors().stream()
                .map(s -> s.id().equals(sensorId) ? s.forward(forward) : s)
                .toList()));
    }

    @Override
    public String text() {
        return "put sensor " + sensorId + ", with the band that it sees, "
                + Dimension.LENGTH.text(Micrometres.toMetres(forward)) + " further forward";
    }

    @Override
    public String kind() {
        return "move-sensor";
    }

    @Override
    public Map<String, Object> figures() {
        return Map.of("sensor", sensorId, "forward", Micrometres.toMetres(forward));
    }
}
