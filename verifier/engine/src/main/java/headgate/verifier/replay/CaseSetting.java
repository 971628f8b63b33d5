package headgate.verifier.replay;

import headgate.api.shape.Interval;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Supply;
import headgate.api.unit.Micrometres;
import headgate.api.vocabulary.Operation;
import headgate.api.vocabulary.PlantClass;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadKind;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.carriage.PositionErrors;
import headgate.runtime.carriage.Sensor;
import headgate.runtime.carriage.Store;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.behaviour.Facing;
import headgate.verifier.check.Case;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.formula.Uncertainty;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.setup.Lane;
import headgate.verifier.setup.Setup;
import headgate.verifier.setup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What a case says for a replay: its arms at their set-points, at the speed that its plan wants.
 *
 * @param setting the setting
 * @param heads where to ask each of the setting's tools
 * @param missing what the files do not say and the replay therefore takes as perfect, as clauses
 */
public record CaseSetting(ReplaySetting setting, List<HeadAnswers> heads, List<String> missing) {

    /** How far before its mount an arm knows of a plant if no sensor works for it, m. */
    private static final double AHEAD = 2.0;

    /** Copies the lists. */
    public CaseSetting {
        heads = List.copyOf(heads);
        missing = List.copyOf(missing);
    }

    /**
     * Says why a case cannot be replayed.
     *
     * @param subject the case
     * @return the reason, as a clause; empty if it can
     */
    public static Optional<String> obstacle(Case subject) {
        Setup setup = Setup.of(subject);
        if (!setup.servesEveryLane()) {
            return Optional.of("not every lane has an arm");
        }
        if (!(subject.plan().value().wanted().speed() > 0)) {
            return Optional.of("the crop plan wants no speed above 0");
        }
        for (Station station : setup.stations()) {
            HeadAnswers head = station.head().answers().orElse(null);
            if (head == null) {
                return Optional.of(station.head().label() + " gives no answers");
            }
            if (head.kind() != HeadKind.SPOT) {
                return Optional.of(station.head().label() + " is no spot head, and only those treat plant by plant");
            }
        }
        return Optional.empty();
    }

    /**
     * Makes the setting.
     *
     * @param subject a case without an {@link #obstacle}
     * @param seed for all that is left to chance
     * @return the setting
     */
    public static CaseSetting of(Case subject, long seed) {
        CropPlan plan = subject.plan().value();
        Carriage carriage = subject.carriage().value();
        boolean planting = plan.wanted().operation().equals(Operation.SET_PLUGS);
        Setup setup = Setup.of(subject);
        List<HeadUnderTest> heads = new ArrayList<>();
        List<ReplayTool> tools = new ArrayList<>();
        List<ReplayArm> arms = new ArrayList<>();
        double resolution = 0;
        for (Station station : setup.stations()) {
            int tool = heads.indexOf(station.head());
            if (tool < 0) {
                tool = heads.size();
                heads.add(station.head());
                tools.add(new ReplayTool(station.head().label(), station.sheet(), magazine(station.sheet(), carriage)));
            }
            List<Sensor> sensors = planting
                    ? List.of()
                    : carriage.sensors().stream()
                            .filter(s -> s.beams().contains(station.arm().beam()))
                            .toList();
            for (Sensor sensor : sensors) {
                resolution = Math.max(resolution, sensor.resolution());
            }
            arms.add(arm(station, tool, sensors));
        }
        List<String> missing = new ArrayList<>();
        Perception perception = Perception.PERFECT;
        if (!planting && plan.weeds().isPresent()) {
            perception = Perception.of(plan.weeds().get(), resolution);
            if (plan.weeds().get().withoutRecall()) {
                missing.add("the crop plan does not say how many weeds are seen");
            }
            List<PlantClass> unknown = plan.weeds().get().withoutSuccess();
            if (!unknown.isEmpty()) {
                missing.add("the crop plan does not say how many treated weeds grow on: "
                        + unknown.stream().map(PlantClass::name).collect(Collectors.joining(", ")));
            }
            if (carriage.sensors().isEmpty()) {
                missing.add("the carriage has no sensors, so every plant is known in good time");
            }
        }
        PlugQuality quality = PlugQuality.PERFECT;
        if (planting) {
            quality = quality(plan, setup.stations());
            if (plan.plugs().flatMap(CropPlan.Plugs::quality).isEmpty()) {
                missing.add(
                        "the crop plan does not say how many cells are empty or hold two plants, and how many plugs stand"
                                + " upright and covered");
            }
        }
        if (carriage.errors().isEmpty()) {
            missing.add("the carriage does not say how well it knows where its tools are");
        }
        ReplaySetting setting = new ReplaySetting(
                plan.wanted().speed(),
                tools,
                arms,
                links(carriage, setup.stations()),
                setup.lanes().stream().map(Lane::ground).toList(),
                AHEAD,
                perception,
                care(subject, setup.stations()),
                planting ? Success.ALWAYS : success(plan),
                quality,
                plan.soil().texture(),
                plan.soil().moisture(),
                OptionalDouble.of(plan.field().length()),
                Interlocks.of(subject),
                seed);
        return new CaseSetting(
                setting, heads.stream().map(h -> h.answers().orElseThrow()).toList(), missing);
    }

    private static ReplayArm arm(Station station, int tool, List<Sensor> sensors) {
        Interval heights = station.workHeights();
        long y = station.mount().y();
        // The set-up puts every arm where its reach covers all of its lanes, so that it need not shift at work.
        return new ReplayArm(
                station.arm().id(),
                tool,
                station.turned() ? Facing.TURNED : Facing.FORWARD,
                station.mount().x(),
                y,
                Interval.at(y),
                station.arm().shiftMotion(),
                (heights.least() + heights.most()) / 2,
                sensors.stream().map(SensorBand::of).toList());
    }

    private static List<LinkGroup> links(Carriage carriage, List<Station> stations) {
        List<String> ids = stations.stream().map(s -> s.arm().id()).toList();
        return carriage.links().stream()
                .map(link -> new LinkGroup(link.members().stream()
                        .map(m -> ids.indexOf(m.arm()))
                        .filter(i -> i >= 0)
                        .toList()))
                .filter(group -> group.arms().size() > 1)
                .toList();
    }

    private static Success success(CropPlan plan) {
        return new Success(
                plan.weeds().map(CropPlan.Weeds::success).orElse(List.of()).stream()
                        .collect(Collectors.toMap(CropPlan.Success::kind, CropPlan.Success::share)),
                1);
    }

    /** The plan says what becomes of plugs; how far off they stand along travel, the least accurate head's sheet. */
    private static PlugQuality quality(CropPlan plan, List<Station> stations) {
        double spread = stations.stream()
                .mapToDouble(s -> s.sheet().accuracy().standardUncertainty().value())
                .max()
                .orElse(0);
        return plan.plugs()
                .flatMap(CropPlan.Plugs::quality)
                .map(q -> new PlugQuality(q.emptyCells(), q.doubles(), q.upright(), q.covered(), spread))
                .orElse(new PlugQuality(0, 0, 1, 1, spread));
    }

    private static Optional<Magazine> magazine(HeadSheet sheet, Carriage carriage) {
        return sheet.supplies().stream()
                .filter(s -> s.perAction() > 0)
                .min((a, b) -> Double.compare(a.capacity() / a.perAction(), b.capacity() / b.perAction()))
                .map(s -> magazine(s, carriage));
    }

    private static Magazine magazine(Supply supply, Carriage carriage) {
        Optional<Store> store = carriage.stores().stream()
                .filter(s -> s.kind().equals(supply.kind()))
                .findFirst();
        boolean anywhere = store.map(s -> !s.onHeadlandOnly()).orElse(false);
        return new Magazine(
                supply.capacity(),
                supply.perAction(),
                supply.refillTime().value(),
                anywhere ? Magazine.Place.ANYWHERE : Magazine.Place.HEADLAND,
                store.map(Store::allAtOnce).orElse(false));
    }

    private static CropCare care(Case subject, List<Station> stations) {
        CropPlan plan = subject.plan().value();
        double ground = 0;
        for (Station station : stations) {
            ground = Math.max(ground, Micrometres.toMetres(station.height().groundMotion()));
        }
        return new CropCare(
                plan.crop().protectedRadius(),
                positionError(subject, stations),
                plan.crop().canopyHeight(),
                plan.crop().canopyWidth(),
                ground);
    }

    /** The largest errors of any arm and any sensor that it works by, of where a tool touches the ground. */
    private static PositionError positionError(Case subject, List<Station> stations) {
        Carriage carriage = subject.carriage().value();
        PositionErrors e = carriage.errors().orElse(new PositionErrors(0, 0, 0, 0, 0, Optional.empty()));
        double across = 0;
        double along = 0;
        double clock = 0;
        for (Station station : stations) {
            double head = station.sheet().accuracy().standardUncertainty().value();
            across = Math.max(across, head);
            for (Sensor sensor : carriage.sensors()) {
                if (sensor.beams().contains(station.arm().beam())) {
                    double distance = Micrometres.toMetres(
                            Math.abs(sensor.bandX().least() - station.mount().x()));
                    double height = Micrometres.toMetres(sensor.position().z());
                    clock = e.clock();
                    along = Math.max(
                            along, Uncertainty.combined(sensor.sigma(), distance * e.slip(), height * e.pitch(), head));
                    across = Math.max(
                            across,
                            Uncertainty.combined(
                                    sensor.sigma(),
                                    distance * e.heading(),
                                    height * e.roll(),
                                    Uncertainty.uniform(
                                            station.arm().tolerance().backlash()),
                                    head));
                }
            }
        }
        double k = subject.policy().value().coverageFactor().value();
        return new PositionError(k * across, k * along, k * clock);
    }
}
