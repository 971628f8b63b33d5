package headgate.verifier.report;

import headgate.runtime.cropplan.CropPlan;
import headgate.runtime.origin.Loaded;
import headgate.runtime.origin.Place;
import headgate.verifier.check.Case;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.HeadUnderTest;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Severity;
import headgate.verifier.interlock.Interlock;
import headgate.verifier.interlock.Interlocks;
import headgate.verifier.judge.Judgement;
import headgate.verifier.judge.Limit;
import headgate.verifier.judge.RuleFault;
import headgate.verifier.report.drawing.FoldingMaker;
import headgate.verifier.report.drawing.SceneMaker;
import headgate.verifier.setup.PairGaps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the report of a judgement. Pure: equal judgements give equal reports. */
public final class ReportMaker {

    private static final List<String> CAUTIONS = List.of(
            "A pass holds in the declared model and within the declared tolerances: what head, carriage and crop plan say"
                    + " of themselves is taken as true unless a finding says otherwise.",
            "This report is evidence for a licensed engineer and the local authority, never a replacement for either.",
            "It certifies nothing about the safety of the machine.");

    private final Judgement judgement;
    private final Case subject;
    private final List<Entry> entries;

    private ReportMaker(Judgement judgement) {
        this.judgement = judgement;
        this.subject = judgement.subject();
        this.entries =
                judgement.findings().stream().map(f -> Entry.of(f, this::place)).toList();
    }

    /**
     * Makes a report.
     *
     * @param judgement the judgement
     * @param edition which program made it
     * @param transcripts digests of what heads answered, and other files that the judgement rests on beyond head,
     *     carriage, crop plan and policy
     * @param notes what was not checked in this run, as sentences, besides what the heads say of how they were run
     * @return the report
     */
    public static Report of(Judgement judgement, Edition edition, List<Subject> transcripts, List<String> notes) {
        return new ReportMaker(judgement).make(edition, transcripts, notes);
    }

    private Report make(Edition edition, List<Subject> transcripts, List<String> notes) {
        List<Section> sections = Sections.of(entries);
        Places places = Places.of(entries);
        Optional<Tightest> tightest = places.tightest();
        return new Report(
                title(),
                judgement.verdict(),
                headline(),
                scope(),
                tightest,
                Stream.concat(judgement.setup().stations().stream(), judgement.setup().waiting().stream())
                        .map(SetPoint::of)
                        .toList(),
                idleArms(),
                gaps(),
                judgement.limits().stream().map(ReportMaker::limit).toList(),
                sections,
                Counts.of(entries),
                Stream.concat(notes.stream(), subject.heads().stream().flatMap(head -> head.notes().stream()))
                        .distinct()
                        .map(Plain::line)
                        .toList(),
                CAUTIONS,
                subjects(transcripts),
                edition,
                judgement.faults().stream().map(RuleFault::ruleId).distinct().toList(),
                SceneMaker.of(subject, judgement.setup(), tightest.map(Tightest::mark), places.atWork(), Plain::line),
                FoldingMaker.of(subject, places::folded, Plain::line),
                places.marked());
    }

    private static Limit limit(Limit limit) {
        if (limit instanceof Limit.Kept kept) {
            return new Limit.Kept(
                    Plain.line(kept.subject()),
                    Plain.line(kept.quantity()),
                    kept.least(),
                    kept.most(),
                    kept.dimension());
        }
        Limit.Apart apart = (Limit.Apart) limit;
        Interlock i = apart.interlock();
        return new Limit.Apart(
                Plain.line(apart.subject()),
                new Interlock(
                        Plain.line(i.first()),
                        Plain.line(i.second()),
                        i.required(),
                        i.firstNever(),
                        i.secondNever(),
                        i.firstWhileSecondActs(),
                        i.secondWhileFirstActs(),
                        i.offsets(),
                        i.neverTogether(),
                        i.excess()));
    }

    private String heads() {
        return subject.heads().isEmpty()
                ? "no head"
                : subject.heads().stream().map(h -> Plain.line(h.label())).collect(Collectors.joining(", "));
    }

    private String planName() {
        return Plain.line(subject.plan().value().name());
    }

    private String carriageName() {
        return Plain.line(subject.carriage().value().name());
    }

    private String title() {
        return Words.capital(heads()) + " on " + carriageName() + " for " + planName();
    }

    private String headline() {
        if (!judgement.faults().isEmpty()) {
            return "The program itself broke down in "
                    + Words.count(judgement.faults().size(), "rule")
                    + ", so there is no verdict. This is no fault of the head.";
        }
        return switch (judgement.verdict()) {
            case FITS -> "Fits: no rule fails, and nothing need be kept to but the set-points.";
            case FITS_WITHIN_LIMITS ->
                "Fits within limits: no rule fails, as long as "
                        + (judgement.limits().size() == 1
                                ? "one limit is"
                                : judgement.limits().size() + " limits are")
                        + " kept during work.";
            case DOES_NOT_FIT -> doesNotFit();
            case UNDECIDED ->
                "Undecided: no rule fails, but " + Words.count(open(), "finding")
                        + " cannot be decided until something more is known.";
        };
    }

    private String doesNotFit() {
        List<Entry> failures = entries.stream().filter(Entry::breaksFit).toList();
        long rules = failures.stream().map(e -> e.rule().id()).distinct().count();
        boolean mends = failures.stream().flatMap(e -> e.remedies().stream()).anyMatch(a -> a.verdict()
                .isFit());
        return "Does not fit: " + (rules == 1 ? "one rule fails" : rules + " rules fail") + ". "
                + (mends
                        ? "A change that would make it fit is given below."
                        : "No single change is known that would make it fit.");
    }

    private long open() {
        return entries.stream()
                .filter(e -> e.outcome() == Outcome.UNDECIDED && e.rule().severity() == Severity.ERROR)
                .count();
    }

    private String scope() {
        CropPlan plan = subject.plan().value();
        Counts counts = Counts.of(entries);
        long kinds = judgement.setup().stations().size();
        String arms = kinds == 0
                ? "No arm could be chosen for every lane, so rules that need the set-points looked at nothing."
                : Words.count(kinds, "arm") + " of "
                        + subject.carriage().value().arms().size()
                        + (kinds == 1 ? " serves " : " serve ")
                        + Words.count(judgement.setup().lanes().size(), "lane") + " in a pass.";
        return Words.capital(heads()) + " was checked on the carriage " + carriageName() + " (serial "
                + Plain.line(subject.carriage().value().serial()) + ") for the crop plan " + planName() + ": "
                + Plain.line(plan.wanted().operation().toString()) + " at "
                + Dimension.SPEED.text(plan.wanted().speed()) + ", rows "
                + Dimension.LENGTH.text(plan.rows().spacing()) + " apart. " + arms + " "
                + Words.capital(counts.text()) + ".";
    }

    /** Without a set-up it is not known which arms the plan needs. */
    private List<String> idleArms() {
        return judgement.setup().empty().stream()
                .map(e -> Plain.line(e.arm().id()))
                .toList();
    }

    private List<ArmGaps> gaps() {
        Interlocks interlocks = Interlocks.of(subject);
        return PairGaps.of(subject).stream()
                .map(pair -> ArmGaps.of(pair, interlocks))
                .toList();
    }

    private List<Subject> subjects(List<Subject> transcripts) {
        List<Subject> all = new ArrayList<>();
        for (HeadUnderTest head : subject.heads()) {
            all.add(new Subject("head", head.label(), head.facts().sha256()));
        }
        all.add(file("carriage", subject.carriage()));
        all.add(file("crop plan", subject.plan()));
        all.add(file("policy", subject.policy()));
        subject.stand()
                .flatMap(stand -> stand.sha256().map(digest -> new Subject("stand", Plain.line(stand.name()), digest)))
                .ifPresent(all::add);
        all.addAll(transcripts);
        return List.copyOf(all);
    }

    private static Subject file(String kind, Loaded<?> loaded) {
        return new Subject(kind, Plain.fileName(loaded.file()), loaded.sha256());
    }

    private Optional<Place> place(String field) {
        int cut = field.indexOf(':');
        if (cut < 0) {
            return Optional.empty();
        }
        String path = field.substring(cut + 1);
        Optional<Place> place =
                switch (field.substring(0, cut)) {
                    case "carriage" -> subject.carriage().place(path);
                    case "crop-plan", "plan" -> subject.plan().place(path);
                    case "policy" -> subject.policy().place(path);
                    default -> Optional.empty();
                };
        return place.map(p -> new Place(Plain.fileName(p.file()), p.line(), p.column()));
    }
}
