package headgate.verifier.session;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The files of a check.
 *
 * @param head the head's JAR
 * @param carriage the carriage
 * @param cropPlan the crop plan
 * @param policy the policy; empty for the one that is built in
 * @param stand a recorded stand to replay, with y = 0 in the middle of the pass; empty for none
 */
public record CheckInput(Path head, Path carriage, Path cropPlan, Optional<Path> policy, Optional<Path> stand) {

    /**
     * A check without a stand.
     *
     * @param head the head's JAR
     * @param carriage the carriage
     * @param cropPlan the crop plan
     * @param policy the policy; empty for the one that is built in
     */
    public CheckInput(Path head, Path carriage, Path cropPlan, Optional<Path> policy) {
        this(head, carriage, cropPlan, policy, Optional.empty());
    }
}
