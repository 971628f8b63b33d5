package headgate.runtime.process;

import java.time.Duration;

/**
 * What a head process may use. The defaults are common practice, no source: a head is a few pages of arithmetic, and the
 * times leave room for a slow, busy machine; the contract itself asks for an answer within 5 ms.
 *
 * @param start longest time until the virtual machine is up
 * @param load longest time to load the head, and again for its sheet
 * @param answer longest time for one answer; all answers together may take twice that, and more with every task
 * @param pace what each task adds to the time that all answers together may take
 * @param processor most processor time of the whole process
 * @param heapMegabytes largest heap, MiB
 * @param classMegabytes largest space for classes, MiB
 * @param stackKilobytes stack of the thread that runs the head, KiB
 * @param scratchMegabytes most that it may write into its folder, MiB; the clean copy lies there, so at least 40
 * @param outputBytes most bytes on each standard stream that are not messages
 */
public record HeadLimits(
        Duration start,
        Duration load,
        Duration answer,
        Duration pace,
        Duration processor,
        int heapMegabytes,
        int classMegabytes,
        int stackKilobytes,
        int scratchMegabytes,
        long outputBytes) {

    /** The limits that the verifier uses. The pace is twice what the contract allows for an answer. */
    public static final HeadLimits STANDARD = new HeadLimits(
            Duration.ofSeconds(30),
            Duration.ofSeconds(10),
            Duration.ofSeconds(5),
            Duration.ofMillis(10),
            Duration.ofMinutes(5),
            96,
            64,
            1024,
            40,
            65_536);

    /**
     * Checks the bounds.
     *
     * @throws IllegalArgumentException if a limit is not positive
     */
    public HeadLimits {
        if (start.compareTo(Duration.ZERO) <= 0
                || load.compareTo(Duration.ZERO) <= 0
                || answer.compareTo(Duration.ZERO) <= 0
                || pace.compareTo(Duration.ZERO) <= 0
                || processor.toSeconds() <= 0
                || Math.min(Math.min(heapMegabytes, classMegabytes), Math.min(stackKilobytes, scratchMegabytes)) <= 0
                || outputBytes <= 0) {
            throw new IllegalArgumentException("every limit of a head process must be more than 0");
        }
    }

    /**
     * Changes the times for loading and answering.
     *
     * @param longest the longest time for each
     * @return the limits with it
     */
    public HeadLimits answeringWithin(Duration longest) {
        return new HeadLimits(
                start,
                longest,
                longest,
                pace,
                processor,
                heapMegabytes,
                classMegabytes,
                stackKilobytes,
                scratchMegabytes,
                outputBytes);
    }

    /**
     * Changes the processor time.
     *
     * @param most the most for the whole process, at least a second; whole seconds count
     * @return the limits with it
     */
    public HeadLimits computing(Duration most) {
        return new HeadLimits(
                start,
                load,
                answer,
                pace,
                most,
                heapMegabytes,
                classMegabytes,
                stackKilobytes,
                scratchMegabytes,
                outputBytes);
    }
}
