package headgate.runtime.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** What could be left of a head process: processes whose command line holds a mark, and folders. */
final class Traces {

    private static final int PATIENCE_MILLIS = 20_000;

    private Traces() {}

    /** Processes of this machine with a mark in their command line, this one left out. */
    static List<ProcessHandle> marked(String mark) {
        long self = ProcessHandle.current().pid();
        try (Stream<ProcessHandle> all = ProcessHandle.allProcesses()) {
            return all.filter(p -> p.pid() != self && commandLine(p).contains(mark))
                    .toList();
        }
    }

    /** A command line that is longer than a page is cut by the handle, not by the system. */
    private static String commandLine(ProcessHandle process) {
        try {
            return Files.readString(Path.of("/proc", Long.toString(process.pid()), "cmdline"));
        } catch (IOException e) {
            return process.info().commandLine().orElse("");
        }
    }

    /** Folders of head processes in a folder for temporary files. */
    static List<Path> folders(Path temporary) throws IOException {
        try (Stream<Path> all = Files.list(temporary)) {
            return all.filter(p -> p.getFileName().toString().startsWith("headgate-head-"))
                    .toList();
        }
    }

    /** True once it holds; what is killed is gone as soon as the system gets to it. */
    static boolean soon(BooleanSupplier condition) throws InterruptedException {
        for (int waited = 0; waited < PATIENCE_MILLIS; waited += 20) {
            if (condition.getAsBoolean()) {
                return true;
            }
            Thread.sleep(20);
        }
        return condition.getAsBoolean();
    }
}
