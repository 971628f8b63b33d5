package headgate.verifier.session;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.transcript.Transcript;
import headgate.verifier.judge.Judgement;
import java.util.List;
import java.util.Optional;

/** How a check ends. */
public sealed interface CheckResult {

    /**
     * A file cannot be used; nothing was judged.
     *
     * @param problems what is wrong, of all files, in the order of the files and then of place
     */
    record Refused(List<FileProblem> problems) implements CheckResult {

        /** Copies the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * The case was judged.
     *
     * @param judgement the judgement; its head process has ended
     * @param transcript what the head was asked and answered; empty if it gave no sheet
     */
    record Judged(Judgement judgement, Optional<Transcript> transcript) implements CheckResult {}
}
