package headgate.runtime.transcript;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.answers.RowAnswer;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.task.LatticeRowTask;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.wire.AnswerCodec;
import headgate.runtime.wire.SheetCodec;
import headgate.runtime.wire.TaskCodec;
import headgate.runtime.wire.WireReader;
import headgate.runtime.wire.WireWriter;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * What a head said of itself and answered to each task. As bytes, tasks stand in the order of their own bytes: the same
 * tasks give the same transcript, in whatever order and batches they were asked.
 *
 * @param subject SHA-256 of the partner's file, lower-case hexadecimal
 * @param kind which interface the head implements
 * @param sheet what it says of itself
 * @param spots answers to spot tasks
 * @param rows answers to row tasks
 */
public record Transcript(
        String subject,
        HeadKind kind,
        HeadSheet sheet,
        Map<LatticeSpotTask, SpotAnswer> spots,
        Map<LatticeRowTask, RowAnswer> rows) {

    private static final String FORMAT = "headgate.transcript/1";

    /** Takes copies of the maps. */
    public Transcript {
        spots = Map.copyOf(spots);
        rows = Map.copyOf(rows);
    }

    /** {@return the transcript as bytes} */
    public byte[] toBytes() {
        WireWriter out = new WireWriter();
        out.text(FORMAT);
        out.text(subject);
        out.text(kind.name());
        SheetCodec.write(out, sheet);
        write(out, spots, TaskCodec::spot, AnswerCodec::spot);
        write(out, rows, TaskCodec::row, AnswerCodec::row);
        return out.toBytes();
    }

    /**
     * Reads a transcript.
     *
     * @param bytes the transcript as bytes
     * @return the transcript
     * @throws headgate.runtime.wire.WireFormatException if the bytes are anything else
     */
    public static Transcript read(byte[] bytes) {
        return WireReader.whole(bytes, in -> {
            String format = in.text();
            if (!format.equals(FORMAT)) {
                throw new IllegalArgumentException("the format must be " + FORMAT);
            }
            return new Transcript(
                    in.text(),
                    in.constant(HeadKind.class),
                    SheetCodec.read(in),
                    read(in, TaskCodec::spot, AnswerCodec::spot),
                    read(in, TaskCodec::row, AnswerCodec::row));
        });
    }

    /** {@return SHA-256 of the bytes, lower-case hexadecimal} */
    public String digest() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(toBytes()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static <T, A> void write(
            WireWriter out, Map<T, A> answers, BiConsumer<WireWriter, T> task, BiConsumer<WireWriter, A> answer) {
        Map<byte[], A> sorted = new TreeMap<>(Arrays::compareUnsigned);
        answers.forEach((t, a) -> {
            WireWriter key = new WireWriter();
            task.accept(key, t);
            sorted.put(key.toBytes(), a);
        });
        out.number(sorted.size());
        sorted.forEach((key, a) -> {
            out.raw(key);
            answer.accept(out, a);
        });
    }

    private static <T, A> Map<T, A> read(WireReader in, Function<WireReader, T> task, Function<WireReader, A> answer) {
        Map<T, A> answers = new HashMap<>();
        for (int left = in.number(); left > 0; left--) {
            T key = task.apply(in);
            if (answers.put(key, answer.apply(in)) != null) {
                throw new IllegalArgumentException("a task must stand in a transcript once");
            }
        }
        return answers;
    }
}
