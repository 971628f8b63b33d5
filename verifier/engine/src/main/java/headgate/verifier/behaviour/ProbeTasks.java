package headgate.verifier.behaviour;

import headgate.api.shape.Interval;
import headgate.api.shape.Outline;
import headgate.api.shape.Point3;
import headgate.api.sheet.HeadSheet;
import headgate.api.sheet.Range;
import headgate.api.sheet.WorkRange;
import headgate.api.vocabulary.PlantClass;
import headgate.api.vocabulary.SoilClass;
import headgate.runtime.task.LatticeSpotTask;
import headgate.runtime.task.TaskLattice;
import java.util.ArrayList;
import java.util.List;

/** The probes that a sheet and a setting call for. All lie on the task lattice and in the declared work range. */
final class ProbeTasks {

    /** A plant at the very edge of the reach would leave it by the grid's rounding: probes stay 1 mm inside. */
    private static final long INSIDE = 1000;

    private final HeadSheet sheet;
    private final ProbeSetting setting;
    private final WorkRange range;
    private final List<PlantClass> plants;
    private final List<SoilClass> soils;

    ProbeTasks(HeadSheet sheet, ProbeSetting setting) {
        this.sheet = sheet;
        this.setting = setting;
        this.range = sheet.workRange();
        // A head that is not about plants still gets tasks with a plant class.
        this.plants =
                range.plantClasses().isEmpty() ? List.of(PlantClass.BROADLEAF) : List.copyOf(range.plantClasses());
        this.soils = List.copyOf(range.soils());
    }

    /** Every corner of the work range: 2 x 2 x 2 x 2 figures, 2 sides, 2 heights, for each plant, soil and facing. */
    List<Path> corners() {
        List<Path> corners = new ArrayList<>();
        for (Facing facing : setting.facings()) {
            for (PlantClass plant : plants) {
                for (SoilClass soil : soils) {
                    for (int corner = 0; corner < 64; corner++) {
                        corners.add(path(
                                facing,
                                plant,
                                soil,
                                corner & 1,
                                corner >> 1 & 1,
                                corner >> 2 & 1,
                                corner >> 3 & 1,
                                corner >> 4 & 1,
                                corner >> 5 & 1));
                    }
                }
            }
        }
        return corners;
    }

    /** Probes spread evenly over the work range, the reach and a stretch before and after it. */
    List<LatticeSpotTask> spread() {
        List<LatticeSpotTask> tasks = new ArrayList<>();
        for (Facing facing : setting.facings()) {
            for (int i = 1; i <= setting.sequence(); i++) {
                Path path = path(
                        facing,
                        plants.get(i % plants.size()),
                        soils.get(i / plants.size() % soils.size()),
                        Halton.at(i, 0),
                        Halton.at(i, 2),
                        Halton.at(i, 3),
                        Halton.at(i, 4),
                        Halton.at(i, 5),
                        Halton.at(i, 6));
                tasks.add(path.at(1.2 * Halton.at(i, 1) - 0.1));
            }
        }
        return tasks;
    }

    /** A few paths to follow from end to end: each plant and each soil, slow and fast. */
    List<Path> followed() {
        List<Path> paths = new ArrayList<>();
        for (Facing facing : setting.facings()) {
            for (int i = 0; i < 2 * Math.max(plants.size(), soils.size()); i++) {
                paths.add(path(
                        facing,
                        plants.get(i / 2 % plants.size()),
                        soils.get(i / 2 % soils.size()),
                        i % 2 == 0 ? 0.5 : 1.0,
                        0.5,
                        0.5,
                        0.5,
                        0.3,
                        0.5));
            }
        }
        return paths;
    }

    private Path path(
            Facing facing,
            PlantClass plant,
            SoilClass soil,
            double speed,
            double stem,
            double height,
            double moisture,
            double side,
            double level) {
        Outline reach = Path.outline(sheet);
        Interval across = reach.yExtent();
        long inside = Math.min(INSIDE, across.length() / 2);
        long y = between(across.least() + inside, across.most() - inside, side);
        long z = between(setting.ground().least(), setting.ground().most(), level);
        return Path.of(
                sheet,
                new LatticeSpotTask(
                        TaskLattice.nearest(new Point3(0, y, z)),
                        facing.ground(on(TaskLattice.SPEED, range.groundSpeed(), speed)),
                        plant,
                        on(TaskLattice.STEM, range.stemDiameter(), stem),
                        on(TaskLattice.HEIGHT, range.plantHeight(), height),
                        soil,
                        on(TaskLattice.MOISTURE, range.moisture(), moisture)));
    }

    private static long between(long least, long most, double share) {
        return least + Math.round(share * (most - least));
    }

    /** A share of a range, on the lattice and still in the range if the range holds a lattice value at all. */
    static double on(TaskLattice lattice, Range range, double share) {
        double least = lattice.up(range.least());
        double most = Math.max(least, lattice.down(range.most()));
        double value = lattice.nearest(range.least() + share * (range.most() - range.least()));
        return Math.max(least, Math.min(most, value));
    }
}
