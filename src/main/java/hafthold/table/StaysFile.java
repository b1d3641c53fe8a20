package hafthold.table;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HeldAir;
import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.air.Stay;
import hafthold.air.StayChain;
import hafthold.quantity.QuantityFormatException;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Where a knife goes one after another, as a small table: a row a stay, with the day it begins; the first day is that of
 * final sanding.
 *
 * <p>Columns {@code from} (2026-07-18), {@code name}, and either {@code place} or {@code climate} (a recorded file, found
 * from the table's own folder) with {@code setting}, or {@code temperature} and {@code humidity} of held air. Semicolons
 * may stand between the cells.
 *
 * @param chain the stays
 * @param findings defaults taken, and what was done to recorded air
 */
public record StaysFile(StayChain chain, List<Finding> findings) {
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final String USUAL_SETTING = "heated-home";
    private static final long MOST_DAYS = 20L * CommonYear.DAYS;

    /** Keeps its own copy. */
    public StaysFile {
        findings = List.copyOf(findings);
    }

    /** A commented file that is accepted. */
    public static String example() {
        return """
                # Where the knife goes, a row a stay; the first day is that of final sanding. Invented.
                # place (hafthold places lists them) or climate (EPW or logger file) with setting,
                # or temperature and humidity of air that is held.
                from,name,place,climate,setting,temperature,humidity
                2026-07-06,own shop,,,,21 C,55 %
                2026-07-20,parcel,,,,25 C,40 %
                2026-08-10,dealer in Phoenix,phoenix,,air-conditioned,,
                2027-02-10,Singapore,singapore,,uncooled-home,,
                """;
    }

    /**
     * Reads a file.
     *
     * @param recordedDoubtFraction how far the humidity of recorded files is taken to be off
     * @param longGaps whether gaps of recorded air may be bridged up to 30 days
     * @throws InvalidTableException at the first fault
     */
    public static StaysFile read(Path path, PlaceTable places, double recordedDoubtFraction, boolean longGaps) {
        CsvTable table = CsvTable.read(
                String.valueOf(path.getFileName()), new StringReader(commas(text(path))), List.of("from"));
        return new Reading(path, table, places, recordedDoubtFraction, longGaps).file();
    }

    private static String text(Path path) {
        FileAtHand.require(path, "a table of stays");
        try {
            return Files.readString(path);
        } catch (CharacterCodingException e) {
            throw new InvalidTableException(path.toString(), "is no UTF-8 text; expected a table of stays");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A table with semicolons as one with commas. */
    private static String commas(String text) {
        boolean semicolons = text.lines()
                .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
                .findFirst()
                .filter(header -> header.indexOf(';') >= 0)
                .isPresent();
        return semicolons
                ? DECIMAL_COMMA.matcher(text).replaceAll(".").replace(',', ' ').replace(';', ',')
                : text;
    }

    /** One reading of a file. */
    private record Reading(
            Path path,
            CsvTable table,
            PlaceTable places,
            double recordedDoubt,
            boolean longGaps,
            List<Finding> findings) {
        private static final List<String> COLUMNS =
                List.of("from", "name", "place", "climate", "setting", "temperature", "humidity");

        Reading(Path path, CsvTable table, PlaceTable places, double recordedDoubt, boolean longGaps) {
            this(path, table, places, recordedDoubt, longGaps, new ArrayList<>());
        }

        StaysFile file() {
            requireColumns();
            List<CsvRow> rows = table.rows();
            if (rows.isEmpty()) {
                throw new InvalidTableException(table.file(), "holds no stay; expected a row a stay below the header");
            }
            List<Stay> stays = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                LocalDate from = date(rows.get(i));
                if (i > 0 && !from.isAfter(stays.get(i - 1).from())) {
                    throw rows.get(i)
                            .fault("from", "a day after " + stays.get(i - 1).from() + ", when the stay before begins");
                }
                if (i > 0 && ChronoUnit.DAYS.between(stays.get(0).from(), from) > MOST_DAYS) {
                    throw rows.get(i).fault("from", "a day within 20 years of the first");
                }
                stays.add(stay(rows.get(i), from, until(rows, i, from)));
            }
            return new StaysFile(new StayChain(stays), findings);
        }

        private void requireColumns() {
            for (String column : table.columns()) {
                if (!COLUMNS.contains(column)) {
                    throw new InvalidTableException(
                            table.file(), 1, column, column, NearestWord.oneOf(column, COLUMNS) + " in the header row");
                }
            }
        }

        private static LocalDate until(List<CsvRow> rows, int i, LocalDate from) {
            return i + 1 < rows.size() ? date(rows.get(i + 1)) : from.plusYears(1);
        }

        private static LocalDate date(CsvRow row) {
            try {
                return LocalDate.parse(row.required("from"));
            } catch (DateTimeException e) {
                throw row.fault(
                        "from", "a day written as year-month-day, such as 2026-07-18" + DayHint.of(row.text("from")));
            }
        }

        private Stay stay(CsvRow row, LocalDate from, LocalDate until) {
            boolean held =
                    !row.text("temperature").isEmpty() || !row.text("humidity").isEmpty();
            boolean isPlace = !row.text("place").isEmpty();
            boolean isClimate = !row.text("climate").isEmpty();
            if ((held ? 1 : 0) + (isPlace ? 1 : 0) + (isClimate ? 1 : 0) != 1) {
                throw row.fault(
                        isPlace || !isClimate ? "place" : "climate",
                        "one of three: a place, a climate file, or a temperature with a humidity");
            }
            if (held) {
                return held(row, from);
            }
            Setting setting = setting(row);
            if (isPlace) {
                Place place = place(row);
                return Stay.of(
                        from,
                        name(row, place.name()),
                        setting,
                        place.referenceYear(),
                        place.humidityUncertaintyPoints() / 100);
            }
            return recorded(row, setting, from, until);
        }

        private Stay held(CsvRow row, LocalDate from) {
            if (!row.text("setting").isEmpty()) {
                throw row.fault("setting", "nothing, since temperature and humidity say what the air is");
            }
            HeldAir air;
            double celsius = quantity(row, "temperature", Temperature::parse, "a temperature such as \"21 C\"")
                    .celsius();
            double humidity = quantity(row, "humidity", RelativeHumidity::parse, "a humidity such as \"45 %\"")
                    .fraction();
            try {
                air = new HeldAir(celsius, humidity);
            } catch (IllegalArgumentException e) {
                throw row.fault("temperature", "a temperature from -60 to 80 C");
            }
            AirSeries year = air.year();
            return new Stay(
                    from,
                    name(row, row.text("temperature") + ", " + row.text("humidity")),
                    air,
                    year,
                    year,
                    recordedDoubt);
        }

        private static <T> T quantity(CsvRow row, String column, Function<String, T> parse, String expectation) {
            try {
                return parse.apply(row.required(column));
            } catch (QuantityFormatException e) {
                throw row.fault(column, expectation);
            }
        }

        private Stay recorded(CsvRow row, Setting setting, LocalDate from, LocalDate until) {
            Path file = path.resolveSibling(row.text("climate"));
            boolean last = table.rows().indexOf(row) == table.rows().size() - 1;
            HourlyFile air = KnifeFile.hourly(file, new HourlyReading(longGaps, !last));
            long days = ChronoUnit.DAYS.between(from, until);
            int hours = (int) Math.min(CommonYear.DAYS, days) * CommonYear.HOURS_A_DAY;
            int first = (CommonYear.firstDay(from.getMonthValue())
                            + Math.min(from.getDayOfMonth(), CommonYear.daysOfMonth(from.getMonthValue()))
                            - 1)
                    * CommonYear.HOURS_A_DAY;
            if (!air.covered().covers(new HourSpan(first, hours))) {
                throw row.fault(
                        "climate",
                        "a file with readings from " + from + " to " + until + "; this one has "
                                + air.covered().words());
            }
            findings.addAll(air.findings());
            return Stay.of(from, name(row, air.name()), setting, air.air(), recordedDoubt);
        }

        private Place place(CsvRow row) {
            try {
                return places.find(row.text("place"));
            } catch (UnknownIdException e) {
                throw row.fault("place", e.expectation());
            }
        }

        private Setting setting(CsvRow row) {
            String id = row.text("setting");
            if (id.isEmpty()) {
                findings.add(new Finding(
                        Finding.Kind.DEFAULT,
                        "stays",
                        Message.of(
                                "note.stay-setting",
                                Map.of(
                                        "date", Message.verbatim(row.text("from")),
                                        "setting", Message.verbatim(USUAL_SETTING)))));
                id = USUAL_SETTING;
            }
            String asked = id;
            return Setting.find(asked)
                    .orElseThrow(() -> row.fault(
                            "setting",
                            NearestWord.oneOf(
                                    asked,
                                    Setting.all().stream().map(Setting::id).toList())));
        }

        private static String name(CsvRow row, String otherwise) {
            return row.text("name").isEmpty() ? otherwise : row.text("name");
        }
    }
}
