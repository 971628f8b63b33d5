package headgate.verifier.replay;

import java.util.List;

/** What heads use up, and where they are filled again. */
final class Supplies {

    private final ReplaySetting setting;
    private final List<ArmState> arms;
    private final Course course;
    private final Tally tally;

    Supplies(ReplaySetting setting, List<ArmState> arms, Course course, Tally tally) {
        this.setting = setting;
        this.arms = arms;
        this.course = course;
        this.tally = tally;
    }

    private long row(Target target) {
        return setting.rowLength().isPresent()
                ? (long) Math.floor(
                        (target.x - course.firstX()) / (setting.rowLength().getAsDouble() * 1e6))
                : 0;
    }

    /** Whether an arm's head has what an action needs, or can be filled for it. */
    boolean suffice(ArmState arm, Target target) {
        Magazine magazine = arm.magazine().orElse(null);
        return magazine == null
                || arm.charge >= magazine.perAction()
                || magazine.place() == Magazine.Place.ANYWHERE
                || row(target) > arm.row;
    }

    /** Fills a head that is empty, or that has come to a new row, and takes what the action uses. */
    void use(ArmState arm, Target target) {
        Magazine magazine = arm.magazine().orElse(null);
        if (magazine == null) {
            return;
        }
        long row = row(target);
        boolean fill = magazine.place() == Magazine.Place.ANYWHERE ? arm.charge < magazine.perAction() : row > arm.row;
        if (fill && magazine.allAtOnce()) {
            tally.stopped += magazine.refillTime();
            for (ArmState other : arms) {
                if (other.arm.tool() == arm.arm.tool()) {
                    fill(other, magazine, row);
                }
            }
        } else if (fill) {
            tally.stopped += magazine.refillTime();
            fill(arm, magazine, row);
        }
        arm.charge -= magazine.perAction();
    }

    private static void fill(ArmState arm, Magazine magazine, long row) {
        arm.charge = magazine.capacity();
        arm.row = Math.max(arm.row, row);
        arm.refills++;
    }
}
