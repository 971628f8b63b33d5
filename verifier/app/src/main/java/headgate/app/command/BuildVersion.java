package headgate.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** The version that the build wrote down. */
final class BuildVersion {

    private BuildVersion() {}

    static String read() {
        Properties build = new Properties();
        try (InputStream in = BuildVersion.class.getResourceAsStream("/headgate/app/build.properties")) {
            build.load(Objects.requireNonNull(in, "build.properties is missing from the program"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return Objects.requireNonNull(build.getProperty("version"), "version is missing from build.properties");
    }
}
