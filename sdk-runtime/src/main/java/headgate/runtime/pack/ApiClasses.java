package headgate.runtime.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The classes of the head API, read from their bytes as those of a package are, so that a reference to something that the
 * API does not have is told before anything runs.
 */
final class ApiClasses {

    private static final String PREFIX = "headgate/api/";
    private static final Map<String, Optional<ClassFile>> READ = new ConcurrentHashMap<>();

    private ApiClasses() {}

    /**
     * Finds a class.
     *
     * @param internalName its name, with slashes
     * @return the class, or empty if the head API has none of that name
     */
    static Optional<ClassFile> find(String internalName) {
        if (!internalName.startsWith(PREFIX)) {
            return Optional.empty();
        }
        // What is not there is not kept: a package chooses the names that are asked for.
        Optional<ClassFile> known = READ.get(internalName);
        if (known != null) {
            return known;
        }
        Optional<ClassFile> read = read(internalName);
        if (read.isPresent()) {
            READ.put(internalName, read);
        }
        return read;
    }

    private static Optional<ClassFile> read(String internalName) {
        try (InputStream in = ApiClasses.class.getResourceAsStream("/" + internalName + ".class")) {
            return in == null ? Optional.empty() : Optional.of(new ClassFile(in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException("the head API of this program cannot be read", e);
        }
    }
}
