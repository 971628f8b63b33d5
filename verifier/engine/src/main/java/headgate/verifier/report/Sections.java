package headgate.verifier.report;

import headgate.verifier.check.Family;
import headgate.verifier.check.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The sections of a report, one a family of rules, in the order in which they are shown. A new family gets its line in
 * {@link #ALL}; a new rule that looks at a topic listed here is named beside it, and the topic is then no longer
 * reported as not checked.
 */
final class Sections {

    private static final List<Plan> ALL = List.of(
            section(Family.PACKAGE, topic("who made the package: it carries no signature that is checked")),
            section(
                    Family.BEHAVIOUR,
                    topic("whether the head as built does what its code answers"),
                    topic(
                            "whether the labels of contact in the answers agree with the geometry",
                            "behaviour.contact-labels")),
            section(
                    Family.SHEET,
                    topic(
                            "whether the sheet can be true: bodies that hang together, mass against volume, centre of mass"
                                    + " inside the body",
                            "sheet.connected",
                            "sheet.plausible"),
                    topic("whether the sheet agrees with a head that was measured")),
            section(Family.PLAN, topic("whether the plan itself is good farming")),
            section(
                    Family.MOUNT,
                    topic("the screws under working forces and breakaway", "mount.bolts"),
                    topic("shocks at work and on the road"),
                    topic("hoses and cables between arm and head")),
            section(
                    Family.CLEARANCE,
                    topic("the head against the carriage's frame", "clearance.frame"),
                    topic("an arm's own parts against its head", "clearance.own-arm"),
                    topic("lifted heads over the leaves of the crop", "clearance.lifted"),
                    topic("transport on the road, the steps to it and the ways between", "clearance.transport"),
                    topic("what heads hide from the carriage's sensors", "clearance.sensor-view"),
                    topic("where pulled weeds and spoil fall", "clearance.drop-zone"),
                    topic("a head's own tool in what it dropped before, and wheels that roll over it")),
            section(Family.ROWS, topic("wheels on the headland, where the carriage turns")),
            section(
                    Family.THROUGHPUT,
                    topic(
                            "recorded stands: weeds are taken to come at random, neither clustered nor in each other's way",
                            "throughput.coverage"),
                    topic("what the carriage's sensors miss, unless the plan says it"),
                    topic("refilling, look-ahead of the sensors")),
            section(
                    Family.CROP,
                    topic("what the head does to crop plants: leaves, protected zones, losses", "throughput.coverage")),
            section(Family.LOAD, topic("soil forces on arm and carriage, traction, extrapolated soils")),
            section(Family.ENERGY, topic("whether the carriage can power all heads at once, and for how long")),
            section(
                    Family.SAFETY,
                    topic("crushing and shearing places, separation distances, thrown objects"),
                    topic("stops, guards and control of the carriage: no performance level is claimed")));

    /** What one section is about. */
    private record Plan(Family family, List<Topic> topics) {}

    /** Something that should be looked at. */
    private record Topic(String text, Set<String> coveredBy) {}

    private Sections() {}

    private static Plan section(Family family, Topic... topics) {
        return new Plan(family, List.of(topics));
    }

    private static Topic topic(String text, String... coveredBy) {
        return new Topic(text, Set.of(coveredBy));
    }

    /** Every family, in the order of the sections. */
    static List<Family> families() {
        return ALL.stream().map(Plan::family).toList();
    }

    /** Sorts findings into sections. Within a section the most urgent come first, then the rule book's order. */
    static List<Section> of(List<Entry> entries) {
        // A rule that does not apply has looked at nothing.
        Set<String> looked = entries.stream()
                .filter(e -> e.outcome() != Outcome.NOT_APPLICABLE)
                .map(e -> e.rule().id())
                .collect(Collectors.toSet());
        List<Section> sections = new ArrayList<>();
        for (Plan plan : ALL) {
            List<Entry> own = entries.stream()
                    .filter(e -> e.rule().family() == plan.family())
                    .sorted(Comparator.comparingInt(Entry::rank))
                    .toList();
            sections.add(new Section(plan.family(), own, notChecked(plan, own, looked)));
        }
        return List.copyOf(sections);
    }

    private static List<String> notChecked(Plan plan, List<Entry> own, Set<String> looked) {
        List<String> topics = new ArrayList<>();
        if (own.isEmpty()) {
            topics.add("the whole family: the rule book has no rule of it yet");
        }
        plan.topics().stream()
                .filter(t -> t.coveredBy().stream().noneMatch(looked::contains))
                .forEach(t -> topics.add(t.text()));
        return topics;
    }
}
