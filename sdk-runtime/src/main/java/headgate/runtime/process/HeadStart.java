package headgate.runtime.process;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;

/** What came of starting a head: it runs and has given its sheet, or a fault. */
public sealed interface HeadStart {

    /**
     * The head runs.
     *
     * @param head the head; whoever takes it closes it
     */
    record Running(HeadAnswers head) implements HeadStart {}

    /**
     * The head does not run, and no process of it is left.
     *
     * @param fault what happened instead
     */
    record Refused(HeadFault fault) implements HeadStart {}
}
