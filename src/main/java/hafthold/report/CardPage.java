package hafthold.report;

import hafthold.report.CardSheet.Section;
import java.util.List;

/** A card as a page of its own that prints on one sheet: no script, nothing fetched. */
final class CardPage {
    private CardPage() {}

    static String of(CardSheet card, boolean isQuote) {
        Markup page = new Markup();
        PageFrame.openPage(page, card.language(), card.title(), List.of("page.css", "card.css"));
        page.trusted("<body class=\"card" + (isQuote ? " quote" : "") + "\">\n<header>\n")
                .element("h1", card.title());
        page.open("p", "class", "lines");
        card.lines().forEach(line -> page.open("span").text(line).trusted("</span>\n"));
        page.close("p").trusted("</header>\n<main>\n");
        card.sections().forEach(section -> write(page, section));
        page.trusted("</main>\n<footer>\n").element("p", card.footer()).trusted("</footer>\n</body>\n</html>\n");
        return page.toString();
    }

    private static void write(Markup page, Section section) {
        page.open("section", "id", section.id(), "class", section.id().replaceAll("-\\d$", ""));
        page.open("div", "class", "words").element("h2", section.heading());
        section.lead().ifPresent(lead -> page.element("p", lead, "class", "lead"));
        section.sentences().forEach(sentence -> page.element("p", sentence));
        if (!section.points().isEmpty()) {
            page.open("ul");
            section.points().forEach(point -> page.element("li", point));
            page.close("ul");
        }
        page.close("div");
        section.chart().ifPresent(chart -> chart(page, chart));
        page.close("section");
    }

    private static void chart(Markup page, ReportChart chart) {
        page.open("figure", "id", chart.id()).element("h3", chart.title());
        PageFrame.picture(page, chart);
        page.element("p", chart.reading()).close("figure");
        PageFrame.numbers(page, chart.numbers());
    }
}
