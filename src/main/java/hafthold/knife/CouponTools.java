package hafthold.knife;

import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;

/**
 * What a coupon was measured with. Errors are told as ranges that hold nine times of ten.
 *
 * @param caliper smallest step that the caliper shows
 * @param balance smallest step that the scale shows
 * @param hygrometer how far the hygrometer may be off, fraction of relative humidity
 */
public record CouponTools(Length caliper, Mass balance, RelativeHumidity hygrometer) {
    /** Of a normal distribution, the 95 % point over the standard deviation. */
    private static final double END_OVER_DEVIATION = 1.645;

    /** Two readings of one spot by hand differ by this, whatever the display says (common practice, no source). */
    private static final double HAND_METRES = 0.02e-3;

    /** Standard deviation of a size, m: a step of the display either way, and the hand. */
    public double sizeDeviationMetres() {
        return Math.hypot(caliper.metres(), HAND_METRES) / END_OVER_DEVIATION;
    }

    /** Standard deviation of a weight, kg: a step of the display either way. */
    public double weightDeviationKilograms() {
        return balance.kilograms() / END_OVER_DEVIATION;
    }
}
