package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.Event;
import hafthold.air.EventOccurrence;
import hafthold.air.EventPhase;
import hafthold.air.EventSchedule;
import hafthold.report.BenchStyle;
import hafthold.source.Message;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What happens besides the weather: the shipped table, a user's own over it, and the words that say when. */
class EventTableTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final EventTable EVENTS = EventTable.read(TABLES);
    private static final double DAY = 86_400;
    /** Warmest on 16 July, coldest on 14 January, the 196th and 13th day counted from 0. */
    private static final AirSeries YEAR = cosineYear(196);

    @Test
    void everyEventOfTheTradeIsThereWithARuleAndItsGround() {
        List<String> ids = EVENTS.all().stream().map(Event::id).toList();
        assertTrue(
                ids.containsAll(List.of(
                        "hand-wash",
                        "dishwasher",
                        "soak",
                        "rain-day",
                        "wet-sheath",
                        "hot-car",
                        "dashboard",
                        "freezer",
                        "radiator",
                        "aircraft-hold",
                        "parcel",
                        "parcel-gel",
                        "parcel-pack")),
                ids::toString);
        assertAll(EVENTS.all().stream()
                .map(event -> () -> assertTrue(
                        BenchStyle.ENGLISH.tell(event.finding().message()).contains("Rests on: "), event.id())));
    }

    @Test
    void everyPhaseNamesAKnownSource() {
        assertAll(EVENTS.all().stream()
                .flatMap(event -> event.phases().stream())
                .map(phase -> () -> assertTrue(
                        SourceTable.read(TABLES).containsKey(phase.celsius().sourceKey()),
                        phase.celsius().sourceKey())));
    }

    @Test
    void theDishwasherIsHalfAnHourWetTenMinutesHotAndAnHourOfSteam() {
        Event event = EVENTS.find("dishwasher");
        assertEquals(6000, event.seconds(), 0);
        assertTrue(event.isWet());
        assertEquals(65, event.phases().get(1).temperature().value(), 0);
        assertEquals(new EventPhase.HeldHumidity(1), event.phases().get(2).around());
        assertTrue(event.phases().get(2).ramp());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dishwasher from 2026-02-10 20:00 every 7 d | 40.8333333 | 7 | 2147483647",
                "dishwasher every 1 weeks 3 times from 02-10 20:00 | 40.8333333 | 7 | 3",
                "soak from 2024-02-29 | 58.5 | Infinity | 1",
                "soak | 14.5 | Infinity | 1",
                "hand-wash every 12h | 0 | 0.5 | 2147483647",
                "hot-car | 196.5 | Infinity | 1",
                "dishwasher 3 times every 7 d | 196.5 | 7 | 3",
                "dishwasher every 7 d | 0.5 | 7 | 2147483647",
                "freezer | 13.5 | Infinity | 1",
                "hand-wash from 1-1 00:30 every 90 min 2 times | 0.0208333 | 0.0625 | 2",
            })
    void wordsSayWhen(String words, double firstDay, double everyDays, int times) {
        EventOccurrence occurrence = EventWords.read(words, EVENTS, YEAR);
        assertEquals(firstDay, occurrence.firstSeconds() / DAY, 1e-6);
        assertEquals(everyDays, occurrence.everySeconds() / DAY, 1e-6);
        assertEquals(times, occurrence.times());
    }

    /** South of the line the hottest week lies about the turn of the year; what would outlast the year starts earlier. */
    @Test
    void whatNobodyDatedIsSaidAndEndsWithinTheYear() {
        EventOccurrence frost = EventWords.read("freezer", EVENTS, cosineYear(182));
        assertTrue(frost.firstSeconds() + 14 * 3600 <= 365 * DAY, () -> "starts " + frost.firstSeconds());
        EventSchedule asked = new EventSchedule(
                List.of(EventWords.read("hot-car", EVENTS, YEAR), EventWords.read("soak from 3-1", EVENTS, YEAR)), 1);
        assertEquals(
                List.of(
                        "No date was said, so hot car is taken on 16 July 12:00, the middle of the hottest week outdoors;"
                                + " write 'from 07-15' for another."),
                asked.taken().stream()
                        .map(finding -> BenchStyle.ENGLISH.tell(finding.message()))
                        .toList());
    }

    private static AirSeries cosineYear(int warmestDay) {
        double[] celsius = new double[8760];
        double[] humidity = new double[celsius.length];
        for (int hour = 0; hour < celsius.length; hour++) {
            celsius[hour] = 10 + 10 * Math.cos(2 * Math.PI * (hour / 24 - warmestDay) / 365);
            humidity[hour] = 0.5;
        }
        return new AirSeries(3600, celsius, humidity);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | is empty",
                "dishwasher on Monday | has 'on' where from, every or N times should be",
                "dishwasher from Monday | has 'Monday' for a date; write 2026-02-10 or 02-10",
                "dishwasher from 2026-02-30 | has '2026-02-30' for a date",
                "dishwasher from 2026-13-01 | for a date",
                "dishwasher from 2026-02-10 25:00 | has '25:00' for a time; write 00:00 to 23:59",
                "dishwasher from | ends where there should be a date",
                "dishwasher every 7 fortnights | has 'fortnights' for a unit of time",
                "dishwasher every often | has 'often' for a time",
                "dishwasher every 1 h | starts anew before it is over: dishwasher takes 1.7 h",
                "dishwasher every 7 | ends where there should be min, h, d or weeks",
                "dishwasher 0 times | once or more",
            })
    void otherWordsAreAnsweredWithWhatWouldBeRight(String words, String part) {
        UnknownEventWordsException fault =
                assertThrows(UnknownEventWordsException.class, () -> EventWords.read(words, EVENTS, YEAR));
        assertTrue(fault.getMessage().contains(part), fault.getMessage());
        assertTrue(fault.getMessage().contains("every 7 d"), fault.getMessage());
    }

    @Test
    void anUnknownEventNamesTheNearest() {
        UnknownIdException fault =
                assertThrows(UnknownIdException.class, () -> EventWords.read("dishwahser", EVENTS, YEAR));
        assertTrue(fault.getMessage().contains("did you mean dishwasher?"), fault.getMessage());
    }

    @Test
    void aRowOfTheUsersOwnReplacesTheWholeEvent(@TempDir Path folder) throws IOException {
        write(folder, "dishwasher,eco programme,20,water,45,48,50,C,own,step,spray,,,shop,measured,measured\n");
        EventTable table = EventTable.read(TableSet.with(folder));
        assertEquals(1, table.find("dishwasher").phases().size());
        assertEquals(Message.verbatim("eco programme"), table.find("dishwasher").name());
        assertEquals(
                Message.tabled("table.event.soak", "left in the sink"),
                table.find("soak").name());
        assertFalse(table.find("soak").phases().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mine,x,0,water,1,2,3,C,own,step,spray,,,shop,,assumed | column minutes: '0' is not right",
                "mine,x,5,steam,1,2,3,C,own,step,spray,,,shop,,assumed | column around: 'steam'",
                "mine,x,5,air,1,2,3,C,own,step,still,,,shop,,assumed | column rh_percent",
                "mine,x,5,air,1,2,300,C,own,step,still,50,,shop,,assumed | temperatures from -60 to 100 C",
                "mine,x,5,bag,1,2,3,C,own,step,still,50,10,shop,,assumed | gel or the humidity of a pack",
                "mine,x,5,water,-5,2,3,C,own,step,still,,,shop,,assumed | water of 0 C or more",
                "mine,x,5,air,1,2,3,F,own,step,still,50,,shop,,assumed | column unit: 'F'",
            })
    void aWrongCellIsNamed(String row, String part, @TempDir Path folder) throws IOException {
        write(folder, row + "\n");
        InvalidTableException fault =
                assertThrows(InvalidTableException.class, () -> EventTable.read(TableSet.with(folder)));
        assertTrue(fault.getMessage().contains(part), fault.getMessage());
    }

    private static void write(Path folder, String row) throws IOException {
        Files.writeString(
                folder.resolve("events.csv"),
                "id,name,minutes,around,low,value,high,unit,counted,change,film,rh_percent,gel_g,source,locator,evidence\n"
                        + row,
                StandardCharsets.UTF_8);
    }
}
