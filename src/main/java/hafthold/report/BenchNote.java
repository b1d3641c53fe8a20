package hafthold.report;

import hafthold.source.Finding;
import java.util.List;

/**
 * A note for a terminal of about a hundred columns, put together from its parts: sentences under a heading, tables, and what
 * all of it rests on.
 *
 * @param style language and units
 * @param text takes the note
 */
record BenchNote(BenchStyle style, StringBuilder text) {
    /** Columns of a line. */
    static final int WIDTH = 100;

    /** Sentences, each with a dash, and an empty line below; nothing where there are none. */
    void list(String heading, List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        text.append(heading).append('\n');
        sentences.forEach(this::point);
        text.append('\n');
    }

    private void point(String sentence) {
        text.append(Paragraph.hanging("  - ", sentence, WIDTH));
    }

    /**
     * A table.
     *
     * @param indent in front of every line
     * @param widths most characters of each column
     */
    void table(String indent, Integer[] widths, List<String> head, List<List<String>> rows) {
        TextColumns columns = new TextColumns(widths);
        columns.row(head.toArray(new String[0]));
        rows.forEach(row -> columns.row(row.toArray(new String[0])));
        columns.text().lines().forEach(line -> text.append(indent).append(line).append('\n'));
    }

    /** What the answer rests on, kind by kind, as the digests are sorted. */
    void restsOn(List<FindingDigest> digests) {
        text.append(style.say("heading.rests-on")).append('\n');
        Finding.Kind last = null;
        for (FindingDigest digest : digests) {
            if (digest.kind() != last) {
                text.append("  ")
                        .append(FindingDigest.headingOf(style, digest.kind()))
                        .append(":\n");
                last = digest.kind();
            }
            point(digest.lead(style) + digest.text());
        }
    }
}
