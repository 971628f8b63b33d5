package headgate.runtime.process;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds programs of the operating system. */
interface Tools {

    /** In the folders that the caller's PATH names, then in the usual ones. */
    Tools OF_MACHINE = name -> Stream.concat(
                    Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1)),
                    Stream.of("/usr/bin", "/bin", "/usr/sbin", "/sbin"))
            .filter(folder -> folder.startsWith("/"))
            .flatMap(folder -> at(folder, name))
            .findFirst();

    /** {@return the full path of a program that can be run} */
    Optional<String> find(String name);

    private static Stream<String> at(String folder, String name) {
        try {
            Path program = Path.of(folder, name);
            return Files.isRegularFile(program) && Files.isExecutable(program)
                    ? Stream.of(program.toString())
                    : Stream.empty();
        } catch (InvalidPathException e) {
            return Stream.empty();
        }
    }
}
