package hafthold.report;

import hafthold.report.CardSheet.Section;

/** A card as markdown. */
final class CardMarkdown {
    private CardMarkdown() {}

    static String of(CardSheet card) {
        MarkdownText text = new MarkdownText().heading(1, card.title()).points(card.lines());
        card.sections().forEach(section -> append(text, section));
        return text.paragraph(card.footer()).toString().strip() + "\n";
    }

    private static void append(MarkdownText text, Section section) {
        text.heading(2, section.heading());
        section.lead().ifPresent(text::strong);
        if (!section.sentences().isEmpty()) {
            text.paragraph(String.join(" ", section.sentences()));
        }
        text.points(section.points());
        section.chart()
                .ifPresent(chart -> text.heading(3, chart.title())
                        .paragraph(chart.reading())
                        .paragraph(chart.numbers().caption())
                        .table(chart.numbers().head(), chart.numbers().rows()));
    }
}
