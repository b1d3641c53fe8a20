package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hafthold.air.AirSeries;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
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
        assertEquals(8760 * 5 / 6, slow.filledHours());
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
                "logger.csv line 3, column hour: '1' is not right: expected a time after the row before; keep standard"
                        + " time all year round",
                header + "1,20,50\n1,20,50\n");
        assertFault(
                "logger.csv line 2, column time: '31.01.2025 14:30' is not right: expected a date and time such as"
                        + " 2025-01-31T14:30",
                "time,temperature_c,rh_percent\n31.01.2025 14:30,20,50\n");
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
                "logger.csv: covers 92 of 365 days and has nothing from 3 April; expected readings all year round, at most"
                        + " 24 hours apart",
                hours(0, 92 * 24, 1));
        assertFault(
                "logger.csv: covers 0 of 365 days and has nothing from 1 January; expected readings all year round, at"
                        + " most 24 hours apart",
                "hour,temperature_c,rh_percent\n");
    }

    @Test
    void aFractionInsteadOfPercentIsSeen() {
        assertFault(
                "logger.csv: has no humidity above 1; expected rh_percent in percent, such as 45, not as a fraction",
                hours(0, 8760, 1).replace(",45\n", ",0.45\n"));
    }

    @Test
    void laterReadingsOfTheSameHourCount() {
        AirSeries air = read(hours(0, 2 * 8760, 1)).air();
        assertEquals(20, air.temperatureCelsius(5), 1e-9);
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
                none + ": cannot be read; expected a logger's CSV file",
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
        try {
            return LoggerCsvReader.read("logger.csv", new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertFault(String message, String text) {
        assertEquals(
                message,
                assertThrows(InvalidTableException.class, () -> read(text)).getMessage());
    }
}
