package headgate.runtime.process;

import headgate.runtime.answers.HeadFault;
import java.time.Duration;

/**
 * How long answers may take together. One answer may be slow, the first one above all; a head whose every answer is just in
 * time would hold a check up for hours.
 */
final class Patience {

    private final HeadLimits limits;
    private long tasks;
    private long allowed;
    private long waited;
    private long since;
    private boolean running;

    Patience(HeadLimits limits) {
        this.limits = limits;
        this.allowed = 2 * limits.answer().toNanos();
    }

    /** Tasks are asked from now on. */
    void begin(int count) {
        tasks += count;
        allowed += count * limits.pace().toNanos();
        since = System.nanoTime();
        running = true;
    }

    /** They are all answered. */
    void end() {
        waited = waited();
        running = false;
    }

    private long waited() {
        return running ? waited + System.nanoTime() - since : waited;
    }

    /** {@return how long the next answer may take} */
    Duration left() {
        long left = Math.max(0, allowed - waited());
        return Duration.ofNanos(Math.min(limits.answer().toNanos(), left));
    }

    /** {@return the fault, or another if it was not one answer that took too long but all of them} */
    HeadFault blame(HeadFault fault) {
        boolean altogether =
                fault instanceof HeadFault.TimedOut late && late.limit().compareTo(limits.answer()) < 0;
        return altogether ? new HeadFault.TooSlow(fault.stage(), tasks, Duration.ofNanos(allowed)) : fault;
    }
}
