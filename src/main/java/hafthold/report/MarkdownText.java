package hafthold.report;

import java.util.List;

/** Markdown being written; everything given as text stays text, whatever signs it holds. */
final class MarkdownText {
    private static final String SIGNS = "\\`*_[]<>#|~&";

    private final StringBuilder text = new StringBuilder();

    /** A heading of a level from 1 on. */
    MarkdownText heading(int level, String words) {
        return line("#".repeat(level) + " " + escape(words)).line("");
    }

    /** A paragraph. */
    MarkdownText paragraph(String words) {
        return line(escape(words)).line("");
    }

    /** A paragraph that stands out. */
    MarkdownText strong(String words) {
        return line("**" + escape(words) + "**").line("");
    }

    /** A list; none where it is empty. */
    MarkdownText points(List<String> points) {
        points.forEach(point -> line("- " + escape(point)));
        return points.isEmpty() ? this : line("");
    }

    /** A table. */
    MarkdownText table(List<String> head, List<List<String>> rows) {
        row(head);
        row(head.stream().map(cell -> "---").toList(), false);
        rows.forEach(this::row);
        return line("");
    }

    private void row(List<String> cells) {
        row(cells, true);
    }

    private void row(List<String> cells, boolean asText) {
        text.append('|');
        cells.forEach(
                cell -> text.append(' ').append(asText ? escape(cell) : cell).append(" |"));
        text.append('\n');
    }

    private MarkdownText line(String line) {
        text.append(line).append('\n');
        return this;
    }

    /** The text on one line with every sign that means something to markdown written as itself. */
    static String escape(String words) {
        StringBuilder escaped = new StringBuilder();
        String oneLine = Paragraph.plain(words).replaceAll("\\p{Cntrl}+", " ");
        for (int i = 0; i < oneLine.length(); i++) {
            char sign = oneLine.charAt(i);
            boolean startsList = i == 0 && "+-=".indexOf(sign) >= 0;
            escaped.append(SIGNS.indexOf(sign) >= 0 || startsList ? "\\" : "").append(sign);
        }
        return escaped.toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
