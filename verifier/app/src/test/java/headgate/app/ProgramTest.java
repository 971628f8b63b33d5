package headgate.app;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.app.console.Console;
import headgate.app.console.ExitCode;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {

    @Test
    void saysItsVersion() {
        Run run = Run.of("--version");
        assertThat(run.end()).isEqualTo(ExitCode.FITS);
        assertThat(run.out()).matches("headgate \\d+\\.\\d+\\.\\d+\\n");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void helpNamesEveryCommandAndExitCode() {
        Run run = Run.of("--help");
        assertThat(run.end()).isEqualTo(ExitCode.FITS);
        assertThat(run.out()).contains("doctor", "0 fits", "1 does not fit", "2 wrong input", "130");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "frobnicate", "doctor --colour", "--jso", "doctor surplus"})
    void wrongUsageIsOneLineAndNoStackTrace(String line) {
        Run run = Run.of(line.isEmpty() ? new String[0] : line.split(" "));
        assertThat(run.end()).isEqualTo(ExitCode.INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("headgate: ").contains("--help").doesNotContain("\tat ");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void wrongUsageIsADocumentForPrograms() {
        Run run = Run.of("doctor", "--json", "surplus");
        assertThat(run.end()).isEqualTo(ExitCode.INPUT);
        assertThat(run.out())
                .startsWith("{\n  \"format\" : \"headgate.error/1\",\n  \"exit\" : 2,")
                .endsWith("}\n");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void anUnknownRuleIsOneLine() {
        Run run = Run.of("rules", "clearance.no-such");
        assertThat(run.end()).isEqualTo(ExitCode.INPUT);
        assertThat(run.err())
                .isEqualTo(
                        "headgate: rules: there is no rule 'clearance.no-such'. Type 'headgate rules' for the list.\n");
    }

    @Test
    void theDemoSaysWhereItsFilesShouldBe() {
        Run run = Run.of("demo");
        assertThat(run.end()).isEqualTo(ExitCode.INPUT);
        assertThat(run.err())
                .contains("no-such-home", "sample files are not there")
                .hasLineCount(1);
    }

    @Test
    void aTraceNeedsAFolder() {
        Run run = Run.of("check", "head.jar", "--carriage", "c.json", "--crop", "p.json", "--trace");
        assertThat(run.end()).isEqualTo(ExitCode.INPUT);
        assertThat(run.err()).isEqualTo("headgate: --trace: needs a folder to keep it in. Give one by --out DIR.\n");
    }

    @Test
    void everyFileThatCannotBeUsedIsNamedAtOnce() {
        Run run = Run.of("check", "no-head.jar", "--carriage", "no-c.json", "--crop", "no-p.json");
        assertThat(run.end()).isEqualTo(ExitCode.INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("no-head.jar", "no-c.json", "no-p.json").doesNotContain("\tat ");
    }

    @Test
    void coloursOnlyWhenToldTo() {
        assertThat(Run.of(false, "doctor").out()).doesNotContain("\u001b");
        assertThat(Run.of(true, "doctor").out()).contains("\u001b[32m");
    }

    @Test
    void anAnswerThatCannotBeWrittenIsNoSuccess() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("no space left");
            }
        };
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        Console console =
                new Console(new PrintStream(full, true, StandardCharsets.UTF_8), nowhere, false, Map.of(), Path.of(""));
        assertThat(new Program(console).run("--version")).isEqualTo(ExitCode.INPUT);
    }

    @ParameterizedTest
    @CsvSource({"FITS,FITS,FITS", "FITS,REFUSED,REFUSED", "INPUT,REFUSED,INPUT", "INPUT,FAULT,FAULT"})
    void theGraverEndWins(ExitCode one, ExitCode other, ExitCode expected) {
        assertThat(one.and(other)).isEqualTo(expected);
        assertThat(other.and(one)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"FITS,0", "REFUSED,1", "INPUT,2", "FAULT,3"})
    void exitCodesKeepTheirNumbers(ExitCode code, int number) {
        assertThat(code.number()).isEqualTo(number);
    }
}
