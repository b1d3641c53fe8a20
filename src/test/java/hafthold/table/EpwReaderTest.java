package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hafthold.air.AirSeries;
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
                "haven.epw: column dry_bulb_c lacks more than 6 hours on end from hour 27 of the year; expected gaps of 6"
                        + " hours at most",
                text);
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
            InvalidTableException fault =
                    assertThrows(InvalidTableException.class, () -> EpwReader.read("invented-two-days.epw", text));
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
        assertEquals(folder.resolve("none.epw") + ": cannot be read; expected an EPW weather file", fault.getMessage());
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
        try {
            return EpwReader.read("haven.epw", new StringReader(text));
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
