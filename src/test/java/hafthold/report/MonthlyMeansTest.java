package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthlyMeansTest {

    @Test
    void averagesTheDaysOfEachMonth() {
        List<Double> monthOfDay = IntStream.range(0, 365)
                .mapToObj(day -> (double) LocalDate.of(2023, 1, 1).plusDays(day).getMonthValue())
                .toList();
        MonthlyMeans means = MonthlyMeans.of(monthOfDay);
        IntStream.rangeClosed(1, 12).forEach(month -> assertEquals(month, means.of(month), 1e-12));
        assertEquals(1, means.lowestMonth());
        assertEquals(12, means.highestMonth());
    }

    @Test
    void takesALeapYearToo() {
        List<Double> days = IntStream.range(0, 366).mapToObj(day -> 4.0).toList();
        IntStream.rangeClosed(1, 12)
                .forEach(month -> assertEquals(4.0, MonthlyMeans.of(days).of(month), 1e-12));
    }

    @Test
    void namesMonthsInEnglish() {
        assertEquals("September", MonthWord.of(9));
        assertEquals("Sep", MonthWord.shortOf(9));
    }
}
