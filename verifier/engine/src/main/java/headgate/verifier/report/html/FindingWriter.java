package headgate.verifier.report.html;

import headgate.verifier.check.Comparison;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Term;
import headgate.verifier.report.Advice;
import headgate.verifier.report.Entry;
import headgate.verifier.report.Margin;
import headgate.verifier.report.Report;
import headgate.verifier.report.Section;
import headgate.verifier.report.markup.Markup;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** Writes findings: those that need a reader in full, those that pass folded into a table. */
final class FindingWriter {

    /** Findings of one outcome in one section that are told in full; the rest is in the machine-readable report. */
    private static final int MOST_TOLD = 40;

    /** Lines of one folded table. */
    private static final int MOST_LINES = 400;

    private static final List<String> UNMEASURED = List.of("Rule", "What was looked at");
    private static final List<String> MEASURED = List.of("Rule", "What was looked at", "Found", "Must be", "Margin");

    private final Markup page;
    private final IdentityHashMap<Entry, String> ids = new IdentityHashMap<>();

    FindingWriter(Markup page, Report report) {
        this.page = page;
        report.entries().forEach(e -> ids.put(e, "finding-" + (ids.size() + 1)));
    }

    /** The id of a finding in the page. */
    String id(Entry entry) {
        return ids.getOrDefault(entry, "findings");
    }

    /** Links to findings, by what they are about. */
    void links(List<Entry> entries) {
        for (int i = 0; i < entries.size(); i++) {
            page.text(i == 0 ? "" : ", ").leaf("a", entries.get(i).subject(), "href", "#" + id(entries.get(i)));
        }
    }

    void write(Section section) {
        String id = "family-" + section.family().id();
        page.open("section", "class", "family", "aria-labelledby", id).line();
        page.leaf("h3", section.family().title(), "id", id).line();
        page.open("p", "class", "about").text(section.family().about());
        if (section.entries().isEmpty()) {
            page.leaf("strong", " No rule looks at this yet.");
        }
        page.close().line();
        told(section, Outcome.FAIL);
        told(section, Outcome.UNDECIDED);
        told(section, Outcome.CAUTION);
        folded(section, Outcome.PASS);
        folded(section, Outcome.NOT_APPLICABLE);
        page.close().line();
    }

    private static List<Entry> of(Section section, Outcome outcome) {
        return section.entries().stream().filter(e -> e.outcome() == outcome).toList();
    }

    private void told(Section section, Outcome outcome) {
        List<Entry> all = of(section, outcome);
        all.stream().limit(MOST_TOLD).forEach(this::inFull);
        more(all.size() - MOST_TOLD, outcome);
    }

    private void more(int left, Outcome outcome) {
        if (left > 0) {
            page.leaf("p", left + " more with outcome " + outcome.label() + ", listed in report.json.", "class", "more")
                    .line();
        }
    }

    private void inFull(Entry entry) {
        Shape shape = Shape.of(entry.outcome());
        page.open("article", "class", "finding " + shape.style(), "id", id(entry))
                .line();
        page.open("h4");
        shape.draw(page);
        page.leaf("span", entry.outcomeLabel(), "class", "word")
                .text(" ")
                .leaf("span", entry.subject())
                .close()
                .line();
        page.leaf("p", entry.message(), "class", "message").line();
        entry.comparison().ifPresent(this::figures);
        terms(entry.terms());
        entry.field().ifPresent(field -> {
            page.open("p", "class", "place");
            entry.place()
                    .ifPresent(p -> page.text("In ").leaf("code", p.toString()).text(", field "));
            page.text(entry.place().isPresent() ? "" : "Field ")
                    .leaf("code", field)
                    .close()
                    .line();
        });
        remedies(entry.remedies());
        page.open("details")
                .open("summary")
                .text("The rule ")
                .leaf("code", entry.rule().id());
        page.close().open("dl", "class", "rule");
        described("What must hold", entry.rule().title());
        described("Why", entry.rule().why());
        described("How it is decided", entry.rule().how());
        described("Source", entry.rule().source());
        described("Looked at", String.valueOf(entry.examined()));
        page.close().close().line().close().line();
    }

    private void described(String name, String words) {
        page.open("div").leaf("dt", name).leaf("dd", words).close();
    }

    private void figures(Comparison comparison) {
        page.open("dl", "class", "figures");
        described("Found", comparison.measured().toString());
        described("Must be " + comparison.relation().label(), comparison.limit().toString());
        described("Margin", Margin.text(comparison));
        page.close().line();
    }

    private void terms(List<Term> terms) {
        if (terms.isEmpty()) {
            return;
        }
        page.open("table", "class", "terms").leaf("caption", "Made up of").open("tbody");
        for (Term term : terms) {
            page.open("tr")
                    .leaf("th", term.name(), "scope", "row")
                    .leaf("td", term.measure().toString(), "class", "number")
                    .close();
        }
        page.close().close().line();
    }

    private void remedies(List<Advice> remedies) {
        if (remedies.isEmpty()) {
            return;
        }
        page.leaf("p", "What would mend it:", "class", "lead").open("ul");
        for (Advice advice : remedies) {
            page.leaf("li", advice.text() + " \u2013 " + advice.outcome());
        }
        page.close().line();
    }

    private void folded(Section section, Outcome outcome) {
        List<Entry> all = of(section, outcome);
        if (all.isEmpty()) {
            return;
        }
        Shape shape = Shape.of(outcome);
        page.open("details", "class", "folded " + shape.style()).open("summary");
        shape.draw(page);
        page.text(all.size() + " ")
                .leaf("span", outcome.label(), "class", "word")
                .close();
        page.open("table", "class", "passed").open("thead").open("tr");
        boolean measured = all.stream().anyMatch(e -> e.comparison().isPresent());
        for (String title : measured ? MEASURED : UNMEASURED) {
            page.leaf("th", title, "scope", "col");
        }
        page.close().close().open("tbody").line();
        all.stream().limit(MOST_LINES).forEach(e -> line(e, measured));
        page.close().close();
        more(all.size() - MOST_LINES, outcome);
        page.close().line();
    }

    private void line(Entry entry, boolean measured) {
        page.open("tr", "id", id(entry)).open("th", "scope", "row");
        page.leaf("code", entry.rule().id()).close();
        page.open("td")
                .leaf("strong", entry.subject())
                .empty("br")
                .text(entry.message())
                .close();
        if (measured) {
            number(entry.comparison().map(c -> c.measured().toString()));
            number(entry.comparison().map(c -> c.relation().label() + " " + c.limit()));
            number(entry.comparison().map(Margin::text));
        }
        page.close().line();
    }

    private void number(Optional<String> figure) {
        page.leaf("td", figure.orElse(""), "class", "number");
    }
}
