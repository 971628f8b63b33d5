package headgate.app.check;

import headgate.verifier.report.html.HtmlReport;
import headgate.verifier.report.json.JsonReport;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files that a report consists of. */
public final class ReportFiles {

    private ReportFiles() {}

    /**
     * Makes the files.
     *
     * @param checked what came of a check
     * @param trace true to keep what the head was asked and answered, too
     * @return content by file name
     */
    public static SortedMap<String, byte[]> of(Checked checked, boolean trace) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("report.html", HtmlReport.of(checked.report()).getBytes(StandardCharsets.UTF_8));
        files.put("report.json", JsonReport.of(checked.report()).getBytes(StandardCharsets.UTF_8));
        if (trace) {
            checked.transcript().ifPresent(bytes -> files.put(Checked.TRANSCRIPT, bytes));
        }
        return files;
    }
}
