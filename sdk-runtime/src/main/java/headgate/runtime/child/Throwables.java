package headgate.runtime.child;

import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import org.jspecify.annotations.Nullable;

/** What a head throws, as text of bounded length. Its methods may be the head's own, and may throw again. */
final class Throwables {

    private static final int LONGEST = 500;

    private Throwables() {}

    static HeadFault fault(HeadStage stage, @Nullable Throwable thrown) {
        if (thrown instanceof StackOverflowError) {
            return new HeadFault.StackOverflow(stage);
        }
        if (thrown instanceof OutOfMemoryError) {
            return new HeadFault.OutOfMemory(stage);
        }
        return thrown == null
                ? new HeadFault.Threw(stage, "nothing", "")
                : new HeadFault.Threw(stage, type(thrown), message(thrown));
    }

    static String type(Throwable thrown) {
        return cut(thrown.getClass().getName());
    }

    static String message(Throwable thrown) {
        String message;
        try {
            message = thrown.getMessage();
        } catch (RuntimeException | Error e) {
            return "";
        }
        return message == null ? "" : cut(message);
    }

    /** At most 500 characters, none of them a control character or half of a pair. */
    static String cut(String text) {
        String part = text.length() <= LONGEST ? text : text.substring(0, LONGEST);
        StringBuilder plain = new StringBuilder(part.length());
        part.codePoints()
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? ' ' : c)
                .forEach(plain::appendCodePoint);
        return plain.toString();
    }
}
