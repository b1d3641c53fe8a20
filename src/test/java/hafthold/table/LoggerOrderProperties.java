package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What a logger's file means does not hang on the order of its rows, nor on rows that are there twice. */
class LoggerOrderProperties {
    @Property(tries = 15)
    void rowsInAnyOrderAndTwiceAreTheSameYear(@ForAll @IntRange(min = 0, max = 9999) int seed) throws IOException {
        Random chance = new Random(seed);
        List<String> rows = new ArrayList<>();
        double interval = 0.25 + 2 * chance.nextDouble();
        for (double hour = chance.nextDouble(); hour < 8760; hour += interval) {
            rows.add(String.format(
                    Locale.ROOT, "%.3f,%.2f,%.1f", hour, 30 * chance.nextDouble(), 5 + 90 * chance.nextDouble()));
        }
        HourlyFile inOrder = read(rows);
        List<String> mixed = new ArrayList<>(rows);
        mixed.addAll(rows);
        Collections.shuffle(mixed, chance);
        HourlyFile anyhow = read(mixed);
        assertEquals(inOrder.filledHours(), anyhow.filledHours());
        for (int hour = 0; hour < 8760; hour++) {
            assertEquals(inOrder.air().temperatureCelsius(hour), anyhow.air().temperatureCelsius(hour), 1e-9);
            assertEquals(
                    inOrder.air().relativeHumidityFraction(hour), anyhow.air().relativeHumidityFraction(hour), 1e-11);
        }
    }

    private static HourlyFile read(List<String> rows) throws IOException {
        return LoggerCsvReader.read(
                "any.csv",
                new StringReader("hour,temperature_c,rh_percent\n" + String.join("\n", rows) + "\n"),
                HourlyReading.STRICT);
    }
}
