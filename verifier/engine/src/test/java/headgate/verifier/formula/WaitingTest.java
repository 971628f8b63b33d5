package headgate.verifier.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Waiting and loss: Erlang, Pollaczek-Khinchine, and one server with a bounded wait. */
class WaitingTest {

    private static final double TAU = 2.5;

    /**
     * Constant patience (model: Bae and Kim, Queueing Systems 64, 2010). Values derived from the workload equation; the
     * rows that have them were confirmed by a simulation of two million customers of another program, to its noise.
     */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0, 0.333333, 0.333333, , ",
        "0.5, 1, 0.178735, 0.096274, 0.1780, 0.0958",
        "0.5, 2, 0.101285, 0.027242, , ",
        "0.8, 1, 0.275196, 0.199570, 0.2749, 0.1991",
        "0.8, 2, 0.187832, 0.103299, 0.1874, 0.1030",
        "1.0, 1, 0.333333, 0.268941, , ",
        "1.2, 2, 0.311818, 0.254880, 0.3119, 0.2545",
        "1.5, 1, 0.456352, 0.419661, , "
    })
    void boundedWait(
            double rho, double patience, double exponential, double fixed, Double simulatedM, Double simulatedD) {
        BoundedWait m = BoundedWait.of(rho / TAU, ServiceTime.exponential(TAU), patience * TAU);
        BoundedWait d = BoundedWait.of(rho / TAU, ServiceTime.fixed(TAU), patience * TAU);

        assertThat(m.loss()).isCloseTo(exponential, within(5e-7));
        assertThat(d.loss()).isCloseTo(fixed, within(5e-7));
        if (simulatedM != null) {
            assertThat(m.loss()).isCloseTo(simulatedM, within(1e-3));
            assertThat(d.loss()).isCloseTo(simulatedD, within(1e-3));
        }
    }

    /** The general solution must give the closed forms when it is fed the same laws in another guise. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0, 0.333333",
        "0.5, 1, 0.096274",
        "0.5, 2, 0.027242",
        "0.8, 1, 0.199570",
        "0.8, 2, 0.103299",
        "1.0, 1, 0.268941",
        "1.2, 2, 0.254880",
        "1.5, 1, 0.419661"
    })
    void generalLawAgreesWithFixedService(double rho, double patience, double fixed) {
        // Two atoms that differ by a millionth are no fixed time, so the general solution is used.
        ServiceTime almostFixed = ServiceTime.ofSamples(TAU * (1 - 1e-7), TAU * (1 + 1e-7));

        BoundedWait wait = BoundedWait.of(rho / TAU, almostFixed, patience * TAU);

        assertThat(wait.loss()).isCloseTo(fixed, within(2e-6));
        assertThat(wait.leastLoss()).isLessThanOrEqualTo(wait.loss());
        assertThat(wait.mostLoss()).isGreaterThanOrEqualTo(wait.loss());
    }

    @Test
    @DisplayName("a mixture of very many equal parts of an exponential law tends to the exponential form")
    void generalLawAgreesWithExponentialService() {
        int n = 4000;
        double[] quantiles = new double[n];
        for (int i = 0; i < n; i++) {
            quantiles[i] = -TAU * Math.log(1 - (i + 0.5) / n);
        }

        double loss =
                BoundedWait.of(0.8 / TAU, ServiceTime.ofSamples(quantiles), TAU).loss();

        assertThat(loss).isCloseTo(0.275196, within(2e-4));
    }

    /** With no patience the loss is Erlang's, whatever the law (insensitivity). */
    @ParameterizedTest
    @MethodSource("laws")
    void withoutPatienceTheLawDoesNotMatter(ServiceTime law) {
        for (double rho : new double[] {0.1, 0.5, 1, 1.7}) {
            assertThat(BoundedWait.of(rho / law.mean(), law, 0).loss()).isCloseTo(Erlang.loss(rho, 1), within(1e-12));
        }
    }

    /** Bounds hold the value and are narrow; loss falls with patience and rises with load. */
    @ParameterizedTest
    @MethodSource("laws")
    void boundsAndDirections(ServiceTime law) {
        double before = 1;
        for (double patience = 0; patience <= 4; patience += 0.5) {
            BoundedWait wait = BoundedWait.of(0.9 / law.mean(), law, patience * law.mean());
            assertThat(wait.loss()).isBetween(wait.leastLoss(), wait.mostLoss()).isLessThan(before);
            assertThat(wait.mostLoss() - wait.leastLoss()).isLessThan(2e-3);
            assertThat(BoundedWait.of(1.0 / law.mean(), law, patience * law.mean())
                            .loss())
                    .isGreaterThan(wait.loss());
            before = wait.loss();
        }
    }

    /** An independent simulation of the workload, customer by customer: 400,000 each, four standard errors. */
    @ParameterizedTest
    @MethodSource("laws")
    void simulationAgrees(ServiceTime law, double[] drawn) {
        double rho = 0.8;
        double patience = 0.7 * law.mean();
        Random random = new Random(20260101);
        double workload = 0;
        int lost = 0;
        int customers = 400_000;
        for (int i = 0; i < customers; i++) {
            double gap = -Math.log(1 - random.nextDouble()) * law.mean() / rho;
            workload = Math.max(0, workload - gap);
            if (workload > patience) {
                lost++;
            } else {
                workload += drawn[random.nextInt(drawn.length)];
            }
        }

        double loss = BoundedWait.of(rho / law.mean(), law, patience).loss();
        assertThat((double) lost / customers).isCloseTo(loss, within(0.004));
    }

    static Stream<Arguments> laws() {
        double[] twoSpeeds = {1.0, 1.0, 1.0, 4.0};
        double[] measured = {1.9, 2.0, 2.05, 2.2, 2.4, 3.1};
        double[] fixed = {2.5};
        Random random = new Random(7);
        double[] erlang = new double[200_000];
        for (int i = 0; i < erlang.length; i++) {
            erlang[i] = -Math.log((1 - random.nextDouble()) * (1 - random.nextDouble()) * (1 - random.nextDouble()))
                    * TAU
                    / 3;
        }
        return Stream.of(
                Arguments.of(ServiceTime.ofSamples(twoSpeeds), twoSpeeds),
                Arguments.of(ServiceTime.ofSamples(measured), measured),
                Arguments.of(ServiceTime.fixed(2.5), fixed),
                Arguments.of(ServiceTime.erlang(3, TAU), erlang));
    }

    @Test
    @DisplayName("an overloaded server with much patience loses 1 - 1 / rho (derived: it is never idle)")
    void overloadInTheLimit() {
        assertThat(BoundedWait.of(2, ServiceTime.fixed(1), 40).loss()).isCloseTo(0.5, within(1e-6));
        assertThat(BoundedWait.of(2, ServiceTime.exponential(1), 4000).loss()).isCloseTo(0.5, within(1e-9));
        assertThat(BoundedWait.of(2, ServiceTime.exponential(1), 40).busyShare())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void nobodyComes() {
        assertThat(BoundedWait.of(0, ServiceTime.fixed(1), 1).loss()).isZero();
    }

    /** M/D/1 waiting law at rho 0.8, which H gives up to the factor 1 - rho. Derived (Erlang 1909). */
    @ParameterizedTest
    @CsvSource({"0, 0.2", "0.5, 0.298365", "1, 0.445108", "2, 0.634520", "4, 0.845375"})
    void waitingLawOfFixedService(double t, double probability) {
        double rho = 0.8;
        double loss = BoundedWait.of(rho, ServiceTime.fixed(1), t).loss();
        // Loss = 1 - H / (1 + rho H), so H follows from the loss.
        double served = 1 - loss;
        double h = served / (1 - rho * served);

        assertThat((1 - rho) * h).isCloseTo(probability, within(5e-7));
    }

    /** codingace.net, "Blocking probability", six decimals, with the carried load. */
    @ParameterizedTest
    @CsvSource({
        "8, 10, 0.121661, 7.026711",
        "12, 10, 0.301925, 8.376900",
        "12, 14, 0.117210, 10.593481",
        "20, 18, 0.221260, 15.574793"
    })
    void erlangLossAsPrinted(double load, int servers, double loss, double carried) {
        assertThat(Erlang.loss(load, servers)).isCloseTo(loss, within(5e-7));
        assertThat(load * (1 - Erlang.loss(load, servers))).isCloseTo(carried, within(1e-6));
    }

    /** Small exact values, derived; those of 2/5, 10/14, 5/10 and 1/1 are also printed in textbooks. */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 0.5",
        "0.5, 1, 0.3333333333",
        "1, 2, 0.2",
        "2, 5, 0.0366972477",
        "3, 5, 0.1100543478",
        "5, 5, 0.2848678213",
        "5, 10, 0.0183845703",
        "10, 10, 0.2145823431",
        "10, 14, 0.0568191434"
    })
    void erlangLossExactly(double load, int servers, double loss) {
        assertThat(Erlang.loss(load, servers)).isCloseTo(loss, within(5e-11));
    }

    /** Traffic tables, loads for a given loss; 8.108 for 15 servers at 1 % is in the manual of erlang.com. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.0010, 0.0101, 0.0204, 0.0526, 0.1111, 0.2500",
        "2, 0.0458, 0.1526, 0.2235, 0.3813, 0.5954, 1.0000",
        "5, 0.7621, 1.3608, 1.6571, 2.2185, 2.8811, 4.0104",
        "10, 3.0920, 4.4612, 5.0840, 6.2157, 7.5106, 9.6850",
        "50, 32.5119, 37.9014, 40.2551, 44.5331, 49.5621, 58.5082"
    })
    void loadTable(int servers, double a, double b, double c, double d, double e, double f) {
        double[] losses = {0.001, 0.01, 0.02, 0.05, 0.10, 0.20};
        double[] loads = {a, b, c, d, e, f};
        for (int i = 0; i < losses.length; i++) {
            assertThat(Erlang.loadAtLoss(losses[i], servers)).isCloseTo(loads[i], within(5.1e-5));
        }
    }

    @Test
    void loadOfFifteenServersAtOnePercent() {
        assertThat(Erlang.loadAtLoss(0.01, 15)).isCloseTo(8.108, within(5e-4));
    }

    @Test
    @DisplayName("Erlang C of 2 over 3 servers: 4/9 (derived)")
    void erlangDelay() {
        assertThat(Erlang.delay(2, 3)).isCloseTo(4 / 9.0, within(1e-12));
        assertThatThrownBy(() -> Erlang.delay(3, 3)).hasMessageContaining("less than the 3 servers");
    }

    /** Values of the formula in Cooper, Introduction to Queueing Theory, 1981, p. 189. */
    @Test
    void meanWait() {
        assertThat(MeanWait.seconds(0.25, ServiceTime.fixed(2))).isCloseTo(1.0, within(1e-12));
        assertThat(MeanWait.seconds(0.4, ServiceTime.fixed(2))).isCloseTo(4.0, within(1e-12));
        assertThat(MeanWait.seconds(0.4, ServiceTime.erlang(4, 2))).isCloseTo(5.0, within(1e-12));
        assertThat(MeanWait.seconds(0.4, ServiceTime.exponential(2))).isCloseTo(8.0, within(1e-12));
        assertThat(MeanWait.seconds(0.9, ServiceTime.fixed(1))).isCloseTo(4.5, within(1e-12));
        assertThatThrownBy(() -> MeanWait.seconds(1, ServiceTime.fixed(1))).hasMessageContaining("less than 1");
    }

    @Test
    @DisplayName("ten jobs of a published exercise: 8 on time, jobs 7 and 8 late; and two small sets")
    void onTimeJobs() {
        List<OnTimeJobs.Job> ten =
                jobs(19, 48, 23, 75, 5, 170, 31, 215, 17, 205, 8, 240, 32, 85, 41, 67, 26, 100, 18, 95);
        List<Integer> chosen = OnTimeJobs.of(ten);

        assertThat(chosen).hasSize(8).doesNotContain(6, 7);
        assertThat(allOnTime(ten, chosen)).isTrue();
        assertThat(OnTimeJobs.of(jobs(10, 15, 3, 6, 4, 9, 8, 23, 10, 20, 6, 30)))
                .containsExactlyInAnyOrder(1, 2, 3, 5);
        assertThat(OnTimeJobs.of(jobs(2, 3, 4, 5, 1, 6, 3, 7, 2, 8))).containsExactlyInAnyOrder(0, 2, 3, 4);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void onTimeJobsEqualsTryingAll(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 50; round++) {
            double[] figures = new double[16];
            for (int i = 0; i < 8; i++) {
                figures[2 * i] = 1 + random.nextInt(20);
                figures[2 * i + 1] = 1 + random.nextInt(60);
            }
            List<OnTimeJobs.Job> jobs = jobs(figures);
            List<Integer> chosen = OnTimeJobs.of(jobs);
            assertThat(allOnTime(jobs, chosen)).isTrue();
            assertThat(chosen).hasSize(bestByTryingAll(jobs));
        }
    }

    private static int bestByTryingAll(List<OnTimeJobs.Job> jobs) {
        int best = 0;
        for (int set = 0; set < 1 << jobs.size(); set++) {
            int mask = set;
            List<Integer> some = Stream.iterate(0, i -> i < jobs.size(), i -> i + 1)
                    .filter(i -> (mask >> i & 1) == 1)
                    .sorted((i, j) ->
                            Double.compare(jobs.get(i).due(), jobs.get(j).due()))
                    .toList();
            if (some.size() > best && allOnTime(jobs, some)) {
                best = some.size();
            }
        }
        return best;
    }

    private static boolean allOnTime(List<OnTimeJobs.Job> jobs, List<Integer> order) {
        double time = 0;
        for (int i : order) {
            time += jobs.get(i).duration();
            if (time > jobs.get(i).due()) {
                return false;
            }
        }
        return true;
    }

    private static List<OnTimeJobs.Job> jobs(double... figures) {
        return Stream.iterate(0, i -> i < figures.length, i -> i + 2)
                .map(i -> new OnTimeJobs.Job(figures[i], figures[i + 1]))
                .toList();
    }
}
