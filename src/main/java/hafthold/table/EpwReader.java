package hafthold.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import hafthold.air.CommonYear;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;

/**
 * Reads an EPW weather file, the open format of typical years: eight header lines, then 8760 rows, or 8784 with 29
 * February, which is left out; twice as many of half-hours, as the header's last line says.
 *
 * <p>Of each row it reads month, day, hour and minute (columns 2 to 5), dry bulb, dew point, relative humidity (7 to 9).
 * Times are local standard time, as the format has it; the time zone of the header is not needed. A row of hour h holds at
 * h o'clock, hour 24 being the midnight that follows; of shorter steps the hour's mean is taken. 99.9 stands for a missing
 * temperature, 999 for a missing humidity; a missing humidity is worked out from the dew point when that is there.
 * Humidity above 100 (the format allows 110) is taken as 100. Gaps of up to 6 hours are bridged and counted, longer ones
 * only where asked for.
 */
public final class EpwReader {
    private static final int HEADER_LINES = 8;
    private static final int LEAP_HOURS = CommonYear.HOURS + CommonYear.HOURS_A_DAY;
    private static final int MINUTES = 60;
    private static final double MISSING_TEMPERATURE = 99.9;
    private static final double MISSING_HUMIDITY = 999;
    private static final List<String> COLUMNS = List.of(
            "year",
            "month",
            "day",
            "hour",
            "minute",
            "flags",
            "dry_bulb_c",
            "dew_point_c",
            "rh_percent",
            "pressure_pa");

    private final SaturationPressure saturation = new HylandWexlerSaturationPressure();
    private final String file;
    private final HourlyYear year;
    private final HourBuckets readings = new HourBuckets();
    private final BitSet seen = new BitSet(CommonYear.HOURS);
    private int stepsAnHour = 1;
    private long missing;

    private EpwReader(String file, HourlyReading may) {
        this.file = file;
        this.year = new HourlyYear(file, may);
    }

    /**
     * Reads a file without long gaps.
     *
     * @throws InvalidTableException when it is no EPW file or lacks too much
     */
    public static HourlyFile read(Path path) {
        return read(path, HourlyReading.STRICT);
    }

    /**
     * Reads a file.
     *
     * @param may how much it may lack; part of a year is none
     * @throws InvalidTableException when it is no EPW file or lacks too much
     */
    public static HourlyFile read(Path path, HourlyReading may) {
        String file = String.valueOf(path.getFileName());
        FileAtHand.require(path, "an EPW weather file");
        // Station names may be written in any old code page; the figures are plain ASCII.
        try (Reader text = Files.newBufferedReader(path, StandardCharsets.ISO_8859_1)) {
            return read(file, text, may);
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
     * @throws InvalidTableException when it is no EPW file or lacks too much
     */
    public static HourlyFile read(String file, Reader text, HourlyReading may) throws IOException {
        return new EpwReader(file, may).parse(new BufferedReader(text));
    }

    private HourlyFile parse(BufferedReader text) throws IOException {
        String name = location(text.readLine());
        for (int line = 2; line <= HEADER_LINES; line++) {
            String header = text.readLine();
            if (header == null) {
                throw new InvalidTableException(
                        file, "ends in its header; expected eight header lines and 8760 hourly rows");
            }
            stepsAnHour = line == HEADER_LINES ? steps(header) : 1;
        }
        int rows = 0;
        try {
            // Not closed: the text belongs to the caller.
            for (CsvRecord cells : CsvReader.builder().skipEmptyLines(true).ofCsvRecord(text)) {
                rows++;
                take(cells);
            }
        } catch (CsvParseException e) {
            throw new InvalidTableException(file, "is no readable table: " + e.getMessage());
        }
        if (rows != stepsAnHour * CommonYear.HOURS && rows != stepsAnHour * LEAP_HOURS) {
            throw new InvalidTableException(
                    file,
                    stepsAnHour == 1
                            ? "has " + rows + " hourly rows; expected 8760, or 8784 in a leap year"
                            : "has " + rows + " rows; expected " + stepsAnHour + " an hour as its header says, "
                                    + stepsAnHour * CommonYear.HOURS + ", or " + stepsAnHour * LEAP_HOURS
                                    + " in a leap year");
        }
        if (missing > 0) {
            year.note("note.air.missing", missing);
        }
        return year.of(name, readings);
    }

    /** Records an hour: third cell of the line that starts with DATA PERIODS. */
    private int steps(String header) {
        String[] cells = header.split(",", -1);
        String cell = cells.length > 2 && cells[0].strip().equalsIgnoreCase("DATA PERIODS") ? cells[2].strip() : "1";
        if (cell.matches("[1-9]|[1-5]\\d|60") && MINUTES % Integer.parseInt(cell) == 0) {
            return Integer.parseInt(cell);
        }
        throw new InvalidTableException(
                file, HEADER_LINES, "records per hour", cell, "a number that divides 60, such as 1 or 2");
    }

    private String location(String first) {
        String[] cells = first == null ? new String[0] : first.split(",", -1);
        if (cells.length < 4 || !cells[0].strip().endsWith("LOCATION")) {
            throw new InvalidTableException(
                    file, 1, "(all)", first == null ? "" : first, "an EPW header that starts with LOCATION");
        }
        return cells[1].strip() + ", " + cells[3].strip();
    }

    private void take(CsvRecord cells) {
        long line = HEADER_LINES + cells.getStartingLineNumber();
        if (cells.getFieldCount() < COLUMNS.size()) {
            throw new InvalidTableException(
                    file, line, "(all)", String.join(",", cells.getFields()), "an EPW row of 35 cells");
        }
        CsvRow row = new CsvRow(file, line, COLUMNS, cells.getFields());
        int month = (int) row.number("month", 1, CommonYear.MONTHS);
        int days = CommonYear.daysOfMonth(month);
        int day = (int) row.number("day", 1, month == 2 ? days + 1 : days);
        int hour = (int) row.number("hour", 1, CommonYear.HOURS_A_DAY);
        if (day > days) {
            return;
        }
        int minutes = stepsAnHour == 1 ? MINUTES : minutes(row);
        int start = (CommonYear.firstDay(month) + day - 1) * CommonYear.HOURS_A_DAY + hour - 1;
        int step = start * MINUTES + minutes;
        if (seen.get(step)) {
            throw row.fault("hour", "each hour of the year once");
        }
        seen.set(step);
        double dryBulb = row.number("dry_bulb_c", -90, MISSING_TEMPERATURE);
        // 99.9 marks a gap; nothing between the warmest air on record and it is air.
        if (dryBulb != MISSING_TEMPERATURE && dryBulb > 70) {
            throw row.fault("dry_bulb_c", "a temperature from -90 to 70 C, or 99.9 where it is missing");
        }
        double fraction = humidity(row, dryBulb);
        if (dryBulb == MISSING_TEMPERATURE || Double.isNaN(fraction)) {
            missing++;
        } else {
            readings.add(start + (double) minutes / MINUTES, dryBulb, fraction);
        }
    }

    /** Minutes from the start of the hour to the end of the step; some writers put 0 for the last one. */
    private static int minutes(CsvRow row) {
        int minutes = (int) row.number("minute", 0, MINUTES);
        return minutes == 0 ? MINUTES : minutes;
    }

    private double humidity(CsvRow row, double dryBulb) {
        double percent = row.number("rh_percent", 0, MISSING_HUMIDITY);
        if (percent != MISSING_HUMIDITY) {
            if (percent > 110) {
                throw row.fault("rh_percent", "a relative humidity from 0 to 110, or 999 where it is missing");
            }
            return Math.min(1, percent / 100);
        }
        double dewPoint = row.number("dew_point_c", -100, MISSING_TEMPERATURE);
        if (dewPoint == MISSING_TEMPERATURE || dryBulb == MISSING_TEMPERATURE) {
            return Double.NaN;
        }
        return Math.min(1, saturation.pascals(dewPoint) / saturation.pascals(dryBulb));
    }
}
