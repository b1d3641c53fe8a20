package hafthold.decide;

import hafthold.material.Material;
import hafthold.material.WaterUptake;
import java.util.ArrayList;
import java.util.List;

/**
 * In which air stock may be left to settle before it is sanded: between the driest and the dampest moisture of the customer's
 * year, towards the dry end, since steel that stands proud is worse than a scale that does, but never at the dry end itself,
 * and within {@link WorkableAir}.
 */
final class ConditioningRule {
    private static final List<Double> SHARES_OF_THE_YEAR = List.of(0.1, 0.25, 0.4, 0.55);

    private ConditioningRule() {}

    /**
     * Air to try.
     *
     * @param humidityFraction relative humidity in whole percent
     * @param moistureFraction moisture content the stock settles at, kg/kg
     * @param atLimit true where going further might be better still but is not advised
     */
    record Air(double humidityFraction, double moistureFraction, boolean atLimit) {}

    /**
     * Airs to try, each once, from dry to damp; none for what takes up no water.
     *
     * @param leastFraction driest moisture content of the customer's year, kg/kg
     * @param mostFraction dampest
     * @param celsius temperature of the workshop
     */
    static List<Air> airs(Material material, double leastFraction, double mostFraction, double celsius) {
        List<Air> airs = new ArrayList<>();
        if (material.water().isEmpty()) {
            return airs;
        }
        WaterUptake water = material.water().get();
        WorkableAir workable = WorkableAir.of(material, celsius);
        List<Long> tried = new ArrayList<>();
        for (double share : SHARES_OF_THE_YEAR) {
            double wanted = leastFraction + share * (mostFraction - leastFraction);
            double humidity = water.isotherm().waterActivity(wanted, celsius);
            long percent = workable.percentNearest(humidity);
            if (tried.contains(percent)) {
                continue;
            }
            tried.add(percent);
            airs.add(new Air(
                    percent / 100.0,
                    water.isotherm().moistureFraction(percent / 100.0, celsius),
                    !workable.allows(humidity)));
        }
        return airs;
    }
}
