package headgate.verifier.check;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.pack.PackageFacts;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A head that is checked: what its package says, and what came of running it.
 *
 * @param facts what the bytes of its package say
 * @param run what came of running it
 */
public record HeadUnderTest(PackageFacts facts, Run run) {

    /** What came of running a head. */
    public sealed interface Run {

        /**
         * It gave its sheet and answers tasks.
         *
         * @param sheet what it says of itself
         * @param answers where to ask it
         * @param again where to ask another instance of it, in another process, that remembers nothing of what the
         *     first was asked; empty if there is none
         */
        record Answering(HeadSheet sheet, HeadAnswers answers, Optional<HeadAnswers> again) implements Run {}

        /**
         * It broke before it gave its sheet.
         *
         * @param fault how
         */
        record Broke(HeadFault fault) implements Run {}

        /**
         * It was not run.
         *
         * @param because why, as a clause
         */
        record NotRun(String because) implements Run {}
    }

    /** {@return its id as the manifest gives it, or a word that says it gives none} */
    public String id() {
        return facts.id().orElse("(head without id)");
    }

    /** {@return how reports name it: id and version} */
    public String label() {
        return "head " + id() + facts.version().map(v -> " " + v).orElse("");
    }

    /** {@return its sheet, or empty if it gave none} */
    public Optional<HeadSheet> sheet() {
        return run instanceof Run.Answering answering ? Optional.of(answering.sheet()) : Optional.empty();
    }

    /** {@return where to ask it, or empty if it gave no sheet} */
    public Optional<HeadAnswers> answers() {
        return run instanceof Run.Answering answering ? Optional.of(answering.answers()) : Optional.empty();
    }

    /** {@return where to ask another instance of it, or empty if there is none} */
    public Optional<HeadAnswers> again() {
        return run instanceof Run.Answering answering ? answering.again() : Optional.empty();
    }

    /** {@return what a report has to say of how it was run, as sentences} */
    public List<String> notes() {
        return answers().map(HeadAnswers::notes).orElse(List.of());
    }

    /**
     * Changes the sheet, if there is one; the answers stay.
     *
     * @param change the change
     * @return the head with the changed sheet
     */
    public HeadUnderTest withSheet(UnaryOperator<HeadSheet> change) {
        return run instanceof Run.Answering answering
                ? new HeadUnderTest(
                        facts,
                        new Run.Answering(change.apply(answering.sheet()), answering.answers(), answering.again()))
                : this;
    }
}
