package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Rows of a table to browse, the same in text, JSON and CSV.
 *
 * @param name what is listed, the key of the JSON array
 * @param columns column names in snake case, units at the end
 * @param rows one cell a column, each a {@link String} or a {@link Number}
 */
public record Listing(String name, List<String> columns, List<List<Object>> rows) {
    private static final int WIDEST_CELL = 58;
    private static final Map<String, String> HEADINGS =
            Map.of("resistance_1e9_m2spa_kg", "resistance, 1e9 m\u00b2 s Pa/kg");

    /** Keeps its own copies and rejects rows of the wrong length. */
    public Listing {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Object> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row of " + name + " needs " + columns.size() + " cells, got " + row.size());
            }
        }
    }

    /** Columns side by side, for a terminal. */
    public String text() {
        TextColumns text =
                new TextColumns(columns.stream().map(column -> WIDEST_CELL).toArray(Integer[]::new));
        text.row(columns.stream().map(Listing::heading).toArray(String[]::new));
        rows.forEach(row -> text.row(row.stream().map(Listing::plain).toArray(String[]::new)));
        return text.text();
    }

    /** A markdown table. */
    public String markdown() {
        return new MarkdownText()
                        .table(
                                columns.stream().map(Listing::heading).toList(),
                                rows.stream()
                                        .map(row ->
                                                row.stream().map(Listing::plain).toList())
                                        .toList())
                        .toString()
                        .strip()
                + "\n";
    }

    /** One object that holds the rows as an array of objects. */
    public String json() {
        return JsonText.of(json -> {
            json.writeStartObject();
            writeArray(json);
            json.writeEndObject();
        });
    }

    /** RFC 4180 with a header row; lines end in a line feed. */
    public String csv() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(columns);
            rows.forEach(row -> csv.writeRecord(row.stream().map(Listing::plain).toList()));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return text.toString();
    }

    private void writeArray(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (List<Object> row : rows) {
            json.writeStartObject();
            for (int column = 0; column < columns.size(); column++) {
                if (row.get(column) instanceof Number number) {
                    json.writeNumberField(columns.get(column), number.doubleValue());
                } else {
                    json.writeStringField(columns.get(column), row.get(column).toString());
                }
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A column's name as people read it; units that a key cannot spell are spelt out. */
    private static String heading(String column) {
        return HEADINGS.getOrDefault(column, column.replace('_', ' '));
    }

    /** Numbers as short as they can be without loss, text as it is. */
    private static String plain(Object cell) {
        if (cell instanceof Number number) {
            double value = number.doubleValue();
            return value == Math.rint(value) && Math.abs(value) < 1e9
                    ? Long.toString((long) value)
                    : Double.toString(value);
        }
        return cell.toString();
    }

    /** Starts a list of rows. */
    public static Builder of(String name, String... columns) {
        return new Builder(name, List.of(columns));
    }

    /** Gathers rows. */
    public static final class Builder {
        private final String name;
        private final List<String> columns;
        private final List<List<Object>> rows = new ArrayList<>();

        private Builder(String name, List<String> columns) {
            this.name = name;
            this.columns = columns;
        }

        /** Adds a row. */
        public Builder row(Object... cells) {
            rows.add(List.of(cells));
            return this;
        }

        /** The finished list. */
        public Listing build() {
            return new Listing(name, columns, rows);
        }
    }
}
