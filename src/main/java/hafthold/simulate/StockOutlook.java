package hafthold.simulate;

import java.util.List;

/**
 * One draw that counts like any other after what was read: a block as it may be today and from now on.
 *
 * @param meanNow moisture over the block today, kg/kg
 * @param coreNow in its middle
 * @param goal moisture that this block has at rest in the air aimed at
 * @param rest moisture that it has at rest in the storage as it is, mean of a year
 * @param dryKilograms oven-dry mass
 * @param asItLies from now on in the storage as it is
 * @param inBox from now on in the air aimed at
 * @param pastMean moisture over the block since it was bought, at the days of {@link StockEngine#pastDays}
 * @param pastCore in its middle
 * @param telltaleKilograms change of weight in seven days at the moment that the core comes near enough to rest
 */
public record StockOutlook(
        double meanNow,
        double coreNow,
        double goal,
        double rest,
        double dryKilograms,
        Way asItLies,
        Way inBox,
        List<Double> pastMean,
        List<Double> pastCore,
        double telltaleKilograms) {

    /**
     * Moisture from today on.
     *
     * @param mean over the block, at the days of {@link StockEngine#DAYS_AHEAD}
     * @param core in its middle
     * @param readyDays days until both are near enough to the goal; infinite where that is further than the forecast
     */
    public record Way(List<Double> mean, List<Double> core, double readyDays) {}

    /** True where mean and core are near enough today. */
    public boolean isReady() {
        return inBox.readyDays() == 0;
    }
}
