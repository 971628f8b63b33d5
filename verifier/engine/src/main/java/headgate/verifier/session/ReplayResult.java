package headgate.verifier.session;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.origin.FileProblem;
import headgate.verifier.check.Case;
import headgate.verifier.plot.PlotStudy;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What came of a replay. */
public sealed interface ReplayResult {

    /**
     * A file cannot be used; nothing was replayed.
     *
     * @param problems what is wrong, of all files
     */
    record Refused(List<FileProblem> problems) implements ReplayResult {

        /** Copies the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * The case cannot be replayed, or not to its end.
     *
     * @param reason why, as a sentence
     */
    record Undecided(String reason) implements ReplayResult {

        /**
         * A head broke.
         *
         * @param plot the plot that was being replayed
         * @param fault how it broke
         * @return the result
         */
        static Undecided of(String plot, HeadFault fault) {
            return new Undecided("While " + plot + " was replayed, the head did not answer: " + fault.sentence() + ".");
        }
    }

    /**
     * All plots were replayed.
     *
     * @param subject the case; its head processes have ended
     * @param study what came of the plots
     * @param missing what the files do not say and was taken as perfect, as clauses
     * @param others digests of further files that it follows from, such as a fitting, by kind and name
     */
    record Replayed(Case subject, PlotStudy study, List<String> missing, Map<String, String> others)
            implements ReplayResult {

        /** Copies. */
        public Replayed {
            missing = List.copyOf(missing);
            others = new TreeMap<>(others);
        }
    }
}
