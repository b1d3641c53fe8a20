package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.report.BenchStyle;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoggerCsvReaderTest {
    @Test
    void hoursFromZeroAreTheSamples() {
        HourlyFile file = read(hours(0, 8760, 1));
        assertEquals("logger.csv", file.name());
        assertEquals(8760, file.air().size());
        assertEquals(0, file.filledHours());
        assertEquals(10.5, file.air().temperatureCelsius(5), 1e-12);
        assertEquals(0.45, file.air().relativeHumidityFraction(5), 1e-12);
    }

    @Test
    void anyIntervalIsBroughtToWholeHours() {
        AirSeries air = read(hours(0.25, 8760, 0.5)).air();
        assertEquals(10.5, air.temperatureCelsius(5), 1e-9);
        HourlyFile slow = read(hours(0, 8760, 6));
        assertEquals(10.5, slow.air().temperatureCelsius(5), 1e-9);
        assertEquals(0, slow.filledHours());
        assertTrue(told(slow).contains("6 hours apart"), told(slow));
    }

    @Test
    void aYearOfClockTimesFromAprilIsTurnedToJanuaryAndTheLeapDayLeftOut() {
        StringBuilder text = new StringBuilder("time,temperature_c,rh_percent\n");
        for (LocalDateTime time = LocalDateTime.of(2023, 4, 1, 0, 0);
                time.isBefore(LocalDateTime.of(2024, 4, 1, 0, 0));
                time = time.plusHours(1)) {
            text.append(time).append(',').append(time.getMonthValue()).append(",50\n");
        }
        AirSeries air = read(text.toString()).air();
        assertEquals(1, air.temperatureCelsius(0), 1e-12);
        assertEquals(2, air.temperatureCelsius(58 * 24), 1e-12);
        assertEquals(3, air.temperatureCelsius(59 * 24), 1e-12);
        assertEquals(12, air.temperatureCelsius(8759), 1e-12);
    }

    @Test
    void semicolonsDecimalCommasAMarkWindowsLineEndsAndRemarksAreRead() {
        StringBuilder text = new StringBuilder("\uFEFF# my logger\r\n\"time\";rh_percent;note;temperature_c\r\n");
        for (LocalDateTime time = LocalDateTime.of(2025, 1, 1, 0, 0);
                time.getYear() == 2025;
                time = time.plusHours(1)) {
            text.append(time.toString().replace('T', ' ')).append(":00;55,5;x, y;20,25\r\n");
        }
        AirSeries air = read(text.toString()).air();
        assertEquals(20.25, air.temperatureCelsius(4000), 1e-12);
        assertEquals(0.555, air.relativeHumidityFraction(4000), 1e-12);
    }

    @Test
    void aTimeWithItsZoneIsReadAsTheClockShowsIt() {
        String text = hours(0, 8760, 1);
        assertEquals(
                read(text).air().temperatureCelsius(3),
                read(clock(2025, "Z")).air().temperatureCelsius(3),
                1e-12);
        assertEquals(
                read(text).air().temperatureCelsius(3),
                read(clock(2025, "+09:00")).air().temperatureCelsius(3),
                1e-12);
    }

    @Test
    void faultsNameTheCell() {
        String header = "hour,temperature_c,rh_percent\n";
        assertFault(
                "logger.csv line 3, column rh_percent: '550' is not right: expected a number from 0 to 105",
                header + "0,20,50\n1,20,550\n");
        assertFault(
                "logger.csv line 2, column temperature_c: '72' is not right: expected a number from -90 to 70",
                header + "0,72,50\n");
        assertFault(
                "logger.csv line 2, column time: '31.01.2025 14:30' is not right: expected a date and time such as"
                        + " 2025-01-31T14:30",
                "time,temperature_c,rh_percent\n31.01.2025 14:30,20,50\n");
        assertFault(
                "logger.csv line 1, column temperature_c: 'hour,temp,rh' is not right: expected a column named"
                        + " temperature_c (or _f) in the header row",
                "hour,temp,rh\n");
        assertFault(
                "logger.csv line 1, column rh_percent: 'hour,temperature_c,rh' is not right: expected a column named"
                        + " rh_percent in the header row",
                "hour,temperature_c,rh\n");
        assertFault(
                "logger.csv line 1, column time: 'date,temperature_c,rh_percent' is not right: expected a column named"
                        + " time or hour in the header row",
                "date,temperature_c,rh_percent\n");
        assertFault(
                "logger.csv line 2, column (all): '0,20,5,50' is not right: expected 3 cells as in the header, found 4;"
                        + " decimal commas need semicolons between the cells",
                header + "0,20,5,50\n");
        assertFault(
                "logger.csv: is empty; expected a header row with time, temperature_c, rh_percent", "# nothing\n\n");
    }

    @Test
    void aPartOfAYearSaysWhatItCovers() {
        assertFault(
                "logger.csv: covers 92 of 365 days, 1 January, 0:00 to 2 April, 23:00; a year that repeats needs readings"
                        + " all year round. For less, name the file as the climate of a stay before the last in a"
                        + " table of --stays: it counts there as recorded",
                hours(0, 92 * 24, 1));
        assertFault(
                "logger.csv: holds no readings; expected a row a reading below the header",
                "hour,temperature_c,rh_percent\n");
    }

    @Test
    void aPartOfAYearIsReadAsRecordedWhereThatIsAskedFor() {
        HourlyFile file = read(hours(2000, 2000 + 92 * 24, 1), new HourlyReading(false, true));
        assertEquals(new HourSpan(2000, 92 * 24), file.covered());
        assertEquals(0, file.filledHours());
        assertEquals(20, file.air().temperatureCelsius(2500), 1e-12);
    }

    @Test
    void aFractionInsteadOfPercentIsSeen() {
        assertFault(
                "logger.csv: has no humidity above 1; expected rh_percent in percent, such as 45, not as a fraction",
                hours(0, 8760, 1).replace(",45\n", ",0.45\n"));
    }

    @Test
    void ofSeveralYearsTheLast365DaysCount() {
        HourlyFile file = read(hours(0, 2 * 8760 + 5, 1));
        assertEquals(20, file.air().temperatureCelsius(5), 1e-9);
        assertTrue(told(file).contains("runs over 730 days; the last 365, to 1 January, are taken."), told(file));
    }

    @Test
    void whatTheLastYearLacksIsTakenFromTheYearBefore() {
        String text = hours(0, 8760 + 10, 1) + hours(8760 + 40, 2 * 8760, 1).replaceFirst(".*\n", "");
        HourlyFile file = read(text);
        assertEquals(0, file.filledHours());
        assertEquals(12, file.air().temperatureCelsius(20), 1e-9);
        assertTrue(told(file).contains("with 30 hours that they lack from the years before"), told(file));
    }

    @Test
    void gapsOfSixHoursAreBridgedAndCountedLongerOnesNameWhereTheyAre() {
        String whole = hours(0, 8760, 1);
        HourlyFile file = read(without(whole, 40, 46));
        assertEquals(6, file.filledHours());
        assertEquals(10 + 4.3, file.air().temperatureCelsius(43), 1e-9);
        assertTrue(
                told(file)
                        .contains("logger.csv lacks 6 of its hours in 1 gap, the longest of 6; they were put in on a"
                                + " straight line."),
                told(file));
        assertFault(
                "logger.csv: has nothing for 7 hours after 2 January, 15:00; expected gaps of 6 hours at most;"
                        + " --allow-gaps draws a straight line over as many as 720",
                without(whole, 40, 47));
        assertEquals(
                7, read(without(whole, 40, 47), HourlyReading.wholeYear(true)).filledHours());
        assertEquals(
                "logger.csv: has nothing for 800 hours after 5 January, 3:00; expected gaps of 6 hours at most, with"
                        + " --allow-gaps 720",
                assertThrows(
                                InvalidTableException.class,
                                () -> read(without(whole, 100, 900), HourlyReading.wholeYear(true)))
                        .getMessage());
    }

    @Test
    void emptyCellsAndNaNAreReadingsThatTheLoggerLost() {
        String text = hours(0, 8760, 1).replace("\n5,10.5000,45", "\n5,,45").replace("\n7,10.7000,45", "\n7,10.7,NaN");
        HourlyFile file = read(text);
        assertEquals(2, file.filledHours());
        assertEquals(10.5, file.air().temperatureCelsius(5), 1e-9);
        assertTrue(told(file).contains("without a reading, passed over: 2."));
    }

    @Test
    void rowsOutOfOrderAndTwiceAreReadByTheirTimeAndCounted() {
        String text = hours(0, 8760, 1).replace("\n5,10.5000,45\n6,10.6000,45", "\n6,10.6,45\n5,10.5,45\n5,10.5,45");
        HourlyFile file = read(text);
        assertEquals(10.5, file.air().temperatureCelsius(5), 1e-12);
        assertEquals(10.6, file.air().temperatureCelsius(6), 1e-12);
        assertTrue(told(file).contains("same time as the row before: 1,"));
        assertTrue(told(file).contains("goes back, as in rows out of order or at the end of summer time: 1;"));
    }

    /** Invented: a clock put forward on 30 March and back on 26 October 2025 at 2 and 3 o'clock. */
    @Test
    void summerTimeWithoutOffsetsLeavesAnHourOutInSpringAndReadsOneTwiceInAutumn() {
        StringBuilder text = new StringBuilder("time,temperature_c,rh_percent\n");
        LocalDateTime forward = LocalDateTime.of(2025, 3, 30, 2, 0);
        LocalDateTime back = LocalDateTime.of(2025, 10, 26, 2, 0);
        for (int hour = 0; hour < 8760; hour++) {
            LocalDateTime standard = LocalDateTime.of(2025, 1, 1, 0, 0).plusHours(hour);
            boolean summer = !standard.isBefore(forward) && standard.isBefore(back);
            text.append(standard.plusHours(summer ? 1 : 0)).append(",20,45\n");
        }
        HourlyFile file = read(text.toString());
        assertEquals(1, file.filledHours());
        assertEquals(20, file.air().temperatureCelsius(5000), 1e-12);
        assertTrue(told(file).contains("same time as the row before: 1,")
                || told(file).contains("summer time: 1;"));
    }

    @Test
    void summerTimeWithOffsetsMovesNothing() {
        StringBuilder text = new StringBuilder("time,temperature_c,rh_percent\n");
        for (int hour = 0; hour < 8760; hour++) {
            LocalDateTime standard = LocalDateTime.of(2025, 1, 1, 0, 0).plusHours(hour);
            boolean summer = hour > 2000 && hour < 7000;
            text.append(standard.plusHours(summer ? 1 : 0))
                    .append(summer ? "+02:00," : "+01:00,")
                    .append(plain(hour / 1000.0))
                    .append(",45\n");
        }
        HourlyFile file = read(text.toString());
        assertEquals(0, file.filledHours());
        assertEquals(List.of(), file.findings());
        for (int hour = 0; hour < 8760; hour += 100) {
            assertEquals(hour / 1000.0, file.air().temperatureCelsius(hour), 1e-4);
        }
    }

    @Test
    void timesInUtcAreNoted() {
        assertTrue(told(read(clock(2025, "Z"))).contains("are UTC"));
        assertEquals(List.of(), read(clock(2025, "+09:00")).findings());
    }

    @Test
    void fahrenheitIsReadByItsNameAndSuspectedWithoutIt() {
        String text = hours(200, 8760 + 200, 1)
                .replace("temperature_c", "temperature_f")
                .replace(",20,", ",68,");
        assertEquals(20, read(text).air().temperatureCelsius(5), 1e-9);
        assertFault(
                "logger.csv: has a mean temperature_c of 68; expected degrees Celsius. If these are Fahrenheit, name the"
                        + " column temperature_f",
                text.replace("temperature_f", "temperature_c"));
        assertFault(
                "logger.csv line 2, column temperature_f: '168' is not right: expected a number from -130 to 158",
                "hour,temperature_f,rh_percent\n0,168,50\n");
    }

    @Test
    void readingsOnceADayAreALineAndSayThatDayAndNightAreLost() {
        HourlyFile file = read(hours(8, 8760, 24));
        assertEquals(0, file.filledHours());
        assertEquals(20, file.air().temperatureCelsius(5000), 1e-9);
        assertTrue(told(file).contains("lie 24 hours apart"), told(file));
        assertFault("logger.csv: has readings 168 hours apart; expected one a day at least", hours(8, 8760, 7 * 24));
    }

    /** The text is made while it is read, so that nothing but the reader's own sums can hold it. */
    @Test
    void aMillionRowsOfTenMinutesAreReadWithoutHoldingTheText() throws IOException {
        LocalDateTime start = LocalDateTime.of(2006, 1, 1, 0, 0);
        Reader rows = new Reader() {
            private String line = "time,temperature_c,rh_percent\n";
            private int at;
            private int row;

            @Override
            public int read(char[] to, int from, int length) {
                if (at == line.length()) {
                    if (row == 1_000_000) {
                        return -1;
                    }
                    line = start.plusMinutes(10L * row) + ",20." + row % 10 + ",45\n";
                    at = 0;
                    row++;
                }
                int count = Math.min(length, line.length() - at);
                line.getChars(at, at + count, to, from);
                at += count;
                return count;
            }

            @Override
            public void close() {}
        };
        HourlyFile file = LoggerCsvReader.read("long.csv", rows, HourlyReading.STRICT);
        assertEquals(8760, file.air().size());
        assertEquals(0, file.filledHours());
        assertEquals(20.45, file.air().temperatureCelsius(4000), 0.3);
        assertTrue(told(file).contains("the last 365"), told(file));
    }

    @Test
    void tenMinutesAreAveragedToTheHourAboutTheStroke() {
        StringBuilder text = new StringBuilder("hour,temperature_c,rh_percent\n");
        for (int step = 0; step < 6 * 8760; step++) {
            // A saw of 6 K within each hour on a ramp: the mean stays.
            text.append(step / 6.0)
                    .append(',')
                    .append(15 + step / 60_000.0 + step % 6 - 2.5)
                    .append(",45\n");
        }
        AirSeries air = read(text.toString()).air();
        assertEquals(15 + 6 * 4000 / 60_000.0, air.temperatureCelsius(4000), 0.1);
    }

    @Test
    void aFileOnDiskIsReadAndAMissingOneNamed(@TempDir Path folder) throws IOException {
        Path path = folder.resolve("shop.csv");
        Files.write(
                path,
                hours(0, 8760, 1)
                        .replace("hour,", "hour,\u00b0,")
                        .replaceAll("(?m)^(\\d+),", "$1,,")
                        .getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(8760, LoggerCsvReader.read(path).air().size());
        Path none = folder.resolve("none.csv");
        assertEquals(
                none + ": is not there; expected a logger's CSV file",
                assertThrows(InvalidTableException.class, () -> LoggerCsvReader.read(none))
                        .getMessage());
    }

    /** Temperature rises a tenth of a kelvin an hour over the first hours, then stays within range. */
    private static String hours(double from, double until, double step) {
        StringBuilder text = new StringBuilder("hour,temperature_c,rh_percent\n");
        for (double hour = from; hour < until; hour += step) {
            text.append(plain(hour))
                    .append(',')
                    .append(plain(temperature(hour)))
                    .append(",45\n");
        }
        return text.toString();
    }

    /** The text without the rows of some hours. */
    private static String without(String text, int from, int to) {
        return text.lines()
                        .filter(line -> {
                            String first = line.substring(0, line.indexOf(','));
                            return first.equals("hour")
                                    || Integer.parseInt(first) < from
                                    || Integer.parseInt(first) >= to;
                        })
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    private static String clock(int year, String zone) {
        StringBuilder text = new StringBuilder("time,temperature_c,rh_percent\n");
        int hour = 0;
        for (LocalDateTime time = LocalDateTime.of(year, 1, 1, 0, 0);
                time.getYear() == year;
                time = time.plusHours(1)) {
            text.append(time)
                    .append(zone)
                    .append(',')
                    .append(plain(temperature(hour++)))
                    .append(",45\n");
        }
        return text.toString();
    }

    private static double temperature(double hour) {
        return hour < 100 ? 10 + 0.1 * hour : 20;
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : String.format(Locale.ROOT, "%.4f", number);
    }

    private static HourlyFile read(String text) {
        return read(text, HourlyReading.STRICT);
    }

    private static HourlyFile read(String text, HourlyReading may) {
        try {
            return LoggerCsvReader.read("logger.csv", new StringReader(text), may);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertFault(String message, String text) {
        assertEquals(
                message,
                assertThrows(InvalidTableException.class, () -> read(text)).getMessage());
    }

    private static String told(HourlyFile file) {
        return file.findings().stream()
                .map(finding -> BenchStyle.ENGLISH.tell(finding.message()))
                .collect(Collectors.joining(" "));
    }
}
