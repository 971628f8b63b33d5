package headgate.it.program;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** One call of the packaged program: set up, run, look. */
final class Call {

    /** Longer than any check takes on a busy machine; a call that runs into it is a failure. */
    private static final int DEADLINE_SECONDS = 180;

    /** Made once, so that no later call has to say that it prepares a faster start. */
    private static boolean prepared;

    private final Path work;
    private final Map<String, String> environment = new HashMap<>();
    private Path program = Dist.folder().resolve("bin/headgate");

    /**
     * What came of a call.
     *
     * @param exit exit code
     * @param out standard output
     * @param err standard error
     */
    record Result(int exit, String out, String err) {}

    private Call(Path work) {
        this.work = work;
        environment.put("PATH", System.getenv("PATH"));
        environment.put("HOME", work.toString());
        environment.put("XDG_CACHE_HOME", Dist.cache().toString());
        environment.put("JAVA_HOME", Dist.java().toString());
        environment.put("LC_ALL", "C.UTF-8");
    }

    /** Begins a call in a folder of the test's own; nothing of the caller's environment is passed on. */
    static synchronized Call in(Path work) throws IOException, InterruptedException {
        if (!prepared) {
            prepared = true;
            new Call(work).run("--version");
        }
        return new Call(work);
    }

    Call with(String variable, String value) {
        environment.put(variable, value);
        return this;
    }

    Call without(String variable) {
        environment.remove(variable);
        return this;
    }

    Call program(Path other) {
        program = other;
        return this;
    }

    /** Starts and does not wait. */
    Process start(Path out, Path err, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(arguments);
        command.add(0, program.toString());
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(work.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        return process;
    }

    Result run(String... arguments) throws IOException, InterruptedException {
        Path out = Files.createTempFile(work, "out", ".txt");
        Path err = Files.createTempFile(work, "err", ".txt");
        Process process = start(out, err, List.of(arguments));
        if (!process.waitFor(DEADLINE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("no end after " + DEADLINE_SECONDS + " s: " + List.of(arguments));
        }
        Result result = new Result(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
        Files.delete(out);
        Files.delete(err);
        return result;
    }

    /** Checks a head of the demo on the demo's carriage. */
    Result check(String head, String cropPlan, String... more) throws IOException, InterruptedException {
        return check(Dist.demo(head), Dist.demo("carriage.json"), Dist.demo(cropPlan), more);
    }

    Result check(Path head, Path carriage, Path cropPlan, String... more) throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(
                List.of("check", head.toString(), "--carriage", carriage.toString(), "--crop", cropPlan.toString()));
        arguments.addAll(List.of(more));
        return run(arguments.toArray(String[]::new));
    }
}
