package headgate.verifier.rules;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.check.NeverFinds;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.judge.Judge;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every rule owes, whatever it is about. */
class RuleBookTest {

    /** The word that the name of a test begins with, or has in it after "is", for each outcome that must be shown. */
    private static final Map<Outcome, String> SHOWN =
            Map.of(Outcome.PASS, "passes", Outcome.FAIL, "fails", Outcome.UNDECIDED, "undecided");

    static List<Rule> rules() {
        return RuleBook.all();
    }

    @Test
    void eachRuleStandsAfterThoseThatItNeedsAndHasAnIdOfItsOwn() {
        // The judge refuses a book that is out of order.
        new Judge(RuleBook.all());

        assertThat(RuleBook.all()).hasSizeGreaterThan(20);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aRuleSaysWhatItHoldsWhyHowAndFromWhere(Rule rule) {
        RuleInfo info = rule.info();

        assertThat(List.of(info.title(), info.why(), info.how(), info.source()))
                .allSatisfy(text -> assertThat(text).isNotBlank().doesNotContain("  "));
        assertThat(info.title()).doesNotEndWith(".");
        assertThat(info.why()).endsWith(".");
        assertThat(info.how()).endsWith(".");
        assertThat(RuleBook.find(info.id())).isEqualTo(Optional.of(rule));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aTestShowsEachOutcomeOfARule(Rule rule) throws ClassNotFoundException {
        Class<?> test = Class.forName(rule.getClass().getName() + "Test");
        NeverFinds never = test.getAnnotation(NeverFinds.class);
        List<Outcome> excused = never == null ? List.of() : Arrays.asList(never.value());

        SHOWN.forEach((outcome, word) -> {
            boolean shown = Arrays.stream(test.getDeclaredMethods())
                    .filter(RuleBookTest::isTest)
                    .anyMatch(m -> m.getName().toLowerCase(Locale.ROOT).contains(word));
            assertThat(shown)
                    .as("%s has a test named \"%s...\", or @NeverFinds says why not", test.getSimpleName(), word)
                    .isNotEqualTo(excused.contains(outcome));
        });
    }

    private static boolean isTest(Method method) {
        return method.isAnnotationPresent(Test.class) || method.isAnnotationPresent(ParameterizedTest.class);
    }
}
