package headgate.it.fitting;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.ApiRange;
import headgate.runtime.pack.PackageFacts;
import headgate.runtime.pack.Version;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.verifier.check.HeadUnderTest;
import java.util.List;
import java.util.Optional;

/** A head of which only the sheet is looked at: lanes, set-points and gaps ask nothing else. */
record SheetOnly(HeadSheet sheet) implements HeadAnswers {

    static HeadUnderTest head(String id, HeadSheet sheet) {
        PackageFacts facts = new PackageFacts(
                "0".repeat(64),
                1,
                Optional.of(id),
                Optional.of(new Version(1, 0, 0)),
                Optional.of("Lowfield"),
                ApiRange.parse(">=0.1.0 & <0.2.0"),
                Optional.of("testing.Head"),
                List.of(),
                List.of(),
                List.of());
        return new HeadUnderTest(facts, new HeadUnderTest.Run.Answering(sheet, new SheetOnly(sheet), Optional.empty()));
    }

    @Override
    public HeadKind kind() {
        return HeadKind.SPOT;
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        throw new IllegalStateException("nothing but the sheet is looked at");
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        throw new IllegalStateException("nothing but the sheet is looked at");
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}
