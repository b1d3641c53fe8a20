package hafthold.transport;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Reference values as rows under a header; the lines above it say where they come from. */
final class BenchTable {
    private final List<String> columns;
    private final List<String[]> rows;

    private BenchTable(List<String> columns, List<String[]> rows) {
        this.columns = columns;
        this.rows = rows;
    }

    static BenchTable read(String resource) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(BenchTable.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
            List<String[]> lines = reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",(?=([^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                    .toList();
            return new BenchTable(Arrays.asList(lines.get(0)), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rows that have a text in a column. */
    BenchTable where(String column, String text) {
        int index = columns.indexOf(column);
        return new BenchTable(
                columns, rows.stream().filter(row -> row[index].equals(text)).toList());
    }

    List<String> distinct(String column) {
        int index = columns.indexOf(column);
        return rows.stream().map(row -> row[index]).distinct().toList();
    }

    int size() {
        return rows.size();
    }

    double number(int row, String column) {
        return Double.parseDouble(text(row, column));
    }

    String text(int row, String column) {
        return rows.get(row)[columns.indexOf(column)];
    }
}
