package headgate.runtime.stand;

import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Counts the plants of a stand as they go by, and collects what is wrong up to a bound. */
final class StandTally {

    /** Most problems that are collected: a file with a wrong column has one in every line. */
    static final int MOST_PROBLEMS = 100;

    private final Consumer<Plant> plants;
    private final List<FileProblem> problems = new ArrayList<>();
    private long count;
    private long crop;
    private long leastX = Long.MAX_VALUE;
    private long leastY = Long.MAX_VALUE;
    private long mostX = Long.MIN_VALUE;
    private long mostY = Long.MIN_VALUE;

    StandTally(Consumer<Plant> plants) {
        this.plants = plants;
    }

    void plant(Plant plant) {
        count++;
        crop += plant.isCrop() ? 1 : 0;
        leastX = Math.min(leastX, plant.position().x());
        leastY = Math.min(leastY, plant.position().y());
        mostX = Math.max(mostX, plant.position().x());
        mostY = Math.max(mostY, plant.position().y());
        // Once something is wrong the stand is refused, and nobody needs the rest of its plants.
        if (problems.isEmpty()) {
            plants.accept(plant);
        }
    }

    List<FileProblem> problems() {
        return problems;
    }

    /** Collects a problem; at the bound, gives up. */
    void problem(FileProblem problem) throws InvalidFileException {
        problems.add(problem);
        stopIfTooMany();
    }

    void stopIfTooMany() throws InvalidFileException {
        if (problems.size() >= MOST_PROBLEMS) {
            FileProblem last = problems.get(problems.size() - 1);
            problems.add(new FileProblem(
                    last.place(),
                    "",
                    MOST_PROBLEMS + " problems up to here",
                    "a stand without a problem",
                    "mend these first; the rest of the file was not looked at"));
            throw new InvalidFileException(problems);
        }
    }

    StandSummary summary(String file, String sha256) throws InvalidFileException {
        if (!problems.isEmpty()) {
            throw new InvalidFileException(problems);
        }
        boolean none = count == 0;
        return new StandSummary(
                file,
                sha256,
                count,
                crop,
                none ? new Plant.Position(0, 0) : new Plant.Position(leastX, leastY),
                none ? new Plant.Position(0, 0) : new Plant.Position(mostX, mostY),
                List.of());
    }
}
