package headgate.it.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.it.Checkout;
import headgate.runtime.process.HeadLimits;
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
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A head may do what it likes: it costs one finding and a bounded time, and the next check is right. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
class HostileHeadTest {

    private static final HeadLimits LIMITS = HeadLimits.STANDARD.answeringWithin(Duration.ofSeconds(3));
    private static final Path LOWFIELD = Checkout.folder().resolve("sample-heads/lowfield/src/main/resources/lowfield");

    @ParameterizedTest
    @EnumSource
    void isOneFindingBehindTheStaticStage(Misdeed misdeed, @TempDir Path work) throws IOException {
        Judgement judgement = check(misdeed.jar(), StaticStage.BINDING, work);
        assertThat(judgement.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
        assertThat(judgement.faults()).isEmpty();
        assertThat(failures(judgement)).as("findings that break the fit").hasSize(1);
        theNextCheckIsRight(work);
    }

    @ParameterizedTest
    @EnumSource
    void isBoundedWithoutTheStaticStage(Misdeed misdeed, @TempDir Path work) throws IOException {
        Judgement judgement = check(misdeed.jar(), StaticStage.ADVISORY, work);
        assertThat(judgement.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
        assertThat(judgement.faults()).isEmpty();
        assertThat(ProcessHandle.current().descendants()).noneMatch(HostileHeadTest::isAHead);
        theNextCheckIsRight(work);
    }

    @Test
    void theCopyWithoutAMisdeedFits(@TempDir Path work) throws IOException {
        theNextCheckIsRight(work);
    }

    private static void theNextCheckIsRight(Path work) throws IOException {
        Judgement judgement = check(Misdeed.innocent(), StaticStage.BINDING, work);
        assertThat(failures(judgement)).isEmpty();
        assertThat(judgement.verdict().isFit()).isTrue();
    }

    private static Judgement check(byte[] jar, StaticStage stage, Path work) throws IOException {
        Path head = Files.write(work.resolve("head.jar"), jar);
        CheckResult result = new CheckSession(LIMITS, stage)
                .check(new CheckInput(
                        head,
                        LOWFIELD.resolve("carriage.json"),
                        LOWFIELD.resolve("lettuce-45-weeding.json"),
                        Optional.empty()));
        assertThat(result).isInstanceOf(CheckResult.Judged.class);
        return ((CheckResult.Judged) result).judgement();
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
