package headgate.app.doctor;

import java.util.Locale;
import java.util.Properties;

/** Looks at how file names are read: with a plain C locale a name like "Mähre.json" cannot be opened. */
final class TextProbe {

    private TextProbe() {}

    static Diagnosis look(Properties system) {
        String names = system.getProperty("sun.jnu.encoding", "unknown");
        return names.toUpperCase(Locale.ROOT).replace("-", "").equals("UTF8")
                ? Diagnosis.good("text", "UTF-8, file names too")
                : Diagnosis.note(
                        "text",
                        "file contents UTF-8, file names " + names,
                        "Set LC_ALL=C.UTF-8 if a file name holds letters beyond ASCII.");
    }
}
