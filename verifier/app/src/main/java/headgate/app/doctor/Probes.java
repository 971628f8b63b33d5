package headgate.app.doctor;

import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.Wall;
import headgate.runtime.process.Walls;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;

/** The list of probes, in the order of the report. */
public final class Probes {

    private Probes() {}

    /**
     * Lists the probes for this process.
     *
     * @param environment the environment variables
     * @return the probes
     */
    public static List<Probe> all(Map<String, String> environment) {
        Properties system = System.getProperties();
        return List.of(
                () -> JavaProbe.look(system),
                () -> MemoryProbe.look(Runtime.getRuntime().maxMemory()),
                () -> TextProbe.look(system),
                () -> FolderProbe.look("temporary files", Path.of(system.getProperty("java.io.tmpdir"))),
                () -> FolderProbe.look("cache", CacheFolder.of(environment, system)),
                () -> ArchiveProbe.look("start of the program", system.getProperty("headgate.archive", "")),
                () -> ArchiveProbe.look("start of a head", system.getProperty("headgate.child.archive", "")),
                () -> BoundsProbe.look(Walls.bounded()),
                new WallProbe(Wall.BWRAP, HeadProcess::tryOut),
                new WallProbe(Wall.UNSHARE, HeadProcess::tryOut));
    }
}
