package headgate.testkit.jar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.PackageProblem;
import headgate.runtime.pack.PackageProblem.Kind;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeadJarBuilderTest {

    /** The least that is a head by its bytes; it is not run here. */
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
                    throw new IllegalStateException("not run");
                }

                @Override
                public Engagement engage(RowTask task) {
                    return Engagement.decline("not run");
                }
            }
            """;

    private static HeadJarBuilder builder() {
        return new HeadJarBuilder().head("test.Head", HEAD);
    }

    private static Inspection.Inspected inspect(HeadJarBuilder builder) {
        return (Inspection.Inspected) HeadPackage.inspect(builder.bytes());
    }

    @Test
    void makesAPackageThatTheVerifierAccepts() {
        Inspection.Inspected inspected = inspect(builder());
        assertThat(inspected.facts().problems()).isEmpty();
        assertThat(inspected.facts().id()).contains("test.head");
        assertThat(inspected.facts().extension()).contains("test.Head");
        assertThat(inspected.facts().classNames()).containsExactly("test.Head");
        assertThat(inspected.clean()).isPresent();
    }

    @Test
    void makesTheSameBytesTwice() {
        assertThat(builder().bytes()).isEqualTo(builder().bytes());
    }

    @Test
    void leavesOutWhatItIsToldTo() {
        assertThat(inspect(builder().withoutManifest()).facts().problemsOf(Kind.MANIFEST))
                .isNotEmpty();
        assertThat(inspect(builder().withoutIndex()).facts().problemsOf(Kind.EXTENSION))
                .isNotEmpty();
        assertThat(inspect(builder().withoutAttribute("Plugin-Version")).facts().problemsOf(Kind.MANIFEST))
                .extracting(PackageProblem::where)
                .anyMatch(where -> where.contains("Plugin-Version"));
        assertThat(inspect(builder().listed("test.Nobody")).facts().problemsOf(Kind.EXTENSION))
                .isNotEmpty();
        assertThat(inspect(builder().attribute("Plugin-Requires", ">=9.0.0 & <10.0.0"))
                        .facts()
                        .problemsOf(Kind.API_RANGE))
                .isNotEmpty();
    }

    @Test
    void foldsLongAttributesAsTheFileFormatAsks() throws IOException {
        String provider = "a provider with a name that goes on for much longer than one line of a manifest may, "
                + "and then on again over a second one until nobody reads it";
        byte[] jar = builder().attribute("Plugin-Provider", provider).bytes();
        try (JarInputStream in = new JarInputStream(new ByteArrayInputStream(jar))) {
            assertThat(in.getManifest().getMainAttributes().getValue("Plugin-Provider"))
                    .isEqualTo(provider);
        }
    }

    @Test
    void addsEntriesAsTheyAreAndWritesAFile(@TempDir Path folder) throws IOException {
        byte[] notes = "notes".getBytes(StandardCharsets.UTF_8);
        Path file = builder().entry("notes.txt", notes).writeTo(folder.resolve("head.jar"));
        assertThat(Files.size(file)).isPositive();
        Inspection.Inspected inspected = (Inspection.Inspected) HeadPackage.inspect(file);
        assertThat(inspected.facts().entries()).contains("notes.txt", HeadJarBuilder.INDEX, HeadJarBuilder.MANIFEST);
    }

    @Test
    void saysWhyASourceDoesNotCompile() {
        assertThatThrownBy(() -> new HeadJarBuilder()
                        .source("test.Bad", "package test; class Bad { int x = nothing; }")
                        .bytes())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the sources do not compile: ")
                .hasMessageContaining("nothing");
    }
}
