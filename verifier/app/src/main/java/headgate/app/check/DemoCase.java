package headgate.app.check;

import headgate.verifier.session.CheckInput;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One check of the demo.
 *
 * @param name name of its folder
 * @param question what it asks
 * @param head file name of the head's JAR
 * @param cropPlan file name of the crop plan
 * @param fits what comes of it, as this release was packed
 */
public record DemoCase(String name, String question, String head, String cropPlan, boolean fits) {

    /** The demo: the first one fits, the last one does not and says what would make it fit. */
    public static final List<DemoCase> ALL = List.of(
            new DemoCase(
                    "gripper-lettuce",
                    "Does the gripper fit for weeding lettuce?",
                    "gripper.jar",
                    "lettuce-45-weeding.json",
                    true),
            new DemoCase(
                    "planter-lettuce",
                    "Does the plug planter fit for planting lettuce?",
                    "planter.jar",
                    "lettuce-45-planting.json",
                    false));

    /**
     * Finds its files.
     *
     * @param folder the folder with the sample files
     * @return what to check
     */
    public CheckInput input(Path folder) {
        return new CheckInput(
                folder.resolve(head), folder.resolve("carriage.json"), folder.resolve(cropPlan), Optional.empty());
    }
}
