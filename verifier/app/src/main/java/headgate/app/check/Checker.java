package headgate.app.check;

import headgate.app.console.Complaint;
import headgate.app.console.RefusedInputException;
import headgate.runtime.transcript.Transcript;
import headgate.verifier.fitting.FittingSearch;
import headgate.verifier.fitting.ServedSpacing;
import headgate.verifier.report.Edition;
import headgate.verifier.report.Report;
import headgate.verifier.report.ReportMaker;
import headgate.verifier.report.Subject;
import headgate.verifier.rules.RuleBook;
import headgate.verifier.session.CheckInput;
import headgate.verifier.session.CheckResult;
import headgate.verifier.session.CheckSession;
import headgate.verifier.session.FitResult;
import headgate.verifier.session.FitSession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks one head and makes the report of it. */
public final class Checker {

    private final Edition edition;

    /**
     * Makes a checker.
     *
     * @param version the program's version, for the report
     */
    public Checker(String version) {
        this.edition = new Edition(version, RuleBook.VERSION);
    }

    /**
     * Checks.
     *
     * @param input what to check
     * @return what came of it
     * @throws RefusedInputException if a file cannot be used; it names every problem of every file
     */
    public Checked check(CheckInput input) {
        CheckResult result = CheckSession.standard().check(input);
        if (result instanceof CheckResult.Refused refused) {
            throw new RefusedInputException(
                    refused.problems().stream().map(Complaint::of).toList());
        }
        CheckResult.Judged judged = (CheckResult.Judged) result;
        List<Subject> transcripts = judged.transcript().stream()
                .map(each -> new Subject("transcript", Checked.TRANSCRIPT, each.digest()))
                .toList();
        Report report = ReportMaker.of(judged.judgement(), edition, transcripts, List.of());
        return new Checked(judged.judgement(), report, judged.transcript().map(Transcript::toBytes));
    }

    /**
     * Searches which heads to put on the arms that a fitting does not name.
     *
     * @param file the fitting's file
     * @param goal what is wanted most
     * @return what was found; empty if no choice of the heads will do
     * @throws RefusedInputException if a file cannot be used; it names every problem of every file
     */
    public static Optional<FitResult.Found> search(Path file, FittingSearch.Goal goal) {
        return usable(FitSession.standard().search(file, goal)) instanceof FitResult.Found found
                ? Optional.of(found)
                : Optional.empty();
    }

    private static FitResult usable(FitResult result) {
        if (result instanceof FitResult.Refused refused) {
            throw new RefusedInputException(
                    refused.problems().stream().map(Complaint::of).toList());
        }
        return result;
    }

    /**
     * Checks a whole fitting.
     *
     * @param file the fitting's file
     * @return what came of it; it keeps no transcript, but names the digest of each
     * @throws RefusedInputException if a file cannot be used; it names every problem of every file
     */
    public Fitted fit(Path file) {
        FitResult result = usable(FitSession.standard().fit(file));
        FitResult.Judged judged = (FitResult.Judged) result;
        List<Subject> subjects = new ArrayList<>();
        subjects.add(new Subject(
                "fitting",
                String.valueOf(Path.of(judged.fitting().file()).getFileName()),
                judged.fitting().sha256()));
        judged.transcripts()
                .forEach((head, each) -> subjects.add(new Subject("transcript", "of head " + head, each.digest())));
        Report report = ReportMaker.of(judged.judgement(), edition, subjects, List.of());
        Checked checked = new Checked(judged.judgement(), report, Optional.empty());
        return new Fitted(
                checked,
                ServedSpacing.of(
                        judged.judgement().subject(), judged.fitting().value().spacings()));
    }
}
