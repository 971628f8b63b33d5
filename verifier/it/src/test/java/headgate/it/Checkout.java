package headgate.it;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The checkout that the tests run in. */
public final class Checkout {

    private Checkout() {}

    /** {@return its top folder: the one above this module that holds the licence} */
    public static Path folder() {
        Path folder = Path.of("").toAbsolutePath();
        while (folder != null && !Files.isDirectory(folder.resolve(".licence"))) {
            folder = folder.getParent();
        }
        if (folder == null) {
            throw new IllegalStateException("these tests run in a checkout");
        }
        return folder;
    }

    /**
     * Reads a file of the checkout.
     *
     * @param name its path from the top
     * @return its text
     */
    public static String text(String name) {
        try {
            return Files.readString(folder().resolve(name), StandardCharsets.UTF_8);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
