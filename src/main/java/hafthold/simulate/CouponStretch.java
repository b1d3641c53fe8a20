package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.quantity.TimeSpan;
import hafthold.transport.MoistureHistory;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import hafthold.transport.TransientMoisture;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Readings of a coupon that hang together by time: each but the first of them came so long after the one before.
 *
 * @param from number of the first
 * @param to number behind the last
 * @param leadSeconds how long the coupon had lain in the first air of all before its first reading; 0 for at rest
 */
record CouponStretch(int from, int to, double leadSeconds) {
    private static final double FINEST_SECONDS = 360;
    private static final double COARSEST_SECONDS = 3600;
    private static final int SAMPLES_OF_SHORTEST = 12;
    private static final int MOST_SAMPLES = 6000;

    /** All stretches of a coupon; a reading of which no time is told begins a new one. */
    static List<CouponStretch> of(Coupon coupon) {
        List<CouponReading> readings = coupon.readings();
        List<CouponStretch> stretches = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= readings.size(); i++) {
            if (i == readings.size() || readings.get(i).lay().isEmpty()) {
                double lead =
                        from == 0 ? readings.get(0).lay().map(TimeSpan::seconds).orElse(0.0) : 0;
                stretches.add(new CouponStretch(from, i, lead));
                from = i;
            }
        }
        return stretches;
    }

    /** True for a single reading at rest. */
    boolean isStill() {
        return to - from == 1 && leadSeconds == 0;
    }

    /**
     * Moisture at its readings, kg/kg.
     *
     * @param start at its beginning, even throughout
     * @param shifted number of an air that is taken as the one near it; -1 for none
     */
    double[] course(Coupon coupon, CouponAirs airs, CouponRest rest, Slab slab, double start, int shifted) {
        double[] ends = ends(coupon);
        double last = ends[ends.length - 1];
        double step = Math.max(
                Math.max(FINEST_SECONDS, last / MOST_SAMPLES),
                Math.min(COARSEST_SECONDS, shortest(ends) / SAMPLES_OF_SHORTEST));
        int samples = (int) Math.ceil(last / step) + 2;
        double[] celsius = new double[samples];
        double[] humidity = new double[samples];
        int reading = 0;
        for (int s = 0; s < samples; s++) {
            while (reading < ends.length - 1 && (s - 0.5) * step >= ends[reading]) {
                reading++;
            }
            int air = airs.ofReading().get(from + reading);
            CouponReading in = airs.first().get(air);
            celsius[s] = in.temperature().celsius();
            humidity[s] =
                    air == shifted ? rest.nearHumidity(air) : in.humidity().fraction();
        }
        MoistureHistory history = TransientMoisture.from(
                slab,
                new double[] {start},
                new AirSeries(step, celsius, humidity),
                0,
                new HylandWexlerSaturationPressure(),
                Resolution.STANDARD);
        return Arrays.stream(ends).map(end -> between(history, end / step)).toArray();
    }

    /** Seconds from its beginning to each of its readings. */
    private double[] ends(Coupon coupon) {
        double[] ends = new double[to - from];
        ends[0] = leadSeconds;
        for (int i = 1; i < ends.length; i++) {
            ends[i] = ends[i - 1]
                    + coupon.readings().get(from + i).lay().orElseThrow().seconds();
        }
        return ends;
    }

    private static double shortest(double[] ends) {
        double shortest = ends[0] > 0 ? ends[0] : Double.POSITIVE_INFINITY;
        for (int i = 1; i < ends.length; i++) {
            shortest = Math.min(shortest, ends[i] - ends[i - 1]);
        }
        return shortest;
    }

    private static double between(MoistureHistory history, double place) {
        int below = (int) place;
        double share = place - below;
        return (1 - share) * history.meanFraction(below) + share * history.meanFraction(below + 1);
    }
}
