package headgate.verifier.session;

import headgate.runtime.fitting.Fitting;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Loaded;
import headgate.runtime.transcript.Transcript;
import headgate.verifier.judge.Judgement;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** How the check of a fitting ends. */
public sealed interface FitResult {

    /**
     * A file cannot be used; nothing was judged.
     *
     * @param problems what is wrong, of all files
     */
    record Refused(List<FileProblem> problems) implements FitResult {

        /** Copies the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * The case was judged.
     *
     * @param fitting the fitting
     * @param judgement the judgement; its head processes have ended
     * @param transcripts what each head was asked and answered, by what the fitting calls it; heads that gave no sheet are
     *     left out
     */
    record Judged(Loaded<Fitting> fitting, Judgement judgement, SortedMap<String, Transcript> transcripts)
            implements FitResult {

        /** Copies the map. */
        public Judged {
            transcripts = new TreeMap<>(transcripts);
        }
    }
}
