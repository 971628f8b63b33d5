package headgate.runtime.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.testing.Generator;
import java.util.Arrays;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written is what is read, and nothing else is read. */
class CodecTest {

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private static <T> byte[] written(T value, BiConsumer<WireWriter, T> write) {
        WireWriter out = new WireWriter();
        write.accept(out, value);
        return out.toBytes();
    }

    private static <T> void roundTrip(T value, BiConsumer<WireWriter, T> write, Function<WireReader, T> read) {
        byte[] bytes = written(value, write);
        T back = WireReader.whole(bytes, read);
        assertThat(back).isEqualTo(value);
        assertThat(written(back, write)).isEqualTo(bytes);
        assertThatThrownBy(() -> WireReader.whole(Arrays.copyOf(bytes, bytes.length - 1), read))
                .isInstanceOf(WireFormatException.class);
        assertThatThrownBy(() -> WireReader.whole(Arrays.copyOf(bytes, bytes.length + 1), read))
                .isInstanceOf(WireFormatException.class);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyValueComesBack(long seed) {
        Generator make = new Generator(seed);
        roundTrip(make.sheet(), SheetCodec::write, SheetCodec::read);
        roundTrip(make.action(), AnswerCodec::action, AnswerCodec::action);
        roundTrip(make.engagement(), AnswerCodec::engagement, AnswerCodec::engagement);
        roundTrip(make.spotTask(), TaskCodec::spot, TaskCodec::spot);
        roundTrip(make.rowTask(), TaskCodec::row, TaskCodec::row);
        roundTrip(make.spotAnswer(), AnswerCodec::spot, AnswerCodec::spot);
        roundTrip(make.rowAnswer(), AnswerCodec::row, AnswerCodec::row);
        roundTrip(make.fault(), FaultCodec::write, FaultCodec::read);
    }

    /** Bytes that somebody changed are refused, or are another good value; nothing else is thrown. */
    @ParameterizedTest
    @MethodSource("seeds")
    void changedBytesAreRefusedOrReadAsAnotherValue(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        Generator make = new Generator(seed);
        byte[] sheet = written(make.sheet(), SheetCodec::write);
        byte[] answer = written(make.spotAnswer(), AnswerCodec::spot);
        int refused = 0;
        for (int i = 0; i < 50; i++) {
            refused += damaged(sheet, random, SheetCodec::read) ? 1 : 0;
            damaged(answer, random, AnswerCodec::spot);
        }
        assertThat(refused).isPositive();
    }

    private static boolean damaged(byte[] bytes, RandomGenerator random, Function<WireReader, ?> read) {
        byte[] damaged = bytes.clone();
        damaged[random.nextInt(damaged.length)] ^= (byte) random.nextInt(1, 256);
        try {
            WireReader.whole(damaged, read);
            return false;
        } catch (WireFormatException e) {
            return true;
        }
    }

    @Test
    void numbersThatAreNoneAreRefusedOnBothSides() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> new WireWriter().figure(bad)).isInstanceOf(WireFormatException.class);
            WireWriter out = new WireWriter();
            out.number(Double.doubleToRawLongBits(bad));
            assertThatThrownBy(() -> WireReader.whole(out.toBytes(), WireReader::figure))
                    .isInstanceOf(WireFormatException.class)
                    .hasMessageContaining("finite");
        }
    }

    @Test
    void forgedLengthsAreRefused() {
        for (int length : new int[] {-1, Integer.MIN_VALUE, Integer.MAX_VALUE, 65_537}) {
            WireWriter out = new WireWriter();
            out.number(length);
            assertThatThrownBy(() -> WireReader.whole(out.toBytes(), WireReader::text))
                    .isInstanceOf(WireFormatException.class);
            assertThatThrownBy(() -> WireReader.whole(out.toBytes(), in -> in.list(WireReader::octet)))
                    .isInstanceOf(WireFormatException.class);
        }
        assertThatThrownBy(() -> new WireWriter().text("x".repeat(16_385))).isInstanceOf(WireFormatException.class);
    }

    @Test
    void aTruthValueIsZeroOrOneAndATextIsUtf8() {
        assertThatThrownBy(() -> WireReader.whole(new byte[] {2}, WireReader::flag))
                .isInstanceOf(WireFormatException.class);
        assertThatThrownBy(() -> WireReader.whole(new byte[] {0, 0, 0, 1, (byte) 0xff}, WireReader::text))
                .isInstanceOf(WireFormatException.class);
    }

    /** IEEE 754 binary64, big-endian: 1.0 is 3ff0 0000 0000 0000, -2.0 is c000 0000 0000 0000. */
    @Test
    void figuresAreBinary64() {
        assertThat(written(1.0, WireWriter::figure)).isEqualTo(new byte[] {0x3f, (byte) 0xf0, 0, 0, 0, 0, 0, 0});
        assertThat(written(-2.0, WireWriter::figure)).isEqualTo(new byte[] {(byte) 0xc0, 0, 0, 0, 0, 0, 0, 0});
    }

    @Test
    void everyKindOfFaultHasASentence() {
        for (long seed = 0; seed < 200; seed++) {
            HeadFault fault = new Generator(seed).fault();
            assertThat(fault.sentence()).isNotBlank().doesNotEndWith(".").doesNotContain("\n");
        }
    }
}
