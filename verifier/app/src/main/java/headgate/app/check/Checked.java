package headgate.app.check;

import headgate.app.console.ExitCode;
import headgate.runtime.origin.FileProblem;
import headgate.verifier.check.Case;
import headgate.verifier.judge.Judgement;
import headgate.verifier.report.Report;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What came of a check.
 *
 * @param judgement the judgement
 * @param report the report
 * @param transcript what the head was asked and answered, as bytes; empty if it gave no sheet
 */
public record Checked(Judgement judgement, Report report, Optional<byte[]> transcript) {

    /** Name of the transcript's file. */
    public static final String TRANSCRIPT = "transcript.bin";

    /** {@return how a run that came to this ends} */
    public ExitCode end() {
        if (report.broken()) {
            return ExitCode.FAULT;
        }
        return report.verdict().isFit() ? ExitCode.FITS : ExitCode.REFUSED;
    }

    /** {@return what is worth a second look in the files, in the order of the files} */
    public List<FileProblem> notes() {
        Case subject = judgement.subject();
        return Stream.of(
                        subject.carriage().notes(),
                        subject.plan().notes(),
                        subject.policy().notes())
                .flatMap(List::stream)
                .toList();
    }
}
