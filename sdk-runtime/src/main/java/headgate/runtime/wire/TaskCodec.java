package headgate.runtime.wire;

import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;

/** Tasks as bytes. Equal tasks have equal bytes. */
public final class TaskCodec {

    private TaskCodec() {}

    /**
     * Writes a spot task.
     *
     * @param out where to
     * @param t the task
     */
    public static void spot(WireWriter out, LatticeSpotTask t) {
        ShapeCodec.point3(out, t.position());
        ShapeCodec.velocity(out, t.groundVelocity());
        out.text(t.plantClass().name());
        out.figure(t.stemDiameter());
        out.figure(t.plantHeight());
        out.text(t.soil().name());
        out.figure(t.moisture());
    }

    /**
     * Reads a spot task.
     *
     * @param in where from
     * @return the task
     */
    public static LatticeSpotTask spot(WireReader in) {
        return new LatticeSpotTask(
                ShapeCodec.point3(in),
                ShapeCodec.velocity(in),
                PlantClass.of(in.text()),
                in.figure(),
                in.figure(),
                SoilClass.of(in.text()),
                in.figure());
    }

    /**
     * Writes a row task.
     *
     * @param out where to
     * @param t the task
     */
    public static void row(WireWriter out, LatticeRowTask t) {
        ShapeCodec.velocity(out, t.groundVelocity());
        out.text(t.soil().name());
        out.figure(t.canopyHeight());
        out.figure(t.canopyWidth());
        out.figure(t.gapBefore());
        out.figure(t.gapAfter());
    }

    /**
     * Reads a row task.
     *
     * @param in where from
     * @return the task
     */
    public static LatticeRowTask row(WireReader in) {
        return new LatticeRowTask(
                ShapeCodec.velocity(in), SoilClass.of(in.text()), in.figure(), in.figure(), in.figure(), in.figure());
    }
}
