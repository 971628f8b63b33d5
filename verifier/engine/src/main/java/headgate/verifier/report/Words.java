package headgate.verifier.report;

import java.util.Locale;

/** Small pieces of English that several parts of a report need. */
final class Words {

    private Words() {}

    /** A count with its noun in singular or plural. */
    static String count(long n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }

    /** The text with its first letter as a capital. */
    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
