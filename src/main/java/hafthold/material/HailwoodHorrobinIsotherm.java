package hafthold.material;

import hafthold.source.PublishedModel;

/**
 * Sorption isotherm of wood, the two-hydrate Hailwood-Horrobin equation of the Wood Handbook:
 *
 * <pre>
 * M% = 1800/W [ KH/(1-KH) + (K1 KH + 2 K1 K2 (KH)^2) / (1 + K1 KH + K1 K2 (KH)^2) ]
 * W  = 349 + 1.29 T + 0.0135 T^2          K1 = 6.27 - 0.00938 T - 0.000303 T^2
 * K  = 0.805 + 0.000736 T - 0.00000273 T^2    K2 = 1.91 + 0.0407 T - 0.000293 T^2
 * </pre>
 *
 * <p>H is relative humidity as a fraction, T degrees Celsius. It is the middle of the hysteresis loop and one curve for
 * all species. The inverse is the root in (0, 1) of a cubic in z = KH, polished to the last digit.
 *
 * <p>The metric coefficients were read in an open implementation and reproduce Table 4-2 of the handbook.
 */
@PublishedModel(
        source = "wood-handbook-2010",
        locator = "chapter 4, equation 4-5",
        validity = "about -1 to 132 C, 5 to 95 % relative humidity; used to 100 %")
public final class HailwoodHorrobinIsotherm implements SorptionIsotherm {
    /** 1800/W gives percent; with moisture as a fraction the factor is 18. */
    private static final double WATER_MOLAR_MASS = 18.0;

    private static final int NEWTON_STEPS = 40;
    /** Newton's rule doubles the good digits, so a last correction of this size leaves none to make. */
    private static final double ROOT_TOLERANCE = 1e-7;

    /** How many times as much water as this one another isotherm of wood holds; the same in any air. */
    public static double factorOf(SorptionIsotherm ofWood) {
        return ofWood.moistureFraction(0.5, 20) / new HailwoodHorrobinIsotherm().moistureFraction(0.5, 20);
    }

    @Override
    public double moistureFraction(double relativeHumidityFraction, double temperatureCelsius) {
        double k1 = hydrate1(temperatureCelsius);
        double k2 = hydrate2(temperatureCelsius);
        double z = dissolved(temperatureCelsius) * relativeHumidityFraction;
        double hydrates = (k1 * z + 2 * k1 * k2 * z * z) / (1 + k1 * z + k1 * k2 * z * z);
        return WATER_MOLAR_MASS / woodMolarMass(temperatureCelsius) * (z / (1 - z) + hydrates);
    }

    @Override
    public double waterActivity(double moistureFraction, double temperatureCelsius) {
        if (moistureFraction <= 0) {
            return 0;
        }
        double a = hydrate1(temperatureCelsius);
        double b = a * hydrate2(temperatureCelsius);
        double m = moistureFraction * molesPerFraction(temperatureCelsius);
        double z = root(m, a, b, roughRoot(m));
        return Math.min(1, z / dissolved(temperatureCelsius));
    }

    @Override
    public double waterActivitySlope(double moistureFraction, double temperatureCelsius) {
        LocalActivity local = new LocalActivity();
        local.set(Double.NaN, 0, 0);
        waterActivity(moistureFraction, temperatureCelsius, local);
        return local.slope();
    }

    /** Derivatives of the cubic of {@link #root}, p(z, m) = 0: z' = -p_m/p_z, z'' = -(2 p_mz z' + p_zz z'^2)/p_z. */
    @Override
    public void waterActivity(double moistureFraction, double temperatureCelsius, LocalActivity local) {
        double a = hydrate1(temperatureCelsius);
        double b = a * hydrate2(temperatureCelsius);
        double moles = molesPerFraction(temperatureCelsius);
        double m = Math.max(0, moistureFraction) * moles;
        double k = dissolved(temperatureCelsius);
        double guess = k * local.value();
        double z = root(m, a, b, guess > 0 && guess < 1 ? guess : roughRoot(m));
        double byMoles = (1 - z) * (1 + a * z + b * z * z);
        double byMolesAndRoot = a - 1 + (2 * (b - a) - 3 * b * z) * z;
        double byRootTwice = 6 * b * (1 - m) * z + 2 * (m * (b - a) - 2 * b);
        double minusByRoot = 1 + a - m * (a - 1) - (3 * b * (1 - m) * z + 2 * (m * (b - a) - 2 * b)) * z;
        double slope = byMoles / minusByRoot;
        double curvature = (2 * byMolesAndRoot + byRootTwice * slope) * slope / minusByRoot;
        local.set(Math.min(1, z / k), slope * moles / k, curvature * moles * moles / k);
    }

    private static double molesPerFraction(double temperatureCelsius) {
        return woodMolarMass(temperatureCelsius) / WATER_MOLAR_MASS;
    }

    /**
     * z = KH for a moisture content: with m = M W/18, a = K1, b = K1 K2 the equation cleared of fractions reads b(1-m)
     * z^3 + (m(b-a) - 2b) z^2 + (m(a-1) - 1 - a) z + m = 0; it is m at z = 0 and -(1+a+b) at z = 1.
     */
    private static double root(double m, double a, double b, double guess) {
        double c3 = b * (1 - m);
        double c2 = m * (b - a) - 2 * b;
        double c1 = m * (a - 1) - 1 - a;
        double low = 0;
        double high = 1;
        double z = guess;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double value = ((c3 * z + c2) * z + c1) * z + m;
            if (value > 0) {
                low = z;
            } else {
                high = z;
            }
            double correction = value / ((3 * c3 * z + 2 * c2) * z + c1);
            double next = z - correction;
            if (Math.abs(correction) <= ROOT_TOLERANCE) {
                return next;
            }
            z = next > low && next < high ? next : 0.5 * (low + high);
        }
        return z;
    }

    /** Within 0.03 at room temperature. */
    private static double roughRoot(double m) {
        return m < 2.2 ? 0.205 * m : (m - 1.45) / (m - 0.45);
    }

    private static double woodMolarMass(double t) {
        return 349 + 1.29 * t + 0.0135 * t * t;
    }

    private static double dissolved(double t) {
        return 0.805 + 0.000736 * t - 0.00000273 * t * t;
    }

    private static double hydrate1(double t) {
        return 6.27 - 0.00938 * t - 0.000303 * t * t;
    }

    private static double hydrate2(double t) {
        return 1.91 + 0.0407 * t - 0.000293 * t * t;
    }
}
