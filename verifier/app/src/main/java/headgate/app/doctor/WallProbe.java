package headgate.app.doctor;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Looks whether the operating system can wall in a head's process, by running an empty command behind the wall. */
record WallProbe(String tool, List<String> trial) implements Probe {

    /** Long enough for a loaded machine; the command itself takes some milliseconds. */
    private static final int DEADLINE_SECONDS = 10;

    @Override
    public Diagnosis look() {
        List<String> command = new ArrayList<>(trial);
        command.add(0, tool);
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            if (!process.waitFor(DEADLINE_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                return missing("does not answer");
            }
            return process.exitValue() == 0
                    ? Diagnosis.good("wall by " + tool, "works")
                    : missing("refused by the system");
        } catch (IOException absent) {
            return missing("not installed");
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return missing("interrupted");
        }
    }

    private Diagnosis missing(String why) {
        return Diagnosis.note("wall by " + tool, why, "Heads then run with fewer limits: check only those you trust.");
    }
}
