package headgate.runtime.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrameTest {

    private static final byte[] NONCE = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] OTHER = "0123456789abcdeX".getBytes(StandardCharsets.US_ASCII);

    private static byte[] bytes(byte[] nonce, Frame... frames) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        FrameWriter writer = new FrameWriter(out, nonce);
        for (Frame frame : frames) {
            writer.write(frame);
        }
        return out.toByteArray();
    }

    private static FrameReader reader(byte[] bytes, long noise) {
        return new FrameReader(new ByteArrayInputStream(bytes), NONCE, noise);
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    /** Noise that looks like the beginning of a frame, in pieces of any size, never hides one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void framesComeThroughAnyNoiseInAnyPieces(long seed) throws IOException {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        List<Frame> sent = new ArrayList<>();
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        byte[] start = join(FrameWriter.MARK, NONCE);
        for (int i = 0; i < 200; i++) {
            while (random.nextInt(3) > 0) {
                stream.write(start, 0, random.nextInt(start.length));
                stream.writeBytes(random.nextBoolean() ? new byte[] {'H'} : new byte[] {'H', 'G', 'H', 'G', 'F'});
            }
            byte[] content = new byte[random.nextInt(300)];
            random.nextBytes(content);
            Frame frame = new Frame(Frame.Type.SPOT_ANSWER, i, content);
            sent.add(frame);
            stream.writeBytes(bytes(NONCE, frame));
        }
        InputStream pieces = new ByteArrayInputStream(stream.toByteArray()) {
            @Override
            public synchronized int read(byte[] b, int off, int len) {
                return super.read(b, off, Math.min(len, random.nextInt(1, 40)));
            }
        };
        FrameReader reader = new FrameReader(pieces, NONCE, Long.MAX_VALUE);
        List<Frame> read = new ArrayList<>();
        for (Optional<Frame> f = reader.next(); f.isPresent(); f = reader.next()) {
            read.add(f.get());
        }
        assertThat(read).isEqualTo(sent);
    }

    @Test
    void aFrameBehindAnotherNonceIsNoise() throws IOException {
        Frame forged = new Frame(Frame.Type.FAULT, 0, new byte[10]);
        Frame real = new Frame(Frame.Type.HELLO, 0, new byte[0]);
        FrameReader reader = reader(join(bytes(OTHER, forged), bytes(NONCE, real)), 1000);
        assertThat(reader.next()).contains(real);
        assertThat(reader.next()).isEmpty();
        assertThat(reader.flooded()).isFalse();
    }

    @Test
    void tooMuchNoiseIsGivenUp() throws IOException {
        FrameReader reader =
                reader(join(new byte[101], bytes(NONCE, new Frame(Frame.Type.HELLO, 0, new byte[0]))), 100);
        assertThat(reader.next()).isEmpty();
        assertThat(reader.flooded()).isTrue();
    }

    @Test
    void aFrameThatIsCutIsNone() throws IOException {
        byte[] whole = bytes(NONCE, new Frame(Frame.Type.SHEET, 7, new byte[100]));
        for (int length = 0; length < whole.length; length++) {
            assertThat(reader(java.util.Arrays.copyOf(whole, length), 1000).next())
                    .isEmpty();
        }
    }

    @Test
    void aFrameThatCannotBeIsRefused() throws IOException {
        byte[] frame = bytes(NONCE, new Frame(Frame.Type.SHEET, 7, new byte[0]));
        byte[] type = frame.clone();
        type[20] = 'Z';
        assertThatThrownBy(() -> reader(type, 0).next()).isInstanceOf(WireFormatException.class);
        byte[] length = frame.clone();
        length[25] = 0x7f;
        assertThatThrownBy(() -> reader(length, 0).next()).isInstanceOf(WireFormatException.class);
        length[25] = (byte) 0xff;
        assertThatThrownBy(() -> reader(length, 0).next()).isInstanceOf(WireFormatException.class);
    }
}
