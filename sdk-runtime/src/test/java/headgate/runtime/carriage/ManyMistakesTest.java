package headgate.runtime.carriage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import headgate.runtime.form.LowfieldFiles;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Somebody who makes twenty mistakes is told of twenty, in the order in which they stand, and of nothing else. */
class ManyMistakesTest {

    /** What is written, what is written instead, and the path that the problem must name. */
    private record Mistake(String right, String wrong, String path) {}

    private static final List<Mistake> MISTAKES = List.of(
            new Mistake("\"serial\": \"LF-0001\"", "\"serial\": 1", "serial"),
            new Mistake("{\"id\": \"front\", \"x\": \"0 mm\"}", "{\"id\": \"front\", \"x\": 0}", "beams[0].x"),
            new Mistake("\"x\": \"-1400 mm\"", "\"x\": \"-1400mmm\"", "beams[1].x"),
            new Mistake("[\"350 mm\", \"950 mm\"]", "[\"950 mm\", \"350 mm\"]", "armTypes[0].lift"),
            new Mistake(
                    "\"shiftMotion\": {\"speed\": \"0.5 m/s\"",
                    "\"shiftMotion\": {\"speed\": \"0,5 m/s\"",
                    "armTypes[0].shiftMotion.speed"),
            new Mistake("\"overshoot\": \"3 mm\"", "\"overshot\": \"3 mm\"", "armTypes[0].shiftMotion.overshot"),
            new Mistake(
                    "\"liftMotion\": {\"speed\": \"0.4 m/s\", ", "\"liftMotion\": {", "armTypes[0].liftMotion.speed"),
            new Mistake("\"backlash\": \"3 mm\"", "\"backlash\": \"3 kg\"", "armTypes[0].tolerance.backlash"),
            new Mistake(
                    "\"angularPlay\": \"0.3 deg\"", "\"angularPlay\": \"0.3\"", "armTypes[0].tolerance.angularPlay"),
            new Mistake("\"mass\": \"25 kg\"", "\"mass\": \"-25 kg\"", "armTypes[0].payload.mass"),
            new Mistake("\"momentX\": \"60 N m\"", "\"momentX\": \"60 Nm\"", "armTypes[0].payload.momentX"),
            new Mistake("\"9409-1-50-4-M6\"", "\"9409-50-4\"", "armTypes[0].plate"),
            new Mistake("\"M12-L 5-pole 24 V\"", "\"\"", "armTypes[0].connectors[0].designation"),
            new Mistake("\"peak\": \"320 W\"", "\"peak\": \"32 W\"", "armTypes[0].supply.peak"),
            new Mistake("\"beams\": [\"front\", \"rear\"]", "\"beams\": [\"front\", \"raer\"]", "sensors[0].beams[1]"),
            new Mistake(
                    "\"id\": \"front-3\", \"beam\": \"front\"",
                    "\"id\": \"front-3\", \"beam\": \"frnot\"",
                    "arms[2].beam"),
            new Mistake("\"roll\": \"0.4 deg\"", "\"roll\": \"90 deg\"", "ground.roll"),
            new Mistake(
                    "\"deceleration\": \"1.5 m/s2\", \"overshoot\": \"4 mm\"",
                    "\"deceleration\": null, \"overshoot\": \"4 mm\"",
                    "armTypes[0].liftMotion.deceleration"),
            new Mistake("\"turnTime\": \"40 s\"", "\"turnTime\": \"40 s\", \"turnTime\": \"50 s\"", "turning.turnTime"),
            new Mistake("\"frameRate\": \"20 Hz\"", "\"frameRate\": \"0 Hz\"", "sensors[0].frameRate"));

    @Test
    void twentyMistakesAreTwentyProblems() {
        String text = LowfieldFiles.text("carriage.json");
        for (Mistake mistake : MISTAKES) {
            assertThat(text).as(mistake.path()).contains(mistake.right());
            text = text.replaceFirst(
                    java.util.regex.Pattern.quote(mistake.right()),
                    java.util.regex.Matcher.quoteReplacement(mistake.wrong()));
        }
        String wrong = text;
        List<FileProblem> problems = catchThrowableOfType(
                        InvalidFileException.class,
                        () -> CarriageReader.read(LowfieldFiles.source("carriage.json", wrong)))
                .problems();
        assertThat(problems)
                .extracting(FileProblem::path)
                .containsExactlyInAnyOrderElementsOf(
                        MISTAKES.stream().map(Mistake::path).toList());
        assertThat(problems).isSorted();
        assertThat(problems).allSatisfy(p -> assertThat(p.place().line()).isPositive());
    }
}
