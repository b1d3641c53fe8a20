package hafthold.report;

import hafthold.report.chart.Ink;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What every page of ours has in common: head, style, tables, pictures. */
final class PageFrame {
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

    private static final int ROWS_IN_SIGHT = 40;

    private final Markup html = new Markup();
    private final BenchStyle style;
    private final String script;

    /** A page that has its heading and waits for more. */
    PageFrame(BenchStyle style, String title) {
        this(style, title, "");
    }

    /**
     * A page that may do what one script of ours does, and no other.
     *
     * @param script ours, run when the page is there; empty for none
     */
    PageFrame(BenchStyle style, String title, String script) {
        this.style = style;
        this.script = script;
        openPage(html, style.say("page-language"), title, List.of("page.css"), script);
        html.trusted("<body>\n<header>\n")
                .element("p", style.say("kicker"), "class", "kicker")
                .element("h1", title)
                .trusted("</header>\n<main>\n");
    }

    /**
     * Writes everything above the body of a page without script.
     *
     * @param language of the page, as a tag
     * @param title of the page
     * @param styles names of style sheets that ship with the program, in order
     */
    static void openPage(Markup html, String language, String title, List<String> styles) {
        openPage(html, language, title, styles, "");
    }

    private static void openPage(Markup html, String language, String title, List<String> styles, String script) {
        html.trusted("<!DOCTYPE html>\n")
                .open("html", "lang", language)
                .trusted("\n<head>\n")
                .open("meta", "charset", "utf-8")
                .trusted("\n")
                .open("meta", "http-equiv", "Content-Security-Policy", "content", POLICY + allowing(script))
                .trusted("\n")
                .open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .trusted("\n")
                .open("meta", "name", "color-scheme", "content", "light dark")
                .trusted("\n")
                .element("title", title)
                .open("style")
                .trusted("\n" + inkRules());
        styles.forEach(style -> html.trusted(resource(style)));
        html.close("style").trusted("</head>\n");
    }

    /** Where to write. */
    Markup page() {
        return html;
    }

    /** A picture with its title, the sentence that reads it, and its numbers. */
    void chart(ReportChart chart) {
        html.open("figure", "id", chart.id()).element("h3", chart.title()).element("p", chart.reading());
        picture(html, chart);
        html.open("details").element("summary", style.say("label.numbers"));
        numbers(html, chart.numbers());
        html.close("details").close("figure");
    }

    /** The command that repeats the run. */
    void again(String command) {
        html.open("section").element("h2", style.say("heading.again"));
        verbatim(html, style.say("label.command"), command);
        html.close("section");
    }

    /** A picture for screen and paper, and for a phone. */
    static void picture(Markup page, ReportChart chart) {
        page.open("div", "class", "wide")
                .trusted(chart.wideSvg())
                .close("div")
                .open("div", "class", "narrow")
                .trusted(chart.narrowSvg())
                .close("div");
    }

    /** The numbers behind a picture. */
    static void numbers(Markup page, NumbersTable numbers) {
        openTable(page, numbers.caption(), numbers.head(), numbers.rows().size());
        for (List<String> row : numbers.rows()) {
            page.open("tr").element("th", row.get(0), "scope", "row");
            row.stream().skip(1).forEach(cell -> page.element("td", cell));
            page.close("tr");
        }
        closeTable(page);
    }

    /** A text to be copied, in a box that scrolls by itself. */
    static void verbatim(Markup page, String label, String text) {
        page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", label)
                .open("pre")
                .verbatim(text)
                .close("pre")
                .close("div");
    }

    /** Terms and what they are, above everything else. */
    static void situation(Markup page, Map<String, String> inputs) {
        page.open("dl", "class", "situation");
        inputs.forEach((term, words) -> page.element("dt", term).element("dd", words));
        page.close("dl");
    }

    /** The finished page. */
    String html() {
        String end = script.isEmpty() ? "" : "<script>" + script + "</script>\n";
        return html + "</main>\n" + end + "</body>\n</html>\n";
    }

    /** Names the script by its digest, so that nothing else that looks like one is run. */
    private static String allowing(String script) {
        if (script.isEmpty()) {
            return "";
        }
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
            return "; script-src 'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Opens a table in a box that scrolls by itself, so that the page never does sideways. */
    static void openTable(Markup page, String caption, List<String> head) {
        openTable(page, caption, head, 0);
    }

    /** Likewise; a table of very many rows scrolls upright too. */
    static void openTable(Markup page, String caption, List<String> head, int rows) {
        String box = rows > ROWS_IN_SIGHT ? "scroll tall" : "scroll";
        page.open("div", "class", box, "tabindex", "0", "role", "region", "aria-label", caption)
                .open("table")
                .element("caption", caption)
                .open("thead")
                .open("tr");
        for (String heading : head) {
            if (heading.isEmpty()) {
                page.element("td", "");
            } else {
                page.element("th", heading, "scope", "col");
            }
        }
        page.close("tr").close("thead").open("tbody");
    }

    /** Closes it. */
    static void closeTable(Markup page) {
        page.close("tbody").close("table").close("div");
    }

    /** A text that ships beside this class. */
    static String resource(String name) {
        try (InputStream text = PageFrame.class.getResourceAsStream(name)) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String inkRules() {
        StringBuilder inkRules = new StringBuilder();
        for (Ink ink : Ink.values()) {
            inkRules.append('.')
                    .append(ink.cssClass())
                    .append("{color:var(--")
                    .append(ink.cssClass())
                    .append(")}\n");
        }
        return ":root{" + variables(Ink::lightHex) + "}\n@media (prefers-color-scheme:dark){:root{"
                + variables(Ink::darkHex) + "}}\n@media print{:root{" + variables(Ink::lightHex) + "}}\n" + inkRules;
    }

    private static String variables(Function<Ink, String> shade) {
        StringBuilder text = new StringBuilder();
        for (Ink ink : Ink.values()) {
            text.append("--")
                    .append(ink.cssClass())
                    .append(':')
                    .append(shade.apply(ink))
                    .append(';');
        }
        return text.toString();
    }
}
