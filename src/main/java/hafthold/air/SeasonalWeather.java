package hafthold.air;

import hafthold.source.PublishedModel;

/**
 * How far a season of one year strays from the normal one, if nothing but the weather from day to day makes it stray: the
 * mean of n days of a first-order autoregression has the standard deviation s sqrt((1 + r)/((1 - r) n)).
 *
 * <p>Real seasons stray more where the weather remembers longer than days; so this is a lower bound.
 */
@PublishedModel(
        source = "day-to-day-statistics",
        locator = "spread and lag-1 correlation of daily means, summed over a season",
        validity = "temperate places; many more days than the weather remembers")
public final class SeasonalWeather {
    /** Days of a season. */
    public static final int SEASON_DAYS = 90;

    private SeasonalWeather() {}

    /** Standard deviation of a season's mean relative humidity about the normal season's, fraction. */
    public static double humiditySpreadFraction() {
        DayToDayWeather days = DayToDayWeather.temperate(0);
        double memory = days.humidityMemory();
        return days.humiditySpreadFraction() * Math.sqrt((1 + memory) / ((1 - memory) * SEASON_DAYS));
    }
}
