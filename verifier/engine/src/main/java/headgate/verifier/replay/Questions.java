package headgate.verifier.replay;

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
    private long lookedUp;

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
     * What a head does for a candidate.
     *
     * @param arm the arm that has the head
     * @param candidate what it is for, placed
     * @param ahead how far ahead of the mount the target is as the action starts, micrometres
     * @return the action; null if the book does not say, which is then noted
     */
    @Nullable
    HeadAction find(ArmState arm, Candidate candidate, double ahead) {
        return find(arm, candidate.kind, arm.place(candidate.target, candidate.mount, ahead));
    }

    private @Nullable HeadAction find(ArmState arm, TaskKind kind, long place) {
        lookedUp++;
        HeadAction action = book.find(arm.arm.tool(), kind, place);
        if (action == null) {
            wanted.add(new AnswerBook.Question(arm.arm.tool(), kind.at(place)));
        }
        return action;
    }

    /** Tells the book how often it was asked since this was done last. */
    void tellLookedUp() {
        book.addLookedUp(lookedUp);
        lookedUp = 0;
    }

    /** Asks early for the plants that come next, each once, so that one trip to the heads serves many. */
    void askAhead(int number) {
        Passing passing = course.passing();
        int end = course.readAhead(number);
        int begin = end;
        while (begin > 0 && !passing.get(begin - 1).askedAhead) {
            begin--;
        }
        for (int i = begin; i < end; i++) {
            Target target = passing.get(i);
            target.askedAhead = true;
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
        double[] pieces = arm.reach.pieces(target.y - arm.mount);
        double known = arm.known(target, setting.speed(), setting.ahead());
        if (arm.takes(target) && pieces.length > 0 && known <= course.time(target, arm, arm.reach.rear())) {
            find(arm, arm.kind(target), arm.place(target, arm.mount, pieces[0]));
        }
    }
}
