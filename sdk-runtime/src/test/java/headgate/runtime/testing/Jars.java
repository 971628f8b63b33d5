package headgate.runtime.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Compiles sources in memory and packs JARs, well formed or not. */
public final class Jars {

    private Jars() {}

    /** The manifest of a good package. */
    public static SortedMap<String, String> manifest() {
        return new TreeMap<>(Map.of(
                "Manifest-Version", "1.0",
                "Plugin-Id", "test.head",
                "Plugin-Version", "1.2.3",
                "Plugin-Provider", "Test bench",
                "Plugin-Requires", ">=0.1.0 & <0.2.0"));
    }

    /** A good package with the classes of one source; {@code head} is its extension. */
    public static byte[] of(String head, String source) {
        return of(manifest(), head, compile(head, source));
    }

    public static byte[] of(Map<String, String> manifest, String head, Map<String, byte[]> classes) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("META-INF/MANIFEST.MF", manifestBytes(manifest));
        entries.put("META-INF/extensions.idx", ("# Generated\n" + head + "\n").getBytes(StandardCharsets.UTF_8));
        entries.putAll(classes);
        return zip(entries);
    }

    public static byte[] manifestBytes(Map<String, String> manifest) {
        StringBuilder text = new StringBuilder();
        manifest.forEach((k, v) -> text.append(k).append(": ").append(v).append("\r\n"));
        return text.append("\r\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    public static byte[] zip(Map<String, byte[]> entries) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> e : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(e.getKey()));
                zip.write(e.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Class files by entry name. */
    public static SortedMap<String, byte[]> compile(String name, String source) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
        SortedMap<String, byte[]> classes = new TreeMap<>();
        try (StandardJavaFileManager standard = compiler.getStandardFileManager(diagnostics, Locale.ROOT, null)) {
            JavaFileManager files = new ForwardingJavaFileManager<>(standard) {
                @Override
                public JavaFileObject getJavaFileForOutput(
                        Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
                    String entry = className.replace('.', '/') + ".class";
                    return new SimpleJavaFileObject(URI.create("memory:///" + entry), kind) {
                        @Override
                        public OutputStream openOutputStream() {
                            return new ByteArrayOutputStream() {
                                @Override
                                public void close() {
                                    classes.put(entry, toByteArray());
                                }
                            };
                        }
                    };
                }
            };
            JavaFileObject file =
                    new SimpleJavaFileObject(
                            URI.create("memory:///" + name.replace('.', '/') + ".java"), JavaFileObject.Kind.SOURCE) {
                        @Override
                        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                            return source;
                        }
                    };
            List<String> options = new ArrayList<>(
                    List.of("-proc:none", "--release", "17", "-cp", System.getProperty("java.class.path")));
            if (!compiler.getTask(null, files, diagnostics, options, null, List.of(file))
                    .call()) {
                throw new IllegalArgumentException(diagnostics.getDiagnostics().toString());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return classes;
    }
}
