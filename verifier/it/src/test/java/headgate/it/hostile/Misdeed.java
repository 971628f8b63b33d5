package headgate.it.hostile;

import headgate.it.Checkout;
import headgate.testkit.jar.HeadJarBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What a head can do instead of answering, as a statement that is put into the sample gripper. */
enum Misdeed {
    EXITS("System.exit(7);"),
    LOOPS("while (shortCut.length() == 0) { shortCut.hashCode(); }"),
    FILLS_MEMORY("java.util.List<long[]> kept = new java.util.ArrayList<>();"
            + " while (shortCut.length() == 0) { kept.add(new long[1_000_000]); }"),
    FLOODS_OUTPUT("for (int i = 0; i < 1_000_000; i++) { System.out.println(\"all work and no play\"); }"),
    RECURSES("act(task);"),
    LEAVES_A_THREAD("Thread idle = new Thread(() -> { while (true) { Thread.onSpinWait(); } });" + " idle.start();");

    private static final String FOLDER = "sample-heads/gripper/src/main/java/headgate/sample/gripper";
    private static final String ACT = "public Action act(SpotTask task) {";
    private static final String TYPE = "public final class Gripper implements SpotHead {";

    private final String statement;

    Misdeed(String statement) {
        this.statement = statement;
    }

    /** The gripper as it is, compiled anew. */
    static byte[] innocent() {
        return jar("");
    }

    /** The gripper that does it whenever it is asked. */
    byte[] jar() {
        return jar(statement);
    }

    private static byte[] jar(String statement) {
        HeadJarBuilder jar = new HeadJarBuilder().attribute("Plugin-Id", "test.misdeed");
        for (Path file : sources()) {
            String name = file.getFileName().toString().replace(".java", "");
            String source = read(file);
            if (name.equals("Gripper")) {
                jar.head("headgate.sample.gripper.Gripper", changed(source, statement));
            } else if (!name.equals("package-info")) {
                jar.source("headgate.sample.gripper." + name, source);
            }
        }
        return jar.bytes();
    }

    private static String changed(String source, String statement) {
        if (!source.contains(ACT) || !source.contains(TYPE)) {
            throw new IllegalStateException("the sample gripper was rewritten; put the statement in anew");
        }
        // The compiler must not see through it, or it refuses code that is never reached.
        return source.replace(TYPE, TYPE + "\nprivate final String shortCut = \"\";\n")
                .replace(ACT, ACT + "\n" + statement);
    }

    private static List<Path> sources() {
        try (Stream<Path> all = Files.list(Checkout.folder().resolve(FOLDER))) {
            return all.sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
