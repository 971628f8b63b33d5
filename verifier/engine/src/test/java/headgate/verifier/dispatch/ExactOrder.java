package headgate.verifier.dispatch;

import java.util.ArrayList;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/**
 * The most jobs that some machines can do in time, from a constraint solver of other authors (choco-solver 5.0.0,
 * BSD-4-Clause, Maven Central). Times are whole numbers. Nothing of ours is in it but the statement of the problem.
 */
final class ExactOrder {

    private ExactOrder() {}

    /**
     * A job: it may be begun from release to lastStart, and takes its duration.
     *
     * @param release earliest start
     * @param lastStart latest start
     * @param duration how long it takes
     */
    record WholeJob(int release, int lastStart, int duration) {}

    /** The most jobs that one machine can begin in time; proven by the solver. */
    static int most(List<WholeJob> jobs) {
        Model model = new Model();
        List<BoolVar> done = new ArrayList<>();
        IntVar[] starts = new IntVar[jobs.size()];
        for (int i = 0; i < jobs.size(); i++) {
            WholeJob job = jobs.get(i);
            done.add(model.boolVar("done" + i));
            starts[i] = model.intVar("start" + i, job.release(), Math.max(job.release(), job.lastStart()));
            if (job.lastStart() < job.release()) {
                model.arithm(done.get(i), "=", 0).post();
            }
        }
        // A job that is not done takes no room; one that is takes the machine for its duration.
        Task[] tasks = new Task[jobs.size()];
        IntVar[] heights = new IntVar[jobs.size()];
        for (int i = 0; i < jobs.size(); i++) {
            tasks[i] = new Task(starts[i], jobs.get(i).duration());
            heights[i] = done.get(i);
        }
        model.cumulative(tasks, heights, model.intVar(1)).post();
        IntVar sum = model.intVar("sum", 0, jobs.size());
        model.sum(done.toArray(new BoolVar[0]), "=", sum).post();
        model.setObjective(Model.MAXIMIZE, sum);
        int best = 0;
        while (model.getSolver().solve()) {
            best = sum.getValue();
        }
        if (model.getSolver().isStopCriterionMet()) {
            throw new AssertionError("the solver stopped before it had proved its answer");
        }
        return best;
    }
}
