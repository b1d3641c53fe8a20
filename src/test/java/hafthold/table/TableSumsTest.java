package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows and column sums of the shipped tables: a figure changed by accident shows here. */
class TableSumsTest {
    private static final double LAST_DIGIT = 1e-3;

    @ParameterizedTest
    @CsvSource({
        "properties.csv, 1561, 347395.6094, 369286.3666, 394591.4758",
        "alternatives.csv, 42, 674.4317, 816.5127, 944.2517",
        "treatments.csv, 48, 3917.2600, 4382.4300, 4945.8100",
        "hybrids.csv, 16, 5.0700, 8.0000, 10.9300",
        "finishes.csv, 23, 126.3000, 378.4500, 580.1300",
        "salts.csv, 60, 3586.3200, 3601.2600, 3616.2000",
        "events.csv, 21, 389.0, 468.0, 559.0"
    })
    void figuresAddUp(String name, int rows, double low, double value, double high) {
        CsvTable table =
                TableSet.builtIn().read(name, List.of("low", "value", "high")).get(0);
        assertAll(
                () -> assertEquals(rows, table.rows().size()),
                () -> assertEquals(low, sum(table, "low"), LAST_DIGIT),
                () -> assertEquals(value, sum(table, "value"), LAST_DIGIT),
                () -> assertEquals(high, sum(table, "high"), LAST_DIGIT));
    }

    @ParameterizedTest
    @CsvSource({"t_mean_, 30392.4", "t_max_, 40167.2", "t_min_, 21170.4", "rh_, 138912.5"})
    void normalsAddUp(String prefix, double expected) {
        CsvTable table = TableSet.builtIn().read("places.csv", List.of("id")).get(0);
        double sum = table.columns().stream()
                .filter(column -> column.matches(prefix + "[0-9]{2}"))
                .mapToDouble(column -> sum(table, column))
                .sum();
        assertEquals(expected, sum, LAST_DIGIT);
    }

    @ParameterizedTest
    @CsvSource({
        "materials.csv, id, 250",
        "wood-names.csv, name, 75",
        "cautions.csv, text, 78",
        "places.csv, id, 170",
        "limits.csv, class, 4",
        "season.csv, limit, 6"
    })
    void rowsAreCounted(String name, String column, int rows) {
        assertEquals(
                rows,
                TableSet.builtIn().read(name, List.of(column)).get(0).rows().size());
    }

    private static double sum(CsvTable table, String column) {
        return table.rows().stream()
                .filter(row -> !row.text(column).isEmpty())
                .mapToDouble(row -> row.number(column, -1e12, 1e12))
                .sum();
    }
}
