package headgate.testkit.jar;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.answers.HeadAnswers;
import headgate.runtime.pack.CleanJar;
import headgate.runtime.pack.HeadPackage;
import headgate.runtime.pack.Inspection;
import headgate.runtime.pack.PackageProblem;
import headgate.runtime.process.HeadLimits;
import headgate.runtime.process.HeadProcess;
import headgate.runtime.process.HeadStart;
import headgate.runtime.process.Surroundings;
import headgate.testkit.ContractTests;
import headgate.verifier.behaviour.ProbeSetting;
import headgate.verifier.behaviour.Tally;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AssertionFailureBuilder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The contract of a built package as tests: its bytes are looked at as the verifier does, and the head runs in processes of
 * its own, as on the carriage. Extend it with one line and run it after packaging:
 *
 * <pre>{@code
 * class GripperJarIT extends HeadJarContract {
 *     GripperJarIT() {
 *         super(HeadJarContract::built);
 *     }
 * }
 * }</pre>
 */
public abstract class HeadJarContract {

    /** System property: the path of the package that the build made. */
    public static final String BUILT = "headgate.jar";

    private final Supplier<Path> jar;

    /**
     * Takes the package.
     *
     * @param jar where it is; asked when the tests run
     */
    protected HeadJarContract(Supplier<Path> jar) {
        this.jar = jar;
    }

    /**
     * The package that the build made.
     *
     * @return the path in the system property {@value #BUILT}
     * @throws IllegalStateException if the property is not set
     */
    public static Path built() {
        String path = System.getProperty(BUILT, "");
        if (path.isEmpty()) {
            throw new IllegalStateException("set the system property " + BUILT + " to the path of the built package");
        }
        return Path.of(path);
    }

    /**
     * Where the head is probed.
     *
     * @param sheet what the head says of itself
     * @return mounted as high as the reach allows, over ground that moves by 40 mm either way
     */
    protected ProbeSetting setting(HeadSheet sheet) {
        return ProbeSetting.alone(sheet);
    }

    /** {@return one test for the bytes of the package, and one a trait} */
    @TestFactory
    final Stream<DynamicTest> keepsItsContract() {
        Path file = jar.get();
        Inspection inspection = HeadPackage.inspect(file);
        if (inspection instanceof Inspection.NotAJar not) {
            return Stream.of(
                    DynamicTest.dynamicTest("package", () -> fail(file + ": " + not.found() + "; " + not.advice())));
        }
        Inspection.Inspected inspected = (Inspection.Inspected) inspection;
        List<PackageProblem> problems = inspected.facts().problems();
        DynamicTest bytes = DynamicTest.dynamicTest(
                "package: manifest, index and classes are as a head's package must be (looked at "
                        + inspected.facts().entries().size() + " entries)",
                () -> {
                    if (!problems.isEmpty()) {
                        fail(problems.stream().map(PackageProblem::sentence).collect(Collectors.joining("\n")));
                    }
                });
        return Stream.concat(
                Stream.of(bytes), inspected.clean().stream().flatMap(clean -> ContractTests.of(tallies(clean))));
    }

    /** Two processes of the same bytes in other surroundings: what one says must not depend on which of them is asked. */
    private List<Tally> tallies(CleanJar clean) {
        try (HeadAnswers first = running(clean, Surroundings.USUAL);
                HeadAnswers second = running(clean, Surroundings.OTHER)) {
            return ContractTests.tallies(first, second, setting(first.sheet()), second.sheet());
        }
    }

    private static HeadAnswers running(CleanJar clean, Surroundings surroundings) {
        HeadProcess process = HeadProcess.open(HeadLimits.STANDARD, surroundings);
        process.load(clean);
        HeadStart start = process.await();
        if (start instanceof HeadStart.Refused refused) {
            throw new IllegalStateException(refused.fault().sentence());
        }
        return ((HeadStart.Running) start).head();
    }

    private static void fail(String message) {
        throw AssertionFailureBuilder.assertionFailure().message(message).build();
    }
}
