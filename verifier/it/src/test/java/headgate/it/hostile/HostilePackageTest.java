package headgate.it.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.it.Checkout;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.verifier.check.Finding;
import headgate.verifier.judge.JudgedFinding;
import headgate.verifier.judge.Judgement;
import headgate.verifier.judge.Verdict;
import headgate.verifier.session.CheckInput;
import headgate.verifier.session.CheckResult;
import headgate.verifier.session.CheckSession;
import headgate.verifier.session.CheckSession.StaticStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A package may be broken or hostile in any way: it costs one finding or one error, and nothing of it is run. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class HostilePackageTest {

    private static final Path LOWFIELD = Checkout.folder().resolve("sample-heads/lowfield/src/main/resources/lowfield");

    @ParameterizedTest
    @EnumSource
    void isOneFindingOrOneError(BrokenPackage broken, @TempDir Path work) throws IOException {
        CheckResult result = check(broken.jar(), work);
        if (broken.answer().rule().isEmpty()) {
            assertThat(result).isInstanceOf(CheckResult.Refused.class);
            assertThat(((CheckResult.Refused) result).problems())
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.toString())
                            .contains(broken.answer().part()));
        } else {
            assertThat(result).isInstanceOf(CheckResult.Judged.class);
            Judgement judgement = ((CheckResult.Judged) result).judgement();
            assertThat(judgement.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
            assertThat(judgement.faults()).isEmpty();
            assertThat(failures(judgement)).singleElement().satisfies(text -> assertThat(text)
                    .startsWith(broken.answer().rule() + ": ")
                    .contains(broken.answer().part())
                    .doesNotContain("\n"));
        }
        try (Stream<Path> left = Files.list(work)) {
            assertThat(left.map(each -> each.getFileName().toString())).containsExactly("head.jar");
        }
        assertThat(ProcessHandle.current().descendants()).noneMatch(HostilePackageTest::isAHead);
        theNextHeadRuns();
    }

    @Test
    void thereAreFarMoreThanFortyOfThem() {
        assertThat(BrokenPackage.values().length).isGreaterThan(80);
    }

    @Test
    void afterAllOfThemTheInnocentOneFits(@TempDir Path work) throws IOException {
        for (BrokenPackage broken : BrokenPackage.values()) {
            HeadPackage.inspect(broken.jar());
        }
        CheckResult result = check(Misdeed.innocent(), work);
        assertThat(result).isInstanceOf(CheckResult.Judged.class);
        Judgement judgement = ((CheckResult.Judged) result).judgement();
        assertThat(failures(judgement)).isEmpty();
        assertThat(judgement.verdict().isFit()).isTrue();
    }

    /** The next check as far as a broken package could spoil it: the gate passes the gripper, and it gives its sheet. */
    private static void theNextHeadRuns() {
        Inspection.Inspected inspected = (Inspection.Inspected) HeadPackage.inspect(Innocent.JAR);
        assertThat(inspected.facts().problems()).isEmpty();
        HeadStart start = HeadProcess.start(inspected.clean().orElseThrow(), HeadLimits.STANDARD);
        assertThat(start).isInstanceOf(HeadStart.Running.class);
        try (HeadAnswers head = ((HeadStart.Running) start).head()) {
            assertThat(head.sheet().hardwareRevision()).isNotBlank();
        }
    }

    private static final class Innocent {
        static final byte[] JAR = Misdeed.innocent();
    }

    private static CheckResult check(byte[] jar, Path work) throws IOException {
        Path head = Files.write(work.resolve("head.jar"), jar);
        return new CheckSession(HeadLimits.STANDARD, StaticStage.BINDING)
                .check(new CheckInput(
                        head,
                        LOWFIELD.resolve("carriage.json"),
                        LOWFIELD.resolve("lettuce-45-weeding.json"),
                        Optional.empty()));
    }

    private static List<String> failures(Judgement judgement) {
        return judgement.findings().stream()
                .map(JudgedFinding::finding)
                .filter(Finding::breaksFit)
                .map(each -> each.rule().id() + ": " + each.message())
                .toList();
    }

    private static boolean isAHead(ProcessHandle process) {
        return process.info().commandLine().orElse("").contains("headgate.runtime.child");
    }
}
