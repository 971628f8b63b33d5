package headgate.runtime.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Place;

/** Says in plain words what is wrong where a text stops being JSON, with the usual slips of people who type it. */
final class SyntaxProblem {

    private SyntaxProblem() {}

    static FileProblem of(SourceFile file, JsonProcessingException broken) {
        String text = file.text();
        JsonLocation location = broken.getLocation();
        int offset = location == null ? 0 : (int) Math.max(0, Math.min(text.length(), location.getCharOffset()));
        offset = culprit(text, offset, String.valueOf(broken.getOriginalMessage()));
        Place place = SourceFile.placeAt(file.name(), text, offset);
        if (offset >= text.length()) {
            return new FileProblem(
                    place, "", "the end of the file", "more JSON", "a closing }, ] or \" is missing further up");
        }
        String rest = text.substring(offset);
        char before = lastSeen(text, offset);
        return new FileProblem(place, "", found(rest), expected(before), advice(rest, before));
    }

    /** The parser reports a broken character where it stands, or one behind it, and a broken word at its end. */
    private static int culprit(String text, int offset, String message) {
        int at = offset;
        if (message.startsWith("Unrecognized token") || message.startsWith("Non-standard token")) {
            while (at > 0 && isWord(text.charAt(at - 1))) {
                at--;
            }
            return at;
        }
        int quoted = message.indexOf("('");
        if (quoted >= 0 && quoted + 2 < message.length()) {
            char named = message.charAt(quoted + 2);
            if (at > 0 && text.charAt(at - 1) == named && !(at < text.length() && text.charAt(at) == named)) {
                at--;
            }
        }
        return at;
    }

    private static boolean isWord(char c) {
        return Character.isLetterOrDigit(c) || c == '_' || c == '-' || c == '+' || c == '.';
    }

    private static String found(String rest) {
        int end = 0;
        while (end < rest.length() && end < 40 && isWord(rest.charAt(end))) {
            end++;
        }
        return end > 1 ? Quote.of(rest.substring(0, end)) : "the character " + Quote.shown(rest.codePointAt(0));
    }

    private static char lastSeen(String text, int offset) {
        int at = offset - 1;
        while (at >= 0 && Character.isWhitespace(text.charAt(at))) {
            at--;
        }
        return at < 0 ? ' ' : text.charAt(at);
    }

    private static String expected(char before) {
        return switch (before) {
            case ':' -> "a value: a text in double quotes, a number, true, false, an object or a list";
            case '{' -> "a field's name in double quotes, or }";
            case '[' -> "a value, or ]";
            case ',' -> "one more field or value";
            case ' ' -> "a JSON object, beginning with {";
            default -> "a comma, a closing bracket, or a colon after a name";
        };
    }

    private static String advice(String rest, char before) {
        char c = rest.charAt(0);
        if ((c == '}' || c == ']') && before == ',') {
            return "remove the comma before it";
        }
        if (c == '\'' || c == '\u201c' || c == '\u201d' || c == '\u201e') {
            return "names and texts stand in plain double quotes";
        }
        if (c == '/' || c == '#') {
            return "JSON has no comments; write a field \"note\" instead";
        }
        if (rest.startsWith("NaN") || rest.startsWith("Infinity") || rest.startsWith("-Infinity")) {
            return "only finite numbers can be used";
        }
        if (c == '"') {
            return "a comma or a colon may be missing before it";
        }
        if (Character.isLetter(c)) {
            return "only true, false and null stand without double quotes";
        }
        if (c < ' ') {
            return "a text ends on the line where it begins; a closing double quote may be missing";
        }
        return "";
    }
}
