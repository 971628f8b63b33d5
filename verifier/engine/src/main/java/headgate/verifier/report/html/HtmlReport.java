package headgate.verifier.report.html;

import headgate.verifier.check.Outcome;
import headgate.verifier.check.Witness;
import headgate.verifier.judge.Limit;
import headgate.verifier.report.Entry;
import headgate.verifier.report.Marked;
import headgate.verifier.report.Report;
import headgate.verifier.report.Section;
import headgate.verifier.report.Subject;
import headgate.verifier.report.drawing.Folding;
import headgate.verifier.report.drawing.Pictures;
import headgate.verifier.report.markup.Markup;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Writes a report as one HTML page: style and pictures inside, no script, nothing fetched. The page forbids itself
 * everything else by a content security policy, should a name ever get past the escaping.
 */
public final class HtmlReport {

    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

    /** Failures that are named beside the verdict. */
    private static final int MOST_REASONS = 5;

    /** Longest text of a reason beside the verdict, characters. */
    private static final int LONGEST_REASON = 240;

    private final Report report;
    private final Markup page = new Markup();
    private final FindingWriter findings;

    private HtmlReport(Report report) {
        this.report = report;
        this.findings = new FindingWriter(page, report);
    }

    /**
     * Writes a report.
     *
     * @param report the report
     * @return the page, with a line feed at its end
     */
    public static String of(Report report) {
        HtmlReport writing = new HtmlReport(report);
        writing.write();
        return "<!DOCTYPE html>\n" + writing.page + "\n";
    }

    private void write() {
        page.open("html", "lang", "en").line();
        head(page, verdictWord() + ": " + report.title());
        page.open("body").line();
        page.leaf("a", "Skip to the findings", "class", "skip", "href", "#findings")
                .line();
        Shape.define(page);
        verdict();
        contents();
        page.open("main").line();
        checked();
        pictures();
        tightest();
        road();
        setPoints();
        gaps();
        findings();
        mend();
        notChecked();
        files();
        page.close().line().close().line().close();
    }

    /** Writes the head of a page that looks like a report. */
    static void head(Markup page, String title) {
        page.open("head").line();
        page.empty("meta", "charset", "utf-8").line();
        page.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY)
                .line();
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        page.empty("link", "rel", "icon", "href", "data:,").line();
        page.leaf("title", title).line();
        page.open("style").raw("\n" + style()).close().line();
        page.close().line();
    }

    private static String style() {
        try (InputStream in = Objects.requireNonNull(HtmlReport.class.getResourceAsStream("report.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the style sheet is part of this program", e);
        }
    }

    private String verdictWord() {
        return report.broken() ? "no verdict" : report.verdict().label();
    }

    private Shape verdictShape() {
        return report.broken() ? Shape.UNDECIDED : Shape.of(report.verdict());
    }

    private void verdict() {
        page.open("header").line();
        page.leaf("p", "Headgate report", "class", "kind").line();
        page.leaf("h1", report.title()).line();
        page.open("div", "class", "verdict " + verdictShape().style(), "id", "verdict");
        verdictShape().draw(page);
        page.open("div");
        page.leaf("p", verdictWord(), "class", "word");
        page.leaf("p", withoutWord(report.headline()));
        if (!report.limits().isEmpty()) {
            page.open("p")
                    .leaf("a", "What must be kept during work", "href", "#limits")
                    .close();
        }
        List<Entry> failures = report.failures();
        if (!failures.isEmpty()) {
            page.open("ul");
            for (Entry entry : failures.subList(0, Math.min(MOST_REASONS, failures.size()))) {
                page.open("li")
                        .leaf("a", brief(entry.subject()), "href", "#" + findings.id(entry))
                        .text(": " + brief(entry.message()))
                        .close();
            }
            if (failures.size() > MOST_REASONS) {
                page.leaf("li", "and " + (failures.size() - MOST_REASONS) + " more, under Findings");
            }
            page.close();
        }
        page.close().close().line().close().line();
    }

    /** Beside the verdict a reason is only named; it is told in full under Findings. */
    private static String brief(String words) {
        return words.codePointCount(0, words.length()) <= LONGEST_REASON
                ? words
                : words.substring(0, words.offsetByCodePoints(0, LONGEST_REASON)) + "\u2026";
    }

    /** The verdict's own word stands over the line already. */
    private String withoutWord(String headline) {
        String word = verdictWord() + ": ";
        return headline.regionMatches(true, 0, word, 0, word.length())
                ? sentence(headline.substring(word.length()))
                : headline;
    }

    private void contents() {
        page.open("nav", "aria-label", "Contents").open("ul");
        Map<String, String> links = new LinkedHashMap<>();
        links.put("checked", "What was checked");
        links.put("picture", "Picture");
        if (report.tightest().isPresent()) {
            links.put("tightest", "Tightest place");
        }
        if (!report.foldings().isEmpty()) {
            links.put("road", "On the road");
        }
        links.put("set-points", "Set-points");
        if (!report.gaps().isEmpty()) {
            links.put("gaps", "Gaps");
        }
        links.put("findings", "Findings");
        links.put("mend", "What would make it fit");
        links.put("not-checked", "What was not checked");
        links.put("files", "Files");
        links.forEach((id, words) ->
                page.open("li").leaf("a", words, "href", "#" + id).close());
        page.close().close().line();
    }

    private void section(String id, String title) {
        page.open("section", "id", id, "aria-labelledby", id + "-title").line();
        page.leaf("h2", title, "id", id + "-title").line();
    }

    private void checked() {
        section("checked", "What was checked");
        page.leaf("p", report.scope()).line();
        page.open("ul", "class", "cautions");
        report.cautions().forEach(c -> page.leaf("li", c));
        page.close().line().close().line();
    }

    private void pictures() {
        section("picture", "The carriage with its heads");
        if (report.scene().workers().isEmpty()) {
            page.leaf(
                            "p",
                            "No head is drawn: not every lane can have an arm that reaches it with a head that gave its"
                                    + " sheet.")
                    .line();
        }
        figure(Pictures.above(report.scene()), "From above, to scale.");
        figure(
                Pictures.behind(report.scene()),
                "From behind, to scale. Mounts are drawn in the middle of their work heights.");
        figure(
                Pictures.side(report.scene()),
                "From the right-hand side, to scale. Heads of one beam lie behind each other; the frame is a shade.");
        legend(Pictures.legend(report.scene()));
        marked(
                "Numbers in the pictures",
                e -> e.witness().flatMap(Witness::fold).isEmpty());
        if (report.scene().workers().stream().anyMatch(w -> w.shape().boxed())) {
            page.leaf("p", "A head has too many parts to be drawn one by one; the box around them is drawn.")
                    .line();
        }
        page.close().line();
    }

    private void legend(List<Pictures.Sample> samples) {
        page.open("ul", "class", "legend", "aria-label", "Legend");
        for (Pictures.Sample sample : samples) {
            page.open("li").add(sample.picture()).leaf("span", sample.words()).close();
        }
        page.close().line();
    }

    /** What the numbers in pictures stand for; each links to its finding. */
    private void marked(String title, Predicate<Entry> shown) {
        List<Marked> all =
                report.marked().stream().filter(m -> shown.test(m.entry())).toList();
        if (all.isEmpty()) {
            return;
        }
        page.open("ul", "class", "marked", "aria-label", title).line();
        for (Marked each : all) {
            page.open("li", "class", Shape.of(each.entry().outcome()).style())
                    .leaf("b", String.valueOf(each.number()))
                    .leaf("a", each.entry().subject(), "href", "#" + findings.id(each.entry()))
                    .text(each.entry().figures().map(f -> ": " + f).orElse("") + " \u2013 ")
                    .leaf("code", each.entry().rule().id())
                    .close()
                    .line();
        }
        page.close().line();
    }

    private void road() {
        if (report.foldings().isEmpty()) {
            return;
        }
        section("road", "On the road");
        for (int i = 0; i < report.foldings().size(); i++) {
            folding(report.foldings().get(i), "fold" + (i + 1));
        }
        page.close().line();
    }

    private void folding(Folding folding, String id) {
        page.leaf("h3", "Stance " + folding.stance()).line();
        List<Markup> road = Pictures.road(folding, id);
        figure(
                road.get(0),
                "On the road, from behind, to scale, with the limits of width and height and over the ground.");
        figure(road.get(1), "On the road, from above, to scale.");
        figure(
                road.get(2),
                "On the road, from the right-hand side, to scale. What is nearer is drawn over what is farther; the frame is a"
                        + " shade.");
        List<Markup> steps = Pictures.steps(folding, id);
        if (!steps.isEmpty()) {
            page.leaf("h4", "The way there, step by step").line();
            page.open("div", "class", "steps").line();
            for (int i = 0; i < steps.size(); i++) {
                figure(
                        steps.get(i),
                        "Step " + (i + 1) + ": " + folding.steps().get(i).name() + ". From above, to scale.");
            }
            page.close().line();
        }
        legend(Pictures.legend(folding, id));
        marked("Numbers in the pictures of stance " + folding.stance(), e -> e.witness()
                .flatMap(Witness::fold)
                .filter(f -> f.stance().equals(folding.stance()))
                .isPresent());
    }

    private void figure(Markup picture, String caption) {
        page.open("figure").add(picture).line();
        page.leaf("figcaption", caption).close().line();
    }

    private void tightest() {
        report.tightest().ifPresent(place -> {
            section("tightest", "The tightest place");
            page.leaf("p", place.text() + ".").line();
            page.open("div", "class", "inset");
            Pictures.tightest(report.scene())
                    .ifPresent(p -> figure(
                            p,
                            "The whole line is what is free; the broken line beside it, to the same scale, is what must be"
                                    + " free. Found by " + place.ruleId() + "."));
            page.close().close().line();
        });
    }

    private void gaps() {
        if (!report.gaps().isEmpty()) {
            section("gaps", "Gaps between arms");
            GapTables.write(page, report.gaps());
            page.close().line();
        }
    }

    private void setPoints() {
        section("set-points", "Set-points");
        if (report.setPoints().isEmpty()) {
            page.leaf("p", "None: not every lane can have an arm.").line();
        } else {
            page.leaf(
                            "p",
                            "Chosen by the verifier. Heights are those of the mount over level ground; y is across travel,"
                                    + " left is positive.")
                    .line();
            SetPointTable.write(page, report.setPoints());
        }
        if (!report.idleArms().isEmpty()) {
            page.leaf("p", "Without a head: arm " + String.join(", arm ", report.idleArms()) + ".")
                    .line();
        }
        if (!report.limits().isEmpty()) {
            page.leaf("h3", "To be kept during work", "id", "limits").line();
            page.open("ul");
            report.limits().stream().map(Limit::text).forEach(t -> page.leaf("li", t));
            page.close().line();
        }
        page.close().line();
    }

    private void findings() {
        section("findings", "Findings");
        page.leaf("p", sentence(report.counts().text())).line();
        for (Section section : report.sections()) {
            findings.write(section);
        }
        page.close().line();
    }

    private void mend() {
        section("mend", "What would make it fit");
        List<Entry> failures = report.failures();
        if (failures.isEmpty()) {
            page.leaf("p", report.verdict().isFit() ? "It fits as it is." : "Nothing fails; see what is undecided.")
                    .line();
        } else {
            page.leaf("p", "Each change was applied and judged by all rules.").line();
            Map<String, List<Entry>> byAdvice = new LinkedHashMap<>();
            List<Entry> without = new ArrayList<>();
            for (Entry entry : failures) {
                if (entry.remedies().isEmpty()) {
                    without.add(entry);
                }
                entry.remedies().forEach(a -> byAdvice.computeIfAbsent(
                                a.text() + " \u2013 " + a.outcome(), k -> new ArrayList<>())
                        .add(entry));
            }
            page.open("ul");
            byAdvice.forEach((advice, entries) -> {
                page.open("li").leaf("strong", sentence(advice)).text(" For ");
                findings.links(entries);
                page.text(".").close();
            });
            if (!without.isEmpty()) {
                page.open("li").text("No single change is known for ");
                findings.links(without);
                page.text(".").close();
            }
            page.close().line();
        }
        page.close().line();
    }

    private void notChecked() {
        section("not-checked", "What was not checked");
        if (!report.notes().isEmpty()) {
            page.leaf("h3", "In this run").open("ul");
            report.notes().forEach(n -> page.leaf("li", n));
            page.close().line();
        }
        long open = report.counts().findings().getOrDefault(Outcome.UNDECIDED, 0);
        if (open > 0) {
            page.leaf("p", open + " undecided, told under Findings.").line();
        }
        page.open("dl", "class", "topics");
        for (Section section : report.sections()) {
            if (!section.topics().isEmpty()) {
                page.open("div").leaf("dt", section.family().title()).open("dd");
                page.text(sentence(String.join("; ", section.topics()))).close().close();
            }
        }
        page.close().line().close().line();
    }

    private void files() {
        section("files", "Files and versions");
        page.leaf(
                        "p",
                        "Made by Headgate " + report.edition().program() + " with rule book "
                                + report.edition().ruleBook() + ". The report is about exactly these bytes:")
                .line();
        page.open("table", "class", "files").open("thead").open("tr");
        for (String title : List.of("What", "Name", "SHA-256")) {
            page.leaf("th", title, "scope", "col");
        }
        page.close().close().open("tbody").line();
        for (Subject subject : report.subjects()) {
            page.open("tr")
                    .leaf("td", subject.kind())
                    .leaf("td", subject.name())
                    .leaf("td", subject.sha256(), "class", "digest")
                    .close()
                    .line();
        }
        page.close().close().line().close().line();
    }

    private static String sentence(String words) {
        String text = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        return text.endsWith(".") ? text : text + ".";
    }
}
