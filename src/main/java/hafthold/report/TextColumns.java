package hafthold.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table of plain text: columns as wide as their widest cell, up to a limit; longer cells run on below. */
final class TextColumns {
    private static final String GAP = "  ";

    private final List<Integer> limits;
    private final List<List<String>> rows = new ArrayList<>();

    /** Widest each column may get, in characters. */
    TextColumns(Integer... limits) {
        this.limits = List.of(limits);
    }

    void row(String... cells) {
        rows.add(Arrays.asList(cells.clone()));
    }

    /** The cells of every row. */
    List<List<String>> rows() {
        return List.copyOf(rows);
    }

    /** All rows, lines without blanks at their end. */
    String text() {
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < limits.size(); column++) {
            int at = column;
            int widest =
                    rows.stream().mapToInt(row -> row.get(at).length()).max().orElse(0);
            widths.add(Math.min(widest, limits.get(column)));
        }
        StringBuilder text = new StringBuilder();
        rows.forEach(row -> append(text, row, widths));
        return text.toString();
    }

    private static void append(StringBuilder text, List<String> row, List<Integer> widths) {
        List<List<String>> cells = new ArrayList<>();
        int height = 1;
        for (int column = 0; column < widths.size(); column++) {
            List<String> lines = Paragraph.lines(row.get(column), Math.max(1, widths.get(column)));
            cells.add(lines);
            height = Math.max(height, lines.size());
        }
        for (int line = 0; line < height; line++) {
            StringBuilder whole = new StringBuilder();
            for (int column = 0; column < widths.size(); column++) {
                String cell =
                        line < cells.get(column).size() ? cells.get(column).get(line) : "";
                whole.append(column == 0 ? "" : GAP).append(cell);
                whole.append(" ".repeat(Math.max(0, widths.get(column) - cell.length())));
            }
            text.append(whole.toString().stripTrailing()).append('\n');
        }
    }
}
