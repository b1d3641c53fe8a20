package hafthold.table;

import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One row of a table; every getter names the cell when it is not what was expected. */
final class CsvRow {
    private final String file;
    private final long line;
    private final List<String> columns;
    private final List<String> cells;

    CsvRow(String file, long line, List<String> columns, List<String> cells) {
        this.file = file;
        this.line = line;
        this.columns = columns;
        this.cells = cells;
    }

    /** The cell's text without surrounding blanks; empty where the column is missing. */
    String text(String column) {
        int at = columns.indexOf(column);
        return at < 0 ? "" : cells.get(at).strip();
    }

    /** The cell's text, which must not be empty. */
    String required(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw fault(column, "a value");
        }
        return text;
    }

    /** The cell as a finite number in a range. */
    double number(String column, double least, double most) {
        String expectation = "a number from " + plain(least) + " to " + plain(most);
        String text = required(column);
        double number;
        try {
            number = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw fault(column, text.contains(",") ? expectation + " with a decimal point" : expectation);
        }
        if (!(number >= least && number <= most)) {
            throw fault(column, expectation);
        }
        return number;
    }

    /** The cell as one of a list of words. */
    <T> T word(String column, Function<String, Optional<T>> meaning, List<String> words) {
        return meaning.apply(text(column)).orElseThrow(() -> fault(column, NearestWord.oneOf(text(column), words)));
    }

    /** The evidence column. */
    Evidence evidence() {
        return word(
                "evidence",
                text -> Arrays.stream(Evidence.values())
                        .filter(evidence -> evidence.word().equals(text))
                        .findFirst(),
                Arrays.stream(Evidence.values()).map(Evidence::word).toList());
    }

    /** The columns low, value, high, source, locator and evidence as a figure, numbers multiplied by a factor. */
    Figure figure(double factor) {
        double low = number("low", -1e12, 1e12);
        double value = number("value", -1e12, 1e12);
        double high = number("high", -1e12, 1e12);
        if (low > value || value > high) {
            throw fault(
                    "value", "low <= value <= high, found " + text("low") + ", " + text("value") + ", " + text("high"));
        }
        return new Figure(
                new Band(low * factor, value * factor, high * factor), evidence(), required("source"), text("locator"));
    }

    /** What is wrong with a cell of this row. */
    InvalidTableException fault(String column, String expectation) {
        return new InvalidTableException(file, line, column, text(column), expectation);
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
    }

    @Override
    public String toString() {
        return cells.stream().collect(Collectors.joining(",", file + ":" + line + " ", ""));
    }
}
