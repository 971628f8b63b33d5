package headgate.app.check;

import headgate.verifier.report.ReplayReport;
import headgate.verifier.report.csv.ReplayCsv;
import headgate.verifier.report.html.ReplayPage;
import headgate.verifier.report.json.ReplayJson;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files that a replay's results consist of. */
public final class ReplayFiles {

    private ReplayFiles() {}

    /**
     * Makes the files.
     *
     * @param report the replay
     * @return content by file name
     */
    public static SortedMap<String, byte[]> of(ReplayReport report) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("replay.html", ReplayPage.of(report).getBytes(StandardCharsets.UTF_8));
        files.put("replay.json", ReplayJson.of(report).getBytes(StandardCharsets.UTF_8));
        files.put("replay.csv", ReplayCsv.rows(report).getBytes(StandardCharsets.UTF_8));
        files.put("misses.csv", ReplayCsv.misses(report).getBytes(StandardCharsets.UTF_8));
        return files;
    }
}
