package headgate.runtime.process;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.pack.UnscannedJar;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.testing.Heads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** A program that runs a head, to be killed, or whose head is killed: see {@link KillTest}. */
final class KilledParent {

    private KilledParent() {}

    /**
     * Runs it.
     *
     * @param args the head's JAR, and how often it is asked 100 tasks
     */
    public static void main(String[] args) throws IOException {
        CleanJar jar = UnscannedJar.of("test.head", Heads.NAME, Files.readAllBytes(Path.of(args[0])));
        System.out.println(asked(jar, Integer.parseInt(args[1])));
    }

    private static String asked(CleanJar jar, int rounds) {
        HeadStart start = HeadProcess.start(jar, HeadLimits.STANDARD);
        if (start instanceof HeadStart.Refused refused) {
            return "fault: " + refused.fault().sentence();
        }
        List<LatticeSpotTask> tasks =
                IntStream.range(0, 100).mapToObj(HeadProcessTest::task).toList();
        try (HeadAnswers head = ((HeadStart.Running) start).head()) {
            for (int round = 0; round < rounds; round++) {
                for (SpotAnswer answer : head.act(tasks)) {
                    if (answer instanceof SpotAnswer.Failed failed) {
                        HeadFault fault = failed.fault();
                        return "fault: " + fault.sentence();
                    }
                }
            }
        }
        return "right";
    }
}
