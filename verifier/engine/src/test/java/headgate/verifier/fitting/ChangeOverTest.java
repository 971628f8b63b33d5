package headgate.verifier.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Interval;
import headgate.api.shape.Point;
import headgate.api.unit.Micrometres;
import headgate.runtime.carriage.Arm;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.geometry.Gap;
import headgate.verifier.geometry.Occupied;
import headgate.verifier.remedy.SetRowSpacing;
import headgate.verifier.setup.ArmAllowance;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import headgate.verifier.setup.StationSpace;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Four rows from 50 to 37.5 cm: the outer arms go 187.5 mm towards the middle, the inner ones 62.5 mm. */
class ChangeOverTest {

    private static final double TO = 0.375;

    @Test
    void shiftsAllAtOnceWhereAllMoveAlike() {
        Case subject = Cases.weeding().build();

        ChangeOver plan = plan(subject).orElseThrow();

        // Rest to rest over 187.5 mm at 1 m/s2 without reaching 0.5 m/s: 2 sqrt(L / a). The lift, at 0.2 m/s, from the
        // lowest height of work to the top at 0.95 m: L / v + v / a.
        long lowest = Setup.of(subject).stations().get(0).workHeights().least();
        double lift = (0.95 - Micrometres.toMetres(lowest)) / 0.2 + 0.2;
        assertThat(plan.steps()).hasSize(1);
        assertThat(plan.steps().get(0).moves())
                .containsExactly(
                        new ChangeOver.Move("a1", -750_000, -562_500),
                        new ChangeOver.Move("a2", -250_000, -187_500),
                        new ChangeOver.Move("a3", 250_000, 187_500),
                        new ChangeOver.Move("a4", 750_000, 562_500));
        assertThat(plan.steps().get(0).time()).isCloseTo(2 * Math.sqrt(0.1875), within(1e-12));
        assertThat(plan.lifting()).isCloseTo(lift, within(1e-12));
        assertThat(plan.time()).isCloseTo(2 * lift + 2 * Math.sqrt(0.1875), within(1e-12));
        assertThat(worstMargin(subject, plan)).isNotNegative();
    }

    @Test
    void letsTheSlowArmInFrontGoFirst() {
        // On one beam, the inner arms at a crawl: shifted at once, the outer ones would run into them.
        Case subject = crawling(0.001);

        ChangeOver plan = plan(subject).orElseThrow();

        assertThat(plan.steps()).extracting(ChangeOver.Step::arms).containsExactly("a2, a3", "a1, a4");
        assertThat(worstMargin(subject, plan)).isNotNegative();
        // At once they would not be clear, which shows that the order matters.
        ChangeOver atOnce = new ChangeOver(
                0,
                List.of(new ChangeOver.Step(
                        plan.steps().stream().flatMap(s -> s.moves().stream()).toList(), 10)),
                0);
        assertThat(worstMargin(subject, atOnce)).isNegative();
    }

    @Test
    void saysSoWhereArmsMayRunIntoEachOtherHoweverTheyGo() {
        // At 375 mm heads 300 mm wide are 75 mm apart: an overshoot of 60 mm leaves too little.
        assertThat(plan(crawling(0.06))).isEmpty();
    }

    @Test
    void saysWhichSpacingsAreServed() {
        Case subject = Cases.weeding().build();

        List<ServedSpacing> served = ServedSpacing.of(subject, List.of(0.375, 0.5, 0.9));

        assertThat(served).extracting(ServedSpacing::rows).containsExactly(4, 4, 3);
        assertThat(served).extracting(s -> s.isServed(subject)).containsExactly(true, true, false);
        // Leaves are 200 mm wide and a wheel needs as much: 375 - 200 - 200 mm; at 500 mm 100 mm are left. Three rows
        // at
        // 900 mm have their wheel, which goes out to 1300 mm, 50 mm aside of the middle: 900 - 200 - 100 - 200 mm.
        assertThat(served)
                .extracting(ServedSpacing::wheelMargin)
                .containsExactly(Optional.of(-25_000L), Optional.of(100_000L), Optional.of(400_000L));
        assertThat(served.get(0).setup().orElseThrow().stations())
                .extracting(s -> s.mount().y())
                .containsExactly(-562_500L, -187_500L, 187_500L, 562_500L);
        assertThat(served.get(1).fromPlan().orElseThrow().steps()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.1875, 0.5, 1, 1", "-0.4, 0.3, 2, 1", "0.05, 1, 4, 2", "1.0, 1.0, 2, 2"})
    void travelsAsItsVelocitySays(double distance, double speed, double up, double down) {
        Travel travel = new Travel(distance, new Arm.AxisMotion(speed, up, down, 0));
        int steps = 200_000;
        double dt = travel.duration() / steps;
        double gone = 0;
        for (int i = 0; i < steps; i++) {
            gone += travel.velocity((i + 0.5) * dt) * dt;
            if (i % 20_000 == 0) {
                assertThat(travel.position((i + 1) * dt)).isCloseTo(gone, within(1e-8));
            }
        }
        assertThat(gone).isCloseTo(distance, within(1e-8));
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.5, 0.1, 0.2", "0.2, 0.1, 0.3, 0.9", "-0.3, 0.5, 0.2, 0.4", "0.4, 0.3, 0.4, 0.6"})
    void theCourseHoldsEveryOffsetOnTheWay(double first, double speedA, double second, double speedB) {
        Travel a = new Travel(first, new Arm.AxisMotion(speedA, 1, 2, 0));
        Travel b = new Travel(second, new Arm.AxisMotion(speedB, 3, 1, 0));

        Interval course = ChangeOverPlanner.course(500_000, a, b);

        double least = 500_000;
        double most = 500_000;
        for (double t = 0; t < 10; t += 1e-4) {
            double offset = 500_000 + (b.position(t) - a.position(t)) * Micrometres.PER_METRE;
            least = Math.min(least, offset);
            most = Math.max(most, offset);
        }
        assertThat((double) course.least()).isLessThanOrEqualTo(least + 0.5).isGreaterThan(least - 3);
        assertThat((double) course.most()).isGreaterThanOrEqualTo(most - 0.5).isLessThan(most + 3);
    }

    private static Case crawling(double overshoot) {
        UnaryOperator<Arm> onOneBeam = a -> Cases.arm(
                a.id(),
                "front",
                Micrometres.toMetres((a.shift().least() + a.shift().most()) / 2));
        return Cases.weeding()
                .arms(onOneBeam)
                .arms(a -> {
                    boolean inner = a.id().equals("a2") || a.id().equals("a3");
                    return new Arm(
                            a.id(),
                            a.beam(),
                            a.shift(),
                            a.lift(),
                            new Arm.AxisMotion(inner ? 0.01 : 0.5, 1, 1, overshoot),
                            a.liftMotion(),
                            a.tolerance(),
                            a.payload(),
                            a.plate(),
                            a.connectors(),
                            a.supply(),
                            a.body());
                })
                .build();
    }

    private static Optional<ChangeOver> plan(Case subject) {
        return ChangeOverPlanner.plan(
                subject, Setup.of(subject), Setup.of(SetRowSpacing.to(TO).apply(subject)));
    }

    /**
     * The least margin of all pairs of arms, m, at every instant of every step: from one look to the next no two arms come
     * nearer than the margin that was left, since each gap shrinks by no more than the two speeds together. Where a plan is
     * not clear, a look every millisecond shows it.
     */
    private static double worstMargin(Case subject, ChangeOver plan) {
        Map<String, Station> arms = new HashMap<>();
        Map<String, Long> at = new HashMap<>();
        for (Station s : Setup.of(subject).stations()) {
            arms.put(s.arm().id(), s);
            at.put(s.arm().id(), s.mount().y());
        }
        double worst = Double.POSITIVE_INFINITY;
        for (ChangeOver.Step step : plan.steps()) {
            double fastest = 2
                    * subject.carriage().value().arms().stream()
                            .mapToDouble(a -> a.shiftMotion().speed())
                            .max()
                            .orElseThrow();
            double left = 0;
            for (double t = 0; t <= step.time(); t += Math.max(left / fastest, 0.001)) {
                Map<String, Long> now = new HashMap<>(at);
                for (ChangeOver.Move m : step.moves()) {
                    Travel travel = new Travel(
                            Micrometres.toMetres(m.to() - m.from()),
                            Objects.requireNonNull(arms.get(m.arm())).arm().shiftMotion());
                    now.put(m.arm(), m.from() + Math.round(travel.position(t) * Micrometres.PER_METRE));
                }
                left = margin(subject, arms, now);
                worst = Math.min(worst, left);
            }
            step.moves().forEach(m -> at.put(m.arm(), m.to()));
        }
        return worst;
    }

    private static double margin(Case subject, Map<String, Station> arms, Map<String, Long> at) {
        double worst = Double.POSITIVE_INFINITY;
        List<Station> all = arms.values().stream().toList();
        double k = subject.policy().value().coverageFactor().value();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Station a = all.get(i);
                Station b = all.get(j);
                double gap =
                        Gap.between(lifted(a, at), lifted(b, at)).orElseThrow().metres();
                double required = subject.policy().value().armGap().value()
                        + ArmAllowance.of(a, k).total()
                        + ArmAllowance.of(b, k).total();
                worst = Math.min(worst, gap - required);
            }
        }
        return worst;
    }

    private static Occupied lifted(Station s, Map<String, Long> at) {
        return StationSpace.waiting(
                s.arm(),
                Optional.of(s.sheet()),
                s.turned(),
                new Point(s.mount().x(), Objects.requireNonNull(at.get(s.arm().id()))));
    }
}
