package headgate.verifier.behaviour;

import headgate.api.answer.Action;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.task.LatticeSpotTask;
import java.util.List;

/**
 * A task and the action that a head took for it.
 *
 * @param sheet what the head says of itself
 * @param setting where it is probed
 * @param task the task
 * @param action the action, not a refusal
 * @param steps the phases of the action with where and when they start
 */
record Asked(HeadSheet sheet, ProbeSetting setting, LatticeSpotTask task, Action action, List<Step> steps) {

    static Asked of(HeadSheet sheet, ProbeSetting setting, LatticeSpotTask task, Action action) {
        return new Asked(sheet, setting, task, action, Step.of(sheet, action));
    }
}
