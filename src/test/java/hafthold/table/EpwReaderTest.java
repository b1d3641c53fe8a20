package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.report.BenchStyle;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EpwReaderTest {
    private static final String HEADER = """
            LOCATION,Invented Haven,ZZ,Nowhere,INVENTED,0,50,10,1,120
            DESIGN CONDITIONS,0
            TYPICAL/EXTREME PERIODS,0
            GROUND TEMPERATURES,0
            HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
            COMMENTS 1,invented
            COMMENTS 2,
            DATA PERIODS,1,1,Data,Sunday,1/1,12/31
            """;

    @Test
    void anHourEndsTheHourItIsNamedAfterAndHour24IsTheNextMidnight() {
        HourlyFile file = read(year(2001));
        AirSeries air = file.air();
        assertEquals("Invented Haven, Nowhere", file.name());
        assertEquals(8760, air.size());
        assertEquals(0, file.filledHours());
        // Dry bulb is day of year / 10, humidity 40 + hour: sample 1 is hour 1 of 1 January, sample 0 hour 24 of 31
        // December.
        assertEquals(0.1, air.temperatureCelsius(1), 1e-12);
        assertEquals(0.41, air.relativeHumidityFraction(1), 1e-12);
        assertEquals(0.1, air.temperatureCelsius(24), 1e-12);
        assertEquals(0.64, air.relativeHumidityFraction(24), 1e-12);
        assertEquals(36.5, air.temperatureCelsius(0), 1e-12);
        assertEquals(0.63, air.relativeHumidityFraction(8759), 1e-12);
    }

    @Test
    void theTwentyNinthOfFebruaryIsLeftOut() {
        AirSeries air = read(year(2004)).air();
        assertEquals(8760, air.size());
        // 28 February is day 59, 1 March is day 61 of a leap year.
        assertEquals(5.9, air.temperatureCelsius(58 * 24 + 23), 1e-12);
        assertEquals(6.1, air.temperatureCelsius(59 * 24 + 1), 1e-12);
    }

    @Test
    void aMissingHumidityComesFromTheDewPointAndShortGapsFromTheirNeighbours() {
        String text = year(2001)
                .replace("2001,3,5,10,60,x,6.4,0.0,50,", "2001,3,5,10,60,x,6.4,6.4,999,")
                .replace("2001,3,5,12,60,x,6.4,0.0,52,", "2001,3,5,12,60,x,99.9,99.9,999,");
        HourlyFile file = read(text);
        int ten = (31 + 28 + 4) * 24 + 10;
        assertEquals(1, file.air().relativeHumidityFraction(ten), 1e-12);
        assertEquals(6.4, file.air().temperatureCelsius(ten + 2), 1e-12);
        assertEquals(0.52, file.air().relativeHumidityFraction(ten + 2), 1e-12);
        assertEquals(1, file.filledHours());
    }

    @Test
    void aLongGapIsNamed() {
        String text = year(2001);
        for (int hour = 3; hour <= 9; hour++) {
            text = text.replace("2001,1,2," + hour + ",60,x,0.2", "2001,1,2," + hour + ",60,x,99.9");
        }
        assertFault(
                "haven.epw: has nothing for 7 hours after 2 January, 2:00; expected gaps of 6 hours at most; --allow-gaps"
                        + " draws a straight line over as many as 720",
                text);
        HourlyFile bridged = read(text, HourlyReading.wholeYear(true));
        assertEquals(7, bridged.filledHours());
        assertEquals(0.2, bridged.air().temperatureCelsius(24 + 6), 1e-12);
        // Humidity climbs by one point an hour from 42 at two o'clock to 50 at ten.
        assertEquals(0.46, bridged.air().relativeHumidityFraction(24 + 6), 1e-12);
        assertTrue(told(bridged).contains("lacks 7 of its hours in 1 gap, the longest of 7"), told(bridged));
    }

    @Test
    void theHeadersTimeZoneChangesNothingAsTimesAreLocalStandardTime() {
        String text = year(2001).replace("invented,0,0,0,0,0", "invented,0,1.3,103.9,8,16");
        assertEquals(
                read(year(2001)).air().temperatureCelsius(100), read(text).air().temperatureCelsius(100), 0);
        assertEquals(
                read(year(2001)).air().relativeHumidityFraction(13),
                read(text).air().relativeHumidityFraction(13),
                0);
    }

    @Test
    void halfHoursAreBroughtToTheMeanOfTheHour() {
        HourlyFile file = read(halfHours(HEADER.replace("DATA PERIODS,1,1", "DATA PERIODS,1,2"), 8760));
        assertEquals(8760, file.air().size());
        assertEquals(0, file.filledHours());
        // Each half-hour holds its own number of hours / 1000; an hour's readings are those at h - 1/2 and h, a quarter
        // of an hour early on the mean, and the straight line to the next hour makes up for it.
        assertEquals(1.0, file.air().temperatureCelsius(1000), 1e-9);
        assertEquals(5.5, file.air().temperatureCelsius(5500), 1e-9);
    }

    @Test
    void halfHoursWithoutAWordOfThemInTheHeaderAreFaults() {
        assertFault(
                "haven.epw line 10, column hour: '1' is not right: expected each hour of the year once",
                halfHours(HEADER, 8760));
        assertFault(
                "haven.epw: has 100 rows; expected 2 an hour as its header says, 17520, or 17568 in a leap year",
                halfHours(HEADER.replace("DATA PERIODS,1,1", "DATA PERIODS,1,2"), 50));
        assertFault(
                "haven.epw line 8, column records per hour: '7' is not right: expected a number that divides 60, such as 1"
                        + " or 2",
                HEADER.replace("DATA PERIODS,1,1", "DATA PERIODS,1,7"));
    }

    @Test
    void missingMarksAreCountedAndAYearOfNothingButMarksIsAFault() {
        HourlyFile file = read(year(2001).replace("2001,3,5,12,60,x,6.4,0.0,52,", "2001,3,5,12,60,x,6.4,99.9,999,"));
        assertEquals(1, file.filledHours());
        assertTrue(told(file).contains("marked as missing: 1."));
        assertFault(
                "haven.epw: holds no readings; expected a row a reading below the header",
                year(2001).replaceAll("60,x,[0-9.]+,", "60,x,99.9,"));
    }

    private static String halfHours(String header, int hours) {
        StringBuilder text = new StringBuilder(header);
        for (int step = 0; step < 2 * hours; step++) {
            LocalDate day = LocalDate.of(2001, 1, 1).plusDays(step / 48);
            text.append(String.format(
                    Locale.ROOT,
                    "2001,%d,%d,%d,%d,x,%.4f,0.0,50,100000,0\n",
                    day.getMonthValue(),
                    day.getDayOfMonth(),
                    step % 48 / 2 + 1,
                    step % 2 == 0 ? 30 : 60,
                    (step + 1) / 2000.0));
        }
        return text.toString();
    }

    @Test
    void faultsNameTheCell() {
        assertFault(
                "haven.epw line 10, column rh_percent: '142' is not right: expected a relative humidity from 0 to 110, or"
                        + " 999 where it is missing",
                year(2001).replace("2001,1,1,2,60,x,0.1,0.0,42,", "2001,1,1,2,60,x,0.1,0.0,142,"));
        assertFault(
                "haven.epw line 9, column dry_bulb_c: '75' is not right: expected a temperature from -90 to 70 C, or 99.9"
                        + " where it is missing",
                year(2001).replace("2001,1,1,1,60,x,0.1,", "2001,1,1,1,60,x,75,"));
        assertFault(
                "haven.epw line 9, column hour: '25' is not right: expected a number from 1 to 24",
                year(2001).replace("2001,1,1,1,60", "2001,1,1,25,60"));
        assertFault(
                "haven.epw line 10, column hour: '1' is not right: expected each hour of the year once",
                year(2001).replace("2001,1,1,2,60", "2001,1,1,1,60"));
        assertFault(
                "haven.epw line 1, column (all): 'a,b' is not right: expected an EPW header that starts with LOCATION",
                "a,b\n");
        assertFault(
                "haven.epw: ends in its header; expected eight header lines and 8760 hourly rows",
                "LOCATION,a,b,c\nx\n");
        assertFault(
                "haven.epw line 9, column (all): '2001,1' is not right: expected an EPW row of 35 cells",
                HEADER + "2001,1\n");
    }

    @Test
    void aFileOfTwoDaysIsNoYear() throws IOException {
        try (InputStreamReader text = new InputStreamReader(
                Objects.requireNonNull(EpwReaderTest.class.getResourceAsStream("invented-two-days.epw")),
                StandardCharsets.ISO_8859_1)) {
            InvalidTableException fault = assertThrows(
                    InvalidTableException.class,
                    () -> EpwReader.read("invented-two-days.epw", text, HourlyReading.STRICT));
            assertEquals(
                    "invented-two-days.epw: has 48 hourly rows; expected 8760, or 8784 in a leap year",
                    fault.getMessage());
        }
    }

    @Test
    void aFileOnDiskIsReadWithWindowsLineEnds(@TempDir Path folder) throws IOException {
        Path path = folder.resolve("haven.epw");
        Files.writeString(path, year(2001).replace("\n", "\r\n"));
        assertEquals(8760, EpwReader.read(path).air().size());
        InvalidTableException fault =
                assertThrows(InvalidTableException.class, () -> EpwReader.read(folder.resolve("none.epw")));
        assertEquals(folder.resolve("none.epw") + ": is not there; expected an EPW weather file", fault.getMessage());
    }

    private static String year(int year) {
        StringBuilder text = new StringBuilder(HEADER);
        for (LocalDate day = LocalDate.of(year, 1, 1); day.getYear() == year; day = day.plusDays(1)) {
            for (int hour = 1; hour <= 24; hour++) {
                text.append(String.format(
                        Locale.ROOT,
                        "%d,%d,%d,%d,60,x,%.1f,0.0,%d,100000,0\n",
                        year,
                        day.getMonthValue(),
                        day.getDayOfMonth(),
                        hour,
                        day.getDayOfYear() / 10.0,
                        40 + hour));
            }
        }
        return text.toString();
    }

    private static HourlyFile read(String text) {
        return read(text, HourlyReading.STRICT);
    }

    private static HourlyFile read(String text, HourlyReading may) {
        try {
            return EpwReader.read("haven.epw", new StringReader(text), may);
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
