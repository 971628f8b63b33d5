package headgate.runtime.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * A ZIP archive (PKWARE APPNOTE 6.3) read strictly: by the central directory, checked against each local header. What
 * readers are known to disagree about is refused, so that nobody can see another content than we do.
 */
final class ZipArchive {

    private static final int END = 0x06054b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int LOCAL = 0x04034b50;
    private static final int END_LENGTH = 22;
    private static final int CENTRAL_LENGTH = 46;
    private static final int LOCAL_LENGTH = 30;
    private static final int STORED = 0;
    private static final int DEFLATED = 8;
    private static final int ENCRYPTED = 1;
    private static final int SIZES_FOLLOW = 8;

    /** Encryption, place of the sizes, and the alphabet of names: what makes a reader see other content. */
    private static final int FLAGS_THAT_MATTER = 0x2849;

    private static final int SIZES = 0x08074b50;
    private static final int OTHER_NAME = 0x7075;
    private static final int LINK = 0xA000;

    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private final List<String> names = new ArrayList<>();
    private final List<PackageProblem> problems = new ArrayList<>();
    private final ByteBuffer bytes;
    private boolean whole = true;

    private ZipArchive(byte[] bytes) {
        this.bytes = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private record Place(String name, int flags, int method, long crc, long packed, long size, int offset, int mode) {}

    /**
     * Reads an archive.
     *
     * @param bytes the whole file
     * @return what it holds, or empty if the bytes are no archive or a damaged one
     */
    static Optional<ZipArchive> read(byte[] bytes) {
        ZipArchive archive = new ZipArchive(bytes);
        try {
            return archive.read() ? Optional.of(archive) : Optional.empty();
        } catch (IndexOutOfBoundsException e) {
            // An offset or a length that points outside the file: damaged.
            return Optional.empty();
        }
    }

    /** {@return the names of all entries, directories included, in the order of the central directory} */
    List<String> names() {
        return names;
    }

    /** {@return the content of each file that could be unpacked, by name} */
    SortedMap<String, byte[]> files() {
        return Collections.unmodifiableSortedMap(files);
    }

    /** {@return true if every file in it was unpacked; otherwise its content is not known} */
    boolean isWhole() {
        return whole;
    }

    /** {@return what is wrong with the archive} */
    List<PackageProblem> problems() {
        return problems;
    }

    private void problem(String where, String found, String expected) {
        problems.add(new PackageProblem(
                PackageProblem.Kind.ARCHIVE, Printable.text(where), Printable.text(found), expected));
    }

    /** A problem that keeps an entry from being unpacked. */
    private void unread(String where, String found, String expected) {
        whole = false;
        problem(where, found, expected);
    }

    private int u2(int at) {
        return bytes.getShort(at) & 0xffff;
    }

    private long u4(int at) {
        return bytes.getInt(at) & 0xffff_ffffL;
    }

    private int findEnd() {
        int last = bytes.limit() - END_LENGTH;
        for (int at = last; at >= Math.max(0, last - 0xffff); at--) {
            if (bytes.getInt(at) == END && at + END_LENGTH + u2(at + 20) == bytes.limit()) {
                return at;
            }
        }
        return -1;
    }

    private boolean read() {
        int end = findEnd();
        if (end < 0) {
            return false;
        }
        int count = u2(end + 10);
        long size = u4(end + 12);
        long start = u4(end + 16);
        if (u2(end + 4) != 0 || u2(end + 6) != 0 || u2(end + 8) != count || start + size != end) {
            return false;
        }
        if (u2(end + 20) != 0) {
            problem("archive", "a comment", "must have no comment: readers disagree about what it may hide");
        }
        if (count > PackageLimits.ENTRIES) {
            unread("archive", count + " entries", "must have at most " + PackageLimits.ENTRIES + " entries");
            return true;
        }
        List<Place> places = new ArrayList<>();
        int at = (int) start;
        for (int i = 0; i < count; i++) {
            if (bytes.getInt(at) != CENTRAL) {
                return false;
            }
            int nameLength = u2(at + 28);
            Optional<String> name = name(at + CENTRAL_LENGTH, nameLength);
            if (name.isPresent()) {
                places.add(new Place(
                        name.get(),
                        u2(at + 8),
                        u2(at + 10),
                        u4(at + 16),
                        u4(at + 20),
                        u4(at + 24),
                        (int) Math.min(u4(at + 42), Integer.MAX_VALUE),
                        u2(at + 40)));
                checkExtra(name.get(), at + CENTRAL_LENGTH + nameLength, u2(at + 30));
            }
            at += CENTRAL_LENGTH + nameLength + u2(at + 30) + u2(at + 32);
        }
        if (at != end) {
            return false;
        }
        checkNames(places);
        return unpackAll(places, (int) start);
    }

    private Optional<String> name(int at, int length) {
        if (length > PackageLimits.NAME) {
            unread("entry name", length + " bytes", "must have at most " + PackageLimits.NAME + " bytes");
            return Optional.empty();
        }
        byte[] raw = new byte[length];
        bytes.get(at, raw);
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(raw))
                    .toString());
        } catch (CharacterCodingException e) {
            unread("entry name", new String(raw, StandardCharsets.ISO_8859_1), "must be UTF-8");
            return Optional.empty();
        }
    }

    private void checkNames(List<Place> places) {
        Set<String> seen = new HashSet<>();
        for (Place place : places) {
            String name = place.name();
            names.add(name);
            if (!seen.add(folded(name))) {
                problem(
                        "entry " + name,
                        "a second one",
                        "must be the only one of its name, in upper and lower case and in any spelling");
            }
            boolean plain = !name.isEmpty()
                    && !name.startsWith("/")
                    && Printable.isSeen(name)
                    && name.chars().noneMatch(c -> c == '\\' || c == ':')
                    && List.of(name.replaceFirst("/$", "").split("/", -1)).stream()
                            .noneMatch(part -> part.isEmpty() || part.equals(".") || part.equals(".."));
            if (!plain) {
                problem(
                        "entry " + name,
                        "a name that could leave the archive or hide in a list",
                        "must have a plain relative name of characters that are seen");
            }
            if ((place.mode() & 0xF000) == LINK) {
                problem("entry " + name, "a symbolic link", "must be a file or a directory");
            }
        }
    }

    /** Names that some file system takes for one have one folded form. */
    private static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
    }

    private boolean unpackAll(List<Place> places, int directory) {
        long total = places.stream().mapToLong(Place::size).sum();
        if (total > PackageLimits.TOTAL) {
            unread(
                    "archive",
                    total + " bytes unpacked",
                    "must have at most " + PackageLimits.TOTAL + " bytes unpacked");
            return true;
        }
        List<Place> byOffset = new ArrayList<>(places);
        byOffset.sort(Comparator.comparingInt(Place::offset));
        long free = 0;
        for (Place place : byOffset) {
            if (place.offset() < free) {
                unread("entry " + place.name(), "shared bytes", "must not share bytes with another entry");
                return true;
            }
            if (place.offset() > free) {
                hidden(place.offset() - free, "before entry " + place.name());
            }
            int at = place.offset();
            if (at + LOCAL_LENGTH > directory || bytes.getInt(at) != LOCAL) {
                return false;
            }
            int nameLength = u2(at + 26);
            Optional<String> localName = name(at + LOCAL_LENGTH, nameLength);
            if (!localName.equals(Optional.of(place.name())) || !sameInBoth(place, at)) {
                unread(
                        "entry " + place.name(),
                        "another name, method, checksum or size",
                        "must say the same in both of its headers");
                return true;
            }
            checkExtra(place.name(), at + LOCAL_LENGTH + nameLength, u2(at + 28));
            int content = at + LOCAL_LENGTH + nameLength + u2(at + 28);
            free = content + place.packed();
            free += free < directory ? sizesAfter(place, (int) free, directory) : 0;
            if (free > directory) {
                return false;
            }
            if (!unpack(place, content)) {
                return false;
            }
        }
        if (free < directory) {
            hidden(directory - free, "after the last entry");
        }
        return true;
    }

    private void hidden(long count, String where) {
        problem("archive", count + " bytes " + where, "must have no bytes that belong to no entry");
    }

    /** Both headers say the same. The first may leave checksum and sizes open, if it says that they follow. */
    private boolean sameInBoth(Place place, int at) {
        boolean follow = (place.flags() & SIZES_FOLLOW) != 0;
        boolean given = u4(at + 14) == place.crc() && u4(at + 18) == place.packed() && u4(at + 22) == place.size();
        boolean open = u4(at + 14) == 0 && u4(at + 18) == 0 && u4(at + 22) == 0;
        return u2(at + 8) == place.method()
                && ((u2(at + 6) ^ place.flags()) & FLAGS_THAT_MATTER) == 0
                && (given || (follow && (open || u4(at + 18) == 0xffff_ffffL)));
    }

    /** How long the checksum and sizes are that stand behind an entry: with or without a mark, in 4 or 8 bytes. */
    private int sizesAfter(Place place, int at, int directory) {
        if ((place.flags() & SIZES_FOLLOW) == 0) {
            return 0;
        }
        int mark = at + 4 <= directory && bytes.getInt(at) == SIZES ? 4 : 0;
        for (int width : new int[] {4, 8}) {
            int length = mark + 4 + 2 * width;
            if (at + length <= directory
                    && u4(at + mark) == place.crc()
                    && wide(at + mark + 4, width) == place.packed()
                    && wide(at + mark + 4 + width, width) == place.size()) {
                return length;
            }
        }
        return 0;
    }

    private long wide(int at, int width) {
        return width == 4 ? u4(at) : bytes.getLong(at);
    }

    /** A field that gives an entry a second name, which some readers take instead of the first. */
    private void checkExtra(String name, int start, int length) {
        for (int at = start; at + 4 <= start + length; at += 4 + u2(at + 2)) {
            if (u2(at) == OTHER_NAME) {
                problem("entry " + name, "a second name in an extra field", "must have one name");
            }
        }
    }

    /** Unpacks one entry; false if it is damaged. */
    private boolean unpack(Place place, int content) {
        String where = "entry " + place.name();
        if ((place.flags() & ENCRYPTED) != 0) {
            unread(where, "encrypted", "must not be encrypted");
            return true;
        }
        if (place.method() != STORED && place.method() != DEFLATED) {
            unread(where, "method " + place.method(), "must be stored or deflated");
            return true;
        }
        if (place.size() > PackageLimits.ENTRY) {
            unread(where, place.size() + " bytes", "must have at most " + PackageLimits.ENTRY + " bytes");
            return true;
        }
        if (place.size() > PackageLimits.RATIO_FREE && place.size() > place.packed() * PackageLimits.RATIO) {
            unread(
                    where,
                    place.packed() + " bytes that become " + place.size(),
                    "must not grow more than " + PackageLimits.RATIO + "-fold when unpacked");
            return true;
        }
        byte[] packed = new byte[(int) place.packed()];
        bytes.get(content, packed);
        Optional<byte[]> unpacked =
                place.method() == STORED ? Optional.of(packed) : inflate(packed, (int) place.size());
        if (unpacked.isEmpty() || unpacked.get().length != place.size()) {
            return false;
        }
        CRC32 crc = new CRC32();
        crc.update(unpacked.get());
        if (crc.getValue() != place.crc()) {
            return false;
        }
        if (place.name().endsWith("/")) {
            if (place.size() != 0) {
                problem(where, place.size() + " bytes", "must be empty, since it is a directory");
            }
        } else {
            files.putIfAbsent(place.name(), unpacked.get());
        }
        return true;
    }

    private static Optional<byte[]> inflate(byte[] packed, int size) {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(packed);
            byte[] unpacked = new byte[size];
            int at = 0;
            while (at < size) {
                int count = inflater.inflate(unpacked, at, size - at);
                if (count == 0) {
                    return Optional.empty();
                }
                at += count;
            }
            // The stream must end exactly here: one more byte, or no end, is damage.
            return inflater.inflate(new byte[1]) == 0 && inflater.finished() ? Optional.of(unpacked) : Optional.empty();
        } catch (DataFormatException e) {
            return Optional.empty();
        } finally {
            inflater.end();
        }
    }
}
