package headgate.verifier.bench;

import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.Inspection.Inspected;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it costs to look at a package of 1, 40 and 700 classes in a process that has looked at many. The classes are
 * made up, each some 70 lines of arithmetic and collections.
 */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class InspectBenchmark {

    private static final int METHODS = 12;

    /** How many classes the package has, the head among them. */
    @Param({"1", "40", "700"})
    public int classes;

    private byte[] jar = {};

    /** Makes the package. */
    @Setup
    public void make() throws IOException {
        Map<String, String> sources = new TreeMap<>();
        sources.put("partner.Head", """
                package partner;
                @org.pf4j.Extension
                public class Head implements headgate.api.head.SpotHead {
                    public headgate.api.sheet.HeadSheet sheet() { return null; }
                    public headgate.api.answer.Action act(headgate.api.task.SpotTask task) { return null; }
                }
                """);
        for (int i = 1; i < classes; i++) {
            sources.put("partner.Part" + i, part(i));
        }
        Map<String, byte[]> entries = new TreeMap<>();
        compile(sources).forEach((name, code) -> entries.put(name.replace('.', '/') + ".class", code));
        entries.put("META-INF/MANIFEST.MF", ("Manifest-Version: 1.0\r\nPlugin-Id: bench\r\nPlugin-Version: 1.0.0\r\n"
                        + "Plugin-Provider: bench\r\nPlugin-Requires: >=0.1.0 & <0.2.0\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        entries.put("META-INF/extensions.idx", "partner.Head\n".getBytes(StandardCharsets.UTF_8));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> each : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(each.getKey()));
                zip.write(each.getValue());
                zip.closeEntry();
            }
        }
        jar = bytes.toByteArray();
        if (!(HeadPackage.inspect(jar.clone()) instanceof Inspected inspected)
                || !inspected.facts().problems().isEmpty()
                || inspected.facts().classNames().size() != classes) {
            throw new IllegalStateException("the package must have nothing wrong with it");
        }
    }

    private static String part(int number) {
        StringBuilder text = new StringBuilder("package partner;\nimport java.util.*;\nfinal class Part" + number + " {\n");
        for (int m = 0; m < METHODS; m++) {
            text.append("""
                    double work%d(List<Double> values, String name) {
                        Map<String, Double> sums = new TreeMap<>();
                        for (double each : values) { sums.merge(name + each, Math.hypot(each, %d), Double::sum); }
                        return sums.values().stream().mapToDouble(v -> Math.max(v, %d)).sum();
                    }
                    """.formatted(m, number, m));
        }
        return text.append("}\n").toString();
    }

    private static Map<String, byte[]> compile(Map<String, String> sources) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Map<String, ByteArrayOutputStream> made = new TreeMap<>();
        List<JavaFileObject> units = new ArrayList<>();
        sources.forEach((name, text) -> units.add(
                new SimpleJavaFileObject(
                        URI.create("memory:///" + name.replace('.', '/') + ".java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return text;
                    }
                }));
        JavaFileManager files =
                new ForwardingJavaFileManager<JavaFileManager>(compiler.getStandardFileManager(null, null, null)) {
                    @Override
                    public JavaFileObject getJavaFileForOutput(
                            Location location, String name, JavaFileObject.Kind kind, FileObject sibling) {
                        return new SimpleJavaFileObject(URI.create("memory:///" + name.replace('.', '/')), kind) {
                            @Override
                            public ByteArrayOutputStream openOutputStream() {
                                return made.computeIfAbsent(name, each -> new ByteArrayOutputStream());
                            }
                        };
                    }
                };
        List<String> options =
                List.of("-proc:none", "--release", "17", "-cp", System.getProperty("java.class.path"));
        if (!compiler.getTask(null, files, null, options, null, units).call()) {
            throw new IllegalStateException("the sources must compile");
        }
        Map<String, byte[]> classes = new TreeMap<>();
        made.forEach((name, code) -> classes.put(name, code.toByteArray()));
        return classes;
    }

    /** Once the process has looked at many. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Fork(1)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 3, time = 1)
    public Inspection warm() {
        return HeadPackage.inspect(jar);
    }
}
