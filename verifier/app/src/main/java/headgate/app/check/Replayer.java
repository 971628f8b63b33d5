package headgate.app.check;

import headgate.app.console.Complaint;
import headgate.app.console.RefusedInputException;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.scratch.TemporaryFolder;
import headgate.verifier.plot.KeptResults;
import headgate.verifier.report.Edition;
import headgate.verifier.report.ReplayReport;
import headgate.verifier.report.Subject;
import headgate.verifier.rules.RuleBook;
import headgate.verifier.session.ReplayInput;
import headgate.verifier.session.ReplayResult;
import headgate.verifier.session.ReplaySession;
import headgate.verifier.session.ReplayWatch;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Replays stands and makes the report of it. */
public final class Replayer {

    private final String version;

    /**
     * Makes a replayer.
     *
     * @param version the program's version
     */
    public Replayer(String version) {
        this.version = version;
    }

    /**
     * Replays.
     *
     * @param input what is to be replayed
     * @param kept where finished stands are kept; empty if nowhere
     * @param watch is told how it goes on
     * @return what came of it: replayed or undecided
     * @throws RefusedInputException if a file cannot be used, or nothing can be written
     */
    public ReplayResult replay(ReplayInput input, Optional<KeptResults> kept, ReplayWatch watch) {
        try (TemporaryFolder scratch = TemporaryFolder.make("headgate-plots-")) {
            ReplayResult result =
                    new ReplaySession(HeadLimits.STANDARD, version, kept, scratch.folder()).replay(input, watch);
            if (result instanceof ReplayResult.Refused refused) {
                throw new RefusedInputException(
                        refused.problems().stream().map(Complaint::of).toList());
            }
            return result;
        } catch (IOException failed) {
            throw new RefusedInputException(Complaint.of(
                    "a file of the replay could not be written or read (" + failed.getMessage() + ").",
                    "What was finished before is kept. Free some space and start it again."));
        }
    }

    /**
     * Makes the report of a replay.
     *
     * @param replayed what came of it
     * @param version the program's version
     * @return the report
     */
    public static ReplayReport report(ReplayResult.Replayed replayed, String version) {
        List<Subject> others = new ArrayList<>();
        replayed.others().forEach((name, sha256) -> others.add(new Subject("other", name, sha256)));
        return ReplayReport.of(
                new Edition(version, RuleBook.VERSION),
                replayed.subject(),
                replayed.study(),
                replayed.missing(),
                others);
    }
}
