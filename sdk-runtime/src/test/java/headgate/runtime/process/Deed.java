package headgate.runtime.process;

import headgate.runtime.testing.Heads;

/**
 * What a head can do once the package rules are out of the way. Each throws what came of it as its message: {@code did ...}
 * if nothing held it, {@code could not} if something did; or it does not come back.
 */
enum Deed {
    EXITS("ends its process", "System.exit(7);"),
    HALTS("halts the virtual machine", "Runtime.getRuntime().halt(9);"),
    LOOPS("loops without end", "while (on()) { Math.sin(1); }"),
    DRIPS("answers each task just in time", "if (on()) { Thread.sleep(700); return plain(task); }"),
    FILLS_HEAP(
            "fills the heap, and catches the errors",
            "List<long[]> all = new ArrayList<>(); while (on()) { try { all.add(new long[100_000]); }"
                    + " catch (Throwable t) { all.size(); } }"),
    FILLS_DIRECT_MEMORY(
            "fills direct memory",
            "List<Object> all = new ArrayList<>(); while (on()) { all.add(java.nio.ByteBuffer.allocateDirect(1 << 20)); }"),
    FILLS_NATIVE_MEMORY(
            "takes native memory past the virtual machine",
            "java.lang.reflect.Field f = Class.forName(\"sun.misc.Unsafe\").getDeclaredField(\"theUnsafe\");"
                    + " f.setAccessible(true); sun.misc.Unsafe u = (sun.misc.Unsafe) f.get(null);"
                    + " while (on()) { long at = u.allocateMemory(1 << 20); u.setMemory(at, 1 << 20, (byte) 1); }",
            true),
    FILLS_CLASS_SPACE(
            "defines classes without end",
            "byte[] code; try (java.io.InputStream in = TestHead.class.getResourceAsStream(\"TestHead.class\")) {"
                    + " code = in.readAllBytes(); } List<Object> all = new ArrayList<>(); while (on()) {"
                    + " all.add(java.lang.invoke.MethodHandles.lookup().defineHiddenClass(code, false)); }"),
    STARTS_THREADS(
            "starts threads without end",
            "while (on()) { Thread t = new Thread(() -> { try { Thread.sleep(60_000); }"
                    + " catch (InterruptedException e) { return; } }); t.setDaemon(true); t.start(); }",
            true),
    LEAVES_A_THREAD(
            "leaves a thread running",
            "new Thread(() -> { while (on()) { Thread.onSpinWait(); } }, \"worker\").start();"),
    RECURSES("calls itself without end", "act(task);"),
    FLOODS_OUTPUT("floods its output", "while (on()) { System.out.println(\"more\"); }"),
    FLOODS_THE_DESCRIPTOR(
            "floods standard error past Java's stream",
            "java.io.OutputStream o = new java.io.FileOutputStream(java.io.FileDescriptor.err);"
                    + " while (on()) { o.write(new byte[4096]); }"),
    FORGES_FRAMES(
            "writes messages that it made up",
            "new java.io.FileOutputStream(java.io.FileDescriptor.out).write((\"HGF1\" + \"0123456789abcdef\""
                    + " + \"A\\0\\0\\0\\1\\0\\0\\0\\4good\").getBytes());"),
    READS_REQUESTS(
            "reads the messages that are meant for its process",
            "while (on()) { new java.io.FileInputStream(java.io.FileDescriptor.in).read(); }"),
    CLOSES_DESCRIPTORS(
            "closes its descriptors",
            "new java.io.FileOutputStream(java.io.FileDescriptor.out).close();"
                    + " new java.io.FileInputStream(java.io.FileDescriptor.in).close();"),
    READS_A_FILE(
            "reads a file of the account", said("java.nio.file.Files.readString(java.nio.file.Path.of(\"@file\"))")),
    WRITES_A_FILE(
            "writes a file of the account",
            said("java.nio.file.Files.writeString(java.nio.file.Path.of(\"@file-2\"), \"x\")")),
    LINKS_OUT(
            "leaves links to files of the account in its folder",
            said("java.nio.file.Files.createSymbolicLink(java.nio.file.Path.of(\"link\" + task.position().x()),"
                    + " java.nio.file.Path.of(\"@folder\"))")),
    WRITES_A_HUGE_FILE("writes one huge file", said("huge()"), true),
    FILLS_THE_DISK("writes files without end (96 MiB here)", said("many()")),
    CONNECTS("opens a connection", said("new java.net.Socket(\"127.0.0.1\", @port).isConnected()")),
    STARTS_A_PROGRAM(
            "starts a program and waits for it", said("new ProcessBuilder(\"/bin/sleep\", \"0\").start().waitFor()")),
    DETACHES(
            "starts a program that detaches itself",
            said("new ProcessBuilder(\"/bin/sh\", \"-c\", \"setsid sleep @sleep </dev/null >/dev/null 2>&1 &\").start()"
                    + ".waitFor()")),
    DETACHES_MANY(
            "starts programs that start programs",
            said("new ProcessBuilder(\"/bin/sh\", \"-c\", \"for i in 1 2 3 4 5 6 7 8; do (for j in 1 2 3 4 5 6 7 8; do"
                    + " setsid sleep @sleep </dev/null >/dev/null 2>&1 & done) & done\").start().waitFor()"));

    private static final String MEMBERS = """
            static String tried(java.util.concurrent.Callable<Object> act) {
                try { return "did " + act.call(); } catch (Exception e) { return "could not"; }
            }
            static Object huge() throws java.io.IOException {
                try (java.io.OutputStream o = java.nio.file.Files.newOutputStream(java.nio.file.Path.of("huge"))) {
                    for (int i = 0; i < 96; i++) { o.write(new byte[1 << 20]); }
                }
                return 96;
            }
            static Object many() throws java.io.IOException {
                for (int i = 0; i < 96; i++) {
                    java.nio.file.Files.write(java.nio.file.Path.of("f" + i), new byte[1 << 20]);
                }
                return 96;
            }
            """;

    private final String words;
    private final String act;
    private final boolean needsBounds;

    Deed(String words, String act) {
        this(words, act, false);
    }

    Deed(String words, String act, boolean needsBounds) {
        this.words = words;
        this.act = act;
        this.needsBounds = needsBounds;
    }

    private static String said(String expression) {
        return "if (on()) { throw new IllegalStateException(tried(() -> " + expression + ")); }";
    }

    /** {@return what it does, after "A head that"} */
    String words() {
        return words;
    }

    /** {@return true if it is bounded by prlimit where there is no other bound} */
    boolean needsBounds() {
        return needsBounds;
    }

    /** {@return source of a head that does it at every task; names that begin with @ are to be replaced} */
    String source() {
        return Heads.acting(
                MEMBERS,
                "try { " + act + " } catch (RuntimeException e) { throw e; }"
                        + " catch (Exception e) { throw new IllegalStateException(\"\" + e); }\nreturn plain(task);");
    }
}
