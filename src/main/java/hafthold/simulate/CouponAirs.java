package hafthold.simulate;

import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import java.util.ArrayList;
import java.util.List;

/**
 * The airs that a coupon lay in one after another; readings that follow each other in the same air share it.
 *
 * @param size how many
 * @param ofReading number of the air of each reading
 * @param first a reading in each air
 */
record CouponAirs(int size, List<Integer> ofReading, List<CouponReading> first) {

    static CouponAirs of(Coupon coupon) {
        List<Integer> ofReading = new ArrayList<>();
        List<CouponReading> first = new ArrayList<>();
        for (CouponReading reading : coupon.readings()) {
            if (first.isEmpty() || !reading.inTheAirOf(first.get(first.size() - 1))) {
                first.add(reading);
            }
            ofReading.add(first.size() - 1);
        }
        return new CouponAirs(first.size(), List.copyOf(ofReading), List.copyOf(first));
    }
}
