package headgate.verifier.report;

import headgate.verifier.plot.PlotStudy;
import java.util.List;

/** Reports of replays, made by hand. */
public final class Replays {

    private Replays() {}

    /** A report of a study. */
    public static ReplayReport report(PlotStudy study) {
        return new ReplayReport(
                new Edition("0.1.0", "1"),
                "Head x.y 1.0.0 on a carriage: a plan",
                List.of(new Subject("head", "head x.y 1.0.0", "0".repeat(64))),
                List.of("a1"),
                study,
                List.of("nobody says how many weeds are seen"));
    }
}
