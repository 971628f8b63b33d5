package headgate.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headgate.api.answer.Action;
import headgate.api.answer.Engagement;
import headgate.api.head.ContinuousHead;
import headgate.api.head.SpotHead;
import headgate.api.head.ToolHead;
import headgate.api.shape.Outline;
import headgate.api.sheet.HeadSheet;
import headgate.api.task.RowTask;
import headgate.api.task.SpotTask;
import headgate.api.vocabulary.Operation;
import headgate.verifier.behaviour.Tally;
import headgate.verifier.behaviour.Trait;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class ContinuousContractTest {

    /** A hoe that keeps its contract: it is lifted over a plant that is nearer than 40 mm. */
    private static class Hoe implements ContinuousHead {

        @Override
        public HeadSheet sheet() {
            return Poker.sheetBuilder().operation(Operation.HOE).build();
        }

        @Override
        public Engagement engage(RowTask task) {
            return Math.min(task.gapBefore(), task.gapAfter()) < 0.04
                    ? Engagement.decline("a crop plant is too near")
                    : engagement(0.02, 0.10).build();
        }

        static Engagement.Builder engagement(double depth, double half) {
            return Engagement.builder()
                    .engaged(Outline.rectangle(-0.05, 0.05, -half, half))
                    .depth(depth)
                    .draft(40)
                    .insertTime(0.1)
                    .withdrawTime(0.1)
                    .following(0.5, 5);
        }
    }

    private static Tally tally(Trait trait, Supplier<? extends ToolHead> maker) {
        return new HeadContract(maker) {}.tallies().stream()
                .filter(t -> t.trait() == trait)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aGoodHoeKeepsEveryTrait() {
        List<Tally> tallies = new HeadContract(Hoe::new) {}.tallies();
        assertThat(tallies).allMatch(Tally::kept);
        assertThat(tallies.stream().map(Tally::trait))
                .containsExactlyInAnyOrder(
                        Trait.TOTAL,
                        Trait.ACCEPTS,
                        Trait.IN_REACH,
                        Trait.DECLARED_DEPTH,
                        Trait.PURE,
                        Trait.SHEET_STAYS);
    }

    @Test
    void aHoeThatGoesTooDeepIsSeen() {
        Tally tally = tally(Trait.DECLARED_DEPTH, () -> new Hoe() {
            @Override
            public Engagement engage(RowTask task) {
                return engagement(0.03, 0.10).build();
            }
        });
        assertThat(tally.first().get(0).report())
                .contains("the depth is 30.0 mm, outside the sheet's 20.0 mm to 20.0 mm");
    }

    @Test
    void aHoeWiderThanItsReachIsSeen() {
        Tally tally = tally(Trait.IN_REACH, () -> new Hoe() {
            @Override
            public Engagement engage(RowTask task) {
                return engagement(0.02, 0.11).build();
            }
        });
        assertThat(tally.first().get(0).report()).contains("leaves the reach");
    }

    @Test
    void aHoeThatCountsIsNotPure() {
        Tally tally = tally(Trait.PURE, () -> new Hoe() {
            private int asked;

            @Override
            public Engagement engage(RowTask task) {
                asked++;
                return engagement(0.02, 0.10).draft(40 + asked).build();
            }
        });
        assertThat(tally.broken()).isPositive();
    }

    @Test
    void aHoeThatThrowsOrNeverWorksIsSeen() {
        Tally total = tally(Trait.TOTAL, () -> new Hoe() {
            @Override
            public Engagement engage(RowTask task) {
                throw new IllegalStateException("jammed");
            }
        });
        assertThat(total.first().get(0).report()).contains("threw java.lang.IllegalStateException (jammed)");
        Tally accepts = tally(Trait.ACCEPTS, () -> new Hoe() {
            @Override
            public Engagement engage(RowTask task) {
                return Engagement.decline("blunt");
            }
        });
        assertThat(accepts.first().get(0).report()).contains("every task is refused, first because \"blunt\"");
    }

    @Test
    void aHeadOfBothKindsIsRefused() {
        class Both extends Hoe implements SpotHead {
            @Override
            public Action act(SpotTask task) {
                return Action.decline("no");
            }
        }
        assertThatThrownBy(() -> new HeadContract(Both::new) {}.tallies())
                .hasMessage("a head must be either a SpotHead or a ContinuousHead");
    }
}
