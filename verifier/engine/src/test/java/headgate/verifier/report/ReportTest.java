package headgate.verifier.report;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Family;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.judge.Verdict;
import headgate.verifier.rules.RuleBook;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class ReportTest {

    private final Report report = Judgements.everyKindReport();

    @Test
    void everyFamilyHasExactlyOneSectionInOrder() {
        assertThat(Sections.families()).containsExactly(Family.values());
        assertThat(report.sections()).extracting(Section::family).containsExactly(Family.values());
    }

    @Test
    void everyFindingStandsInTheSectionOfItsFamily() {
        assertThat(report.entries()).hasSize(6);
        for (Section section : report.sections()) {
            assertThat(section.entries()).allMatch(e -> e.rule().family() == section.family());
        }
    }

    @Test
    void failuresComeFirstInASectionEvenIfTheRuleFoundThemLast() {
        RuleInfo info = Judgements.info("plan.order", "Order is kept", Severity.ERROR);
        Rule rule = Judgements.rule(
                info,
                c -> List.of(
                        Finding.notApplicable(info, "a", "nothing here"),
                        Finding.of(info, "b").examined(1).end(Outcome.PASS, "good"),
                        Finding.of(info, "c").examined(1).end(Outcome.CAUTION, "look"),
                        Finding.undecided(info, "d", "unknown"),
                        Finding.of(info, "e").examined(1).end(Outcome.FAIL, "bad"),
                        Finding.of(info, "f").examined(1).end(Outcome.PASS, "good")));
        Report made = Judgements.report(Judgements.judge(Judgements.eightArms().build(), List.of(rule)));
        assertThat(made.entries()).extracting(Entry::subject).containsExactly("e", "d", "c", "b", "f", "a");
    }

    @Test
    void aFailureOfACautionDoesNotSayThatItDoesNotFit() {
        RuleInfo info = Judgements.info("plan.soft", "Softly", Severity.CAUTION);
        Rule rule = Judgements.rule(
                info, c -> List.of(Finding.of(info, "x").examined(1).end(Outcome.FAIL, "bad")));
        Report made = Judgements.report(Judgements.judge(Judgements.eightArms().build(), List.of(rule)));
        assertThat(made.failures()).isEmpty();
        assertThat(made.entries()).extracting(Entry::outcomeLabel).containsExactly("fail (caution only)");
        assertThat(made.headline()).startsWith("Fits within limits:");
    }

    @Test
    void theTightestPlaceIsTheOneWithTheLeastMarginNotTheLeastGap() {
        Tightest tightest = report.tightest().orElseThrow();
        assertThat(tightest.ruleId()).isEqualTo("clearance.arm-to-arm");
        assertThat(tightest.subject()).isEqualTo("arm A3 and arm A5");
        assertThat(tightest.text()).isEqualTo("arm A3 and arm A5: 480 mm, must be at least 560 mm (misses by 80 mm)");
    }

    @Test
    void headlineAndScopeSayWhatWasFoundAndOnWhat() {
        assertThat(report.title()).isEqualTo("Head test-head 1.0.0 on Eight-arm test carriage for Lettuce at 45 cm");
        assertThat(report.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
        assertThat(report.headline()).startsWith("Does not fit: one rule fails.");
        assertThat(report.scope())
                .contains("pull-weeds at 0.2 m/s, rows 450 mm apart")
                .contains("8 arms of 8 serve 8 lanes in a pass")
                .contains("5 rules, 6 findings: 2 pass, 1 caution, 1 fail, 1 undecided, 1 not applicable");
    }

    @Test
    void aBrokenRuleTakesTheVerdictAway() {
        RuleInfo info = Judgements.info("plan.broken", "Breaks", Severity.CAUTION);
        Rule rule = Judgements.rule(info, c -> {
            throw new IllegalStateException("on purpose");
        });
        Report made = Judgements.report(Judgements.judge(Judgements.eightArms().build(), List.of(rule)));
        assertThat(made.broken()).isTrue();
        assertThat(made.faults()).containsExactly("plan.broken");
        assertThat(made.headline()).contains("no verdict").contains("no fault of the head");
    }

    @Test
    void aFamilyWithoutARuleIsReportedAsNotChecked() {
        Section energy = section(Family.ENERGY);
        assertThat(energy.entries()).isEmpty();
        assertThat(energy.topics()).first().asString().contains("no rule of it yet");
        assertThat(section(Family.MOUNT).topics()).noneMatch(t -> t.contains("no rule of it yet"));
    }

    @Test
    void aTopicIsNoLongerReportedOnceARuleLooksAtIt() {
        RuleInfo info = Judgements.info("clearance.lifted", "Clear of the canopy", Severity.ERROR);
        Rule rule = Judgements.rule(
                info, c -> List.of(Finding.of(info, "x").examined(1).end(Outcome.PASS, "clear")));
        Report made = Judgements.report(Judgements.judge(Judgements.eightArms().build(), List.of(rule)));
        assertThat(section(Family.CLEARANCE).topics()).anyMatch(t -> t.contains("leaves of the crop"));
        assertThat(made.sections().stream()
                        .filter(s -> s.family() == Family.CLEARANCE)
                        .flatMap(s -> s.topics().stream()))
                .noneMatch(t -> t.contains("leaves of the crop"));
    }

    @Test
    void placesNameTheFileWithoutItsFolders() {
        assertThat(report.entries()
                        .flatMap(e -> e.place().stream())
                        .map(Objects::toString)
                        .toList())
                .containsExactlyInAnyOrder("file.json:12:7", "file.json:5:7", "file.json:5:7");
        assertThat(report.subjects())
                .extracting(Subject::name)
                .containsExactly(
                        "head test-head 1.0.0", "carriage.json", "lettuce.json", "policy.json", "head test-head 1.0.0");
    }

    @Test
    void remediesSayWhatComesOfThem() {
        Entry failing = report.failures().get(0);
        assertThat(failing.remedies()).hasSize(1);
        assertThat(failing.remedies().get(0).text())
                .isEqualTo(
                        "set rows at least 490 mm apart, so that neighbouring arms on a beam stand at least 980 mm apart");
    }

    @Test
    void equalJudgementsGiveEqualReports() {
        Report again = Judgements.everyKindReport();
        assertThat(again.title()).isEqualTo(report.title());
        assertThat(again.sections().toString()).isEqualTo(report.sections().toString());
    }

    @Test
    void theRuleBookAsItIsHasASectionForEveryRule() {
        assertThat(RuleBook.all())
                .allMatch(r -> Sections.families().contains(r.info().family()));
    }

    @Test
    void marginsNeverHideADifferenceBehindAZero() {
        assertThat(Margin.text(Comparison.atLeast(0.05, 0.05, Dimension.LENGTH)))
                .isEqualTo("at the limit");
        assertThat(Margin.text(Comparison.atLeast(0.0500004, 0.05, Dimension.LENGTH)))
                .isEqualTo("next to nothing to spare");
        assertThat(Margin.text(Comparison.atLeast(0.0499, 0.05, Dimension.LENGTH)))
                .isEqualTo("misses by 0.1 mm");
        assertThat(Margin.text(Comparison.atMost(0.0499, 0.05, Dimension.LENGTH)))
                .isEqualTo("0.1 mm to spare");
        assertThat(Margin.text(Comparison.atMost(Double.NaN, 0.05, Dimension.LENGTH)))
                .isEqualTo("no number");
    }

    @Test
    void textOfOthersIsMadeFitToBeShown() {
        assertThat(Plain.line("a\n b\t\u00a0c ")).isEqualTo("a b c");
        assertThat(Plain.line("x\u001b[31mred")).isEqualTo("x\uFFFD[31mred");
        assertThat(Plain.line("gap\u202eneila")).isEqualTo("gap\uFFFDneila");
        assertThat(Plain.line("half \ud83d pair")).isEqualTo("half \uFFFD pair");
        assertThat(Plain.line("m\u00b2, \u03bb, \ud83c\udf31")).isEqualTo("m\u00b2, \u03bb, \ud83c\udf31");
        assertThat(Plain.line("y".repeat(5_000))).hasSize(Plain.LONGEST + 1).endsWith("\u2026");
        assertThat(Plain.fileName("C:\\Users\\x\\plan.json")).isEqualTo("plan.json");
    }

    private Section section(Family family) {
        return report.sections().stream()
                .filter(s -> s.family() == family)
                .findFirst()
                .orElseThrow();
    }
}
