package headgate.verifier.setup;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.geometry.Rounding;
import headgate.verifier.geometry.Swing;
import java.util.List;
import java.util.Optional;

/**
 * What a wheel fills: the box about its tyre, as wide as the tyre and as long and as high as its diameter, which is an outer bound
 * of a round tyre; turned about the upright through the middle of its tyre, as far to either side as it is steered.
 */
public final class WheelSpace {

    private WheelSpace() {}

    /**
     * The space of a wheel that stands on level ground.
     *
     * @param wheel the wheel
     * @param middle where the middle of its tyre may be across travel, micrometres
     * @return the space, carriage frame, for every place and every angle; empty if nobody knows the wheel's diameter
     */
    public static Optional<Occupied> of(Carriage.Wheel wheel, Interval middle) {
        return wheel.diameter().map(d -> {
            long half = Rounding.up(wheel.tyreWidth() / 2);
            long diameter = Rounding.up(d);
            long radius = -Math.floorDiv(-diameter, 2L);
            Outline tyre = Outline.rectangle(new Interval(-radius, radius), new Interval(-half, half));
            Occupied straight = Occupied.of(List.of(Prism.of(tyre, new Interval(0, diameter))));
            return Swing.eitherWayAboutZ(straight, wheel.steering())
                    .overShift(middle)
                    .shifted(new Point3(wheel.x(), 0, 0));
        });
    }
}
