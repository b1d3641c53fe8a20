package hafthold.table;

import hafthold.air.HumidityKind;
import hafthold.air.MonthlyNormals;
import hafthold.air.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/** Reads {@code places.csv}; a place's normals are read when it is asked for. */
public final class PlaceTable {
    private static final int MONTHS = 12;
    private static final List<String> COLUMNS = columns();

    private final Map<String, CsvRow> rows = new LinkedHashMap<>();

    private PlaceTable() {}

    /** Reads the table. */
    public static PlaceTable read(TableSet tables) {
        PlaceTable places = new PlaceTable();
        for (CsvTable table : tables.read("places.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                places.rows.put(keys.once(row, "id", row.required("id")), row);
            }
        }
        return places;
    }

    /** All places in table order. */
    public List<Place> all() {
        return rows.values().stream().map(PlaceTable::place).toList();
    }

    /**
     * One place.
     *
     * @throws UnknownIdException when the table has no such id
     * @throws InvalidTableException when its row holds something else than a place
     */
    public Place find(String id) {
        CsvRow row = rows.getOrDefault(
                id, rows.get(id.strip().toLowerCase(Locale.ROOT).replace(' ', '-')));
        if (row == null) {
            throw new UnknownIdException("place", id, new TreeSet<>(rows.keySet()), "hafthold places lists them all");
        }
        return place(row);
    }

    private static Place place(CsvRow row) {
        MonthlyNormals normals;
        try {
            normals = new MonthlyNormals(
                    months(row, "t_mean_"), months(row, "t_max_"), months(row, "t_min_"), humidity(row));
        } catch (IllegalArgumentException e) {
            throw row.fault("t_mean_01", "normals in order; " + e.getMessage());
        }
        return new Place(
                row.required("id"),
                row.required("name"),
                row.required("country"),
                row.text("climate_group"),
                row.text("koppen"),
                row.number("lat", -90, 90),
                row.number("lon", -180, 180),
                row.number("elev_m", -500, 6000),
                normals,
                row.word(
                        "rh_kind",
                        HumidityKind::of,
                        Arrays.stream(HumidityKind.values())
                                .map(HumidityKind::word)
                                .toList()),
                row.required("temperature_source"),
                row.required("humidity_source"),
                row.text("note"));
    }

    private static List<Double> months(CsvRow row, String prefix) {
        List<Double> months = new ArrayList<>();
        for (int month = 1; month <= MONTHS; month++) {
            months.add(
                    row.number(column(prefix, month), MonthlyNormals.COLDEST_CELSIUS, MonthlyNormals.WARMEST_CELSIUS));
        }
        return months;
    }

    private static List<Double> humidity(CsvRow row) {
        List<Double> months = new ArrayList<>();
        for (int month = 1; month <= MONTHS; month++) {
            months.add(row.number(column("rh_", month), 0, 100) / 100);
        }
        return months;
    }

    private static String column(String prefix, int month) {
        return prefix + String.format(Locale.ROOT, "%02d", month);
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of("id", "name", "country", "lat", "lon", "elev_m"));
        for (String prefix : List.of("t_mean_", "t_max_", "t_min_", "rh_")) {
            for (int month = 1; month <= MONTHS; month++) {
                columns.add(column(prefix, month));
            }
        }
        columns.addAll(List.of("rh_kind", "temperature_source", "humidity_source"));
        return List.copyOf(columns);
    }
}
