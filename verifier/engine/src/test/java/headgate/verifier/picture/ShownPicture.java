package headgate.verifier.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A picture in {@code docs/images} that is what the code draws. */
public final class ShownPicture {

    private ShownPicture() {}

    /**
     * Holds a picture to the code, or draws it anew where {@code -Dheadgate.docs.write=true} says so.
     *
     * @param name the file's name
     * @param drawn what the code draws
     */
    public static void assertShows(String name, String drawn) throws IOException {
        // Maven runs the tests in the module's folder.
        Path shown = Path.of("..", "..", "docs", "images", name);
        if (Boolean.getBoolean("headgate.docs.write")) {
            Files.writeString(shown, drawn, StandardCharsets.UTF_8);
        }
        assertThat(Files.readString(shown, StandardCharsets.UTF_8))
                .as("docs/images/%s; to draw it again run this test with -Dheadgate.docs.write=true", name)
                .isEqualTo(drawn);
    }
}
