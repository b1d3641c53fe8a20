package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.Event;
import hafthold.air.EventOccurrence;
import hafthold.air.EventPhase;
import hafthold.air.EventSchedule;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Message;
import hafthold.table.EventTable;
import hafthold.table.EventWords;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Scales through a year of steady room air with events. */
class EventRunTest {
    private static final double HOUR = 3600;
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final EventTable EVENTS = EventTable.read(TABLES);
    private static final AirSeries ROOM = steady(20, 0.5);
    private static final Handle HANDLE = new Handle(
            Length.ofMillimetres(110),
            Length.ofMillimetres(26),
            Length.ofMillimetres(8),
            Length.ofMillimetres(6),
            Length.ofMillimetres(0),
            Length.ofMillimetres(70));

    /** Room air told as an event changes nothing: both solvers and the hand-over between them agree. */
    @Test
    void anEventThatIsNoneLeavesTheYearAsItWas() {
        Figure same = new Figure(Band.exact(0), Evidence.ASSUMED, "own", "");
        Event nothing = new Event(
                "nothing",
                Message.verbatim("nothing"),
                Message.verbatim("own"),
                List.of(new EventPhase(
                        5 * HOUR,
                        new EventPhase.KeptVapour(),
                        same,
                        EventPhase.Counted.KNIFE,
                        false,
                        EventPhase.Film.STILL)));
        AirSeries swing = swinging();
        EventSchedule schedule =
                new EventSchedule(List.of(new EventOccurrence(nothing, 50.4 * 24 * HOUR, 9 * 24 * HOUR, 30)), 1);
        EventCourse course = new EventRun(swing, swing, schedule, 300).of(scale("walnut-black", "bare"));
        double largest = 0;
        for (int hour = 0; hour < course.mean().length; hour++) {
            largest = Math.max(largest, Math.abs(course.above(hour)));
        }
        double worst = largest;
        assertTrue(worst < 2e-4, () -> "off by " + worst);
    }

    /** Water absorption coefficients of woods give 1.4 to 7 points by the face alone; edges and ends add to it. */
    @Test
    void aDishwasherSaturatesTheFaceOfBareWalnutAndRaisesItsMeanByPoints() {
        EventCourse course = run("dishwasher from 02-10 20:00", "walnut-black", "bare");
        EventAnswer answer = answer("dishwasher", course);
        assertAll(
                () -> assertTrue(answer.faceWettest() > 0.24, () -> "face " + answer.faceWettest()),
                () -> assertTrue(
                        answer.meanGain().value() > 0.02 && answer.meanGain().value() < 0.09,
                        () -> "gain " + answer.meanGain()),
                () -> assertTrue(
                        answer.hottestCelsius().value() > 63
                                && answer.hottestCelsius().value() <= 65.01,
                        () -> "hottest " + answer.hottestCelsius()),
                () -> assertTrue(answer.isBack() && answer.backHours() > 24, () -> "back " + answer.backHours()));
    }

    @Test
    void aDishwasherWetsTheSkinOfLinenLaminateAndNotItsBulk() {
        EventAnswer answer = answer("dishwasher", run("dishwasher from 02-10 20:00", "linen-phenolic-le", "bare"));
        assertAll(
                () -> assertTrue(answer.faceWettest() > 0.04, () -> "face " + answer.faceWettest()),
                () -> assertTrue(answer.meanGain().value() < 0.003, () -> "gain " + answer.meanGain()),
                () -> assertTrue(answer.meanGain().value() > 0));
    }

    @Test
    void aFinishKeepsADishwashersWaterOut() {
        double bare = answer("dishwasher", run("dishwasher", "walnut-black", "bare"))
                .meanGain()
                .value();
        double epoxy = answer("dishwasher", run("dishwasher", "walnut-black", "epoxy-clear"))
                .meanGain()
                .value();
        assertTrue(epoxy < 0.05 * bare && epoxy >= 0, () -> bare + " " + epoxy);
    }

    /** What is left before the last wash is more than before the second: it builds up, and more so under a finish. */
    @Test
    void weeklyDishwashersBuildUpInWhatDriesSlowly() {
        EventAnswer weekly = answer("dishwasher", run("dishwasher from 01-02 20:00 every 7 d", "walnut-black", "bare"));
        EventAnswer laminate =
                answer("dishwasher", run("dishwasher from 01-02 20:00 every 7 d", "linen-phenolic-le", "bare"));
        assertAll(
                () -> assertEquals(52, weekly.times()),
                () -> assertTrue(weekly.leftBeforeSecond() > 0, () -> "" + weekly.leftBeforeSecond()),
                () -> assertTrue(
                        weekly.leftBeforeLast() > weekly.leftBeforeSecond(),
                        () -> weekly.leftBeforeSecond() + " " + weekly.leftBeforeLast()),
                () -> assertTrue(
                        laminate.leftBeforeLast() > 1.5 * laminate.leftBeforeSecond(),
                        () -> laminate.leftBeforeSecond() + " " + laminate.leftBeforeLast()));
    }

    @Test
    void afterOneDishwasherNothingIsLeftByTheEndOfTheYear() {
        EventCourse course = run("dishwasher from 02-10 20:00", "walnut-black", "bare");
        assertEquals(0, course.above(course.mean().length - 1), 1e-4);
    }

    @Test
    void aTightBagKeepsTheWaterOfItsWood() {
        EventAnswer answer = answer("parcel", run("parcel from 03-01", "walnut-black", "bare"));
        assertEquals(0, answer.meanGain().value(), 1e-3);
        assertEquals(0, answer.meanLoss().value(), 1e-3);
    }

    /** 10 g of gel take 1 to 1.5 g; the two scales here weigh 24 g dry. */
    @Test
    void gelInTheBagTakesItsFillFromTheWood() {
        EventCourse course = run("parcel-gel from 03-01", "walnut-black", "bare");
        EventAnswer answer = answer("parcel-gel", course);
        EventScale scale = scale("walnut-black", "bare");
        double taken = answer.meanLoss().value() * scale.dryKilograms();
        double humidity = course.windows().get(0).samples().stream()
                .filter(sample -> sample.seconds() == 504 * HOUR)
                .mapToDouble(EventWindow.Sample::airHumidity)
                .findFirst()
                .orElseThrow();
        assertAll(
                () -> assertTrue(taken > 0.0008 && taken < 0.0016, () -> "gel took " + 1000 * taken + " g"),
                () -> assertEquals(new SilicaGel(0.010).humidityFraction(taken), humidity, 0.01));
    }

    @Test
    void aPackOfTheRoomsHumidityLeavesTheWoodAsItIs() {
        EventAnswer answer = answer("parcel-pack", run("parcel-pack from 03-01", "walnut-black", "bare"));
        assertTrue(answer.meanGain().value() < 2e-3 && answer.meanLoss().value() < 4e-3, answer::toString);
    }

    @Test
    void aFrozenKnifeGathersDewWhenItComesIntoTheRoom() {
        EventCourse course = run("freezer from 02-10 20:00", "walnut-black", "bare");
        EventAnswer answer = answer("freezer", course);
        double dew = course.windows().get(0).samples().stream()
                .filter(sample -> sample.seconds() > 12 * HOUR)
                .mapToDouble(EventWindow.Sample::face)
                .max()
                .orElseThrow();
        assertAll(
                () -> assertTrue(answer.coldestCelsius() < -17, () -> "" + answer.coldestCelsius()),
                () -> assertTrue(dew > 0.11, () -> "face " + dew));
    }

    @Test
    void heatDriesAndWhatHoldsNoWaterOnlyWarms() {
        EventAnswer walnut = answer("dashboard", run("dashboard from 07-10", "walnut-black", "bare"));
        EventCourse iron = new EventRun(ROOM, ROOM, schedule("dashboard from 07-10"), 300).dry();
        assertAll(
                () -> assertTrue(walnut.meanLoss().value() > 0.005, () -> "" + walnut.meanLoss()),
                () -> assertTrue(walnut.hottestCelsius().value() > 75, () -> "" + walnut.hottestCelsius()),
                () -> assertEquals(
                        80, answer("dashboard", iron).hottestCelsius().value(), 1e-9),
                () -> assertEquals(
                        90, answer("dashboard", iron).hottestCelsius().high(), 1e-9));
    }

    private static EventCourse run(String words, String material, String finish) {
        return new EventRun(ROOM, ROOM, schedule(words), 300).of(scale(material, finish));
    }

    private static EventSchedule schedule(String words) {
        return new EventSchedule(List.of(EventWords.read(words, EVENTS, ROOM)), 1);
    }

    private static EventAnswer answer(String event, EventCourse course) {
        Band none = Band.exact(0);
        return EventReading.answer(EVENTS.find(event), List.of(course), none, none, Optional.of(none), none);
    }

    private static EventScale scale(String id, String finish) {
        Material material = (Material) LIBRARY.find(id);
        return EventScale.of(
                        material, Cut.FLAT, HANDLE, FinishTable.read(TABLES).find(finish), 0.004, Doubt.NONE)
                .orElseThrow();
    }

    private static AirSeries steady(double celsius, double humidity) {
        double[] temperature = new double[8760];
        double[] fraction = new double[8760];
        Arrays.fill(temperature, celsius);
        Arrays.fill(fraction, humidity);
        return new AirSeries(HOUR, temperature, fraction);
    }

    private static AirSeries swinging() {
        double[] temperature = new double[8760];
        double[] fraction = new double[8760];
        for (int i = 0; i < 8760; i++) {
            double season = Math.sin(2 * Math.PI * i / 8760);
            temperature[i] = 20 + 2 * season + 0.5 * Math.sin(2 * Math.PI * i / 24);
            fraction[i] = 0.45 + 0.15 * season;
        }
        return new AirSeries(HOUR, temperature, fraction);
    }
}
