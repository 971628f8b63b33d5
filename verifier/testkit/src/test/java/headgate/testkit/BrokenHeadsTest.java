package headgate.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Phase;
import headgate.api.head.ToolHead;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.task.SpotTask;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.SoilClass;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.Tally;
import headgate.verifier.behaviour.Trait;
import headgate.verifier.behaviour.Violation;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A head for each trait that breaks it, so that no check can be one that never fails. */
class BrokenHeadsTest {

    /**
     * A head with one flaw.
     *
     * @param trait the trait that it breaks
     * @param words words of the violation
     * @param maker makes the head
     */
    private record Flaw(Trait trait, String words, Supplier<? extends ToolHead> maker) {
        @Override
        public String toString() {
            return trait.id() + ", " + words;
        }
    }

    /** Every trait of a spot head; the depth of an engagement is a continuous head's. */
    private static final Set<Trait> SPOT_TRAITS = EnumSet.complementOf(EnumSet.of(Trait.DECLARED_DEPTH));

    static List<Flaw> flaws() {
        return List.of(
                new Flaw(Trait.TOTAL, "threw java.lang.IllegalStateException (no idea)", () -> new Poker() {
                    @Override
                    public Action act(SpotTask task) {
                        if (task.soil().equals(SoilClass.COARSE)) {
                            throw new IllegalStateException("no idea");
                        }
                        return super.act(task);
                    }
                }),
                new Flaw(Trait.TOTAL, "overflowed its stack", () -> new Poker() {
                    @Override
                    @SuppressWarnings("InfiniteRecursion")
                    public Action act(SpotTask task) {
                        return task.moisture() > 0.29 && task.stemDiameter() > 0.009 ? act(task) : super.act(task);
                    }
                }),
                new Flaw(Trait.PURE, "the first answer was", () -> new Poker() {
                    private int asked;

                    @Override
                    public Action act(SpotTask task) {
                        asked++;
                        return changed(super.act(task), 3, p -> p.lasting(0.3 + 1e-6 * (asked % 1000)));
                    }
                }),
                new Flaw(Trait.SHEET_STAYS, "differs", () -> new Poker() {
                    private int asked;

                    @Override
                    public HeadSheet sheet() {
                        asked++;
                        return sheetBuilder().hardwareRevision("A" + asked).build();
                    }
                }),
                new Flaw(
                        Trait.ACCEPTS, "refused from each of 127 starts, first because \"too wet\"", () -> new Poker() {
                            @Override
                            public Action act(SpotTask task) {
                                return task.moisture() >= 0.30 ? Action.decline("too wet") : super.act(task);
                            }
                        }),
                new Flaw(Trait.NO_HOLES, "starts before and after it are accepted", () -> new Poker() {
                    @Override
                    public Action act(SpotTask task) {
                        double x = Math.abs(task.position().xMetres());
                        return x > 0.05 && x < 0.10 ? Action.decline("not here") : super.act(task);
                    }
                }),
                phaseFlaw(
                        Trait.KNOWN_POSTURE,
                        "names the posture \"elsewhere\"",
                        0,
                        (task, p) -> p.in(PostureName.of("elsewhere"))),
                phaseFlaw(Trait.ACTION_TIME, "more than the sheet's most 1.200 s", 3, (task, p) -> p.lasting(0.5)),
                phaseFlaw(Trait.ACTION_TIME, "less than the sheet's least 1.000 s", 3, (task, p) -> p.lasting(0.1)),
                phaseFlaw(
                        Trait.IN_REACH,
                        "leaves the region of posture \"work\"",
                        0,
                        (task, p) -> p.endingAt(Point3.ofMetres(0, 0.101, -0.4))),
                phaseFlaw(Trait.NO_JUMPS, "in no time", 0, (task, p) -> p.lasting(0)),
                phaseFlaw(
                        Trait.RETURNS,
                        "not at the ready tool point (0, 0, -350) mm",
                        3,
                        (task, p) -> p.endingAt(Point3.ofMetres(0, 0.001, -0.35))),
                new Flaw(Trait.TREATS, "no phase of the action treats any ground", () -> new Poker() {
                    @Override
                    List<Phase> phases(SpotTask task) {
                        List<Phase> phases = new ArrayList<>(super.phases(task));
                        Phase poke = phases.get(1);
                        phases.set(
                                1,
                                Phase.named("poke")
                                        .lasting(poke.duration())
                                        .endingAt(poke.toolPoint())
                                        .in(poke.posture())
                                        .touching(poke.contact())
                                        .build());
                        return phases;
                    }
                }),
                phaseFlaw(
                        Trait.AIMS,
                        "phase \"poke\" has the tool point 12.0 mm from the plant, over the allowed 10.0 mm",
                        1,
                        (task, p) -> p.endingAt(beside(task, 12_000))),
                phaseFlaw(Trait.GOES_WITH_GROUND, "over the allowed 10.0 mm", 1, (task, p) -> p.endingAt(still(task))),
                phaseFlaw(
                        Trait.HONEST_CONTACT,
                        "is labelled canopy, but its lowest material is 20.0 mm below the ground, which is soil",
                        1,
                        (task, p) -> p.touching(Contact.CANOPY)));
    }

    private interface Change {
        Phase.Builder apply(SpotTask task, Phase.Builder phase);
    }

    private static Flaw phaseFlaw(Trait trait, String words, int phase, Change change) {
        return new Flaw(trait, words, () -> new Poker() {
            @Override
            public Action act(SpotTask task) {
                return changed(super.act(task), phase, p -> change.apply(task, p));
            }
        });
    }

    private static Action changed(Action action, int index, UnaryOperator<Phase.Builder> change) {
        if (action.declined().isPresent()) {
            return action;
        }
        List<Phase> phases = new ArrayList<>(action.phases());
        Phase old = phases.get(index);
        Phase.Builder copy = Phase.named(old.name())
                .lasting(old.duration())
                .endingAt(old.toolPoint())
                .in(old.posture())
                .touching(old.contact());
        old.treated().ifPresent(copy::treating);
        phases.set(index, change.apply(copy).build());
        return Action.of(phases);
    }

    /** Where the poke ends, moved to the middle of the reach across travel by a distance in micrometres. */
    private static Point3 beside(SpotTask task, long off) {
        Point3 end = Poker.plant(task, 0.7);
        return new Point3(end.x(), end.y() > 0 ? end.y() - off : end.y() + off, end.z() - 20_000);
    }

    /** The tool point stays in the head frame while the ground goes on. */
    private static Point3 still(SpotTask task) {
        Point3 start = Poker.plant(task, 0.4);
        return new Point3(start.x(), start.y(), start.z() - 20_000);
    }

    private static List<Tally> tallies(Supplier<? extends ToolHead> maker) {
        return new HeadContract(maker) {
            @Override
            protected ProbeSetting setting(HeadSheet sheet) {
                ProbeSetting alone = ProbeSetting.alone(sheet);
                return new ProbeSetting(alone.ground(), 0, alone.facings(), 32);
            }
        }.tallies();
    }

    private static Tally tally(Trait trait, Supplier<? extends ToolHead> maker) {
        return tallies(maker).stream()
                .filter(t -> t.trait() == trait)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aGoodHeadKeepsEveryTrait() {
        List<Tally> tallies = tallies(Poker::new);
        assertThat(tallies).allMatch(Tally::kept);
        assertThat(tallies.stream().map(Tally::trait)).containsExactlyInAnyOrderElementsOf(SPOT_TRAITS);
        // 2 facings x 2 soils x 64 corners.
        assertThat(tally(Trait.ACCEPTS, Poker::new).examined()).isEqualTo(256);
    }

    @Test
    void everyTraitHasAHeadThatBreaksIt() {
        assertThat(flaws().stream().map(Flaw::trait)).containsAll(SPOT_TRAITS);
    }

    @ParameterizedTest
    @MethodSource("flaws")
    void aFlawIsSeenAndFailsTheTestOfItsTrait(Flaw flaw) {
        Tally tally = tally(flaw.trait(), flaw.maker());
        assertThat(tally.kept()).isFalse();
        assertThat(tally.broken()).isPositive().isLessThanOrEqualTo(tally.examined());
        assertThat(tally.first()).hasSizeLessThanOrEqualTo(Tally.KEPT).isNotEmpty();
        assertThat(tally.first().get(0).report()).contains(flaw.words());
        DynamicTest test = ContractTests.of(List.of(tally)).findFirst().orElseThrow();
        assertThat(test.getDisplayName()).startsWith(flaw.trait().id() + ": ");
        assertThatThrownBy(() -> test.getExecutable().execute())
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(flaw.words());
    }

    /** 12 mm beside a plant, aim tolerance 10 mm: the numbers of the violation, not only its words. */
    @Test
    void aViolationHoldsWhatWasMeasured() {
        Flaw beside = flaws().stream()
                .filter(f -> f.trait() == Trait.AIMS)
                .findFirst()
                .orElseThrow();
        Violation off = tally(Trait.AIMS, beside.maker()).first().get(0);
        assertThat(off.measured()).isCloseTo(0.012, within(1e-6));
        assertThat(off.limit()).isCloseTo(0.010, within(2e-6));
        assertThat(off.phase()).contains("poke");
        assertThat(off.task()).isPresent();
    }

    @Test
    void aHeadThatNeverActsShowsNothing() {
        Tally tally = tally(Trait.IN_REACH, () -> new Poker() {
            @Override
            public Action act(SpotTask task) {
                return Action.decline("not today");
            }
        });
        assertThat(tally.broken()).isZero();
        assertThat(tally.kept()).isFalse();
        DynamicTest test = ContractTests.of(List.of(tally)).findFirst().orElseThrow();
        assertThatThrownBy(() -> test.getExecutable().execute()).hasMessageContaining("nothing was found to look at");
    }
}
