package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.testing.Heads;
import headgate.runtime.testing.Jars;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Another program in the place of the child: one that knows the nonce and forges. It stands for a head that has taken
 * its process over, which nothing inside the process can rule out.
 */
class ForgedChildTest {

    private static final HeadLimits LIMITS = new HeadLimits(
            Duration.ofSeconds(60),
            Duration.ofSeconds(2),
            Duration.ofSeconds(2),
            Duration.ofMillis(10),
            Duration.ofSeconds(60),
            32,
            32,
            512,
            40,
            20_000);

    @TempDir
    private Path folder = Path.of("");

    @AfterEach
    void ourOwnChildAgain() {
        System.clearProperty(ChildCommand.CLASS_PATH);
    }

    private HeadFault fault(String body) throws IOException {
        SortedMap<String, byte[]> classes = Jars.compile("headgate.runtime.child.HeadChild", """
                package headgate.runtime.child;
                import java.io.*;
                public class HeadChild {
                    static byte[] nonce = new byte[16];
                    static DataOutputStream out = new DataOutputStream(System.out);
                    static void frame(int type, int sequence, int length, byte[] content) throws IOException {
                        out.writeBytes("HGF1");
                        out.write(nonce);
                        out.write(type);
                        out.writeInt(sequence);
                        out.writeInt(length);
                        out.write(content);
                        out.flush();
                    }
                    static byte[] text(String text) throws IOException {
                        ByteArrayOutputStream b = new ByteArrayOutputStream();
                        new DataOutputStream(b).writeInt(text.length());
                        b.writeBytes(text.getBytes());
                        return b.toByteArray();
                    }
                    public static void main(String[] args) throws Exception {
                        new DataInputStream(System.in).readFully(nonce);
                        %s
                        Thread.sleep(60_000);
                    }
                }
                """.formatted(body));
        for (Map.Entry<String, byte[]> e : classes.entrySet()) {
            Path file = folder.resolve(e.getKey());
            Files.createDirectories(java.util.Objects.requireNonNull(file.getParent()));
            Files.write(file, e.getValue());
        }
        System.setProperty(ChildCommand.CLASS_PATH, folder.toString());
        HeadStart start = HeadProcess.start(HeadProcessTest.jar(Heads.spot("")), LIMITS);
        assertThat(start).isInstanceOf(HeadStart.Refused.class);
        return ((HeadStart.Refused) start).fault();
    }

    private static final String HELLO = "frame('H', 0, 0, new byte[0]);";
    private static final String LOADED = HELLO + "byte[] k = text(\"SPOT\"); frame('L', 0, k.length, k);";

    @Test
    void aFrameOutOfTurn() throws IOException {
        assertThat(fault(HELLO + HELLO))
                .isEqualTo(new HeadFault.BadFrame(
                        HeadStage.LOAD, "expected LOADED of request 0, got HELLO of request 0, 0 bytes"));
    }

    @Test
    void aFrameOfAnotherRequest() throws IOException {
        assertThat(fault(HELLO + "frame('L', 5, 0, new byte[0]);"))
                .isEqualTo(new HeadFault.BadFrame(
                        HeadStage.LOAD, "expected LOADED of request 0, got LOADED of request 5, 0 bytes"));
    }

    @Test
    void aFrameThatSaysItIsHuge() throws IOException {
        assertThat(fault(HELLO + "frame('L', 0, Integer.MAX_VALUE, new byte[0]);"))
                .isInstanceOfSatisfying(
                        HeadFault.BadFrame.class, f -> assertThat(f.problem()).contains("says 2147483647"));
    }

    @Test
    void aFrameThatDoesNotEnd() throws IOException {
        assertThat(fault(HELLO + "frame('L', 0, 100, new byte[10]);"))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.LOAD, Duration.ofSeconds(2)));
        assertThat(fault(HELLO + "frame('L', 0, 100, new byte[10]); System.exit(4);"))
                .isEqualTo(new HeadFault.Exited(HeadStage.LOAD, 4));
    }

    @Test
    void aHugeFrameInSmallPieces() throws IOException {
        assertThat(fault(HELLO + "frame('L', 0, 8_000_000, new byte[0]);"
                        + " for (int i = 0; i < 8_000_000; i++) { System.out.write(0); System.out.flush();"
                        + " Thread.sleep(2); }"))
                .isEqualTo(new HeadFault.TimedOut(HeadStage.LOAD, Duration.ofSeconds(2)));
    }

    @Test
    void aSheetThatIsNone() throws IOException {
        assertThat(fault(LOADED + "frame('S', 0, 0, new byte[0]);")).isInstanceOf(HeadFault.BadFrame.class);
        assertThat(fault(LOADED + "byte[] s = new byte[5000]; frame('S', 0, s.length, s);"))
                .isInstanceOf(HeadFault.BadFrame.class);
    }

    @Test
    void noiseOnly() throws IOException {
        assertThat(fault(HELLO + "for (int i = 0; i < 1_000_000; i++) { System.out.write(new byte[1000]); }"))
                .isEqualTo(new HeadFault.OutputFlood(HeadStage.LOAD, 20_000));
    }

    @Test
    void noGreeting() throws IOException {
        assertThat(fault("System.err.println(\"no luck today\"); System.exit(2);"))
                .isEqualTo(new HeadFault.StartFailed("it ended with exit code 2; no luck today"));
    }
}
