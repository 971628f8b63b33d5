package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.runtime.carriage.Sensor;

/**
 * The ground that a sensor sees, and how fast. A plant is known at its first image after it has wholly entered the band:
 * at the latest one frame later, and then the image is worked on.
 *
 * @param x along travel, micrometres, carriage frame
 * @param y across travel, micrometres, carriage frame
 * @param latency from an image to the plants in it, s
 * @param frame time from one image to the next, s
 */
public record SensorBand(Interval x, Interval y, double latency, double frame) {

    /**
     * The band of a sensor of a carriage.
     *
     * @param sensor the sensor
     * @return its band
     */
    public static SensorBand of(Sensor sensor) {
        return new SensorBand(sensor.bandX(), sensor.bandY(), sensor.latency(), 1 / sensor.frameRate());
    }

    /**
     * When a plant is known.
     *
     * @param x where it stands, ground frame, micrometres
     * @param y where it stands, micrometres
     * @param radius of what is seen of it, micrometres
     * @param speed of the carriage, m/s
     * @return the time, s; infinite if it is never wholly in the band while an image is taken
     */
    double known(long x, long y, long radius, double speed) {
        double perSecond = speed * 1e6;
        double inBand = (this.x.length() - 2.0 * radius) / perSecond;
        boolean across = y - radius >= this.y.least() && y + radius <= this.y.most();
        if (!across || inBand < frame) {
            return Double.POSITIVE_INFINITY;
        }
        return (x + radius - this.x.most()) / perSecond + latency + frame;
    }
}
