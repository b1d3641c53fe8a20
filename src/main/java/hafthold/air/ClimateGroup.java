package hafthold.air;

import hafthold.source.PublishedModel;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Kinds of outdoor climate as a handle meets them, told from monthly normals alone; in order from damp to dry.
 *
 * <p>The limits of temperature are those of the Köppen-Geiger classes: coldest month at 18 C (tropical) and 0 C
 * (temperate or cold), warmest month at 22 C (hot summer) and 10 C (polar), year at 18 C (hot or cold desert). Where
 * those classes ask for rain we ask for humidity of the air, because that is what a handle feels: a desert coast is
 * damp air, a rainy plateau may be dry. The limits of humidity (55 % over the year, 65 % in the three warmest months) and
 * of a hard winter (-10 C) are ours.
 */
@PublishedModel(
        source = "peel-2007",
        locator = "Table 1, limits of temperature; humidity in place of rain is ours",
        validity = "any place with monthly normals")
public enum ClimateGroup {
    /** Never cool. */
    HOT_DAMP,
    /** Mild winter, hot summer with damp air. */
    DAMP_SUMMER,
    /** Mild winter, no heat. */
    MILD,
    /** Mild winter, hot summer with dry air. */
    DRY_SUMMER,
    /** Frost. */
    FROSTY_WINTER,
    /** Long frost, or no summer. */
    HARD_WINTER,
    /** Dry air all year, cool or high. */
    COOL_DRY,
    /** Dry air all year, warm. */
    HOT_DRY;

    private static final double TROPICAL_COLDEST_CELSIUS = 18;
    private static final double HOT_DESERT_MEAN_CELSIUS = 18;
    private static final double POLAR_WARMEST_CELSIUS = 10;
    private static final double COLD_COLDEST_CELSIUS = 0;
    private static final double HOT_SUMMER_WARMEST_CELSIUS = 22;
    private static final double HARD_WINTER_COLDEST_CELSIUS = -10;
    private static final double DRY_YEAR_FRACTION = 0.55;
    private static final double DAMP_SUMMER_FRACTION = 0.65;
    private static final int SUMMER_MONTHS = 3;

    /** Short kebab-case name, such as hot-damp. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The group of a place's normals: of those that fit, the dry ones come first, then the coldest. Months count alike, whatever their length. */
    public static ClimateGroup of(MonthlyNormals normals) {
        List<Double> celsius = normals.meanCelsius();
        double coldest = Collections.min(celsius);
        double warmest = Collections.max(celsius);
        if (mean(normals.relativeHumidityFraction()) < DRY_YEAR_FRACTION) {
            return mean(celsius) >= HOT_DESERT_MEAN_CELSIUS ? HOT_DRY : COOL_DRY;
        }
        if (coldest >= TROPICAL_COLDEST_CELSIUS) {
            return HOT_DAMP;
        }
        if (coldest <= HARD_WINTER_COLDEST_CELSIUS || warmest < POLAR_WARMEST_CELSIUS) {
            return HARD_WINTER;
        }
        if (coldest <= COLD_COLDEST_CELSIUS) {
            return FROSTY_WINTER;
        }
        if (warmest < HOT_SUMMER_WARMEST_CELSIUS) {
            return MILD;
        }
        return summerHumidity(normals) >= DAMP_SUMMER_FRACTION ? DAMP_SUMMER : DRY_SUMMER;
    }

    /** Mean humidity of the three warmest months, 0 to 1; of equal months the earlier counts. */
    private static double summerHumidity(MonthlyNormals normals) {
        return IntStream.range(0, CommonYear.MONTHS)
                .boxed()
                .sorted((one, other) -> Double.compare(
                        normals.meanCelsius().get(other), normals.meanCelsius().get(one)))
                .limit(SUMMER_MONTHS)
                .mapToDouble(month -> normals.relativeHumidityFraction().get(month))
                .average()
                .orElseThrow();
    }

    private static double mean(List<Double> months) {
        return months.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }
}
