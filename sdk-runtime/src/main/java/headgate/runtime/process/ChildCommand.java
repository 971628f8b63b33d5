package headgate.runtime.process;

import java.io.File;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The command line of a head process: the same Java as ours, as few classes as it needs, and every bound that there is. */
final class ChildCommand {

    /** System property: the class path of the child, if not found by itself. */
    static final String CLASS_PATH = "headgate.child.classpath";

    /** System property: a class-data archive for the child. A missing or stale one costs time and nothing else. */
    static final String ARCHIVE = "headgate.child.archive";

    /** System property: where a child that ends in order writes a class-data archive. */
    static final String WRITE_ARCHIVE = "headgate.child.archive.make";

    private static final String MAIN = "headgate.runtime.child.HeadChild";
    private static final String ORDERLY_END = "headgate.child.orderly-end";

    /** One class of each library that the child needs; by name, so that none of them is loaded here. */
    private static final List<String> NEEDED = List.of(
            "headgate/runtime/child/HeadChild.class",
            "headgate/api/head/ToolHead.class",
            "org/pf4j/PluginManager.class",
            "org/slf4j/Logger.class",
            "org/slf4j/nop/NOPServiceProvider.class",
            "com/github/zafarkhaja/semver/Version.class");

    /**
     * How the names of the JDK's classes begin that read in which order to run through a set or a map. They stay
     * interpreted; their lists do not, since a head and the head API make lists at every answer.
     */
    static final List<String> SALTED =
            List.of("java/util/ImmutableCollections$Set", "java/util/ImmutableCollections$Map");

    private ChildCommand() {}

    /**
     * Makes the command line.
     *
     * @param limits what the process may use
     * @param surroundings what the head must not depend on
     * @param scratch its folder, as the process sees it
     * @param clears true if the process removes that folder when its parent is gone
     */
    static List<String> of(HeadLimits limits, Surroundings surroundings, String scratch, boolean clears) {
        List<String> command = new ArrayList<>();
        command.add(home().resolve("bin/java").toString());
        command.addAll(List.of(
                "-Xmx" + (limits.heapMegabytes() + surroundings.moreHeapMegabytes()) + "m",
                "-Xss" + limits.stackKilobytes() + "k",
                "-XX:MaxMetaspaceSize=" + limits.classMegabytes() + "m",
                "-XX:CompressedClassSpaceSize=" + limits.classMegabytes() + "m",
                "-XX:MaxDirectMemorySize=8m",
                "-XX:+ExitOnOutOfMemoryError",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                // Nothing of the virtual machine on standard output, and nothing left on disk.
                "-Xshare:auto",
                "-Xlog:disable",
                "-Xlog:all=error:stderr",
                "-XX:+DisplayVMOutputToStderr",
                "-XX:-UsePerfData",
                "-XX:ErrorFile=/dev/null",
                "-XX:-CreateCoredumpOnCrash",
                "-XX:+DisableAttachMechanism",
                "-Dfile.encoding=UTF-8",
                "-Djava.io.tmpdir=" + scratch));
        // Compiled early, the JDK's sets would keep the order that it drew for them; see the child's Salt.
        command.add("-XX:CompileCommand=quiet");
        for (String salted : SALTED) {
            command.add("-XX:CompileCommand=exclude," + salted + "*.*");
            command.add("-XX:CompileCommand=dontinline," + salted + "*.*");
        }
        // The same surroundings on every machine.
        command.addAll(surroundings.flags());
        String write = System.getProperty(WRITE_ARCHIVE, "");
        String archive = System.getProperty(ARCHIVE, "");
        if (!write.isEmpty()) {
            command.add("-XX:ArchiveClassesAtExit=" + write);
            command.add("-D" + ORDERLY_END + "=true");
        } else if (!archive.isEmpty()) {
            command.add("-XX:SharedArchiveFile=" + archive);
        }
        command.addAll(List.of(
                "-cp",
                classPath(),
                MAIN,
                Long.toString(limits.outputBytes()),
                Long.toString(surroundings.salt()),
                clears ? "clear" : "keep"));
        return command;
    }

    private static Path home() {
        return Path.of(System.getProperty("java.home"));
    }

    /**
     * Everything that the process reads: Java, where Java's own files point to (some distributions keep its settings
     * elsewhere), the class path and the class-data archive.
     *
     * @return files and folders; not all of them need exist
     */
    static List<String> places() {
        Set<String> places = new LinkedHashSet<>();
        places.add(home().toString());
        for (String pointing : List.of("lib/jvm.cfg", "conf/security/java.security", "lib/libjava.so")) {
            try {
                Path real = home().resolve(pointing).toRealPath();
                if (!real.startsWith(home()) && real.getParent() != null) {
                    places.add(real.getParent().toString());
                }
            } catch (IOException e) {
                // Then this Java does not have it, and does without.
            }
        }
        places.addAll(List.of(classPath().split(File.pathSeparator, -1)));
        String archive = System.getProperty(ARCHIVE, "");
        if (!archive.isEmpty()) {
            places.add(archive);
        }
        return List.copyOf(places);
    }

    static boolean endsInOrder() {
        return !System.getProperty(WRITE_ARCHIVE, "").isEmpty();
    }

    private static String classPath() {
        String given = System.getProperty(CLASS_PATH, "");
        if (!given.isEmpty()) {
            return given;
        }
        Set<String> places = new LinkedHashSet<>();
        for (String needed : NEEDED) {
            places.add(placeOf(needed));
        }
        return String.join(File.pathSeparator, places);
    }

    private static String placeOf(String resource) {
        URL url = ChildCommand.class.getClassLoader().getResource(resource);
        if (url == null) {
            throw new IllegalStateException(resource + " is missing from the class path of this program");
        }
        try {
            URLConnection connection = url.openConnection();
            if (connection instanceof JarURLConnection jar) {
                return Path.of(jar.getJarFileURL().toURI()).toString();
            }
            Path file = Path.of(url.toURI());
            int depth = resource.split("/", -1).length;
            return file.getRoot()
                    .resolve(file.subpath(0, file.getNameCount() - depth))
                    .toString();
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("cannot find where " + resource + " comes from", e);
        }
    }
}
