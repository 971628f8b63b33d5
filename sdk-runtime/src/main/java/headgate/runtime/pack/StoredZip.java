package headgate.runtime.pack;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.zip.CRC32;

/**
 * Writes a ZIP archive without compression. Compressed bytes depend on the library that compresses; these depend on
 * nothing but the content.
 */
final class StoredZip {

    /** 1980-01-01 00:00, the first instant that the format can say. */
    private static final int DATE = 0x0021;

    private static final int VERSION = 10;
    private static final int NAMES_ARE_UTF8 = 0x0800;

    private StoredZip() {}

    /**
     * Writes an archive.
     *
     * @param files content by name; sorted names make sorted entries, but {@code first} comes first
     * @param first name of the entry that comes first
     * @return the archive
     */
    static byte[] write(SortedMap<String, byte[]> files, String first) {
        ByteArrayOutputStream local = new ByteArrayOutputStream();
        ByteArrayOutputStream central = new ByteArrayOutputStream();
        entry(local, central, first, files.getOrDefault(first, new byte[0]));
        files.forEach((name, content) -> {
            if (!name.equals(first)) {
                entry(local, central, name, content);
            }
        });
        int start = local.size();
        int count = files.size();
        local.writeBytes(central.toByteArray());
        four(local, 0x06054b50);
        four(local, 0);
        two(local, count);
        two(local, count);
        four(local, central.size());
        four(local, start);
        two(local, 0);
        return local.toByteArray();
    }

    private static void two(ByteArrayOutputStream out, int value) {
        out.write(value);
        out.write(value >>> 8);
    }

    private static void four(ByteArrayOutputStream out, int value) {
        two(out, value);
        two(out, value >>> 16);
    }

    private static void entry(ByteArrayOutputStream local, ByteArrayOutputStream central, String name, byte[] content) {
        byte[] utf8 = name.getBytes(StandardCharsets.UTF_8);
        int offset = local.size();
        four(local, 0x04034b50);
        common(local, utf8, content);
        local.writeBytes(utf8);
        local.writeBytes(content);
        four(central, 0x02014b50);
        two(central, VERSION);
        common(central, utf8, content);
        // No comment, first disk, no attributes.
        two(central, 0);
        two(central, 0);
        two(central, 0);
        four(central, 0);
        four(central, offset);
        central.writeBytes(utf8);
    }

    /** The part that is the same in both headers of an entry. */
    private static void common(ByteArrayOutputStream out, byte[] name, byte[] content) {
        CRC32 crc = new CRC32();
        crc.update(content);
        two(out, VERSION);
        two(out, NAMES_ARE_UTF8);
        two(out, 0);
        two(out, 0);
        two(out, DATE);
        four(out, (int) crc.getValue());
        four(out, content.length);
        four(out, content.length);
        two(out, name.length);
        two(out, 0);
    }
}
