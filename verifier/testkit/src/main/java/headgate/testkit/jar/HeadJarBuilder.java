package headgate.testkit.jar;

import headgate.api.head.ToolHead;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.pf4j.Extension;

/**
 * Makes a head package from source text: compiles it in memory against sdk-api, and packs classes, manifest and index.
 * Every part can be left out or replaced, so that broken packages are as easy as good ones. The same calls give the same
 * bytes under one JDK.
 */
public final class HeadJarBuilder {

    /** Where the names of a package's extensions stand. */
    public static final String INDEX = "META-INF/extensions.idx";

    /** Where the manifest stands. */
    public static final String MANIFEST = "META-INF/MANIFEST.MF";

    private static final LocalDateTime STAMP = LocalDateTime.of(2026, 1, 1, 0, 0);

    private final Map<String, String> sources = new LinkedHashMap<>();
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final Map<String, byte[]> entries = new LinkedHashMap<>();
    private final List<String> heads = new ArrayList<>();
    private boolean manifest = true;
    private boolean index = true;

    /** Begins a package with a complete manifest: id {@code test.head}, version 0.1.0, for API 0.1. */
    public HeadJarBuilder() {
        attributes.put("Plugin-Id", "test.head");
        attributes.put("Plugin-Version", "0.1.0");
        attributes.put("Plugin-Provider", "tests");
        attributes.put("Plugin-Requires", ">=0.1.0 & <0.2.0");
    }

    /**
     * Adds the source of a head and names it in the index.
     *
     * @param className full name of the class
     * @param source text of the file
     * @return this builder
     */
    public HeadJarBuilder head(String className, String source) {
        heads.add(className);
        return source(className, source);
    }

    /**
     * Adds the source of a class that is no head.
     *
     * @param className full name of the class
     * @param source text of the file
     * @return this builder
     */
    public HeadJarBuilder source(String className, String source) {
        sources.put(className, source);
        return this;
    }

    /**
     * Names a class in the index without adding it.
     *
     * @param className any text
     * @return this builder
     */
    public HeadJarBuilder listed(String className) {
        heads.add(className);
        return this;
    }

    /**
     * Sets an attribute of the manifest.
     *
     * @param name name of the attribute
     * @param value its value
     * @return this builder
     */
    public HeadJarBuilder attribute(String name, String value) {
        attributes.put(name, value);
        return this;
    }

    /**
     * Leaves an attribute out of the manifest.
     *
     * @param name name of the attribute
     * @return this builder
     */
    public HeadJarBuilder withoutAttribute(String name) {
        attributes.remove(name);
        return this;
    }

    /**
     * Leaves the manifest out.
     *
     * @return this builder
     */
    public HeadJarBuilder withoutManifest() {
        manifest = false;
        return this;
    }

    /**
     * Leaves the index out.
     *
     * @return this builder
     */
    public HeadJarBuilder withoutIndex() {
        index = false;
        return this;
    }

    /**
     * Adds an entry as it is.
     *
     * @param name its name in the package
     * @param content its bytes
     * @return this builder
     */
    public HeadJarBuilder entry(String name, byte[] content) {
        entries.put(name, content.clone());
        return this;
    }

    /**
     * Makes the package.
     *
     * @return its bytes
     * @throws IllegalArgumentException if a source does not compile, with the compiler's messages
     */
    public byte[] bytes() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        if (manifest) {
            all.put(MANIFEST, manifestText().getBytes(StandardCharsets.UTF_8));
        }
        if (index) {
            all.put(INDEX, String.join("\n", heads).concat("\n").getBytes(StandardCharsets.UTF_8));
        }
        if (!sources.isEmpty()) {
            new TreeMap<>(compile()).forEach((name, code) -> all.put(name.replace('.', '/') + ".class", code));
        }
        all.putAll(entries);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : all.entrySet()) {
                ZipEntry header = new ZipEntry(entry.getKey());
                header.setTimeLocal(STAMP);
                zip.putNextEntry(header);
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /**
     * Makes the package as a file.
     *
     * @param file where to; its folder must exist
     * @return the file
     * @throws IllegalArgumentException if a source does not compile, with the compiler's messages
     * @throws UncheckedIOException if the file cannot be written
     */
    public Path writeTo(Path file) {
        try {
            return Files.write(file, bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A line of a manifest holds at most 72 bytes; the rest goes on after a space (JAR file specification). */
    private String manifestText() {
        StringBuilder text = new StringBuilder("Manifest-Version: 1.0\r\n");
        attributes.forEach((name, value) -> {
            String line = name + ": " + value;
            text.append(line, 0, Math.min(72, line.length())).append("\r\n");
            for (int at = 72; at < line.length(); at += 71) {
                text.append(' ')
                        .append(line, at, Math.min(at + 71, line.length()))
                        .append("\r\n");
            }
        });
        return text.append("\r\n").toString();
    }

    private Map<String, byte[]> compile() {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        if (compiler == null) {
            throw new IllegalStateException("this is a Java runtime without a compiler; run the tests on a JDK");
        }
        DiagnosticCollector<JavaFileObject> messages = new DiagnosticCollector<>();
        try (StandardJavaFileManager standard =
                        compiler.getStandardFileManager(messages, Locale.ROOT, StandardCharsets.UTF_8);
                InMemory files = new InMemory(standard)) {
            List<JavaFileObject> units = sources.entrySet().stream()
                    .<JavaFileObject>map(e -> new Source(e.getKey(), e.getValue()))
                    .toList();
            List<String> options = List.of("-proc:none", "-nowarn", "--release", "17", "-cp", classPath());
            boolean done = compiler.getTask(null, files, messages, options, null, units)
                    .call();
            if (!done) {
                throw new IllegalArgumentException(messages.getDiagnostics().stream()
                        .filter(d -> d.getKind() == Diagnostic.Kind.ERROR)
                        .map(d -> d.getMessage(Locale.ROOT))
                        .collect(Collectors.joining("; ", "the sources do not compile: ", "")));
            }
            return files.classes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where sdk-api and the annotation come from: what a head may be compiled against, and nothing else. */
    private static String classPath() {
        return location(ToolHead.class) + System.getProperty("path.separator") + location(Extension.class);
    }

    private static String location(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the class path holds an address that is no path", e);
        }
    }

    private static final class Source extends SimpleJavaFileObject {

        private final String text;

        Source(String className, String text) {
            super(URI.create("memory:///" + className.replace('.', '/') + Kind.SOURCE.extension), Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }

    private static final class Compiled extends SimpleJavaFileObject {

        private final ByteArrayOutputStream code = new ByteArrayOutputStream();

        Compiled(String className) {
            super(URI.create("memory:///" + className.replace('.', '/') + Kind.CLASS.extension), Kind.CLASS);
        }

        @Override
        public ByteArrayOutputStream openOutputStream() {
            return code;
        }
    }

    private static final class InMemory extends ForwardingJavaFileManager<JavaFileManager> {

        private final Map<String, Compiled> compiled = new LinkedHashMap<>();

        InMemory(JavaFileManager standard) {
            super(standard);
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
            return compiled.computeIfAbsent(className, Compiled::new);
        }

        Map<String, byte[]> classes() {
            Map<String, byte[]> classes = new LinkedHashMap<>();
            compiled.forEach((name, file) -> classes.put(name, file.code.toByteArray()));
            return classes;
        }
    }
}
