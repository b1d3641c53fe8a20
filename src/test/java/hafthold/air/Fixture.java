package hafthold.air;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Test data as plain rows of numbers under a header. */
final class Fixture {
    private Fixture() {}

    static List<String[]> rows(String resource) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Fixture.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> placeIds() {
        return rows("normals.csv").stream().map(row -> row[0]).toList();
    }

    static MonthlyNormals normals(String placeId) {
        String[] row = rows("normals.csv").stream()
                .filter(cells -> cells[0].equals(placeId))
                .findFirst()
                .orElseThrow();
        return new MonthlyNormals(months(row, 2, 1), months(row, 14, 1), months(row, 26, 1), months(row, 38, 0.01));
    }

    static List<Double> months(String[] row, int first, double factor) {
        return new ArrayList<>(Arrays.stream(row, first, first + 12)
                .map(cell -> factor * Double.parseDouble(cell))
                .toList());
    }
}
