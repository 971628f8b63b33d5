package headgate.app.doctor;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;

/** Where the program may keep what it can make again. */
final class CacheFolder {

    private CacheFolder() {}

    /** The XDG Base Directory Specification 0.8 names the variable and its default; a relative path there is to be ignored. */
    static Path of(Map<String, String> environment, Properties system) {
        String given = environment.getOrDefault("XDG_CACHE_HOME", "");
        Path base = given.startsWith("/") ? Path.of(given) : Path.of(system.getProperty("user.home"), ".cache");
        return base.resolve("headgate");
    }
}
