package headgate.runtime.fuzz;

import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.Inspection.Inspected;
import headgate.runtime.pack.PackageProblem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * What the fuzzer drives: any bytes as a package, or as one part of an archive that is right, since no fuzzer guesses
 * checksums. Whatever is passed on is what our own writer writes, and passes again.
 */
public final class PackageTarget {

    /** What the bytes after the first are taken for; the first byte chooses. */
    enum Part {
        ARCHIVE('a'),
        HEAD('h'),
        MANIFEST('m'),
        INDEX('i');

        private final byte mark;

        Part(char mark) {
            this.mark = (byte) mark;
        }

        static Part of(byte mark) {
            return Arrays.stream(values())
                    .filter(each -> each.mark == mark)
                    .findFirst()
                    .orElse(HEAD);
        }
    }

    static final String NAME = "partner/TestHead";

    private static final byte[] GOOD_MANIFEST = """
            Manifest-Version: 1.0
            Plugin-Id: test.head
            Plugin-Version: 1.2.3
            Plugin-Provider: Test bench
            Plugin-Requires: >=0.1.0 & <0.2.0

            """.getBytes(StandardCharsets.UTF_8);

    private static final byte[] GOOD_INDEX = "partner.TestHead\n".getBytes(StandardCharsets.UTF_8);

    private PackageTarget() {}

    /**
     * Reads bytes.
     *
     * @param bytes any bytes
     */
    public static void fuzzerTestOneInput(byte[] bytes) {
        if (bytes.length < 1) {
            return;
        }
        byte[] rest = Arrays.copyOfRange(bytes, 1, bytes.length);
        switch (Part.of(bytes[0])) {
            case ARCHIVE -> look(rest);
            case HEAD -> look(archive(GOOD_MANIFEST, GOOD_INDEX, rest));
            case MANIFEST -> look(archive(rest, GOOD_INDEX, new byte[0]));
            case INDEX -> look(archive(GOOD_MANIFEST, rest, new byte[0]));
        }
    }

    private static void look(byte[] jar) {
        Inspection inspection = HeadPackage.inspect(jar);
        if (inspection instanceof Inspected inspected) {
            for (PackageProblem problem : inspected.facts().problems()) {
                checkText(problem.sentence());
            }
            inspected.clean().ifPresent(clean -> checkCopy(inspected, clean.bytes()));
        }
    }

    static void checkText(String sentence) {
        if (sentence.isBlank() || sentence.length() > 600 || sentence.chars().anyMatch(Character::isISOControl)) {
            throw new AssertionError("a sentence that is not one line: " + sentence);
        }
    }

    private static void checkCopy(Inspected inspected, byte[] copy) {
        Inspected again = (Inspected) HeadPackage.inspect(copy);
        if (!again.facts().problems().equals(inspected.facts().problems())
                || !Arrays.equals(again.clean().orElseThrow().bytes(), copy)) {
            throw new AssertionError("the clean copy is not what was looked at");
        }
    }

    static byte[] archive(byte[] manifest, byte[] index, byte[] head) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setMethod(ZipOutputStream.STORED);
            store(zip, "META-INF/MANIFEST.MF", manifest);
            store(zip, "META-INF/extensions.idx", index);
            store(zip, NAME + ".class", head);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void store(ZipOutputStream zip, String name, byte[] content) throws IOException {
        CRC32 crc = new CRC32();
        crc.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setSize(content.length);
        entry.setCrc(crc.getValue());
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    /** Bytes that make this part of an input. */
    static byte[] input(Part part, byte[] content) {
        byte[] input = new byte[content.length + 1];
        input[0] = part.mark;
        System.arraycopy(content, 0, input, 1, content.length);
        return input;
    }

    /** The right manifest and index, to begin with. */
    static byte[] good(Part part) {
        return part == Part.MANIFEST ? GOOD_MANIFEST.clone() : GOOD_INDEX.clone();
    }
}
