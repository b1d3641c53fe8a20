package hafthold.simulate;

import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.material.SorptionIsotherm;
import hafthold.quantity.RelativeHumidity;

/** Water that a coupon holds at rest in each of its airs, by isotherm, and how far it may lie from what the air as read says. */
final class CouponRest {
    private static final double HUMIDITY_STEP = 0.01;

    /** Of an error of a hygrometer, that part is alike in all airs; the rest is of each air alone, squares adding up. */
    private static final double ALIKE = 0.8;

    private static final double ALONE = 0.6;

    /** Water at rest depends on whether it came from damp or dry: half the width of the loop, either way (assumed). */
    private static final double LOOP = 0.04;

    private final SorptionIsotherm isotherm;
    private final CouponAirs airs;
    private final double hygrometerError;
    private final double[] value;
    private final double[] deviation;

    CouponRest(SorptionIsotherm isotherm, Coupon coupon, CouponAirs airs) {
        this.isotherm = isotherm;
        this.airs = airs;
        hygrometerError = coupon.tools().hygrometer().fraction();
        value = new double[airs.size()];
        deviation = new double[airs.size()];
        for (int air = 0; air < value.length; air++) {
            double humidity = airs.first().get(air).humidity().fraction();
            value[air] = at(humidity, air);
            double drier = Math.max(0, humidity - HUMIDITY_STEP);
            double damper = Math.min(1, humidity + HUMIDITY_STEP);
            double slope = (at(damper, air) - at(drier, air)) / (damper - drier);
            double alone = airs.first()
                    .get(air)
                    .ownError()
                    .map(RelativeHumidity::fraction)
                    .orElse(ALONE * hygrometerError);
            deviation[air] = Math.hypot(slope * alone, LOOP * value[air]) / CouponUnknowns.END_OVER_DEVIATION;
        }
    }

    private double at(double humidity, int air) {
        return isotherm.moistureFraction(
                humidity, airs.first().get(air).temperature().celsius());
    }

    /** In an air as it was read, kg/kg. */
    double value(int air) {
        return value[air];
    }

    /**
     * In each air, kg/kg.
     *
     * @param hygrometer position of the error of the hygrometer
     * @param numbers standard normal number of each air
     */
    double[] under(double hygrometer, double[] numbers) {
        double[] here = new double[value.length];
        for (int air = 0; air < here.length; air++) {
            CouponReading in = airs.first().get(air);
            double shift = in.ownError().isPresent() ? 0 : hygrometer * ALIKE * hygrometerError;
            double humidity = Math.min(1, Math.max(0, in.humidity().fraction() + shift));
            here[air] = Math.max(0, at(humidity, air) + numbers[air] * deviation[air]);
        }
        return here;
    }

    /** A humidity near that of an air, to see what a little more water at rest there makes. */
    double nearHumidity(int air) {
        double humidity = airs.first().get(air).humidity().fraction();
        return humidity + HUMIDITY_STEP <= 1 ? humidity + HUMIDITY_STEP : humidity - HUMIDITY_STEP;
    }

    /** Water at rest in it, kg/kg. */
    double near(int air) {
        return at(nearHumidity(air), air);
    }
}
