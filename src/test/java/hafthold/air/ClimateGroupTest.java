package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Limits of temperature as the Köppen-Geiger classes have them (Peel and others 2007, Table 1). */
class ClimateGroupTest {
    @Test
    void aMonthOfEighteenDegreesIsNeverCool() {
        assertEquals(ClimateGroup.HOT_DAMP, group(18, 24, 70, 70));
        assertEquals(ClimateGroup.DAMP_SUMMER, group(17.9, 24, 70, 70));
    }

    @Test
    void aMonthAtFreezingIsAFrostyWinterAndOneAtMinusTenAHardOne() {
        assertEquals(ClimateGroup.MILD, group(0.1, 20, 70, 70));
        assertEquals(ClimateGroup.FROSTY_WINTER, group(0, 20, 70, 70));
        assertEquals(ClimateGroup.FROSTY_WINTER, group(-9.9, 20, 70, 70));
        assertEquals(ClimateGroup.HARD_WINTER, group(-10, 20, 70, 70));
    }

    @Test
    void withoutAMonthOfTenDegreesTheWinterIsHard() {
        assertEquals(ClimateGroup.HARD_WINTER, group(-2, 9.9, 80, 80));
        assertEquals(ClimateGroup.FROSTY_WINTER, group(-2, 10, 80, 80));
    }

    @Test
    void aMonthOfTwentyTwoDegreesIsAHotSummerDampOrDryByItsOwnHumidity() {
        assertEquals(ClimateGroup.MILD, group(5, 21.9, 70, 70));
        assertEquals(ClimateGroup.DAMP_SUMMER, group(5, 22, 70, 65));
        assertEquals(ClimateGroup.DRY_SUMMER, group(5, 22, 70, 64.9));
    }

    @Test
    void dryAirOverTheYearComesBeforeEverythingElse() {
        assertEquals(ClimateGroup.HOT_DRY, group(18, 34, 54, 54));
        assertEquals(ClimateGroup.COOL_DRY, group(-20, 12, 54, 54));
        assertEquals(ClimateGroup.HARD_WINTER, group(-20, 12, 55, 55));
    }

    @Test
    void theSouthernSummerIsASummerToo() {
        List<Double> celsius = List.of(25.0, 25.0, 23.0, 19.0, 16.0, 13.0, 13.0, 13.5, 15.0, 17.0, 20.0, 23.0);
        List<Double> humidity = List.of(0.46, 0.47, 0.5, 0.58, 0.66, 0.71, 0.73, 0.71, 0.68, 0.61, 0.54, 0.48);
        assertEquals(ClimateGroup.DRY_SUMMER, ClimateGroup.of(new MonthlyNormals(celsius, celsius, celsius, humidity)));
    }

    /** Nine months between, of which one is the coldest, and three of summer. */
    private static ClimateGroup group(double coldest, double warmest, double winterPercent, double summerPercent) {
        List<Double> celsius = IntStream.range(0, 12)
                .mapToObj(month -> month >= 5 && month < 8 ? warmest : coldest)
                .toList();
        List<Double> humidity = IntStream.range(0, 12)
                .mapToObj(month -> (month >= 5 && month < 8 ? summerPercent : winterPercent) / 100)
                .toList();
        return ClimateGroup.of(new MonthlyNormals(
                celsius, Collections.nCopies(12, warmest), Collections.nCopies(12, coldest), humidity));
    }
}
