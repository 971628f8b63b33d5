package headgate.runtime.carriage;

import headgate.api.shape.Interval;
import headgate.api.shape.Point3;
import java.util.List;

/**
 * A camera or another sensor that finds plants. It sees a band of the ground; a plant is known at the first image after
 * it has wholly entered the band, once that image has been worked on.
 *
 * @param id its id
 * @param position where it is, carriage frame
 * @param bandX the band that it sees on level ground along travel, micrometres, carriage frame
 * @param bandY the band that it sees on level ground across travel, micrometres, carriage frame
 * @param beams the ids of the beams whose arms work on what it finds; at least one
 * @param frameRate images a second, Hz
 * @param latency from an image to the plants in it, s
 * @param resolution distance below which two plants are seen as one, m
 * @param sigma standard deviation of a plant's position in the image, on the ground, m
 */
public record Sensor(
        String id,
        Point3 position,
        Interval bandX,
        Interval bandY,
        List<String> beams,
        double frameRate,
        double latency,
        double resolution,
        double sigma) {

    /** Copies the list. */
    public Sensor {
        beams = List.copyOf(beams);
    }

    /**
     * Moves it along travel, with the band that it sees.
     *
     * @param by how far forward, micrometres
     * @return the same sensor there
     */
    public Sensor forward(long by) {
        return new Sensor(
                id,
                new Point3(position.x() + by, position.y(), position.z()),
                bandX.shifted(by),
                bandY,
                beams,
                frameRate,
                latency,
                resolution,
                sigma);
    }
}
