package headgate.verifier.replay;

import headgate.api.shape.Point3;
import headgate.api.task.Velocity;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeSpotTask;
import org.jspecify.annotations.Nullable;

/**
 * All of a task but where the plant is. With the place as one number it stands for the task where answers are looked up,
 * which a replay does several times for each plant.
 */
final class TaskKind {

    private static final long MILLIMETRE = 1000;

    /** Bits for each coordinate: whole millimetres up to 100 m to either side. */
    private static final int BITS = 21;

    private static final long MASK = (1L << BITS) - 1;

    private final Velocity ground;
    private final PlantClass plant;
    private final double stem;
    private final double height;
    private final SoilClass soil;
    private final double moisture;
    private final int hash;

    /** Takes figures that lie on the lattice. */
    TaskKind(Velocity ground, PlantClass plant, double stem, double height, SoilClass soil, double moisture) {
        this.ground = ground;
        this.plant = plant;
        this.stem = stem;
        this.height = height;
        this.soil = soil;
        this.moisture = moisture;
        int sum = 31 * Long.hashCode(ground.x()) + Long.hashCode(ground.y());
        sum = 31 * sum + plant.hashCode();
        sum = 31 * sum + Double.hashCode(stem);
        sum = 31 * sum + Double.hashCode(height);
        sum = 31 * sum + soil.hashCode();
        this.hash = 31 * sum + Double.hashCode(moisture);
    }

    static TaskKind of(LatticeSpotTask task) {
        return new TaskKind(
                task.groundVelocity(),
                task.plantClass(),
                task.stemDiameter(),
                task.plantHeight(),
                task.soil(),
                task.moisture());
    }

    /** The place nearest to a point, micrometres, as one number. */
    static long place(long x, long y, long z) {
        return pack(whole(x), whole(y), whole(z));
    }

    /** The place of a task. */
    static long place(LatticeSpotTask task) {
        Point3 p = task.position();
        return pack(p.x() / MILLIMETRE, p.y() / MILLIMETRE, p.z() / MILLIMETRE);
    }

    /** As the lattice does it. */
    private static long whole(long micrometres) {
        return (long) Math.rint((double) micrometres / MILLIMETRE);
    }

    private static long pack(long x, long y, long z) {
        return ((x & MASK) << (2 * BITS)) | ((y & MASK) << BITS) | (z & MASK);
    }

    private static long unpack(long place, int which) {
        int left = Long.SIZE - BITS * (which + 1);
        return (place << left) >> (Long.SIZE - BITS);
    }

    /** The task with the plant at a place. */
    LatticeSpotTask at(long place) {
        Point3 position =
                new Point3(MILLIMETRE * unpack(place, 2), MILLIMETRE * unpack(place, 1), MILLIMETRE * unpack(place, 0));
        return new LatticeSpotTask(position, ground, plant, stem, height, soil, moisture);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof TaskKind that
                        && hash == that.hash
                        && stem == that.stem
                        && height == that.height
                        && moisture == that.moisture
                        && soil.equals(that.soil)
                        && plant.equals(that.plant)
                        && ground.equals(that.ground));
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
