package hafthold.simulate;

import hafthold.air.CommonYear;
import hafthold.knife.RoomAir;
import java.time.LocalDate;
import java.util.Arrays;

/** Air that stock lies in, day by day through the year. */
public final class StockAir {
    private final double[] celsius;
    private final double[] humidityFraction;

    private StockAir(double[] celsius, double[] humidityFraction) {
        this.celsius = celsius;
        this.humidityFraction = humidityFraction;
    }

    /** Air that is the same all year. */
    public static StockAir held(RoomAir air) {
        double[] warm = new double[CommonYear.DAYS];
        double[] damp = new double[CommonYear.DAYS];
        Arrays.fill(warm, air.temperature().celsius());
        Arrays.fill(damp, air.humidity().fraction());
        return new StockAir(warm, damp);
    }

    /** The means of the days where the setting of a place has it. */
    public static StockAir of(Destination destination) {
        int samplesADay = destination.air().size() / CommonYear.DAYS;
        double[] warm = new double[destination.air().size()];
        double[] damp = new double[destination.air().size()];
        Arrays.setAll(warm, destination.air()::temperatureCelsius);
        Arrays.setAll(damp, destination.air()::relativeHumidityFraction);
        return new StockAir(YearSeries.dailyMean(warm, samplesADay), YearSeries.dailyMean(damp, samplesADay));
    }

    /** Temperature of a day, degrees Celsius. */
    public double celsius(LocalDate day) {
        return celsius[dayOfYear(day)];
    }

    /** Relative humidity of a day, 0 to 1. */
    public double humidityFraction(LocalDate day) {
        return humidityFraction[dayOfYear(day)];
    }

    /** Mean temperature of the year. */
    double meanCelsius() {
        return Arrays.stream(celsius).average().orElseThrow();
    }

    /** Mean relative humidity of the year, 0 to 1. */
    double meanHumidityFraction() {
        return Arrays.stream(humidityFraction).average().orElseThrow();
    }

    private static int dayOfYear(LocalDate day) {
        return Math.min(CommonYear.DAYS, day.getDayOfYear()) - 1;
    }
}
