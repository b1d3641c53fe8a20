package hafthold.report;

import hafthold.simulate.BondedEventYear;
import hafthold.simulate.EventYear;
import java.util.List;

/** What events do as it is read in a terminal, and as a section of a page. */
final class EventColumns {
    private EventColumns() {}

    /** The rows and what they mean; empty where nothing happens. */
    static String of(BenchStyle style, List<EventYear> years, int width) {
        return years.isEmpty()
                ? ""
                : text(EventRows.of(style, years), new TextColumns(22, 7, 13, 5, 9, 9, 11, 8, 9), width);
    }

    /** Of one bonded knife: a row an event. */
    static String of(BenchStyle style, BondedEventYear year, int width) {
        return text(EventRows.of(style, year), new TextColumns(13, 5, 9, 9, 11, 8, 6, 6, 6, 9), width);
    }

    private static String text(EventRows events, TextColumns columns, int width) {
        events.head().forEach(line -> columns.row(line.toArray(new String[0])));
        events.rows().forEach(line -> columns.row(line.toArray(new String[0])));
        StringBuilder text = new StringBuilder(columns.text());
        text.append(Paragraph.hanging("", events.meaning(), width));
        events.notes().forEach(note -> text.append(Paragraph.hanging("  - ", note, width)));
        return text.append('\n').toString();
    }

    /** The same as a section of a page. */
    static void write(Markup page, BenchStyle style, EventRows events) {
        page.open("section").element("h2", style.say("heading.events"));
        PageFrame.openTable(page, style.say("caption.events"), events.oneLineHead(style));
        for (List<String> row : events.rows()) {
            page.open("tr").element("th", row.get(0), "scope", "row");
            row.stream().skip(1).forEach(cell -> page.element("td", cell));
            page.close("tr");
        }
        PageFrame.closeTable(page);
        page.element("p", events.meaning(), "class", "note");
        if (!events.notes().isEmpty()) {
            page.open("ul");
            events.notes().forEach(note -> page.element("li", note));
            page.close("ul");
        }
        page.close("section");
    }

    /** The same as a part of markdown. */
    static void write(MarkdownText text, BenchStyle style, EventRows events) {
        text.heading(2, style.say("heading.events"))
                .table(events.oneLineHead(style), events.rows())
                .paragraph(events.meaning())
                .points(events.notes());
    }
}
