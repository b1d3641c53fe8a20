package hafthold.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reads a year of a humidity logger: a header row with {@code time} (ISO 8601, local) or {@code hour} (counted from 0 at
 * midnight before 1 January), {@code temperature_c} and {@code rh_percent}, in any order among other columns.
 *
 * <p>Cells are separated by commas, or by semicolons, and then decimal commas are read too. Lines that start with # and a
 * byte order mark are skipped. Readings may come at any interval, in rising time; hours between two readings at most 24
 * hours apart are put in on a straight line, and counted where the readings are more than two hours apart. 29 February
 * is left out. Where the file runs over more than a year, later readings count. Humidity of 100 to 105 % is a sensor's
 * drift and taken as 100.
 */
public final class LoggerCsvReader {
    private static final int LONGEST_GAP_HOURS = 24;
    private static final double LONGEST_INTERVAL_HOURS = 2;
    private static final double STEP_SECONDS = 3600;
    private static final double WETTEST_PERCENT = 105;
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

    private final String file;
    private final double[] temperature = new double[CommonYear.HOURS];
    private final double[] humidity = new double[CommonYear.HOURS];
    private final boolean[] guessed = new boolean[CommonYear.HOURS];
    private long linesBefore;
    private Reading last;
    private double wettest;

    private LoggerCsvReader(String file) {
        this.file = file;
        Arrays.fill(temperature, Double.NaN);
        Arrays.fill(humidity, Double.NaN);
    }

    /** One line of the logger; hours count from midnight before 1 January of year 0, leap days left out. */
    private record Reading(double hours, double celsius, double humidityFraction) {}

    /**
     * Reads a file.
     *
     * @throws InvalidTableException when it is no logger file or does not cover a year
     */
    public static HourlyFile read(Path path) {
        if (!Files.isReadable(path)) {
            throw new InvalidTableException(path.toString(), "cannot be read; expected a logger's CSV file");
        }
        // This reader replaces bytes that are no UTF-8, such as a degree sign in a heading we do not need.
        try (Reader text = new InputStreamReader(Files.newInputStream(path), StandardCharsets.UTF_8)) {
            return read(String.valueOf(path.getFileName()), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads an open text.
     *
     * @param file name shown in messages
     * @param text closed by the caller
     * @throws InvalidTableException when it is no logger file or does not cover a year
     */
    public static HourlyFile read(String file, Reader text) throws IOException {
        return new LoggerCsvReader(file).parse(new BufferedReader(text));
    }

    private HourlyFile parse(BufferedReader text) throws IOException {
        String header = header(text);
        boolean semicolons = header.indexOf(';') >= 0;
        List<String> columns = Arrays.stream(header.split(semicolons ? ";" : ",", -1))
                .map(LoggerCsvReader::unquoted)
                .toList();
        boolean clock = columns.contains("time");
        requireColumns(header, columns);
        try {
            // Not closed: the text belongs to the caller.
            for (CsvRecord cells : CsvReader.builder()
                    .fieldSeparator(semicolons ? ';' : ',')
                    .commentStrategy(CommentStrategy.SKIP)
                    .commentCharacter('#')
                    .skipEmptyLines(true)
                    .ofCsvRecord(text)) {
                take(row(cells, columns, semicolons), clock);
            }
        } catch (CsvParseException e) {
            throw new InvalidTableException(file, "is no readable table: " + e.getMessage());
        }
        return close();
    }

    private String header(BufferedReader text) throws IOException {
        for (String line = text.readLine(); line != null; line = text.readLine()) {
            linesBefore++;
            String bare = (!line.isEmpty() && line.charAt(0) == BYTE_ORDER_MARK ? line.substring(1) : line).strip();
            if (!bare.isEmpty() && bare.charAt(0) != '#') {
                return bare;
            }
        }
        throw new InvalidTableException(file, "is empty; expected a header row with time, temperature_c, rh_percent");
    }

    private static String unquoted(String cell) {
        String bare = cell.strip();
        return bare.length() >= 2 && bare.startsWith("\"") && bare.endsWith("\"")
                ? bare.substring(1, bare.length() - 1)
                : bare;
    }

    private void requireColumns(String header, List<String> columns) {
        for (String column : List.of("temperature_c", "rh_percent")) {
            if (!columns.contains(column)) {
                throw new InvalidTableException(
                        file, linesBefore, column, header, "a column named " + column + " in the header row");
            }
        }
        if (!columns.contains("time") && !columns.contains("hour")) {
            throw new InvalidTableException(
                    file, linesBefore, "time", header, "a column named time or hour in the header row");
        }
    }

    private CsvRow row(CsvRecord cells, List<String> columns, boolean semicolons) {
        long line = linesBefore + cells.getStartingLineNumber();
        List<String> fields = cells.getFields();
        if (fields.size() != columns.size()) {
            throw new InvalidTableException(
                    file,
                    line,
                    "(all)",
                    String.join(semicolons ? ";" : ",", fields),
                    columns.size() + " cells as in the header, found " + fields.size()
                            + "; decimal commas need semicolons between the cells");
        }
        List<String> read = new ArrayList<>(fields.size());
        for (String field : fields) {
            read.add(semicolons ? DECIMAL_COMMA.matcher(field).replaceFirst(".") : field);
        }
        return new CsvRow(file, line, columns, read);
    }

    private void take(CsvRow row, boolean clock) {
        double hours = clock ? LoggerClock.hours(row) : row.number("hour", 0, 1e7);
        double celsius = row.number("temperature_c", -90, 70);
        double percent = row.number("rh_percent", 0, WETTEST_PERCENT);
        wettest = Math.max(wettest, percent);
        if (Double.isNaN(hours)) {
            return;
        }
        if (last != null && !(hours > last.hours)) {
            throw row.fault(clock ? "time" : "hour", "a time after the row before; keep standard time all year round");
        }
        Reading next = new Reading(hours, celsius, Math.min(1, percent / 100));
        spread(last == null ? next : last, next);
        last = next;
    }

    /** Puts the whole hours after one reading, up to and at the next, on the straight line between the two. */
    private void spread(Reading from, Reading to) {
        double apart = to.hours - from.hours;
        if (apart > LONGEST_GAP_HOURS) {
            from = to;
        }
        long first = from.equals(to) ? (long) Math.ceil(to.hours) : (long) Math.floor(from.hours) + 1;
        for (long hour = first; hour <= to.hours; hour++) {
            double share = from.equals(to) ? 1 : (hour - from.hours) / apart;
            int slot = (int) (hour % CommonYear.HOURS);
            temperature[slot] = from.celsius + share * (to.celsius - from.celsius);
            humidity[slot] = from.humidityFraction + share * (to.humidityFraction - from.humidityFraction);
            guessed[slot] = apart > LONGEST_INTERVAL_HOURS && hour != to.hours;
        }
    }

    private HourlyFile close() {
        if (last != null && wettest <= 1) {
            throw new InvalidTableException(
                    file, "has no humidity above 1; expected rh_percent in percent, such as 45, not as a fraction");
        }
        int start = HourlyGaps.tooLong(temperature, LONGEST_GAP_HOURS);
        if (start >= 0) {
            long there =
                    Arrays.stream(temperature).filter(t -> !Double.isNaN(t)).count();
            throw new InvalidTableException(
                    file,
                    "covers " + there / CommonYear.HOURS_A_DAY + " of 365 days and has nothing from "
                            + LoggerClock.date(start) + "; expected readings all year round, at most "
                            + LONGEST_GAP_HOURS + " hours apart");
        }
        int filled = HourlyGaps.fill(temperature);
        HourlyGaps.fill(humidity);
        for (boolean guess : guessed) {
            filled += guess ? 1 : 0;
        }
        return new HourlyFile(file, new AirSeries(STEP_SECONDS, temperature, humidity), filled);
    }
}
