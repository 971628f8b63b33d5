package headgate.verifier.behaviour;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.sheet.ActionTime;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.task.LatticeSpotTask;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The places at which one plant may be when an action starts: from as far ahead of the reach as the plant travels in one
 * action, to where it leaves the reach.
 *
 * @param task the task, wherever it is along the path
 * @param first x at the far end ahead, micrometres
 * @param last x where the plant leaves the reach, micrometres
 * @param whole true if the reach has one piece at this lateral offset
 */
record Path(LatticeSpotTask task, long first, long last, boolean whole) {

    static Path of(HeadSheet sheet, LatticeSpotTask task) {
        Outline reach = outline(sheet);
        List<Interval> pieces = Chord.at(reach, task.position().y());
        Interval piece =
                pieces.stream().max(Comparator.comparingLong(Interval::length)).orElse(reach.xExtent());
        double busy =
                sheet.actionTime().map(ActionTime::typical).map(f -> f.value()).orElse(1.0);
        long ahead = Math.round(-task.groundVelocity().x() * busy);
        boolean fromTheFront = task.groundVelocity().x() <= 0;
        return new Path(
                task,
                (fromTheFront ? piece.most() : piece.least()) + ahead,
                fromTheFront ? piece.least() : piece.most(),
                pieces.size() <= 1);
    }

    /** A head whose reach is a single point is probed on a square millimetre about it. */
    static Outline outline(HeadSheet sheet) {
        Optional<Outline> reach = sheet.reach().outline();
        return reach.orElseGet(() -> {
            Point3 at = sheet.reach().corners3().get(0);
            return Outline.rectangle(
                    new Interval(at.x() - 1000, at.x() + 1000), new Interval(at.y() - 1000, at.y() + 1000));
        });
    }

    /** {@return the task with the plant at a share of the path: 0 at the far end ahead, 1 where it leaves} */
    LatticeSpotTask at(double share) {
        return atX(first + Math.round(share * (last - first)));
    }

    LatticeSpotTask atX(long x) {
        return task.at(new Point3(x, task.position().y(), task.position().z()));
    }
}
