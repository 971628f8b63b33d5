package headgate.verifier.interlock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Posture;
import headgate.api.vocabulary.PostureName;
import headgate.verifier.check.Case;
import headgate.verifier.check.Cases;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hand arithmetic on {@link Claws}; heights of work go from 390 to 560 mm, so two mounts differ by up to 170 mm. */
class InterlocksTest {

    private final Case subject = Claws.cases().build();

    @Test
    void twoHeadsThatMeetOnlyIfBothReachOutNeedOneZoneOfOffsets() {
        Interlocks interlocks = Interlocks.of(subject);

        assertThat(interlocks.all())
                .extracting(Interlock::first, Interlock::second)
                .containsExactly(tuple("a1", "a3"), tuple("a2", "a4"));
        Interlock interlock = interlocks.all().get(0);
        assertThat(interlock.required()).isEqualTo(0.038);
        assertThat(interlock.neverTogether()).isFalse();
        assertThat(interlock.zones()).isEqualTo(1);
        // Across: 1000 + d - 400 < 38 below d = -562 mm, and d is never less than -580 mm: there the zone ends a tenth
        // of
        // a millimetre beyond. Along: two half widths of 20 mm and the gap. Up: the claw's 50 mm, 170 mm and the gap.
        assertThat(interlock.offsets())
                .containsExactly(new Zone(
                        Interval.ofMetres(-0.078, 0.078),
                        Interval.ofMetres(-0.5801, -0.562),
                        Interval.ofMetres(-0.258, 0.258)));
        assertThat(interlock.makesWait()).isTrue();
    }

    @Test
    void aCoincidenceIsAllowedExactlyUpToTheFaceOfTheZone() {
        Interlock interlock = Interlocks.of(subject).all().get(0);

        assertThat(interlock.mayCoincide(at(0.2, 0.29, -0.5), at(0.2, -0.29, -0.5)))
                .isFalse();
        assertThat(interlock.mayCoincide(at(0.2, 0.29, -0.5), at(0.2, -0.272, -0.5)))
                .isTrue();
        assertThat(interlock.mayCoincide(at(0.2, 0.29, -0.5), at(0.2, -0.272001, -0.5)))
                .isFalse();
        assertThat(interlock.mayCoincide(at(0.2, 0.29, -0.5), at(0.278, -0.29, -0.5)))
                .isTrue();
        assertThat(interlock.mayCoincide(at(0.2, 0.29, -0.5), at(0.277999, -0.29, -0.5)))
                .isFalse();
        assertThat(interlock.mayCoincide(at(0.2, 0.29, -0.5), at(0.2, -0.29, -0.242)))
                .isTrue();
    }

    @Test
    void theWholeWaysCountAndNotTheirEnds() {
        Interlock interlock = Interlocks.of(subject).all().get(0);
        // The first goes out and stops short of the second's line; the second crosses that line in the middle of its
        // way.
        List<ToolWay> out = List.of(way(0.25, 0.29, -0.5, 0.25, 0.28, -0.5));
        List<ToolWay> across = List.of(way(0.1, -0.29, -0.5, 0.4, -0.29, -0.5));

        assertThat(interlock.mayCoincide(out, across)).isFalse();
        assertThat(interlock.mayCoincide(out, List.of(way(0.1, -0.29, -0.5, 0.17, -0.29, -0.5))))
                .isTrue();
        // Each end of one way is clear of each end of the other, and of the middle; places in between are not.
        assertThat(interlock.mayCoincide(
                        List.of(way(0.1, 0.28, -0.5, 0.3, 0.29, -0.5)),
                        List.of(way(0.4, -0.28, -0.5, 0.18, -0.29, -0.5))))
                .isFalse();
    }

    @Test
    void theOrderOfTheTwoArmsDoesNotMatter() {
        Interlocks interlocks = Interlocks.of(subject);
        List<ToolWay> right = at(0.2, 0.29, -0.5);
        List<ToolWay> left = at(0.2, -0.29, -0.5);

        assertThat(interlocks.mayCoincide("a1", right, "a3", left)).isFalse();
        assertThat(interlocks.mayCoincide("a3", left, "a1", right)).isFalse();
        assertThat(interlocks.mayCoincide("a3", right, "a1", left)).isTrue();
        assertThat(interlocks.mayCoincide("a1", right, "a2", left)).isTrue();
        assertThat(interlocks.mayAct("a1", right)).isTrue();
        assertThat(interlocks.inTurnWith("a1")).containsExactly("a1", "a3");
    }

    @Test
    void aHeadThatIsTurnedIsSeenAlongTheAxesOfTheCarriage() {
        Case turned = Claws.cases().turned().build();
        Station station = Setup.of(turned).stations().get(0);

        assertThat(ToolWay.at(station, Point3.ofMetres(0.2, 0.29, -0.5)))
                .isEqualTo(way(-0.2, -0.29, -0.5, -0.2, -0.29, -0.5));
        assertThat(Interlocks.of(turned).all().get(0).offsets())
                .isEqualTo(Interlocks.of(subject).all().get(0).offsets());
    }

    @Test
    void needsNoneWhereNothingIsTooNear() {
        assertThat(Interlocks.of(Cases.weeding().build()).all()).isEmpty();
    }

    @Test
    void materialThatStaysAndIsTooNearIsNoCaseForAnInterlock() {
        // Plates of 481.5 mm to either side leave 37 mm, whatever the claws do.
        Case plates =
                Claws.cases().sheet(b -> Claws.postures(b, Claws.plate(0.4815))).build();

        assertThat(Interlocks.of(plates).all()).isEmpty();
    }

    @Test
    void materialThatFoldsOutOnlyToWorkLetsOneActAtATime() {
        // Plates of 490 mm at work, of 300 mm ready: 490 + 300 leaves 210 mm, 490 + 490 leaves 20 mm.
        Case folding = Claws.cases()
                .sheet(b -> {
                    HeadSheet sheet = b.build();
                    return sheet.toBuilder()
                            .postures(sheet.postures().stream()
                                    .map(p -> p.name().equals(PostureName.WORK) ? withPlate(p, 0.49) : p)
                                    .toList());
                })
                .build();

        Interlock interlock = Interlocks.of(folding).all().get(0);

        assertThat(interlock.neverTogether()).isTrue();
        assertThat(interlock.zones()).isZero();
        assertThat(interlock.mayCoincide(at(0.2, 0, -0.5), at(0.2, 0, -0.5))).isFalse();
        assertThat(interlock.firstMayAct(at(0.2, 0.29, -0.5))).isTrue();
    }

    @Test
    void aPostThatStandsInANeighboursReachIsAPlaceWhereItsToolNeverGoes() {
        // A post of each head, 560 to 570 mm to its right: the claw of the right neighbour, 490 mm out at most, and the
        // post,
        // 1000 - 570 = 430 mm away from that neighbour, meet.
        Body post = Body.of(
                Prism.box(-0.05, 0.45, -0.30, 0.30, -0.15, 0.0), Prism.box(0.20, 0.22, -0.57, -0.29, -0.2, -0.1));
        Case posts = Claws.cases().sheet(b -> Claws.postures(b, post)).build();

        Interlock interlock = Interlocks.of(posts).all().get(0);

        // The claw's edge at 200 mm and the gap of 38 mm: no tool point beyond 430 - 238 = 192 mm, between x = 200 - 58
        // and
        // 220 + 58 mm.
        assertThat(interlock.firstNever()).hasSize(1);
        assertThat(interlock.firstNever().get(0).x()).isEqualTo(Interval.ofMetres(0.142, 0.278));
        assertThat(interlock.firstNever().get(0).y()).isEqualTo(Interval.ofMetres(0.192, 0.2901));
        assertThat(interlock.secondNever()).isEmpty();
        assertThat(interlock.firstMayAct(at(0.2, 0.192, -0.4))).isTrue();
        assertThat(interlock.firstMayAct(at(0.2, 0.192001, -0.4))).isFalse();
        assertThat(Interlocks.of(posts).restrict("a1")).isTrue();
        assertThat(Interlocks.of(posts).restrict("a3")).isFalse();
    }

    @Test
    void aClawOfVeryManyPartsCountsAsTheBoxAroundIt() {
        // Sixty slices that make up the same claw, and its stem: the box around them is as wide as the claw, and as
        // high as
        // the stem.
        List<Prism> slices = new ArrayList<>();
        slices.add(Prism.box(-0.02, 0.02, -0.02, 0.02, 0.0, 0.45));
        for (int i = 0; i < 60; i++) {
            double y = -0.2 + i * 0.4 / 60;
            slices.add(Prism.of(
                    Outline.rectangle(
                            Interval.ofMetres(-0.02, 0.02),
                            new Interval(Math.round(y * 1e6), Math.round((y + 0.4 / 60) * 1e6))),
                    Interval.ofMetres(0, 0.05)));
        }
        Case sliced = Claws.cases()
                .sheet(b -> Claws.postures(b, Claws.plate(0.3), Body.of(slices)))
                .build();

        Interlock interlock = Interlocks.of(sliced).all().get(0);

        assertThat(interlock.offsets())
                .containsExactly(new Zone(
                        Interval.ofMetres(-0.078, 0.078),
                        Interval.ofMetres(-0.5801, -0.562),
                        Interval.ofMetres(-0.4001, 0.4001)));
    }

    @Test
    void thePolicyMayAllowNone() {
        Case none = Claws.cases().policy(p -> Cases.withArmsInTurn(p, 1)).build();

        assertThat(Interlocks.of(none).all()).isEmpty();
    }

    private static Posture withPlate(Posture posture, double half) {
        return Cases.posture(posture.name(), Claws.plate(half), posture.moving(), posture.region());
    }

    private static List<ToolWay> at(double x, double y, double z) {
        return List.of(way(x, y, z, x, y, z));
    }

    private static ToolWay way(double x, double y, double z, double toX, double toY, double toZ) {
        return new ToolWay(Point3.ofMetres(x, y, z), Point3.ofMetres(toX, toY, toZ));
    }
}
