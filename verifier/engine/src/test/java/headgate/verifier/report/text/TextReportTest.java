package headgate.verifier.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.judge.Verdict;
import headgate.verifier.report.Judgements;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TextReportTest {

    @Test
    void theTerminalShowsVerdictFailuresRemediesCountsAndFiles() {
        String text = TextReport.of(Judgements.everyKindReport(), List.of("out/report.html"), TextStyle.PLAIN);
        assertThat(text.lines())
                .startsWith("Head test-head 1.0.0 on Eight-arm test carriage for Lettuce at 45 cm")
                .contains(
                        "FAIL  clearance.arm-to-arm  arm A3 and arm A5",
                        "  The heads come to within 480 mm of each other, and need 560 mm.",
                        "  found  480 mm, must be at least 560 mm (misses by 80 mm)",
                        "  at     file.json:5:7  crop-plan:rows.spacing",
                        "  mend   set rows at least 490 mm apart, so that neighbouring arms on a beam stand at least 980 mm apart"
                                + " (mends this alone; other rules stay as they are)",
                        "UNDECIDED  throughput.spot  head test-head 1.0.0",
                        "CAUTION  safety.standing  head test-head 1.0.0",
                        "checked         5 rules, 6 findings: 2 pass, 1 caution, 1 fail, 1 undecided, 1 not applicable",
                        "written         out/report.html");
        assertThat(text).doesNotContain("\u001b").doesNotContain("\r").endsWith("\n");
    }

    @Test
    void aStyleWrapsVerdictAndOutcomesAndNothingElse() {
        TextStyle marks = new TextStyle() {
            @Override
            public String verdict(Verdict verdict, String words) {
                return "<" + words + ">";
            }

            @Override
            public String outcome(Outcome outcome, String words) {
                return "[" + words + "]";
            }
        };
        String styled = TextReport.of(Judgements.everyKindReport(), List.of(), marks);
        String plain = TextReport.of(Judgements.everyKindReport(), List.of(), TextStyle.PLAIN);
        assertThat(styled).contains("[FAIL]  clearance.arm-to-arm").contains("<Does not fit:");
        assertThat(styled.replaceAll("(?m)^\\[([A-Z]+)\\]", "$1").replaceAll("(?m)^<(.*)>$", "$1"))
                .isEqualTo(plain);
    }

    @Test
    void aLongListIsCutAndSaysSo() {
        RuleInfo info = Judgements.info("plan.many", "Many", Severity.ERROR);
        Rule rule = Judgements.rule(info, c -> IntStream.range(0, 37)
                .mapToObj(i -> Finding.of(info, "lane " + i).examined(1).end(Outcome.FAIL, "bad"))
                .toList());
        String text = TextReport.of(
                Judgements.report(Judgements.judge(Judgements.eightArms().build(), List.of(rule))),
                List.of(),
                TextStyle.PLAIN);
        assertThat(text.lines().filter(l -> l.startsWith("FAIL  plan.many"))).hasSize(10);
        assertThat(text.lines()).contains("FAIL  27 more, listed in the report");
    }
}
