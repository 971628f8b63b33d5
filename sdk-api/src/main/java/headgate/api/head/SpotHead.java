package headgate.api.head;

import headgate.api.annotation.ApiStatus;
import headgate.api.answer.Action;
import headgate.api.task.SpotTask;

/** A head that treats one plant or position at a time. The contract is that of {@link ToolHead}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public interface SpotHead extends ToolHead {

    /**
     * Says what the head does for one task. The action starts at t = 0 with the tool point at the sheet's ready tool
     * point, and ends there. While the head is in the soil the tool point goes with the ground: it stays over the
     * plant, within the sheet's aim tolerance, from the start of the phase to its end.
     *
     * @param task one plant or position
     * @return the phases, or {@link Action#decline(String)}; never null
     */
    Action act(SpotTask task);
}
