package headgate.runtime.fuzz;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.testing.Generator;
import headgate.runtime.wire.AnswerCodec;
import headgate.runtime.wire.FaultCodec;
import headgate.runtime.wire.Frame;
import headgate.runtime.wire.FrameReader;
import headgate.runtime.wire.FrameWriter;
import headgate.runtime.wire.SheetCodec;
import headgate.runtime.wire.WireFormatException;
import headgate.runtime.wire.WireReader;
import headgate.runtime.wire.WireWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** What a head process may send: any bytes are frames with what they should hold, noise, or refused in the one way. */
public final class FrameTarget {

    private static final byte[] NONCE = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);

    private static final int MOST_NOISE = 4_096;

    private FrameTarget() {}

    /**
     * Reads bytes as the parent of a head process does.
     *
     * @param data any bytes
     */
    public static void fuzzerTestOneInput(byte[] data) {
        FrameReader reader = new FrameReader(new ByteArrayInputStream(data), NONCE, MOST_NOISE);
        int read = 0;
        try {
            for (Optional<Frame> frame = reader.next(); frame.isPresent(); frame = reader.next()) {
                read += frame.get().content().length;
                if (read > data.length) {
                    throw new AssertionError("more content than there are bytes");
                }
                content(frame.get());
            }
        } catch (WireFormatException refused) {
            if (String.valueOf(refused.getMessage()).isBlank()) {
                throw new AssertionError("refused without a word", refused);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static void content(Frame frame) {
        byte[] content = frame.content();
        switch (frame.type()) {
            case LOADED -> WireReader.whole(content, in -> in.constant(HeadKind.class));
            case SHEET -> WireReader.whole(content, SheetCodec::read);
            case SPOT_ANSWER -> WireReader.whole(content, AnswerCodec::spot);
            case ROW_ANSWER -> WireReader.whole(content, AnswerCodec::row);
            case FAULT -> {
                HeadFault fault = WireReader.whole(content, FaultCodec::read);
                if (fault.sentence().isBlank()) {
                    throw new AssertionError("a fault without a sentence");
                }
            }
            default -> {
                // Nothing is in it that the parent reads.
            }
        }
    }

    /** {@return right streams to begin with: every type of frame, and those that have content with it} */
    static List<byte[]> seeds() throws IOException {
        List<byte[]> seeds = new ArrayList<>();
        for (Frame.Type type : Frame.Type.values()) {
            seeds.add(stream(type, new byte[0]));
        }
        for (long seed = 1; seed <= 3; seed++) {
            Generator make = new Generator(seed);
            seeds.add(stream(Frame.Type.SHEET, content(SheetCodec::write, make.sheet())));
            seeds.add(stream(Frame.Type.SPOT_ANSWER, content(AnswerCodec::spot, make.spotAnswer())));
            seeds.add(stream(Frame.Type.ROW_ANSWER, content(AnswerCodec::row, make.rowAnswer())));
            seeds.add(stream(Frame.Type.FAULT, content(FaultCodec::write, make.fault())));
        }
        return seeds;
    }

    private static <T> byte[] content(BiConsumer<WireWriter, T> write, T value) {
        WireWriter out = new WireWriter();
        write.accept(out, value);
        return out.toBytes();
    }

    private static byte[] stream(Frame.Type type, byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("noise HGF1".getBytes(StandardCharsets.US_ASCII));
        new FrameWriter(out, NONCE).write(new Frame(type, 1, content));
        return out.toByteArray();
    }
}
