package hafthold.report;

import hafthold.report.CardSheet.Section;
import java.util.List;

/** A card as plain text of about eighty columns. */
final class CardText {
    private static final int WIDTH = 80;
    private static final int NAME_WIDTH = 24;
    private static final int MONTH_WIDTH = 6;
    private static final int HALF_YEAR = 6;

    private CardText() {}

    static String of(CardSheet card) {
        StringBuilder text = new StringBuilder();
        text.append(Paragraph.hanging("", card.title(), WIDTH)).append('\n');
        card.lines().forEach(line -> text.append(Paragraph.hanging("", line, WIDTH)));
        card.sections().forEach(section -> append(text, section));
        return text.append('\n')
                .append(Paragraph.hanging("", card.footer(), WIDTH))
                .toString();
    }

    private static void append(StringBuilder text, Section section) {
        text.append('\n').append(Paragraph.hanging("", section.heading(), WIDTH));
        section.lead().ifPresent(lead -> text.append(Paragraph.hanging("  ", lead, WIDTH)));
        section.sentences().forEach(sentence -> text.append(Paragraph.hanging("  ", sentence, WIDTH)));
        section.points().forEach(point -> text.append(Paragraph.hanging("  - ", point, WIDTH)));
        section.chart().ifPresent(chart -> numbers(text, chart));
    }

    /** The numbers of a picture, half a year a block, since twelve months are wider than a terminal. */
    private static void numbers(StringBuilder text, ReportChart chart) {
        text.append('\n').append(Paragraph.hanging("  ", chart.reading(), WIDTH));
        text.append(Paragraph.hanging("  ", chart.numbers().caption(), WIDTH));
        List<String> head = chart.numbers().head();
        for (int first = 1; first < head.size(); first += HALF_YEAR) {
            TextColumns columns = new TextColumns(
                    NAME_WIDTH, MONTH_WIDTH, MONTH_WIDTH, MONTH_WIDTH, MONTH_WIDTH, MONTH_WIDTH, MONTH_WIDTH);
            columns.row(cells(head, first));
            for (List<String> row : chart.numbers().rows()) {
                columns.row(cells(row, first));
            }
            text.append(columns.text().indent(2));
        }
    }

    private static String[] cells(List<String> row, int first) {
        String[] cells = new String[HALF_YEAR + 1];
        cells[0] = row.get(0);
        for (int i = 0; i < HALF_YEAR; i++) {
            cells[i + 1] = row.get(first + i);
        }
        return cells;
    }
}
