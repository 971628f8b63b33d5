package headgate.api.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import headgate.api.answer.Action;
import headgate.api.answer.Contact;
import headgate.api.answer.Engagement;
import headgate.api.answer.Phase;
import headgate.api.problem.InvalidValueException;
import headgate.api.problem.Problem;
import headgate.api.shape.Body;
import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.shape.Prism;
import headgate.api.task.Velocity;
import headgate.api.unit.Units;
import headgate.api.vocabulary.GuardKind;
import headgate.api.vocabulary.HazardKind;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.PostureName;
import headgate.api.vocabulary.PowerLossState;
import headgate.api.vocabulary.SoilClass;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A value that cannot be says all that is wrong with it, and nothing that is right. */
class BuildersTest {

    private static final Point3 READY = Point3.ofMetres(0, 0, -0.35);
    private static final Prism BLOCK = Prism.box(-0.1, 0.1, -0.1, 0.1, -0.3, 0);

    private static List<String> fields(org.assertj.core.api.ThrowableAssert.ThrowingCallable building) {
        InvalidValueException e = catchThrowableOfType(InvalidValueException.class, building);
        assertThat(e).isNotNull();
        assertThat(e.problems()).allMatch(p -> p.rule().startsWith("must"));
        e.problems().forEach(p -> assertThat(e).hasMessageContaining(p.toString()));
        return e.problems().stream().map(Problem::field).toList();
    }

    private static Posture posture(PostureName name) {
        return Posture.named(name).fixed(Body.of(BLOCK)).region(Reach.at(READY)).build();
    }

    private static MassPoint mass(double kg) {
        return MassPoint.of(Figure.measured(kg), Point3.ORIGIN);
    }

    private static HeadSheet.Builder good() {
        Figure none = Figure.assumed(0);
        return HeadSheet.builder()
                .operation(Operation.PRESS)
                .plate(PlateDesignation.of("9409-1-50-4-M6"))
                .mass(mass(4), mass(5), mass(6))
                .postures(posture(PostureName.STOWED), posture(PostureName.READY), posture(PostureName.WORK))
                .power(PowerDraw.of(none, none, none))
                .forces(Forces.rigid(none, none, none, none))
                .accuracy(Accuracy.of(none, Figure.assumed(0.01)))
                .workRange(WorkRange.builder()
                        .groundSpeed(Range.of(0, 1))
                        .stemDiameter(Range.of(0, 0.1))
                        .plantHeight(Range.of(0, 1))
                        .soils(SoilClass.FINE)
                        .moisture(Range.of(0, 1))
                        .depth(Range.of(0, 0))
                        .build())
                .withdrawTime(none)
                .onPowerLoss(PowerLossState.HOLDS)
                .hardwareRevision("A");
    }

    @Test
    void anEmptySheetNamesEveryFieldThatIsMissing() {
        assertThat(fields(() -> HeadSheet.builder().build()))
                .contains(
                        "operation",
                        "plate",
                        "mass empty",
                        "mass full",
                        "mass soiled",
                        "postures",
                        "power",
                        "forces",
                        "accuracy",
                        "workRange",
                        "withdrawTime",
                        "onPowerLoss",
                        "hardwareRevision");
    }

    @Test
    void aSheetIsEqualToItsCopyAndNamesOnlyWhatIsWrong() {
        HeadSheet sheet = good().build();
        assertThat(sheet.toBuilder().build()).isEqualTo(sheet).hasSameHashCodeAs(sheet);
        assertThat(sheet.toBuilder().turnable(true).build()).isNotEqualTo(sheet);
        assertThat(sheet.readyToolPoint()).isEqualTo(READY);
        assertThat(fields(() -> good().mass(mass(4), mass(3), mass(6))
                        .withdrawTime(Figure.measured(61))
                        .hardwareRevision(" ")
                        .build()))
                .containsExactly("mass empty, full, soiled", "withdrawTime", "hardwareRevision");
        assertThat(fields(() -> good().postures(posture(PostureName.STOWED), posture(PostureName.STOWED))
                        .build()))
                .containsExactly("postures", "postures", "postures");
        assertThat(fields(() -> good().transitions(Transition.between(PostureName.of("x"), PostureName.WORK, Body.NONE))
                        .build()))
                .containsExactly("transitions");
    }

    @Test
    void aSheetTellsDroppingNothingFromNotSayingSo() {
        Drop drop = Drop.over(Outline.rectangle(0, 1, 0, 1), Figure.measured(0.1));
        HeadSheet silent = good().build();
        HeadSheet nothing = good().drops().build();
        HeadSheet one = good().drops(drop).build();

        assertThat(silent.drops()).isEmpty();
        assertThat(nothing.drops()).contains(List.of());
        assertThat(one.drops()).contains(List.of(drop));
        assertThat(one.toBuilder().build()).isEqualTo(one).isNotEqualTo(nothing);
        assertThat(nothing).isNotEqualTo(silent);
        assertThat(fields(() -> Drop.over(drop.outline(), Figure.measured(1.001))))
                .containsExactly("height");
        assertThat(fields(() -> Drop.over(drop.outline(), Figure.measured(-0.001))))
                .containsExactly("height");
    }

    @Test
    void aStowedOrReadyPostureHasOneToolPoint() {
        Reach area = Reach.over(Outline.rectangle(0, 1, 0, 1), Interval.ofMetres(-1, 0));
        assertThat(fields(() -> Posture.named(PostureName.READY).region(area).build()))
                .containsExactly("fixed, moving", "region");
        assertThat(area.corners3()).hasSize(8);
        assertThat(area.contains(Point3.ofMetres(1, 1, 0))).isTrue();
        assertThat(area.contains(Point3.ofMetres(1, 1, 0.000001))).isFalse();
    }

    @Test
    void aWorkRangeNamesEachRangeThatIsMissing() {
        assertThat(fields(
                        () -> WorkRange.builder().plantClasses(PlantClass.GRASS).build()))
                .containsExactly("groundSpeed", "stemDiameter", "plantHeight", "soils", "moisture", "depth");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 1e9})
    void noFigureIsTakenThatCannotBe(double bad) {
        Figure f = Figure.measured(bad);
        Figure one = Figure.measured(1);
        assertThat(fields(() -> PowerDraw.of(f, f, f))).contains("idle", "working", "peak");
        assertThat(fields(() -> Forces.rigid(f, f, f, f))).containsExactly("pull", "press", "side", "draft");
        assertThat(fields(() -> ActionTime.of(f, f, f))).contains("least", "typical", "most");
        assertThat(fields(() -> Accuracy.of(f, f))).containsExactly("standardUncertainty", "aimTolerance");
        assertThat(fields(() -> MassPoint.of(f, Point3.ORIGIN))).containsExactly("mass");
        assertThat(fields(() -> Breakaway.of(f, f))).containsExactly("force", "stroke");
        assertThat(fields(() -> Hazard.of(HazardKind.CUTTING, GuardKind.FIXED, f)))
                .containsExactly("stopTime");
        assertThat(fields(() -> Phase.named("x").lasting(bad).build()))
                .contains("lasting", "endingAt", "in", "touching");
        assertThat(fields(() -> Engagement.builder()
                        .depth(bad)
                        .draft(bad)
                        .insertTime(bad)
                        .withdrawTime(bad)
                        .following(bad, bad)
                        .build()))
                .containsExactly(
                        "engaged",
                        "depth",
                        "draft",
                        "insertTime",
                        "withdrawTime",
                        "following speed",
                        "following acceleration");
        assertThat(fields(() -> ActionTime.of(one, Figure.measured(0.5), one))).containsExactly("least, typical, most");
    }

    @Test
    void anActionHasOneToSixtyFourPhases() {
        Phase phase = Phase.named("wait")
                .lasting(0.25)
                .endingAt(READY)
                .in(PostureName.READY)
                .touching(Contact.FREE)
                .build();
        assertThat(Action.of(phase, phase, phase).duration()).isEqualTo(0.75);
        assertThat(fields(() -> Action.of())).containsExactly("phases");
        assertThat(fields(() -> Action.of(Collections.nCopies(65, phase)))).containsExactly("phases");
        assertThat(Action.decline("too wet").declined()).contains("too wet");
        assertThat(fields(() -> Action.decline(" "))).containsExactly("reason");
        assertThat(fields(() -> Engagement.decline("x".repeat(201)))).containsExactly("reason");
        assertThat(Contact.CANOPY.stricter(Contact.SOIL)).isEqualTo(Contact.SOIL);
    }

    @Test
    void anOpenVocabularyTakesNewWordsOfItsForm() {
        assertThat(Operation.of("pull-weeds")).isEqualTo(Operation.PULL_WEEDS);
        assertThat(Operation.of("scare-birds2").name()).isEqualTo("scare-birds2");
        assertThat(PlantClass.of("grass")).isNotEqualTo(SoilClass.of("grass"));
        for (String bad : List.of("", "Two Words", "-x", "x-", "x--y", "ä", "x".repeat(61))) {
            assertThatThrownBy(() -> Operation.of(bad)).isInstanceOf(InvalidValueException.class);
        }
    }

    /** The designation's form is that of ISO 9409-1: pitch circle 50 mm, 4 holes, M6. */
    @Test
    void aPlateIsReadFromItsDesignation() {
        PlateDesignation plate = PlateDesignation.of("9409-1-50-4-M6");
        assertThat(plate.pitchCircle()).isEqualTo(0.05);
        assertThat(plate.holes()).isEqualTo(4);
        assertThat(plate.thread()).isEqualTo(6);
        assertThat(PlateDesignation.of("9409-1-31.5-4-M5").pitchCircle()).isEqualTo(0.0315);
        for (String bad : List.of("50-4-M6", "9409-1-50-2-M6", "9409-1-0-4-M6", "9409-1-50-4-6", "9409-2-50-4-M6")) {
            assertThatThrownBy(() -> PlateDesignation.of(bad)).isInstanceOf(InvalidValueException.class);
        }
    }

    /** Exact relations of the units: SI Brochure, 9th edition, and 1 h = 3600 s. */
    @Test
    void unitsBecomeSi() {
        assertThat(Units.mm(120)).isEqualTo(0.12);
        assertThat(Units.cm(45)).isEqualTo(0.45);
        assertThat(Units.ms(250)).isEqualTo(0.25);
        assertThat(Units.g(4500)).isEqualTo(4.5);
        assertThat(Units.kmh(3.6)).isEqualTo(1.0);
        assertThat(Units.kN(0.09)).isEqualTo(90.0);
        assertThat(Units.kW(0.5)).isEqualTo(500.0);
        assertThat(Units.deg(180)).isEqualTo(Math.PI);
        assertThat(Units.percent(85)).isEqualTo(0.85);
        assertThat(Velocity.ofMetresPerSecond(0.3, -0.4).speed()).isEqualTo(0.5);
    }
}
