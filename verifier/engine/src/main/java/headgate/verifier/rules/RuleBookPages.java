package headgate.verifier.rules;

import headgate.verifier.check.Family;
import headgate.verifier.check.Rule;
import headgate.verifier.check.RuleInfo;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The rule book as pages: an index, and one page a rule. The text is made from what the rules say of themselves. */
public final class RuleBookPages {

    private RuleBookPages() {}

    /** {@return the pages in Markdown, by path within the folder of reference pages, sorted} */
    public static Map<String, String> all() {
        Map<String, String> pages = new TreeMap<>();
        pages.put("rules.md", index());
        for (Rule rule : RuleBook.all()) {
            pages.put(path(rule.info().id()), page(rule.info()));
        }
        return pages;
    }

    /**
     * Where a rule's page is.
     *
     * @param id the rule's id
     * @return the path within the folder of reference pages
     */
    public static String path(String id) {
        return "rules/" + id + ".md";
    }

    private static String index() {
        StringBuilder text = new StringBuilder();
        text.append("# The rule book\n\n");
        text.append("Version ").append(RuleBook.VERSION).append(", ");
        text.append(RuleBook.all().size()).append(" rules, in the order in which they are run. ");
        text.append("`headgate rules` lists them, `headgate rules ID` explains one.\n");
        for (Family family : Family.values()) {
            List<RuleInfo> rules = RuleBook.all().stream()
                    .map(Rule::info)
                    .filter(r -> r.family() == family)
                    .toList();
            if (!rules.isEmpty()) {
                text.append("\n## ").append(family.title()).append("\n\n");
                text.append(family.about()).append("\n\n");
                text.append("| rule | what must hold | failing means |\n|---|---|---|\n");
                for (RuleInfo rule : rules) {
                    text.append("| [").append(rule.id()).append("](").append(path(rule.id()));
                    text.append(") | ").append(escaped(rule.title())).append(" | ");
                    text.append(rule.severity().label()).append(" |\n");
                }
            }
        }
        return text.toString();
    }

    private static String page(RuleInfo rule) {
        return "# " + rule.id() + "\n\n"
                + rule.title() + ".\n\n"
                + "**Why.** " + escaped(rule.why()) + "\n\n"
                + "**How.** " + escaped(rule.how()) + "\n\n"
                + "**Source.** " + escaped(rule.source()) + ".\n\n"
                + "**Failing means** " + rule.severity().label() + ". **Since** version " + rule.since()
                + " of the rule book. " + needs(rule) + "\n\n"
                + "[All rules](../rules.md)\n";
    }

    private static String needs(RuleInfo rule) {
        return rule.needs().isEmpty()
                ? "It needs no other rule."
                : "It does not apply if one of these fails: "
                        + rule.needs().stream()
                                .map(id -> "[" + id + "](" + id + ".md)")
                                .collect(Collectors.joining(", "))
                        + ".";
    }

    /** Formulas have stars, underscores and angle brackets, which Markdown would take for its own. */
    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace("*", "\\*")
                .replace("_", "\\_")
                .replace("<", "\\<")
                .replace("|", "\\|");
    }
}
