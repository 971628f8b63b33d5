package headgate.verifier.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.Comparison;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.interlock.Claws;
import headgate.verifier.remedy.SetRowsPerPass;
import headgate.verifier.remedy.SetSpeed;
import headgate.verifier.rules.RuleBook;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

class JudgeTest {

    @Test
    void fitsWithinLimitsWhereTheWorkHeightIsNarrowerThanTheLift() {
        Judgement judgement = judge(rule("plan.a", Outcome.PASS));

        assertThat(judgement.verdict()).isEqualTo(Verdict.FITS_WITHIN_LIMITS);
        assertThat(judgement.limits().get(0).text())
                .isEqualTo("arm a1 on lane 1: mount height over the ground at work from 390 mm to 560 mm");
    }

    @Test
    void interlocksAreLimits() {
        Judgement judgement = new Judge(List.of(rule("plan.a", Outcome.PASS)))
                .judge(Claws.cases().build());

        assertThat(judgement.verdict()).isEqualTo(Verdict.FITS_WITHIN_LIMITS);
        assertThat(judgement.limits()).extracting(Limit::subject).endsWith("arms a1 and a3", "arms a2 and a4");
        assertThat(judgement.limits().get(4).text())
                .isEqualTo(
                        "arms a1 and a3, each tool point seen from its own mount: while both act, the tool point of arm a3"
                                + " less the tool point of arm a1 stays out of x -78 mm to 78 mm, y -580.1 mm to -562 mm, z -258 mm to"
                                + " 258 mm; besides what is too near, that closes at most 0.1 % of where a tool point, or an"
                                + " offset, can be");
    }

    @Test
    void theWholeBookLetsArmsTakeTurnsOnlyWhereTheyKeepThePace() {
        Judge book = new Judge(RuleBook.all());

        assertThat(failing(book.judge(Claws.cases().build()))).isEmpty();
        assertThat(failing(book.judge(Claws.on(Cases.planting()).build()))).containsExactly("throughput.pace");
    }

    private static List<String> failing(Judgement judgement) {
        return judgement.findings().stream()
                .map(JudgedFinding::finding)
                .filter(Finding::breaksFit)
                .map(f -> f.rule().id())
                .distinct()
                .toList();
    }

    @Test
    void doesNotFitIfAnErrorFailsAndThenStatesNoLimits() {
        Judgement judgement = judge(rule("plan.a", Outcome.FAIL), rule("plan.b", Outcome.UNDECIDED));

        assertThat(judgement.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
        assertThat(judgement.limits()).isEmpty();
    }

    @Test
    void isUndecidedIfNoneFailsAndOneIsUndecided() {
        assertThat(judge(rule("plan.a", Outcome.PASS), rule("plan.b", Outcome.UNDECIDED))
                        .verdict())
                .isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void aCautionNeverChangesTheVerdict() {
        assertThat(judge(rule("plan.a", Outcome.CAUTION)).verdict().isFit()).isTrue();
        assertThat(judge(rule("plan.a", Severity.CAUTION, (i, c) -> decided(i, Outcome.FAIL)))
                        .verdict()
                        .isFit())
                .isTrue();
        assertThat(judge(rule("plan.a", Severity.CAUTION, (i, c) -> decided(i, Outcome.UNDECIDED)))
                        .verdict()
                        .isFit())
                .isTrue();
    }

    @Test
    void whatNeedsAFailedRuleDoesNotApplyAndNeitherDoesWhatNeedsThat() {
        Judgement judgement = judge(
                rule("plan.a", Outcome.FAIL),
                rule("plan.b", List.of("plan.a"), Severity.ERROR, (i, c) -> decided(i, Outcome.FAIL)),
                rule("plan.c", List.of("plan.b"), Severity.ERROR, (i, c) -> decided(i, Outcome.FAIL)));

        assertThat(judgement.of("plan.b").get(0).outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
        assertThat(judgement.of("plan.c").get(0).outcome()).isEqualTo(Outcome.NOT_APPLICABLE);
        assertThat(judgement.of("plan.b").get(0).message()).contains("plan.a");
    }

    @Test
    void aRuleThatBreaksIsAFaultAndTheOthersStillRun() {
        Rule broken = rule("plan.a", Severity.ERROR, (i, c) -> {
            throw new IllegalStateException("a mistake");
        });

        Judgement judgement = judge(broken, rule("plan.b", Outcome.PASS));

        assertThat(judgement.faults()).extracting(RuleFault::ruleId).containsExactly("plan.a");
        assertThat(judgement.of("plan.b").get(0).outcome()).isEqualTo(Outcome.PASS);
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void aRuleThatFindsNothingIsAFault() {
        Rule silent = new Rule() {
            @Override
            public RuleInfo info() {
                return JudgeTest.info("plan.a", List.of(), Severity.ERROR);
            }

            @Override
            public List<Finding> check(Case subject) {
                return List.of();
            }
        };

        assertThat(judge(silent).faults()).hasSize(1);
    }

    @Test
    void keepsOnlyRemediesThatMendAndSaysWhatTheyBreak() {
        // Slower than 0.15 m/s mends the first rule; below 0.1 m/s the second one fails.
        Rule slow = rule("plan.slow", Severity.ERROR, (i, c) -> Finding.of(i, "speed")
                .examined(1)
                .comparison(Comparison.atMost(speed(c), 0.15, Dimension.SPEED))
                .propose(new SetSpeed(0.18))
                .propose(new SetSpeed(0.15))
                .propose(new SetSpeed(0.05))
                .propose(new SetRowsPerPass(2))
                .decide("The speed is what it is."));
        Rule fast = rule("plan.fast", Severity.ERROR, (i, c) -> Finding.of(i, "speed")
                .examined(1)
                .comparison(Comparison.atLeast(speed(c), 0.1, Dimension.SPEED))
                .decide("The speed is what it is."));

        Judgement judgement = judge(slow, fast);

        assertThat(judgement.findings().get(0).remedies())
                .extracting(Remedy::text)
                .containsExactly(
                        "drive at up to 0.15 m/s (then it fits within limits)",
                        "drive at up to 0.05 m/s (but this would break plan.fast)");
    }

    @Test
    void refusesABookThatIsOutOfOrder() {
        Rule needy = rule("plan.b", List.of("plan.a"), Severity.ERROR, (i, c) -> decided(i, Outcome.PASS));

        assertThatThrownBy(() -> new Judge(List.of(needy, rule("plan.a", Outcome.PASS))))
                .hasMessageContaining("plan.a");
        assertThatThrownBy(() -> new Judge(List.of(rule("plan.a", Outcome.PASS), rule("plan.a", Outcome.PASS))))
                .hasMessageContaining("two rules");
    }

    private static double speed(Case subject) {
        return subject.plan().value().wanted().speed();
    }

    private static Judgement judge(Rule... rules) {
        return new Judge(List.of(rules)).judge(Cases.weeding().build());
    }

    private static Rule rule(String id, Outcome outcome) {
        return rule(id, Severity.ERROR, (i, c) -> decided(i, outcome));
    }

    private static Finding decided(RuleInfo info, Outcome outcome) {
        return Finding.of(info, "all").examined(1).end(outcome, "As the test says.");
    }

    private static Rule rule(String id, Severity severity, BiFunction<RuleInfo, Case, Finding> check) {
        return rule(id, List.of(), severity, check);
    }

    private static Rule rule(
            String id, List<String> needs, Severity severity, BiFunction<RuleInfo, Case, Finding> check) {
        RuleInfo info = info(id, needs, severity);
        return new Rule() {
            @Override
            public RuleInfo info() {
                return info;
            }

            @Override
            public List<Finding> check(Case subject) {
                return List.of(check.apply(info, subject));
            }
        };
    }

    private static RuleInfo info(String id, List<String> needs, Severity severity) {
        return new RuleInfo(id, "Title", "Why", "How", "invented for tests", severity, "0.1.0", needs);
    }
}
