package hafthold.air;

import hafthold.source.PublishedModel;

/**
 * Course of the temperature through a mean day after Erbs, Klein and Beckman:
 *
 * <pre>
 * (T - Tmean)/A = 0.4632 cos(t - 3.805) + 0.0984 cos(2t - 0.360) + 0.0168 cos(3t - 0.822) + 0.0138 cos(4t - 3.513)
 * </pre>
 *
 * <p>t = 2 pi (hour - 1)/24, hour 1 being one o'clock; A the mean daily range in kelvin. The 24 hours sum to zero, so the
 * mean is kept; coldest at 6, warmest at 15 o'clock. The print takes A from the clearness of the sky; we take it from
 * the normals (mean daily maximum less minimum). Hours are clock hours; the print's fit is to monthly means at nine
 * stations of the United States. Coefficients from memory.
 */
@PublishedModel(
        source = "erbs-1983",
        locator = "diurnal variation of the monthly mean ambient temperature",
        validity = "monthly mean days; any range of zero or more")
public final class ErbsKleinBeckmanDayShape {
    private static final double[] AMPLITUDE = {0.4632, 0.0984, 0.0168, 0.0138};
    private static final double[] PHASE = {3.805, 0.360, 0.822, 3.513};

    private ErbsKleinBeckmanDayShape() {}

    /**
     * Departure from the day's mean in parts of the daily range.
     *
     * @param hour clock hour, 0 to 24, midnight being either
     * @return about -0.5 to 0.5
     */
    public static double departure(double hour) {
        double t = 2 * Math.PI * (hour - 1) / CommonYear.HOURS_A_DAY;
        double sum = 0;
        for (int k = 0; k < AMPLITUDE.length; k++) {
            sum += AMPLITUDE[k] * Math.cos((k + 1) * t - PHASE[k]);
        }
        return sum;
    }
}
