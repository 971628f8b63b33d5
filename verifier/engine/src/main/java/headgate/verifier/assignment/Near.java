package headgate.verifier.assignment;

import headgate.api.shape.Interval;
import java.util.ArrayList;
import java.util.List;

/** Holds a choice near to where it would be set alone. */
final class Near {

    private Near() {}

    static Choice within(Choice choice, long distance) {
        List<Interval> kept = new ArrayList<>();
        for (Interval a : choice.allowed()) {
            long least = Math.max(a.least(), choice.preferred() - distance);
            long most = Math.min(a.most(), choice.preferred() + distance);
            if (least <= most) {
                kept.add(new Interval(least, most));
            }
        }
        return new Choice(
                choice.stance(),
                choice.firstLane(),
                choice.lanes(),
                kept,
                choice.cover(),
                choice.preferred(),
                choice.item());
    }
}
