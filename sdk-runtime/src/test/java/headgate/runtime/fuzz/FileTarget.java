package headgate.runtime.fuzz;

import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.fitting.FittingReader;
import headgate.runtime.form.FileKind;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.policy.PolicyReader;
import headgate.runtime.text.SourceFile;
import java.util.List;

/** What the fuzzer drives: any bytes are either read or refused with the one documented exception. */
public final class FileTarget {

    private static final List<FileKind<?>> KINDS =
            List.of(CarriageReader.KIND, CropPlanReader.KIND, FittingReader.KIND, PolicyReader.KIND);

    private FileTarget() {}

    /**
     * Reads bytes as each kind of file.
     *
     * @param bytes any bytes
     */
    public static void fuzzerTestOneInput(byte[] bytes) {
        for (FileKind<?> kind : KINDS) {
            try {
                kind.read(SourceFile.of("fuzz.json", bytes));
            } catch (InvalidFileException refused) {
                checkPlaces(refused.problems());
            }
        }
    }

    static void checkPlaces(List<FileProblem> problems) {
        for (FileProblem problem : problems) {
            boolean whole = problem.place().line() == 0 && problem.place().column() == 0;
            if (!whole && (problem.place().line() < 1 || problem.place().column() < 1)) {
                throw new AssertionError("a problem without a place: " + problem);
            }
        }
    }
}
