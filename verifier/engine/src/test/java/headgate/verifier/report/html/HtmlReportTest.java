package headgate.verifier.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.runtime.carriage.Carriage;
import headgate.runtime.cropplan.CropPlan;
import headgate.verifier.check.Dimension;
import headgate.verifier.check.Finding;
import headgate.verifier.check.Outcome;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import headgate.verifier.check.Severity;
import headgate.verifier.report.Entry;
import headgate.verifier.report.Judgements;
import headgate.verifier.report.Report;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class HtmlReportTest {

    private static final String HOSTILE =
            "</title><script>alert(1)</script>\"'><img src=x onerror=alert(2)>&amp;\u202e\u0007";

    private final Report report = Judgements.everyKindReport();
    private final String page = HtmlReport.of(report);

    @Test
    void theSectionsStandInTheOrderOfReading() {
        assertThat(matches(page, "<section id=\"([a-z-]+)\""))
                .containsExactly(
                        "checked",
                        "picture",
                        "tightest",
                        "set-points",
                        "gaps",
                        "findings",
                        "mend",
                        "not-checked",
                        "files");
    }

    @Test
    void everyFindingAndEveryTopicStandsOnThePage() throws Exception {
        Document dom = parse(page);
        String words = dom.getDocumentElement().getTextContent();
        report.entries().map(Entry::message).forEach(m -> assertThat(words).contains(m));
        report.sections().stream().flatMap(s -> s.topics().stream()).forEach(t -> assertThat(words)
                .containsIgnoringCase(t));
        report.subjects().forEach(s -> assertThat(words).contains(s.sha256()));
        report.cautions().forEach(c -> assertThat(words).contains(c));
        assertThat(words).contains("misses by 80 mm").contains("file.json:5:7").contains("490 mm");
    }

    /** Read as XML, so that every tag is closed and every attribute quoted. */
    @Test
    void idsAreUniqueAndEveryReferenceInThePageLeadsSomewhere() throws Exception {
        Document dom = parse(page);
        Set<String> ids = new HashSet<>();
        NodeList all = dom.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            var id = all.item(i).getAttributes().getNamedItem("id");
            if (id != null) {
                assertThat(ids.add(id.getNodeValue())).as(id.getNodeValue()).isTrue();
            }
        }
        assertThat(ids).hasSizeGreaterThan(40);
        assertThat(ids).containsAll(matches(page, "href=\"#([^\"]+)\""));
        assertThat(ids).containsAll(matches(page, "url\\(#([^)]+)\\)"));
        matches(page, "aria-labelledby=\"([^\"]+)\"")
                .forEach(list -> assertThat(ids).containsAll(List.of(list.split(" "))));
    }

    @Test
    void nothingIsFetchedAndNothingRuns() {
        assertThat(page).doesNotContain("<script").doesNotContain("@import").doesNotContain("src=");
        assertThat(matches(page, "(?:href|src)=\"([^#][^\"]*)\"")).containsOnly("data:,");
        assertThat(matches(page, "(https?://[^\"' )]+)")).allMatch(u -> u.equals("http://www.w3.org/2000/svg"));
    }

    @Test
    void wordsOfPartnersNeverBecomeTags() throws Exception {
        RuleInfo info = Judgements.info("clearance.hostile", "Names are names", Severity.ERROR);
        Rule rule = Judgements.rule(
                info,
                c -> List.of(Finding.of(info, HOSTILE)
                        .term(HOSTILE, 1, Dimension.LENGTH)
                        .field("carriage:" + HOSTILE)
                        .examined(1)
                        .end(Outcome.FAIL, "It says: " + HOSTILE)));
        Report hostile = Judgements.report(Judgements.judge(
                Judgements.eightArms()
                        .carriage(c -> new Carriage(
                                HOSTILE,
                                HOSTILE,
                                c.beams(),
                                c.arms(),
                                List.of(new Carriage.Part(
                                        HOSTILE, c.structure().get(0).body())),
                                c.ground(),
                                c.stopping(),
                                c.turning()))
                        .build(),
                List.of(rule)));
        String written = HtmlReport.of(hostile);
        Document dom = parse(written);
        assertThat(dom.getElementsByTagName("script").getLength()).isZero();
        assertThat(dom.getElementsByTagName("img").getLength()).isZero();
        assertThat(written).doesNotContain("\u202e").doesNotContain("\u0007");
        assertThat(dom.getDocumentElement().getTextContent()).contains("<script>alert(1)</script>");
        keep("hostile", written);
    }

    @Test
    void aLongListIsCutAndSaysSo() throws Exception {
        RuleInfo info = Judgements.info("plan.many", "Many", Severity.ERROR);
        Rule rule = Judgements.rule(info, c -> IntStream.range(0, 1_000)
                .mapToObj(i -> Finding.of(info, "lane " + i)
                        .examined(1)
                        .end(i < 500 ? Outcome.FAIL : Outcome.PASS, "message " + i))
                .toList());
        String written = HtmlReport.of(
                Judgements.report(Judgements.judge(Judgements.eightArms().build(), List.of(rule))));
        Document dom = parse(written);
        assertThat(dom.getElementsByTagName("article").getLength()).isEqualTo(40);
        assertThat(written)
                .contains("460 more with outcome fail, listed in report.json.")
                .contains("100 more with outcome pass, listed in report.json.")
                .contains("and 495 more, under Findings");
    }

    @Test
    void bytesAreTheSameEachTime() throws IOException {
        assertThat(HtmlReport.of(Judgements.everyKindReport())).isEqualTo(page);
        assertThat(page).doesNotContain("\r").doesNotContain("/home/");
        keep("every-kind", page);
    }

    @Test
    void aReportWithoutAnyArmAtWorkIsStillAPage() throws Exception {
        String written = HtmlReport.of(Judgements.report(Judgements.judge(
                Judgements.eightArms()
                        .rows(new CropPlan.Rows(0.45, 20, 0.3, 0.01))
                        .build(),
                Judgements.everyKind())));
        parse(written);
        assertThat(written).contains("No head is drawn: not every lane can have an arm");
        keep("no-arms", written);
    }

    /** Keeps a page for people to look at. */
    private static void keep(String name, String page) throws IOException {
        Path folder = Path.of("target", "pages");
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(name + ".html"), page);
    }

    private static List<String> matches(String text, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        return m.results().map(r -> r.group(1)).toList();
    }

    private static Document parse(String page) throws ParserConfigurationException, IOException, SAXException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        String xml = page.substring("<!DOCTYPE html>\n".length());
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }
}
