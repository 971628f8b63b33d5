package headgate.runtime.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The reference page says the limits and attributes that the code has. */
class HeadPackagePageTest {

    private static final Path PAGE = Path.of("..", "docs", "reference", "head-package.md");

    @Test
    void thePageHasEveryLimitAndAttribute() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(page)
                .contains("| file | " + PackageLimits.FILE + " bytes |")
                .contains("| entries | " + PackageLimits.ENTRIES + " |")
                .contains("| one entry, unpacked | " + PackageLimits.ENTRY + " bytes |")
                .contains("| all entries, unpacked | " + PackageLimits.TOTAL + " bytes |")
                .contains("more than " + PackageLimits.RATIO_FREE + " bytes | " + PackageLimits.RATIO + "-fold |")
                .contains("| name of an entry | " + PackageLimits.NAME + " bytes |")
                .contains("at most " + PackageLimits.TEXT + " bytes")
                .contains("class files of Java " + (ClassFile.OLDEST - 44) + " to " + (ClassFile.NEWEST - 44));
        List<String> missing = HeadPackage.forbiddenAttributes().stream()
                .filter(each -> !page.contains('`' + each + '`'))
                .toList();
        assertThat(missing).isEmpty();
    }
}
