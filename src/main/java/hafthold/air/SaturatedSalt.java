package hafthold.air;

import hafthold.quantity.Band;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.TreeMap;

/**
 * Air over a saturated salt solution with undissolved salt in it: one humidity at each temperature.
 *
 * @param id kebab-case id
 * @param name name for people
 * @param isHarmless whether it may be recommended for a box
 * @param humidity relative humidity by temperature in degrees Celsius, with its stated uncertainty, 0 to 1
 */
@PublishedModel(
        source = "greenspan-1977",
        locator = "Table 2, straight lines between its temperatures",
        validity = "between the temperatures of the table; salt left undissolved, a closed box, time to settle")
public record SaturatedSalt(String id, String name, boolean isHarmless, TreeMap<Double, Band> humidity) {

    /** Keeps its own copy. */
    public SaturatedSalt {
        humidity = new TreeMap<>(humidity);
        if (humidity.isEmpty()) {
            throw new IllegalArgumentException("a salt needs a temperature with its humidity: " + id);
        }
    }

    /**
     * Relative humidity over it, 0 to 1.
     *
     * @param celsius degrees Celsius; beyond the table's ends those
     */
    public Band humidityFraction(double celsius) {
        Map.Entry<Double, Band> below = humidity.floorEntry(celsius);
        Map.Entry<Double, Band> above = humidity.ceilingEntry(celsius);
        if (below == null || above == null) {
            return (below == null ? humidity.firstEntry() : humidity.lastEntry()).getValue();
        }
        double gap = above.getKey() - below.getKey();
        double share = gap > 0 ? (celsius - below.getKey()) / gap : 0;
        Band low = below.getValue();
        Band high = above.getValue();
        return new Band(
                between(low.low(), high.low(), share),
                between(low.value(), high.value(), share),
                between(low.high(), high.high(), share));
    }

    private static double between(double from, double to, double share) {
        return (1 - share) * from + share * to;
    }
}
