package headgate.verifier.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headgate.api.shape.Body;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.runtime.carriage.Arm;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.fitting.Fitting;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Four arms; two heads: one 300 mm wide, one that stands out 60 mm to the left and 150 mm to the right. */
class FittingSearchTest {

    private final HeadUnderTest wide = Cases.weeding().head();
    private final HeadUnderTest slim =
            Cases.weeding().sheet(FittingSearchTest::slim).head();

    @ParameterizedTest
    @CsvSource({"3, 0.5, 4, 4", "3, 0.5, 4, 1", "4, 0.4, 2, 2", "4, 0.4, 1, 3", "2, 0.6, 0, 1", "2, 0.6, 1, 1"})
    void findsAsMuchMarginAsTryingEveryFitting(int rows, double spacing, int wides, int slims) {
        Fitting fitting = fitting(wides, slims);

        Optional<FittingSearch.Proposal> found = search(fitting, rows, spacing, FittingSearch.Goal.MARGIN, any());

        Optional<Setup> best = best(fitting, rows, spacing);
        assertThat(found.isPresent()).isEqualTo(best.isPresent());
        found.ifPresent(p -> {
            assertThat(p.isProvenBest()).isTrue();
            assertThat(p.setup().margin()).isEqualTo(best.orElseThrow().margin());
            assertThat(busiest(p.setup())).isEqualTo(busiest(best.orElseThrow()));
            assertThat(p.arms()).filteredOn(a -> a.head().equals("wide")).hasSizeLessThanOrEqualTo(wides);
            assertThat(p.arms()).filteredOn(a -> a.head().equals("slim")).hasSizeLessThanOrEqualTo(slims);
            // The fitting that is written down has the same margin when it is checked.
            assertThat(Setup.of(mounted(p.arms(), rows, spacing)).margin())
                    .isEqualTo(p.setup().margin());
        });
    }

    @Test
    void leavesArmsThatAreNamedAsTheyAre() {
        Fitting fitting = fitting(4, 4).withArms(List.of(new Fitting.Place("a2", "wide", false, false, List.of())));

        FittingSearch.Proposal found =
                search(fitting, 4, 0.4, FittingSearch.Goal.MARGIN, any()).orElseThrow();

        assertThat(found.arms()).extracting(Fitting.Place::arm).containsExactly("a1", "a2", "a3", "a4");
        assertThat(found.arms().get(1)).isEqualTo(fitting.arms().get(0));
    }

    @Test
    void findsNothingWithTooFewHeadsOrHeadsThatDoNotSuit() {
        assertThat(search(fitting(1, 0), 4, 0.4, FittingSearch.Goal.MARGIN, any()))
                .isEmpty();
        assertThat(search(fitting(4, 4), 4, 0.4, FittingSearch.Goal.MARGIN, suiting(h -> false)))
                .isEmpty();
        assertThat(search(fitting(4, 4), 4, 0.4, FittingSearch.Goal.MARGIN, suiting(slim::equals))
                        .orElseThrow()
                        .arms())
                .extracting(Fitting.Place::head)
                .containsOnly("slim");
    }

    @Test
    void goesAsFastAsTheHeadsLetIt() {
        // On one lane the wide head keeps the pace up to 0.30 m/s, the slim one up to 0.20 m/s. There are three wide
        // ones.
        FittingSearch.Opinion pace = pace(s -> s.head().equals(wide) ? 0.30 : 0.20);

        FittingSearch.Proposal four =
                search(fitting(3, 4), 4, 0.4, FittingSearch.Goal.RATE, pace).orElseThrow();
        FittingSearch.Proposal three =
                search(fitting(3, 4), 3, 0.5, FittingSearch.Goal.RATE, pace).orElseThrow();

        assertThat(four.speed()).isCloseTo(0.20, within(1e-9));
        assertThat(three.speed()).isCloseTo(0.30, within(1e-9));
        assertThat(three.arms()).extracting(Fitting.Place::head).containsOnly("wide");
    }

    @Test
    void usesASecondArmWhereOneIsTooSlowForTwoLanes() {
        // A head that reaches over two lanes keeps the pace on two up to 0.1 m/s, on one up to 0.2 m/s. The plan wants
        // 0.2.
        FittingSearch.Opinion pace = pace(s -> 0.2 / s.lanes().size());

        FittingSearch.Proposal found =
                search(fitting(4, 4), 4, 0.4, FittingSearch.Goal.MARGIN, pace).orElseThrow();

        assertThat(busiest(found.setup())).isEqualTo(1);
        assertThat(search(fitting(3, 0), 4, 0.4, FittingSearch.Goal.MARGIN, pace))
                .isEmpty();
    }

    private static HeadSheet.Builder slim(HeadSheet.Builder sheet) {
        Body fixed = Body.of(Prism.box(-0.05, 0.45, -0.15, 0.06, -0.15, 0.0));
        List<Posture> postures = sheet.build().postures().stream()
                .map(p -> Cases.posture(p.name(), fixed, p.moving(), p.region()))
                .toList();
        return sheet.postures(postures);
    }

    private static Fitting fitting(int wides, int slims) {
        // A count begins at one: a head of which there is none is not listed.
        List<Fitting.Head> heads = new ArrayList<>();
        if (wides > 0) {
            heads.add(new Fitting.Head("wide", "wide.jar", Optional.of(wides)));
        }
        if (slims > 0) {
            heads.add(new Fitting.Head("slim", "slim.jar", Optional.of(slims)));
        }
        return new Fitting("search", "c.json", "p.json", Optional.empty(), heads, List.of(), List.of());
    }

    private Optional<FittingSearch.Proposal> search(
            Fitting fitting, int rows, double spacing, FittingSearch.Goal goal, FittingSearch.Opinion opinion) {
        return FittingSearch.of(mounted(fitting.arms(), rows, spacing), fitting, heads(), goal, opinion);
    }

    private Map<String, HeadUnderTest> heads() {
        Map<String, HeadUnderTest> heads = new LinkedHashMap<>();
        heads.put("wide", wide);
        heads.put("slim", slim);
        return heads;
    }

    private Case mounted(List<Fitting.Place> arms, int rows, double spacing) {
        Case subject = Cases.weeding()
                .rows(new CropPlan.Rows(spacing, rows, 0.4, 0.0))
                .weeds(2.0, 0.1, Optional.of(0.95), Optional.of(0.1))
                .build();
        return subject.withMountings(arms.stream()
                .map(p -> new Case.Mounting(
                        p.arm(), Objects.requireNonNull(heads().get(p.head())), p.turned(), new Case.Duty.Fitted()))
                .toList());
    }

    /** Every head, one way round or the other, or none, on every arm. */
    private Optional<Setup> best(Fitting fitting, int rows, double spacing) {
        List<Optional<Fitting.Place>> options = new ArrayList<>();
        List<List<Fitting.Place>> all = new ArrayList<>(List.of(List.of()));
        for (Arm arm : Cases.carriage().arms()) {
            options.clear();
            options.add(Optional.empty());
            for (Fitting.Head head : fitting.heads()) {
                options.add(Optional.of(new Fitting.Place(arm.id(), head.id(), false, false, List.of())));
                options.add(Optional.of(new Fitting.Place(arm.id(), head.id(), true, false, List.of())));
            }
            List<List<Fitting.Place>> longer = new ArrayList<>();
            for (List<Fitting.Place> some : all) {
                for (Optional<Fitting.Place> option : options) {
                    List<Fitting.Place> with = new ArrayList<>(some);
                    option.ifPresent(with::add);
                    longer.add(with);
                }
            }
            all = longer;
        }
        Optional<Setup> best = Optional.empty();
        for (List<Fitting.Place> arms : all) {
            boolean enough = fitting.heads().stream()
                    .allMatch(h ->
                            arms.stream().filter(a -> a.head().equals(h.id())).count()
                                    <= h.count().orElseThrow());
            // With no more heads than lanes nothing is left to wait, which would only be in the way.
            if (enough && !arms.isEmpty() && arms.size() <= rows) {
                Setup setup = Setup.of(mounted(arms, rows, spacing));
                if (setup.servesEveryLane() && setup.margin().orElse(0L) >= 0 && isBetter(setup, best)) {
                    best = Optional.of(setup);
                }
            }
        }
        return best;
    }

    private static boolean isBetter(Setup setup, Optional<Setup> best) {
        if (best.isEmpty()) {
            return true;
        }
        int lanes = busiest(setup) - busiest(best.get());
        return lanes < 0
                || (lanes == 0
                        && setup.margin().orElse(Long.MAX_VALUE)
                                > best.get().margin().orElse(Long.MAX_VALUE));
    }

    private static int busiest(Setup setup) {
        return setup.stations().stream().mapToInt(s -> s.lanes().size()).max().orElseThrow();
    }

    private static FittingSearch.Opinion any() {
        return suiting(h -> true);
    }

    private static FittingSearch.Opinion suiting(Predicate<HeadUnderTest> suits) {
        return new FittingSearch.Opinion() {
            @Override
            public boolean suits(Case alone) {
                return suits.test(alone.heads().get(0));
            }

            @Override
            public List<Station> tooSlow(Case subject) {
                return List.of();
            }
        };
    }

    private static FittingSearch.Opinion pace(ToDoubleFunction<Station> most) {
        return new FittingSearch.Opinion() {
            @Override
            public boolean suits(Case alone) {
                return true;
            }

            @Override
            public List<Station> tooSlow(Case subject) {
                double speed = subject.plan().value().wanted().speed();
                return Setup.of(subject).stations().stream()
                        .filter(s -> speed > most.applyAsDouble(s) + 1e-9)
                        .toList();
            }
        };
    }
}
