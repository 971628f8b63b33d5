package headgate.verifier.setup;

import headgate.api.shape.Point;
import headgate.api.sheet.HeadSheet;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.verifier.check.Case;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The set-up of a case.
 *
 * @param lanes the lanes of the plan, from the right to the left
 * @param stations the arms at work, from the right to the left; empty if not every lane can have an arm
 */
public record Setup(List<Lane> lanes, List<Station> stations) {

    /** Copies the lists. */
    public Setup {
        lanes = List.copyOf(lanes);
        stations = List.copyOf(stations);
    }

    /**
     * Sets a case up. Heads that gave no sheet are left out.
     *
     * @param subject the case
     * @return the set-up
     */
    public static Setup of(Case subject) {
        Carriage carriage = subject.carriage().value();
        List<Lane> lanes = Lane.of(subject.plan().value());
        Map<String, Case.Mounting> byArm = new LinkedHashMap<>();
        subject.mountings().stream().filter(m -> m.head().sheet().isPresent()).forEach(m -> byArm.put(m.armId(), m));
        List<Arm> arms =
                carriage.arms().stream().filter(a -> byArm.containsKey(a.id())).toList();
        Optional<Map<Integer, Arm>> choice = ArmChoice.choose(arms, lanes);
        List<Station> stations = new ArrayList<>();
        if (choice.isPresent()) {
            for (Lane lane : lanes) {
                Arm arm = Objects.requireNonNull(choice.get().get(lane.number()));
                Case.Mounting mounting = Objects.requireNonNull(byArm.get(arm.id()));
                stations.add(station(subject, lane, arm, mounting));
            }
        }
        return new Setup(lanes, stations);
    }

    private static Station station(Case subject, Lane lane, Arm arm, Case.Mounting mounting) {
        Carriage carriage = subject.carriage().value();
        long x = carriage.beam(arm.beam()).orElseThrow().x();
        HeadSheet sheet = mounting.head().sheet().orElseThrow();
        return new Station(
                lane,
                arm,
                mounting.head(),
                sheet,
                mounting.turned(),
                new Point(x, lane.y()),
                WorkHeight.of(carriage, arm, x, lane.y(), sheet, subject.plan().value()));
    }
}
