package headgate.runtime.answers;

import headgate.api.answer.Engagement;

/** What came back for one row task. */
public sealed interface RowAnswer {

    /**
     * The head answered.
     *
     * @param engagement how it works, or the head's refusal with its reason
     */
    record Answered(Engagement engagement) implements RowAnswer {}

    /**
     * The head did not answer.
     *
     * @param fault what happened instead
     */
    record Failed(HeadFault fault) implements RowAnswer {}
}
