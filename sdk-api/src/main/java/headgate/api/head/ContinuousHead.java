package headgate.api.head;

import headgate.api.annotation.ApiStatus;
import headgate.api.answer.Engagement;
import headgate.api.task.RowTask;

/** A head that works without pause as the carriage travels. The contract is that of {@link ToolHead}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public interface ContinuousHead extends ToolHead {

    /**
     * Says how the head works a stretch of row.
     *
     * @param task the stretch
     * @return the engagement, or {@link Engagement#decline(String)}; never null
     */
    Engagement engage(RowTask task);
}
