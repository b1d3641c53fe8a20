package hafthold.table;

import hafthold.knife.SeasonLimits;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Reads {@code season.csv}: when a workshop calls stock fit to be glued up or sanded flush. */
public final class SeasonTable {
    private static final List<String> COLUMNS = List.of("limit", "value", "unit", "source", "evidence");
    private static final double PERCENT = 0.01;

    private SeasonTable() {}

    /** A limit of the table. */
    private enum Limit {
        GLUE_GRADIENT("glue-gradient", "points", 0.1, 20),
        GLUE_OFF_TARGET("glue-off-target", "points", 0.1, 20),
        GLUE_COOLEST("glue-coolest", "C", -10, 50),
        GLUE_WARMEST("glue-warmest", "C", 0, 80),
        SURE_ENOUGH("sure-enough", "%", 0, 100),
        NEAR_BEST("near-best", "%", 0, 100);

        private final String word;
        private final String unit;
        private final double least;
        private final double most;

        Limit(String word, String unit, double least, double most) {
            this.word = word;
            this.unit = unit;
            this.least = least;
            this.most = most;
        }

        static Limit of(CsvRow row) {
            String word = row.required("limit");
            return Arrays.stream(values())
                    .filter(limit -> limit.word.equals(word))
                    .findFirst()
                    .orElseThrow(() -> row.fault(
                            "limit",
                            Arrays.stream(values()).map(limit -> limit.word).collect(Collectors.joining(", "))));
        }
    }

    /** The limits, those of the user over the shipped ones. */
    public static SeasonLimits read(TableSet tables) {
        Map<Limit, Double> values = new HashMap<>();
        for (CsvTable table : tables.read("season.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                Limit limit = Limit.of(row);
                keys.once(row, "limit", limit.word);
                if (!row.text("unit").equals(limit.unit)) {
                    throw row.fault("unit", limit.unit);
                }
                values.put(limit, row.number("value", limit.least, limit.most));
            }
        }
        if (values.get(Limit.GLUE_COOLEST) >= values.get(Limit.GLUE_WARMEST)) {
            throw new InvalidTableException(
                    "season.csv", "glue-coolest is not below glue-warmest; expected the cooler one first");
        }
        return new SeasonLimits(
                PERCENT * values.get(Limit.GLUE_GRADIENT),
                PERCENT * values.get(Limit.GLUE_OFF_TARGET),
                values.get(Limit.GLUE_COOLEST),
                values.get(Limit.GLUE_WARMEST),
                PERCENT * values.get(Limit.SURE_ENOUGH),
                PERCENT * values.get(Limit.NEAR_BEST));
    }
}
