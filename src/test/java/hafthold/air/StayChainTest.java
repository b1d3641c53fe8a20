package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class StayChainTest {
    private static final LocalDate JULY = LocalDate.of(2027, 7, 6);

    @Test
    void theFirstDayIsThatOfFinalSandingAndAYearInTheLastStayComesBeforeTheOneThatRepeats() {
        StayChain chain = chain();
        assertEquals(20 + 365, chain.daysBeforeRepeat());
        assertEquals(20 + 2 * 365, chain.days());
        assertEquals(LocalDate.of(2027, 7, 26), chain.date(20));
        assertEquals(0, chain.stayOfDay(0));
        assertEquals(1, chain.stayOfDay(14));
        assertEquals(2, chain.stayOfDay(20));
        assertEquals(2, chain.stayOfDay(700));
        assertEquals(24 * chain.days(), chain.air(0).size());
    }

    @Test
    void eachHourHasTheAirOfItsStayAndOfItsDay() {
        AirSeries air = chain().air(0);
        assertEquals(21, air.temperatureCelsius(0), 0);
        assertEquals(0.55, air.relativeHumidityFraction(14 * 24 - 1), 0);
        assertEquals(25, air.temperatureCelsius(14 * 24), 0);
        // 26 July is day 206 of the year.
        assertEquals(206 + 5 / 24.0, air.temperatureCelsius(20 * 24 + 5), 1e-12);
    }

    /** 2028 is a leap year: 29 February has the air of the day before, 1 March that of 1 March. */
    @Test
    void theTwentyNinthOfFebruaryHasTheAirOfTheDayBefore() {
        StayChain chain = chain();
        int leapDay = (int) (LocalDate.of(2028, 2, 29).toEpochDay() - JULY.toEpochDay());
        assertEquals(58, chain.dayOfYear(leapDay - 1));
        assertEquals(58, chain.dayOfYear(leapDay));
        assertEquals(59, chain.dayOfYear(leapDay + 1));
    }

    @Test
    void theYearThatRepeatsHoldsEveryDayOfACommonYearOnce() {
        StayChain chain = chain();
        assertEquals(365, chain.repeatingDays().stream().distinct().count());
        for (int day = 0; day < 365; day++) {
            assertEquals(day, chain.dayOfYear(chain.repeatingDays().get(day)));
        }
        AirSeries round = chain.repeatingAir(0);
        assertEquals(chain.dayOfYear(chain.daysBeforeRepeat()), round.temperatureCelsius(0), 1e-12);
    }

    @Test
    void theDoubtOfEachStayShiftsItsHumidityWithinPossibleAir() {
        assertEquals(0.58, chain().air(1).relativeHumidityFraction(0), 1e-12);
        assertEquals(0.52, chain().air(-1).relativeHumidityFraction(0), 1e-12);
        Stay wet = held(JULY, 20, 0.99);
        assertEquals(1, new StayChain(List.of(wet)).air(1).relativeHumidityFraction(0), 0);
    }

    @Test
    void staysMustFollowEachOther() {
        assertThrows(IllegalArgumentException.class, () -> new StayChain(List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> new StayChain(List.of(held(JULY, 20, 0.5), held(JULY, 25, 0.5))));
    }

    private static StayChain chain() {
        double[] hours = new double[CommonYear.HOURS];
        double[] humidity = new double[CommonYear.HOURS];
        for (int i = 0; i < hours.length; i++) {
            hours[i] = i / 24.0;
            humidity[i] = 0.5;
        }
        AirSeries counted = new AirSeries(3600, hours, humidity);
        return new StayChain(List.of(
                held(JULY, 21, 0.55),
                held(JULY.plusDays(14), 25, 0.4),
                new Stay(JULY.plusDays(20), "counted", Outdoors.usual(), counted, counted, 0.03)));
    }

    private static Stay held(LocalDate from, double celsius, double humidity) {
        HeldAir air = new HeldAir(celsius, humidity);
        return new Stay(from, "held", air, air.year(), air.year(), 0.03);
    }
}
