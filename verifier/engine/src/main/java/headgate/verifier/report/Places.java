package headgate.verifier.report;

import headgate.verifier.check.Comparison;
import headgate.verifier.check.Witness;
import headgate.verifier.report.drawing.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The findings that can be seen in a picture, numbered through the whole report: the tightest place first, then what fails,
 * then the rest in the order of the rule book, and last what is seen on a folded carriage.
 *
 * @param tightest the tightest place, which has number 1
 * @param marked all that are marked, by number
 */
record Places(Optional<Tightest> tightest, List<Marked> marked) {

    /** More numbers than this on one carriage would hide it; those left out are under Findings. */
    private static final int MOST = 24;

    Places {
        marked = List.copyOf(marked);
    }

    static Places of(List<Entry> entries) {
        Optional<Entry> tightest = Tightest.among(entries);
        List<Entry> shown = new ArrayList<>(tightest.stream().toList());
        entries.stream()
                .filter(e -> atWork(e) && !tightest.equals(Optional.of(e)))
                .sorted(Comparator.comparingInt(Entry::rank))
                .limit(MOST)
                .forEach(shown::add);
        entries.stream().filter(e -> fold(e).isPresent()).forEach(shown::add);
        List<Marked> marked = new ArrayList<>();
        shown.forEach(e -> marked.add(new Marked(marked.size() + 1, e)));
        return new Places(tightest.map(Tightest::of), marked);
    }

    private static boolean atWork(Entry entry) {
        return entry.witness().filter(w -> w.fold().isEmpty()).isPresent();
    }

    private static Optional<Witness.Fold> fold(Entry entry) {
        return entry.witness().flatMap(Witness::fold);
    }

    /** What pictures of the carriage at work mark besides the tightest place. */
    List<Spot> atWork() {
        return marked.stream()
                .skip(tightest.isPresent() ? 1 : 0)
                .filter(m -> atWork(m.entry()))
                .map(Places::spot)
                .toList();
    }

    /** What pictures of a stance mark, by the number of the shape in it. */
    Map<Integer, List<Spot>> folded(String stance) {
        Map<Integer, List<Spot>> spots = new TreeMap<>();
        for (Marked each : marked) {
            fold(each.entry()).filter(f -> f.stance().equals(stance)).ifPresent(f -> spots.computeIfAbsent(
                            f.step(), k -> new ArrayList<>())
                    .add(spot(each)));
        }
        return spots;
    }

    private static Spot spot(Marked marked) {
        Entry entry = marked.entry();
        Witness witness = entry.witness().orElseThrow();
        boolean holds = entry.comparison().map(Comparison::holds).orElse(!entry.breaksFit());
        return new Spot(marked.number(), witness.from(), witness.to(), holds);
    }
}
