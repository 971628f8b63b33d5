package headgate.app.command;

import headgate.api.unit.Micrometres;
import headgate.app.check.Checker;
import headgate.app.console.Complaint;
import headgate.app.console.Console;
import headgate.app.console.RefusedInputException;
import headgate.app.output.NewFile;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.fitting.FittingWriter;
import headgate.verifier.check.Dimension;
import headgate.verifier.fitting.FittingSearch;
import headgate.verifier.session.FitResult;
import headgate.verifier.setup.Setup;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Searching for a fitting before one is checked. */
final class FittingSearchOptions {

    @Option(
            names = "--search",
            paramLabel = "GOAL",
            description = "Puts the heads on the arms that the fitting does not name, for the most of GOAL: margin, or"
                    + " rate. Needs --save.")
    private @Nullable String search;

    @Option(names = "--save", paramLabel = "FILE", description = "Where the fitting that is found goes: a new file.")
    private @Nullable Path save;

    /**
     * Searches, if that is wanted.
     *
     * @param given the fitting's file
     * @param console where to tell what is found; quiet if a program listens
     * @param quiet true if only the check is to be told of
     * @return the fitting's file to check: the one that was saved, or the one given; empty if nothing was found
     * @throws RefusedInputException if the options or the files cannot be used
     */
    Optional<Path> run(Path given, Console console, boolean quiet) {
        if (search == null && save == null) {
            return Optional.of(given);
        }
        if (search == null || save == null) {
            throw new RefusedInputException(Complaint.of(
                    search == null ? "--save needs --search." : "--search needs --save.",
                    "A search says what it is for, and where the fitting goes that it finds."));
        }
        FittingSearch.Goal goal = goal(search);
        NewFile file = NewFile.at(save);
        Optional<FitResult.Found> found = Checker.search(given, goal);
        if (found.isEmpty()) {
            console.warn("headgate: no choice of these heads serves every lane, keeps every gap and keeps the pace.");
            return Optional.empty();
        }
        file.write(FittingWriter.text(moved(found.get().fitting(), given, file.path())));
        if (!quiet) {
            tell(found.get(), goal, console);
        }
        return Optional.of(save);
    }

    private static FittingSearch.Goal goal(String word) {
        return switch (word) {
            case "margin" -> FittingSearch.Goal.MARGIN;
            case "rate" -> FittingSearch.Goal.RATE;
            default ->
                throw new RefusedInputException(Complaint.about(
                        "--search", "there is no goal \"" + word + "\".", "Search for margin, or for rate."));
        };
    }

    private static void tell(FitResult.Found found, FittingSearch.Goal goal, Console console) {
        FittingSearch.Proposal proposal = found.proposal();
        Setup setup = proposal.setup();
        console.say("Found: "
                + proposal.arms().stream()
                        .map(p -> p.arm() + " " + p.head() + (p.turned() ? " turned" : ""))
                        .collect(Collectors.joining(", "))
                + ".");
        if (goal == FittingSearch.Goal.RATE) {
            console.say("It keeps the pace up to " + Dimension.SPEED.text(proposal.speed())
                    + "; at " + Dimension.SPEED.text(proposal.speed() + FittingSearch.SPEED_STEP)
                    + " no choice of these heads does.");
        }
        console.say("Margin " + margin(setup.margin(), RoundingMode.FLOOR)
                + (proposal.isProvenBest()
                        ? ": no other choice has more with as few lanes for the busiest arm."
                        : "; no other choice can have more than " + margin(setup.mostMargin(), RoundingMode.CEILING)
                                + " with as few lanes for the busiest arm."));
        console.say("");
    }

    private static String margin(Optional<Long> micrometres, RoundingMode mode) {
        return micrometres
                .map(m -> Dimension.LENGTH.text(Micrometres.toMetres(m), mode))
                .orElse("without a limit");
    }

    /** The same fitting for another folder: the files that it names are named from there. */
    private static Fitting moved(Fitting fitting, Path from, Path to) {
        return new Fitting(
                fitting.name(),
                moved(fitting.carriage(), from, to),
                moved(fitting.cropPlan(), from, to),
                fitting.policy().map(p -> moved(p, from, to)),
                fitting.heads().stream()
                        .map(h -> new Fitting.Head(h.id(), moved(h.file(), from, to), h.count()))
                        .toList(),
                fitting.arms(),
                fitting.spacings());
    }

    private static String moved(String name, Path from, Path to) {
        Path file = from.toAbsolutePath().resolveSibling(name).normalize();
        Path folder = to.resolveSibling("").normalize();
        boolean related = file.getRoot() != null && file.getRoot().equals(folder.getRoot());
        return (related ? folder.relativize(file) : file).toString().replace('\\', '/');
    }
}
