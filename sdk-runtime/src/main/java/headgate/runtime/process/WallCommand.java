package headgate.runtime.process;

import headgate.runtime.scratch.ScratchFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * A head process's command with what the operating system holds it with around it.
 *
 * @param command the whole command
 * @param scratch the process's folder on this machine, for us to remove; empty if it lies behind the wall and goes with it
 */
record WallCommand(List<String> command, Optional<ScratchFolder> scratch) {

    /** Where a walled process sees its folder, the same on every machine. */
    private static final String INSIDE = "/scratch";

    /** A folder that every Linux has and no Java needs: behind a wall by unshare it is hidden by an empty one. */
    private static final String COVERED = "/dev/shm";

    /** Folders with the libraries that Java itself needs. */
    private static final List<String> LIBRARIES =
            List.of("/lib", "/lib64", "/usr/lib", "/usr/lib64", "/nix/store", "/gnu/store");

    private static final int MEBI = 1 << 20;

    /** What a virtual machine takes besides heap and classes: code, stacks, its own tables. Measured 90 MiB; doubled. */
    private static final int OTHER_MEGABYTES = 192;

    /**
     * Makes the command.
     *
     * @param wall what holds the process
     * @param limits what it may use
     * @param surroundings what the head must not depend on
     * @param tools finds the programs that make the wall
     * @return the command; empty if this machine has not got what the wall takes
     * @throws IOException if no folder can be made for the process
     */
    static Optional<WallCommand> of(Wall wall, HeadLimits limits, Surroundings surroundings, Tools tools)
            throws IOException {
        if (ChildCommand.endsInOrder()) {
            // It writes an archive when it ends: a run with our own heads, which no wall and no bound must cut short.
            return Optional.of(bare(List.of(), limits, surroundings, tools));
        }
        List<String> bounds = bounds(limits, surroundings, tools);
        return switch (wall) {
            case BWRAP -> tools.find("bwrap").map(tool -> bwrap(tool, bounds, limits, surroundings));
            case UNSHARE ->
                tools.find("unshare").flatMap(tool -> tools.find("setpriv")
                        .map(cut -> unshare(tool, cut, bounds, limits, surroundings)));
            case NONE -> Optional.of(bare(bounds, limits, surroundings, tools));
        };
    }

    /** Bounds by the system on the process and on whatever it starts: processor, memory, descriptors, size of a file. */
    private static List<String> bounds(HeadLimits limits, Surroundings surroundings, Tools tools) {
        Optional<String> tool = tools.find("prlimit");
        if (tool.isEmpty()) {
            return List.of();
        }
        long memory = (long) MEBI
                * (limits.heapMegabytes()
                        + surroundings.moreHeapMegabytes()
                        + limits.classMegabytes()
                        + OTHER_MEGABYTES);
        long seconds = limits.processor().toSeconds();
        return List.of(
                tool.get(),
                "--cpu=" + seconds + ":" + (seconds + 1),
                "--data=" + memory,
                "--fsize=" + (long) MEBI * limits.scratchMegabytes(),
                "--nofile=256",
                "--core=0");
    }

    private static WallCommand bwrap(String tool, List<String> bounds, HeadLimits limits, Surroundings surroundings) {
        List<String> command = new ArrayList<>(bounds);
        command.addAll(List.of(
                tool,
                "--unshare-all",
                "--die-with-parent",
                "--new-session",
                "--cap-drop",
                "ALL",
                "--hostname",
                "head",
                "--proc",
                "/proc",
                "--dev",
                "/dev"));
        for (String library : LIBRARIES) {
            command.addAll(List.of("--ro-bind-try", library, library));
        }
        for (String place : ChildCommand.places()) {
            command.addAll(List.of("--ro-bind-try", place, place));
        }
        command.addAll(List.of(
                "--size",
                Long.toString((long) MEBI * limits.scratchMegabytes()),
                "--tmpfs",
                INSIDE,
                "--remount-ro",
                "/dev",
                "--remount-ro",
                "/",
                "--chdir",
                INSIDE));
        command.addAll(ChildCommand.of(limits, surroundings, INSIDE, false));
        return new WallCommand(List.copyOf(command), Optional.empty());
    }

    /**
     * Takes all rights away again once the folder is covered: the head could uncover it with them. The shell stays the first
     * process behind the wall: the system spares the first one most signals, that for used up processor time among them.
     */
    private static WallCommand unshare(
            String tool, String setpriv, List<String> bounds, HeadLimits limits, Surroundings surroundings) {
        List<String> command = new ArrayList<>(bounds);
        command.addAll(List.of(
                setpriv,
                "--pdeathsig",
                "KILL",
                tool,
                "--user",
                "--map-root-user",
                "--mount",
                "--net",
                "--pid",
                "--ipc",
                "--uts",
                "--fork",
                "--kill-child",
                "sh",
                "-c",
                "mount -t tmpfs -o size=" + limits.scratchMegabytes() + "m,mode=700 head " + COVERED + " && cd "
                        + COVERED
                        + " && env -i PWD=" + COVERED
                        + " \"$0\" --no-new-privs --bounding-set=-all --inh-caps=-all --ambient-caps=-all \"$@\"; exit $?",
                setpriv));
        command.addAll(ChildCommand.of(limits, surroundings, COVERED, false));
        return new WallCommand(List.copyOf(command), Optional.empty());
    }

    /**
     * The folder is made by a shell that then turns into Java: were it made here, this program could be killed between
     * making it and starting whoever removes it.
     */
    private static WallCommand bare(List<String> bounds, HeadLimits limits, Surroundings surroundings, Tools tools)
            throws IOException {
        Optional<String> shell = tools.find("sh");
        ScratchFolder scratch = new ScratchFolder(name());
        if (shell.isEmpty()) {
            Files.createDirectory(scratch.directory());
        }
        List<String> command = new ArrayList<>(bounds);
        shell.ifPresent(sh -> command.addAll(List.of(
                sh,
                "-c",
                "mkdir -m 700 -- \"$0\" && cd -- \"$0\" && exec env -i PWD=\"$0\" \"$@\"",
                scratch.directory().toString())));
        command.addAll(ChildCommand.of(limits, surroundings, scratch.directory().toString(), true));
        return new WallCommand(List.copyOf(command), Optional.of(scratch));
    }

    private static Path name() {
        byte[] random = new byte[8];
        new SecureRandom().nextBytes(random);
        return Path.of(
                        System.getProperty("java.io.tmpdir"),
                        "headgate-head-" + HexFormat.of().formatHex(random))
                .toAbsolutePath();
    }
}
