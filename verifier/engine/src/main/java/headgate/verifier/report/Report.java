package headgate.verifier.report;

import headgate.verifier.judge.Limit;
import headgate.verifier.judge.Verdict;
import headgate.verifier.report.drawing.Folding;
import headgate.verifier.report.drawing.Scene;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that the result of a check has to say, in words and figures.
 *
 * @param title which heads, on what, for what
 * @param verdict the verdict
 * @param headline the verdict in one plain line, with full stop
 * @param scope what was checked, as a paragraph
 * @param tightest where least is left, of all places that can be shown
 * @param setPoints where the arms are set at work, from the right to the left, then those that wait lifted; empty if not
 *     every lane can have an arm
 * @param idleArms arms without a head
 * @param gaps the gaps of every two arms
 * @param limits what must be kept during work for the verdict to hold
 * @param sections findings, one section a family; every family is there
 * @param counts how much was looked at
 * @param notes what was not checked in this run beyond the sections' topics
 * @param cautions what holds for every report
 * @param subjects the files that the report is about
 * @param edition which program made it
 * @param faults ids of rules that broke; if there is one, the verdict does not count
 * @param scene what there is to see: arms at work over their lanes, with the tightest place
 * @param foldings what there is to see of the stances for transport
 * @param marked the findings that pictures mark, by number; the tightest place is the first
 */
public record Report(
        String title,
        Verdict verdict,
        String headline,
        String scope,
        Optional<Tightest> tightest,
        List<SetPoint> setPoints,
        List<String> idleArms,
        List<ArmGaps> gaps,
        List<Limit> limits,
        List<Section> sections,
        Counts counts,
        List<String> notes,
        List<String> cautions,
        List<Subject> subjects,
        Edition edition,
        List<String> faults,
        Scene scene,
        List<Folding> foldings,
        List<Marked> marked) {

    /** Copies the lists. */
    public Report {
        setPoints = List.copyOf(setPoints);
        idleArms = List.copyOf(idleArms);
        gaps = List.copyOf(gaps);
        limits = List.copyOf(limits);
        sections = List.copyOf(sections);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
        subjects = List.copyOf(subjects);
        faults = List.copyOf(faults);
        foldings = List.copyOf(foldings);
        marked = List.copyOf(marked);
    }

    /** {@return every finding, in the order of the sections} */
    public Stream<Entry> entries() {
        return sections.stream().flatMap(s -> s.entries().stream());
    }

    /** {@return the findings that make the case not fit, in the order of the sections} */
    public List<Entry> failures() {
        return entries().filter(Entry::breaksFit).toList();
    }

    /** {@return true if the program itself broke, so that the verdict does not count} */
    public boolean broken() {
        return !faults.isEmpty();
    }
}
