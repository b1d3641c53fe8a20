package hafthold.air;

/** Builds the air of an enclosed space sample by sample from its temperature and vapour pressure. */
final class Enclosure {
    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();

    private final AirSeries outdoor;
    private final OutdoorDays days;
    private final double[] temperatureCelsius;
    private final double[] relativeHumidityFraction;
    private double lastCelsius = Double.NaN;
    private double lastSaturationPascals;

    Enclosure(AirSeries outdoor) {
        this.outdoor = outdoor;
        this.days = new OutdoorDays(outdoor, SATURATION);
        this.temperatureCelsius = new double[outdoor.size()];
        this.relativeHumidityFraction = new double[outdoor.size()];
    }

    OutdoorDays outdoors() {
        return days;
    }

    static double saturationPascals(double celsius) {
        return SATURATION.pascals(celsius);
    }

    /** Sets one sample; humidity is held within floor and cap, never above saturation. */
    void set(int sample, double celsius, double vapourPascals, double floorFraction, double capFraction) {
        // A heated room stands at one temperature for months; the exponential is worth saving.
        if (celsius != lastCelsius) {
            lastCelsius = celsius;
            lastSaturationPascals = SATURATION.pascals(celsius);
        }
        temperatureCelsius[sample] = celsius;
        relativeHumidityFraction[sample] =
                Math.min(capFraction, Math.max(floorFraction, vapourPascals / lastSaturationPascals));
    }

    AirSeries air() {
        return new AirSeries(outdoor.stepSeconds(), temperatureCelsius, relativeHumidityFraction);
    }
}
