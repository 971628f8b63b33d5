package headgate.runtime.transcript;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import java.util.List;

/** A transcript in the place of a head: gives the recorded answers, and runs nothing. */
public final class TranscriptAnswers implements HeadAnswers {

    private final Transcript transcript;

    /**
     * Takes a transcript.
     *
     * @param transcript what was recorded
     */
    public TranscriptAnswers(Transcript transcript) {
        this.transcript = transcript;
    }

    @Override
    public HeadKind kind() {
        return transcript.kind();
    }

    @Override
    public HeadSheet sheet() {
        return transcript.sheet();
    }

    @Override
    public List<SpotAnswer> act(List<LatticeSpotTask> tasks) {
        return tasks.stream()
                .map(t -> transcript
                        .spots()
                        .getOrDefault(t, new SpotAnswer.Failed(new HeadFault.NotRecorded(HeadStage.ACT))))
                .toList();
    }

    @Override
    public List<RowAnswer> engage(List<LatticeRowTask> tasks) {
        return tasks.stream()
                .map(t -> transcript
                        .rows()
                        .getOrDefault(t, new RowAnswer.Failed(new HeadFault.NotRecorded(HeadStage.ENGAGE))))
                .toList();
    }

    @Override
    public void close() {
        // Nothing runs.
    }
}
