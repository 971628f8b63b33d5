package headgate.runtime.process;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.SpotAnswer;
import headgate.runtime.testing.Heads;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Machines that have the tools for a wall and refuse what the tools do, as containers often are. */
class WallRefusedTest {

    @TempDir
    private Path tools = Path.of("");

    /** A tool that says what the real one says in a container without namespaces, and ends. */
    private Path refusing(String name) throws IOException {
        Path tool = Files.writeString(
                tools.resolve(name),
                "#!/bin/sh\necho \"" + name + ": creating namespaces failed: Operation not permitted\" >&2\nexit 1\n");
        assertThat(tool.toFile().setExecutable(true)).isTrue();
        return tool;
    }

    private HeadProcess open(Walls walls) throws IOException {
        List<Path> found = new ArrayList<>(List.of(refusing("bwrap"), refusing("unshare")));
        Tools here = name -> found.stream()
                .filter(tool -> tool.endsWith(name))
                .map(Path::toString)
                .findFirst()
                .or(() -> Tools.OF_MACHINE.find(name));
        return HeadProcess.open(HeadLimits.STANDARD, Surroundings.USUAL, walls, here);
    }

    @Test
    void theHeadRunsWithoutOneAndThatIsTold() throws IOException {
        Walls walls = Walls.of(List.of(Wall.values()));
        HeadProcess process = open(walls);
        process.load(HeadProcessTest.jar(Heads.spot("")));
        HeadStart start = process.await();
        assertThat(start).isInstanceOf(HeadStart.Running.class);
        assertThat(process.wall()).isEqualTo(Wall.NONE);
        assertThat(walls.best()).as("what is refused once is not tried again").isEqualTo(Wall.NONE);
        try (HeadAnswers head = ((HeadStart.Running) start).head()) {
            assertThat(head.act(HeadProcessTest.task(1))).isInstanceOf(SpotAnswer.Answered.class);
        }
    }

    @Test
    void whoAsksForOneWallGetsThatOrNothing() throws IOException {
        HeadProcess process = open(Walls.only(Wall.BWRAP));
        process.load(HeadProcessTest.jar(Heads.spot("")));
        assertThat(process.await())
                .isEqualTo(new HeadStart.Refused(new HeadFault.StartFailed(
                        "it ended with exit code 1; bwrap: creating namespaces failed: Operation not permitted")));
    }
}
