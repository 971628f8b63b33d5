package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.testing.Heads;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a head could come to depend on differs between the two processes of a check, and stays within one kind. */
class SurroundingsTest {

    /** What a head finds, as the message of what it throws. */
    private static String found(Surroundings surroundings, String expression) {
        HeadProcess process = HeadProcess.open(HeadLimits.STANDARD, surroundings);
        process.load(HeadProcessTest.jar(Heads.acting(
                "static boolean asserted() { try { assert !on(); return false; } catch (AssertionError e) { return true; } }",
                "if (on()) { throw new IllegalStateException(\"\" + (" + expression + ")); } return plain(task);")));
        try (HeadAnswers head = ((HeadStart.Running) process.await()).head()) {
            HeadFault fault = ((SpotAnswer.Failed) head.act(HeadProcessTest.task(1))).fault();
            return ((HeadFault.Threw) fault).message();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.util.Set.of(\"a\", \"b\")",
                "java.util.Set.of(1, 2, 3, 4, 5, 6, 7)",
                "java.util.Map.of(1, \"a\", 2, \"b\", 3, \"c\")",
                "\"MILLI\".toLowerCase()",
                "String.format(\"%.1f\", 0.5)",
                "java.util.TimeZone.getDefault().getRawOffset()",
                "asserted()",
                "Runtime.getRuntime().maxMemory()",
                "Runtime.getRuntime().availableProcessors()",
            })
    void differ(String expression) {
        String usual = found(Surroundings.USUAL, expression);
        assertThat(found(Surroundings.USUAL, expression))
                .as("the same at every check")
                .isEqualTo(usual);
        String other = found(Surroundings.OTHER, expression);
        assertThat(other).isNotEqualTo(usual);
        assertThat(found(Surroundings.OTHER, expression))
                .as("the same at every check")
                .isEqualTo(other);
    }

    /** The order of objects that have no order of their own; it may vary within one kind too. */
    @ParameterizedTest
    @ValueSource(strings = "new Object().hashCode() + \" \" + new Object().hashCode()")
    void identityDiffers(String expression) {
        assertThat(found(Surroundings.OTHER, expression)).isNotEqualTo(found(Surroundings.USUAL, expression));
    }
}
