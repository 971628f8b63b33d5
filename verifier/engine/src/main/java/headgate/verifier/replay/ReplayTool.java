package headgate.verifier.replay;

import headgate.api.sheet.HeadSheet;
import java.util.Optional;

/**
 * A head in a replay.
 *
 * @param label how reports name it
 * @param sheet what it says of itself
 * @param magazine what it uses up; empty if nothing runs out
 */
public record ReplayTool(String label, HeadSheet sheet, Optional<Magazine> magazine) {}
