package headgate.app.doctor;

import headgate.runtime.process.Wall;
import java.util.Optional;
import java.util.function.Function;

/**
 * Looks whether the operating system can wall in a head's process, by starting one that holds no head.
 *
 * @param wall the wall
 * @param trial starts a process behind it, and says what went wrong if something did
 */
record WallProbe(Wall wall, Function<Wall, Optional<String>> trial) implements Probe {

    @Override
    public Diagnosis look() {
        String subject = "wall by " + wall.word();
        Optional<String> wrong = trial.apply(wall);
        if (wrong.isPresent()) {
            return Diagnosis.note(
                    subject,
                    "does not work: " + wrong.get(),
                    wall == Wall.BWRAP
                            ? "Heads can then read this account's files: check only those you trust, or mend it."
                            : "Needed only where bwrap does not work.");
        }
        return Diagnosis.good(subject, wall == Wall.BWRAP ? "works" : "works, for where bwrap does not");
    }
}
