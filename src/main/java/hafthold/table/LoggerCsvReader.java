package hafthold.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import hafthold.source.Message;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Reads a year of a humidity logger: a header row with {@code time} (ISO 8601) or {@code hour} (counted from 0 at midnight
 * before 1 January), {@code temperature_c} or {@code temperature_f}, and {@code rh_percent}, in any order among other
 * columns.
 *
 * <p>Cells are separated by commas, or by semicolons, and then decimal commas are read too. Lines that start with # and a
 * byte order mark are skipped. Readings may come at any interval up to a day and in any order, twice too, as when a clock
 * is put back in autumn; several in an hour are averaged as they are read, so that a file of any size needs little room.
 * Hours without a reading lie on a straight line between their neighbours; gaps of up to 6 hours are bridged and counted,
 * longer ones only where asked for. 29 February is left out. Of more than a year the last 365 days count. Humidity of 100
 * to 105 % is a sensor's drift and taken as 100.
 */
public final class LoggerCsvReader {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    /** No place on Earth is this hot all year round, degrees Celsius. */
    private static final double HOTTEST_YEAR_CELSIUS = 40;

    private final String file;
    private final HourBuckets readings = new HourBuckets();
    private final LoggerClock clock = new LoggerClock();
    private final HourlyYear year;
    private long linesBefore;
    private double last = Double.NEGATIVE_INFINITY;
    private double wettest;
    private double sumCelsius;
    private long again;
    private long backwards;
    private long blank;

    private LoggerCsvReader(String file, HourlyReading may) {
        this.file = file;
        this.year = new HourlyYear(file, may);
    }

    /**
     * Reads a file that covers a year without long gaps.
     *
     * @throws InvalidTableException when it is no logger file or does not cover a year
     */
    public static HourlyFile read(Path path) {
        return read(path, HourlyReading.STRICT);
    }

    /**
     * Reads a file.
     *
     * @param may how much it may lack
     * @throws InvalidTableException when it is no logger file or lacks more
     */
    public static HourlyFile read(Path path, HourlyReading may) {
        FileAtHand.require(path, "a logger's CSV file");
        // This reader replaces bytes that are no UTF-8, such as a degree sign in a heading we do not need.
        try (Reader text = new InputStreamReader(Files.newInputStream(path), StandardCharsets.UTF_8)) {
            return read(String.valueOf(path.getFileName()), text, may);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads an open text.
     *
     * @param file name shown in messages
     * @param text closed by the caller
     * @param may how much it may lack
     * @throws InvalidTableException when it is no logger file or lacks more
     */
    public static HourlyFile read(String file, Reader text, HourlyReading may) throws IOException {
        return new LoggerCsvReader(file, may).parse(new BufferedReader(text));
    }

    private HourlyFile parse(BufferedReader text) throws IOException {
        String header = header(text);
        LoggerColumns columns = LoggerColumns.of(file, linesBefore, header);
        try {
            // Not closed: the text belongs to the caller.
            for (CsvRecord cells : CsvReader.builder()
                    .fieldSeparator(columns.semicolons() ? ';' : ',')
                    .commentStrategy(CommentStrategy.SKIP)
                    .commentCharacter('#')
                    .skipEmptyLines(true)
                    .ofCsvRecord(text)) {
                take(columns, linesBefore + cells.getStartingLineNumber(), cells.getFields());
            }
        } catch (CsvParseException e) {
            throw new InvalidTableException(file, "is no readable table: " + e.getMessage());
        }
        requireUnits(columns);
        noteOrder();
        return year.of(file, readings);
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

    private void take(LoggerColumns columns, long line, List<String> cells) {
        columns.requireWidth(line, cells);
        double hours = columns.hours(line, cells, clock);
        if (columns.isBlank(cells)) {
            blank++;
            return;
        }
        double celsius = columns.celsius(line, cells);
        double percent = columns.percent(line, cells);
        wettest = Math.max(wettest, percent);
        if (Double.isNaN(hours)) {
            return;
        }
        if (hours == last) {
            again++;
        } else if (hours < last) {
            backwards++;
        }
        last = hours;
        sumCelsius += celsius;
        readings.add(hours, celsius, Math.min(1, percent / 100));
    }

    private void requireUnits(LoggerColumns columns) {
        if (readings.readings() == 0) {
            return;
        }
        if (wettest <= 1) {
            throw new InvalidTableException(
                    file, "has no humidity above 1; expected rh_percent in percent, such as 45, not as a fraction");
        }
        double mean = sumCelsius / readings.readings();
        if (mean > HOTTEST_YEAR_CELSIUS && !columns.fahrenheit()) {
            throw new InvalidTableException(
                    file,
                    "has a mean temperature_c of " + Math.round(mean)
                            + "; expected degrees Celsius. If these are Fahrenheit, name the column temperature_f");
        }
    }

    private void noteOrder() {
        if (again > 0) {
            year.note("note.air.again", again);
        }
        if (backwards > 0) {
            year.note("note.air.backwards", backwards);
        }
        if (blank > 0) {
            year.note("note.air.blank", blank);
        }
        if (clock.isUtc()) {
            year.note(Message.of("note.air.utc", Map.of("file", Message.verbatim(file))));
        }
    }
}
