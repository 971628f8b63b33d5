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
 */
public record CheckInput(Path head, Path carriage, Path cropPlan, Optional<Path> policy) {}
