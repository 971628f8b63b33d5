package headgate.runtime.answers;

import headgate.api.answer.Action;

/** What came back for one spot task. */
public sealed interface SpotAnswer {

    /**
     * The head answered.
     *
     * @param action the phases, or the head's refusal with its reason
     */
    record Answered(Action action) implements SpotAnswer {}

    /**
     * The head did not answer.
     *
     * @param fault what happened instead
     */
    record Failed(HeadFault fault) implements SpotAnswer {}
}
