package headgate.testkit.jar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packages that break the contract fail its tests; the samples show that good ones pass. */
class HeadJarContractTest {

    private static final String HEAD = """
            package test;

            import headgate.api.answer.Engagement;
            import headgate.api.head.ContinuousHead;
            import headgate.api.sheet.HeadSheet;
            import headgate.api.task.RowTask;
            import org.pf4j.Extension;

            @Extension
            public final class Head implements ContinuousHead {
                @Override
                public HeadSheet sheet() {
                    SHEET
                }

                @Override
                public Engagement engage(RowTask task) {
                    return Engagement.decline("not run");
                }
            }
            """;

    private static List<DynamicTest> tests(Path jar) {
        return new HeadJarContract(() -> jar) {}.keepsItsContract().toList();
    }

    @Test
    void aFileThatIsNoPackageFails(@TempDir Path folder) throws IOException {
        List<DynamicTest> tests = tests(Files.writeString(folder.resolve("head.jar"), "not an archive"));
        assertThat(tests).hasSize(1);
        assertThatThrownBy(() -> tests.get(0).getExecutable().execute())
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("head.jar");
    }

    @Test
    void aPackageWithoutAnIndexFails(@TempDir Path folder) {
        Path jar = new HeadJarBuilder()
                .head("test.Head", HEAD.replace("SHEET", "throw new IllegalStateException();"))
                .withoutIndex()
                .writeTo(folder.resolve("head.jar"));
        List<DynamicTest> tests = tests(jar);
        assertThat(tests).hasSize(1);
        assertThatThrownBy(() -> tests.get(0).getExecutable().execute()).hasMessageContaining("extensions.idx");
    }

    @Test
    void aHeadThatBreaksBeforeItsSheetIsSaidToDoSo(@TempDir Path folder) {
        Path jar = new HeadJarBuilder()
                .head("test.Head", HEAD.replace("SHEET", "throw new IllegalStateException(\"no sheet today\");"))
                .writeTo(folder.resolve("head.jar"));
        assertThatThrownBy(() -> tests(jar))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no sheet today")
                .hasMessageContaining("when asked for its sheet");
    }

    @Test
    void withoutTheBuildsPropertyItSaysWhatToSet() {
        assertThatThrownBy(HeadJarContract::built)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("set the system property headgate.jar to the path of the built package");
    }
}
