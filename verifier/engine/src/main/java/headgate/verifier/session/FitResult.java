package headgate.verifier.session;

import headgate.runtime.fitting.Fitting;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Loaded;
import headgate.runtime.transcript.Transcript;
import headgate.verifier.fitting.FittingSearch;
import headgate.verifier.judge.Judgement;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** How the check of a fitting, or the search for one, ends. */
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
     * A search came to nothing: no choice of the heads serves every lane, keeps every gap and keeps the pace.
     */
    record NoneFound() implements FitResult {}

    /**
     * A search came to something; it is not judged yet.
     *
     * @param fitting the fitting with the heads on the arms where they should go
     * @param proposal how it was found
     */
    record Found(Fitting fitting, FittingSearch.Proposal proposal) implements FitResult {}

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
