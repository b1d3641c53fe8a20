package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold in any climate. */
class AirProperties {
    private final SaturationPressure saturation = new HylandWexlerSaturationPressure();

    @Property(tries = 200)
    void anyClimateGivesAYearWithItsMonthlyMeansWithinBounds(@ForAll("climates") MonthlyNormals normals) {
        AirSeries year = ReferenceYear.of(normals);
        MonthlyNormals found = MonthlyNormals.of(year);
        for (int i = 0; i < 12; i++) {
            assertEquals(normals.meanCelsius().get(i), found.meanCelsius().get(i), 1e-9);
            assertEquals(
                    normals.relativeHumidityFraction().get(i),
                    found.relativeHumidityFraction().get(i),
                    1e-9);
        }
    }

    @Property(tries = 120)
    void anySettingGivesAirInAnyClimate(
            @ForAll("climates") MonthlyNormals normals, @ForAll("settings") Setting setting) {
        AirSeries outdoor = ReferenceYear.of(normals);
        AirSeries inside = setting.inside(outdoor);
        assertEquals(outdoor.size(), inside.size());
        for (int i = 0; i < inside.size(); i++) {
            assertTrue(inside.relativeHumidityFraction(i) >= 0 && inside.relativeHumidityFraction(i) <= 1);
        }
    }

    @Property(tries = 120)
    void aYearThatStartsLaterIsTheSameYearIndoors(
            @ForAll("climates") MonthlyNormals normals, @ForAll("settings") Setting setting) {
        AirSeries outdoor = ReferenceYear.of(normals);
        AirSeries inside = setting.inside(outdoor);
        int later = 100 * 24;
        AirSeries turned = setting.inside(turned(outdoor, later));
        for (int i = 0; i < inside.size(); i += 7) {
            int at = (i + later) % inside.size();
            assertEquals(inside.temperatureCelsius(at), turned.temperatureCelsius(i), 1e-9);
            assertEquals(inside.relativeHumidityFraction(at), turned.relativeHumidityFraction(i), 1e-9);
        }
    }

    @Property(tries = 120)
    void damperOutdoorsIsNeverDrierIndoors(
            @ForAll("climates") MonthlyNormals normals, @ForAll("settings") Setting setting) {
        List<Double> damper = normals.relativeHumidityFraction().stream()
                .map(humidity -> Math.min(1, humidity + 0.1))
                .toList();
        AirSeries usual = setting.inside(ReferenceYear.of(normals));
        AirSeries damp = setting.inside(ReferenceYear.of(new MonthlyNormals(
                normals.meanCelsius(), normals.meanMaximumCelsius(), normals.meanMinimumCelsius(), damper)));
        double usualSum = 0;
        double dampSum = 0;
        for (int i = 0; i < usual.size(); i++) {
            usualSum += usual.relativeHumidityFraction(i);
            dampSum += damp.relativeHumidityFraction(i);
        }
        assertTrue(dampSum >= usualSum - 1e-9);
    }

    @Property
    void saturationRisesWithTemperatureAndDewPointUndoesIt(
            @ForAll @DoubleRange(min = -60, max = 99) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 1) double humidity) {
        double pascals = saturation.pascals(celsius);
        assertTrue(saturation.pascals(celsius + 0.01) > pascals);
        double dewPoint = saturation.dewPointCelsius(Math.max(humidity, 0.05) * pascals);
        assertTrue(dewPoint <= celsius + 1e-8);
        assertEquals(Math.max(humidity, 0.05) * pascals, saturation.pascals(dewPoint), 1e-8 * pascals);
    }

    @Provide
    Arbitrary<Setting> settings() {
        return Arbitraries.of(Setting.all());
    }

    @Provide
    Arbitrary<MonthlyNormals> climates() {
        return Combinators.combine(months(-45, 38), months(0, 12), months(0, 1))
                .as((mean, swing, humidity) ->
                        new MonthlyNormals(mean, shifted(mean, swing, 1), shifted(mean, swing, -1), humidity))
                .withoutEdgeCases();
    }

    /** Twelve unlike months, or twelve months at one of the ends. */
    private static Arbitrary<List<Double>> months(double least, double most) {
        return Arbitraries.frequencyOf(
                Tuple.of(4, Arbitraries.doubles().between(least, most).list().ofSize(12)),
                Tuple.of(1, Arbitraries.of(Collections.nCopies(12, least), Collections.nCopies(12, most))));
    }

    private static List<Double> shifted(List<Double> mean, List<Double> swing, int sign) {
        List<Double> shifted = new ArrayList<>();
        for (int i = 0; i < mean.size(); i++) {
            shifted.add(mean.get(i) + sign * swing.get(i));
        }
        return shifted;
    }

    private static AirSeries turned(AirSeries series, int by) {
        int n = series.size();
        double[] temperature = new double[n];
        double[] humidity = new double[n];
        for (int i = 0; i < n; i++) {
            temperature[i] = series.temperatureCelsius((i + by) % n);
            humidity[i] = series.relativeHumidityFraction((i + by) % n);
        }
        return new AirSeries(series.stepSeconds(), temperature, humidity);
    }
}
