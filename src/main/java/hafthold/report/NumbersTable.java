package hafthold.report;

import java.util.List;

/**
 * The numbers behind a picture, ready to print.
 *
 * @param caption what the numbers are, with their unit
 * @param head column headings, the first over the row names
 * @param rows cells, as many as headings
 */
public record NumbersTable(String caption, List<String> head, List<List<String>> rows) {

    /** Keeps its own copies. */
    public NumbersTable {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != head.size()) {
                throw new IllegalArgumentException(
                        "a row of '" + caption + "' has " + row.size() + " cells under " + head.size() + " headings");
            }
        }
    }
}
