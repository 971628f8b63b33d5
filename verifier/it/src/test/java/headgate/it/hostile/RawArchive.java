package headgate.it.hostile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A ZIP archive as bytes, to be made wrong in one place. Offsets as in PKWARE's APPNOTE 6.3, section 4.3. */
final class RawArchive {

    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END_LENGTH = 22;

    private final byte[] bytes;

    private RawArchive(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The entries of an archive, in order. */
    static Map<String, byte[]> entries(byte[] archive) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                entries.put(e.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return entries;
    }

    /** A well-formed archive with compressed entries, whose sizes follow them. */
    static byte[] deflated(Map<String, byte[]> entries) {
        return written(entries, ZipOutputStream.DEFLATED);
    }

    /** A well-formed archive whose entries are stored as they are. */
    static RawArchive stored(Map<String, byte[]> entries) {
        return new RawArchive(written(entries, ZipOutputStream.STORED));
    }

    private static byte[] written(Map<String, byte[]> entries, int method) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setMethod(method);
            for (Map.Entry<String, byte[]> e : entries.entrySet()) {
                ZipEntry header = new ZipEntry(e.getKey());
                header.setTime(0);
                if (method == ZipOutputStream.STORED) {
                    CRC32 crc = new CRC32();
                    crc.update(e.getValue());
                    header.setCrc(crc.getValue());
                    header.setSize(e.getValue().length);
                }
                zip.putNextEntry(header);
                zip.write(e.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    byte[] bytes() {
        return bytes.clone();
    }

    private static ByteBuffer view(byte[] of) {
        return ByteBuffer.wrap(of).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Where a header of an entry begins: the first one of the kind that is followed by its name. */
    private int header(int mark, int length, String name) {
        byte[] wanted = name.getBytes(StandardCharsets.UTF_8);
        ByteBuffer view = view(bytes);
        for (int at = 0; at + length + wanted.length <= bytes.length; at++) {
            if (view.getInt(at) == mark
                    && Arrays.equals(bytes, at + length, at + length + wanted.length, wanted, 0, wanted.length)) {
                return at;
            }
        }
        throw new AssertionError("no entry " + name);
    }

    /** Two bytes of an entry's place in the directory, changed. */
    RawArchive inDirectory(String name, int offset, int value) {
        byte[] changed = bytes.clone();
        view(changed).putShort(header(CENTRAL, 46, name) + offset, (short) value);
        return new RawArchive(changed);
    }

    /** Two bytes of an entry's own header, changed. */
    RawArchive atEntry(String name, int offset, int value) {
        byte[] changed = bytes.clone();
        view(changed).putShort(header(LOCAL, 30, name) + offset, (short) value);
        return new RawArchive(changed);
    }

    /** Two bytes at the end of the archive, changed. */
    RawArchive atEnd(int offset, int value) {
        byte[] changed = bytes.clone();
        view(changed).putShort(bytes.length - END_LENGTH + offset, (short) value);
        return new RawArchive(changed);
    }

    /** Bytes put before an entry, with every offset behind them moved, so that the archive holds together. */
    RawArchive with(byte[] hidden, String before) {
        int at = header(LOCAL, 30, before);
        byte[] longer = new byte[bytes.length + hidden.length];
        System.arraycopy(bytes, 0, longer, 0, at);
        System.arraycopy(hidden, 0, longer, at, hidden.length);
        System.arraycopy(bytes, at, longer, at + hidden.length, bytes.length - at);
        ByteBuffer view = view(longer);
        int end = longer.length - END_LENGTH;
        int directory = view.getInt(end + 16) + hidden.length;
        view.putInt(end + 16, directory);
        for (int each = directory; each < end; ) {
            int offset = view.getInt(each + 42);
            view.putInt(each + 42, offset >= at ? offset + hidden.length : offset);
            each += 46 + view.getShort(each + 28) + view.getShort(each + 30) + view.getShort(each + 32);
        }
        return new RawArchive(longer);
    }

    /** Every place where a name stands, changed to another of the same length. */
    RawArchive renamed(String from, String to) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return new RawArchive(text.replace(from, to).getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The first place where a name stands, changed to another of the same length. */
    RawArchive renamedOnce(String from, String to) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int at = text.indexOf(from);
        return new RawArchive((text.substring(0, at) + to + text.substring(at + from.length()))
                .getBytes(StandardCharsets.ISO_8859_1));
    }
}
