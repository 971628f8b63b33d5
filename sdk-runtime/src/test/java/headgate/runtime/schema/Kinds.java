package headgate.runtime.schema;

import headgate.runtime.carriage.CarriageReader;
import headgate.runtime.cropplan.CropPlanReader;
import headgate.runtime.fitting.FittingReader;
import headgate.runtime.form.FileKind;
import headgate.runtime.form.ObjectForm;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.InvalidFileException;
import headgate.runtime.policy.PolicyReader;
import headgate.runtime.stand.StandReader;
import headgate.runtime.text.SourceFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** All kinds of file that have a schema. */
final class Kinds {

    /** Reads a text; throws what the reader throws. */
    @FunctionalInterface
    interface Reading {
        void read(byte[] bytes) throws InvalidFileException;
    }

    /** A kind of file: its name, the version of its format, what it may hold, and its reader. */
    record Subject(String name, int version, ObjectForm form, Reading reading) {

        List<FileProblem> problems(String text) {
            try {
                reading.read(text.getBytes(StandardCharsets.UTF_8));
                return List.of();
            } catch (InvalidFileException refused) {
                return refused.problems();
            }
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private Kinds() {}

    static List<Subject> all() {
        return List.of(
                of(CarriageReader.KIND),
                of(CropPlanReader.KIND),
                of(FittingReader.KIND),
                of(PolicyReader.KIND),
                new Subject("stand", 1, StandReader.geoJsonForm(), Kinds::readStand));
    }

    private static Subject of(FileKind<?> kind) {
        return new Subject(
                kind.name(), kind.version(), kind.form(), bytes -> kind.read(SourceFile.of("file.json", bytes)));
    }

    private static void readStand(byte[] bytes) throws InvalidFileException {
        try {
            StandReader.read("file.json", new ByteArrayInputStream(bytes), plant -> {});
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
