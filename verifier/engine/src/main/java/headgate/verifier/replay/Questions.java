package headgate.verifier.replay;

import headgate.runtime.task.LatticeSpotTask;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a replay asks of the heads: looked up in the book, and noted down where the book does not say. */
final class Questions {

    private final ReplaySetting setting;
    private final List<ArmState> arms;
    private final Course course;
    private final AnswerBook book;
    private final Set<AnswerBook.Question> wanted = new LinkedHashSet<>();

    Questions(ReplaySetting setting, List<ArmState> arms, Course course, AnswerBook book) {
        this.setting = setting;
        this.arms = arms;
        this.course = course;
        this.book = book;
    }

    /** {@return what the book must say for the replay to go on} */
    List<AnswerBook.Question> wanted() {
        return List.copyOf(wanted);
    }

    void clear() {
        wanted.clear();
    }

    /**
     * What a head does for a target.
     *
     * @param arm the arm that has the head
     * @param target what it is for
     * @param mountY where the arm's mount is across travel, micrometres
     * @param ahead how far ahead of the mount the target is as the action starts, micrometres
     * @return the action; null if the book does not say, which is then noted
     */
    @Nullable
    HeadAction find(ArmState arm, Target target, long mountY, double ahead) {
        LatticeSpotTask task = arm.task(target, mountY, ahead, setting);
        HeadAction action = book.find(arm.arm.tool(), task);
        if (action == null) {
            wanted.add(new AnswerBook.Question(arm.arm.tool(), task));
        }
        return action;
    }

    /** Asks early for the plants that come next, so that one trip to the heads serves many. */
    void askAhead(int number) {
        int end = course.readAhead(number);
        for (int i = 0; i < end; i++) {
            Target target = course.passing().get(i);
            if (!target.taken && target.isDetection()) {
                for (ArmState arm : arms) {
                    askAhead(target, arm);
                }
            }
        }
    }

    /** Asks what will be asked for sure: an arm that does not shift, and the head's first lead. */
    private void askAhead(Target target, ArmState arm) {
        if (arm.shift.length() > 0 || !arm.covers(target.y)) {
            return;
        }
        boolean range = target.nature != Target.Nature.WANTED || arm.takes(target);
        double[] pieces = arm.reach.pieces(target.y - arm.mount);
        double known = arm.known(target, setting.speed(), setting.ahead());
        if (range && pieces.length > 0 && known <= course.time(target, arm, arm.reach.rear())) {
            find(arm, target, arm.mount, pieces[0]);
        }
    }
}
