package hafthold.air;

/**
 * Air of which only its two ends are known, as a hygrometer on the wall tells them: humidity runs as a sine from the middle
 * of January to the middle of July and back, the temperature is held.
 *
 * @param celsius temperature, degrees Celsius, -20 to 45
 * @param januaryFraction relative humidity in the middle of January, 0.03 to 0.99
 * @param julyFraction likewise in the middle of July
 */
public record SeasonalSine(double celsius, double januaryFraction, double julyFraction) {
    private static final double DRIEST = 0.03;
    private static final double DAMPEST = 0.99;
    private static final double HOUR_SECONDS = 3600;

    /** The middle of January, days from the start of the year; July is half a year on. */
    private static final double MIDDLE_OF_JANUARY = 15;

    /** Rejects air that no workshop has. */
    public SeasonalSine {
        if (!(celsius >= -20 && celsius <= 45)) {
            throw new IllegalArgumentException("a workshop is at -20 C to 45 C, got " + celsius + " C");
        }
        require("January", januaryFraction);
        require("July", julyFraction);
    }

    private static void require(String month, double fraction) {
        if (!(fraction >= DRIEST && fraction <= DAMPEST)) {
            throw new IllegalArgumentException(
                    "the humidity of a workshop is 3 % to 99 %, got " + 100 * fraction + " % in " + month);
        }
    }

    /** A closed year of hours from 1 January. */
    public AirSeries year() {
        double[] temperature = new double[CommonYear.HOURS];
        double[] humidity = new double[CommonYear.HOURS];
        double middle = (januaryFraction + julyFraction) / 2;
        double amplitude = (julyFraction - januaryFraction) / 2;
        for (int hour = 0; hour < CommonYear.HOURS; hour++) {
            double days = (double) hour / CommonYear.HOURS_A_DAY - MIDDLE_OF_JANUARY;
            temperature[hour] = celsius;
            humidity[hour] = middle - amplitude * Math.cos(2 * Math.PI * days / CommonYear.DAYS);
        }
        return new AirSeries(HOUR_SECONDS, temperature, humidity);
    }
}
