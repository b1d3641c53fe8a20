package hafthold.knife;

import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.quantity.TimeSpan;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What was read off a coupon at one time, and the air it had lain in until then.
 *
 * @param on day, where it was noted
 * @param lay how long it had lain in this air, since the reading before; empty where it is taken to have come to rest
 * @param humidity relative humidity of that air, as read
 * @param temperature its temperature
 * @param ownError error of this humidity alone, as a fraction, where it is known by another way than the hygrometer, such as
 *     a saturated salt; empty where the hygrometer said it
 * @param weight of all pieces together
 * @param sizes by caliper, of one piece
 */
public record CouponReading(
        Optional<LocalDate> on,
        Optional<TimeSpan> lay,
        RelativeHumidity humidity,
        Temperature temperature,
        Optional<RelativeHumidity> ownError,
        Optional<Mass> weight,
        Map<CouponSide, Length> sizes) {

    /** Keeps its own copy. */
    public CouponReading {
        sizes = Map.copyOf(sizes);
    }

    /** Whether it lay in the same air as another. */
    public boolean inTheAirOf(CouponReading other) {
        return humidity.equals(other.humidity)
                && temperature.equals(other.temperature)
                && ownError.equals(other.ownError);
    }
}
