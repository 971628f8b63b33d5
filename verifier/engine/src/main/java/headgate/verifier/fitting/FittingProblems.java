package headgate.verifier.fitting;

import headgate.api.sheet.HeadSheet;
import headgate.runtime.carriage.Arm;
import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.fitting.Fitting;
import headgate.runtime.origin.FileProblem;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.runtime.text.NearestName;
import headgate.runtime.text.Quote;
import headgate.verifier.setup.Lane;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is wrong with a fitting when it is laid beside the carriage, the crop plan and the heads' sheets. */
public final class FittingProblems {

    private final Loaded<Fitting> file;
    private final Carriage carriage;
    private final int lanes;
    private final Map<String, HeadSheet> sheets;
    private final List<FileProblem> problems = new ArrayList<>();

    private FittingProblems(Loaded<Fitting> file, Carriage carriage, CropPlan plan, Map<String, HeadSheet> sheets) {
        this.file = file;
        this.carriage = carriage;
        this.lanes = Lane.of(plan).size();
        this.sheets = Map.copyOf(sheets);
    }

    /**
     * Finds all that is wrong.
     *
     * @param file the fitting
     * @param carriage the carriage that it names
     * @param plan the crop plan that it names
     * @param sheets the sheets of its heads, by what the fitting calls them; those that gave none are left out
     * @return the problems, in order of place; empty if there is none
     */
    public static List<FileProblem> of(
            Loaded<Fitting> file, Carriage carriage, CropPlan plan, Map<String, HeadSheet> sheets) {
        FittingProblems found = new FittingProblems(file, carriage, plan, sheets);
        Map<String, Integer> firstOfArm = new HashMap<>();
        Map<Integer, List<Integer>> served = new HashMap<>();
        List<Fitting.Place> places = file.value().arms();
        for (int i = 0; i < places.size(); i++) {
            found.arm(i, places.get(i), firstOfArm);
            found.lanes(i, places.get(i), served);
        }
        found.order(places);
        found.counts(places);
        return found.problems.stream().sorted().toList();
    }

    private void arm(int index, Fitting.Place place, Map<String, Integer> first) {
        String path = "arms[" + index + "].arm";
        Optional<Arm> arm = carriage.arm(place.arm());
        Integer before = first.putIfAbsent(place.arm(), index);
        if (arm.isEmpty()) {
            List<String> known = carriage.arms().stream().map(Arm::id).toList();
            String advice = NearestName.of(place.arm(), known)
                    .map(near -> "did you mean " + Quote.of(near) + "?")
                    .orElse("");
            problem(
                    path,
                    Quote.of(place.arm()),
                    "the id of an arm of the carriage: " + String.join(", ", known),
                    advice);
        } else if (before != null) {
            problem(
                    path,
                    "a head on arm " + place.arm() + " a second time",
                    "one head for each arm",
                    "it has one in " + at("arms[" + before + "].arm") + "; take one of the two out");
        } else {
            plate(index, place, arm.get());
        }
    }

    private void plate(int index, Fitting.Place place, Arm arm) {
        HeadSheet sheet = sheets.get(place.head());
        if (sheet != null && !sheet.plate().equals(arm.plate())) {
            problem(
                    "arms[" + index + "].head",
                    "head " + place.head() + " with the plate " + sheet.plate(),
                    "a head with the plate of arm " + arm.id() + ", " + arm.plate(),
                    "use another arm or an adapter that the head's maker declares");
        }
    }

    private void lanes(int index, Fitting.Place place, Map<Integer, List<Integer>> served) {
        for (int k = 0; k < place.lanes().size(); k++) {
            int lane = place.lanes().get(k);
            String path = "arms[" + index + "].lanes[" + k + "]";
            List<Integer> before = served.computeIfAbsent(lane, l -> new ArrayList<>());
            if (lane > lanes) {
                problem(path, "lane " + lane, "a lane from 1 to " + lanes + ", which the crop plan has", "");
            } else {
                before.stream()
                        .map(i -> file.value().arms().get(i))
                        .filter(other -> !mayShare(place, other))
                        .findFirst()
                        .ifPresent(other -> taken(path, lane, place, other));
            }
            before.add(index);
        }
    }

    private void taken(String path, int lane, Fitting.Place place, Fitting.Place other) {
        boolean wants = place.shares() && other.shares();
        problem(
                path,
                "lane " + lane + " a second time",
                wants
                        ? "arms of different beams for a lane that is shared"
                        : "one arm for each lane that is given by hand",
                "arm " + other.arm() + " has it; take it from one of the two"
                        + (wants ? "" : ", or give both \"shares\": true if they shall share it"));
    }

    /** Two arms of one beam would stand in each other's way. */
    private boolean mayShare(Fitting.Place one, Fitting.Place other) {
        Optional<String> beam = carriage.arm(one.arm()).map(Arm::beam);
        return one.shares()
                && other.shares()
                && !beam.equals(carriage.arm(other.arm()).map(Arm::beam));
    }

    /** A head can be on no more arms than there are of it. */
    private void counts(List<Fitting.Place> places) {
        Map<String, Integer> used = new HashMap<>();
        for (int i = 0; i < places.size(); i++) {
            String head = places.get(i).head();
            int now = used.merge(head, 1, Integer::sum);
            int most = file.value().heads().stream()
                    .filter(h -> h.id().equals(head))
                    .flatMap(h -> h.count().stream())
                    .findFirst()
                    .orElse(Integer.MAX_VALUE);
            if (now > most) {
                problem(
                        "arms[" + i + "].head",
                        "head " + head + " on one arm more than there are",
                        "head " + head + " on at most " + most + (most == 1 ? " arm" : " arms"),
                        "take it off an arm, or correct its count");
            }
        }
    }

    /** Arms on one beam cannot pass one another. */
    private void order(List<Fitting.Place> places) {
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < places.size(); j++) {
                Optional<Arm> right = carriage.arm(places.get(i).arm());
                Optional<Arm> left = carriage.arm(places.get(j).arm());
                if (right.isEmpty()
                        || left.isEmpty()
                        || !right.get().beam().equals(left.get().beam())
                        || middle(right.get()) >= middle(left.get())) {
                    continue;
                }
                List<Integer> ofRight = places.get(i).lanes();
                List<Integer> ofLeft = places.get(j).lanes();
                if (!ofRight.isEmpty() && !ofLeft.isEmpty() && ofRight.get(0) > ofLeft.get(0)) {
                    problem(
                            "arms[" + Math.max(i, j) + "].lanes",
                            "arm " + places.get(i).arm() + " on lane " + ofRight.get(0) + " and arm "
                                    + places.get(j).arm() + " on lane " + ofLeft.get(0) + ", which cross",
                            "lanes in the order of the arms on beam "
                                    + right.get().beam() + ": "
                                    + places.get(i).arm() + " is to the right of "
                                    + places.get(j).arm(),
                            "exchange the lanes of the two");
                }
            }
        }
    }

    private static long middle(Arm arm) {
        return arm.shift().least() + arm.shift().most();
    }

    private String at(String path) {
        return file.place(path).map(p -> "line " + p.line()).orElse(path);
    }

    private void problem(String path, String found, String expected, String advice) {
        problems.add(new FileProblem(
                file.place(path).orElseGet(() -> Place.ofFile(file.file())), path, found, expected, advice));
    }
}
