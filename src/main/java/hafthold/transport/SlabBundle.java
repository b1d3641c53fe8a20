package hafthold.transport;

import hafthold.material.LocalActivity;
import hafthold.material.SorptionIsotherm;

/**
 * Slabs of equally many points side by side in the same air: the figures of the equation that they obey, entry (point,
 * lane), one lane a slab.
 *
 * <pre>
 * dM/dt = d/dx (D dM/dx),  D = D_T exp(a M)      written with the potential psi = (exp(a M) - 1)/a,
 * dM/dt = D_T d2psi/dx2,   D = D_T (1 + a psi)   sealed at x = 0; at x = h it loses G = q (phi(M,T) - H)
 * </pre>
 *
 * <p>Against hat functions the right-hand side is exact for point values of psi: differences of slopes. All fluxes are
 * per dry density, so that moisture content times length is what flows: m/s. q = p_sat/(R rho0).
 */
final class SlabBundle {
    /** The curvature may bend the slope of the activity by this share before it is evaluated anew. */
    private static final double LARGEST_BEND = 0.1;

    final int points;
    final double[][] before;
    final double[][] here;
    final double[][] after;
    /** D at zero moisture and reference temperature over the gap after each point, m/s. */
    final double[][] conductance;
    /** a. */
    final double[] exponent;
    /** 1/(R rho0). */
    final double[] exchange;

    final int[] law;
    final double[] tolerance;
    final double[] largestChange;
    private final SorptionIsotherm[] isotherm;
    private final LocalActivity local = new LocalActivity();

    SlabBundle(int points, int width) {
        this.points = points;
        before = new double[points][width];
        here = new double[points][width];
        after = new double[points][width];
        conductance = new double[points - 1][width];
        exponent = new double[width];
        exchange = new double[width];
        law = new int[width];
        tolerance = new double[width];
        largestChange = new double[width];
        isotherm = new SorptionIsotherm[width];
    }

    /** Puts a slab into a lane. */
    void set(int lane, SlabLayout layout, TemperatureLaws laws) {
        Slab slab = layout.slab();
        double[] gap = layout.grid().gaps();
        for (int i = 0; i < points; i++) {
            before[i][lane] = layout.storage().before(i);
            here[i][lane] = layout.storage().here(i);
            after[i][lane] = layout.storage().after(i);
            if (i < gap.length) {
                conductance[i][lane] = slab.diffusivity().referenceSquareMetresPerSecond() / gap[i];
            }
        }
        exponent[lane] = slab.diffusivity().moistureExponent();
        exchange[lane] = 1
                / (slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                        * slab.dryDensityKilogramsPerCubicMetre());
        law[lane] = laws.indexOf(slab);
        tolerance[lane] = layout.tolerance();
        largestChange[lane] = layout.largestChange();
        isotherm[lane] = slab.isotherm();
    }

    /** Takes over a lane of another bundle. */
    void copy(int lane, SlabBundle other, int otherLane) {
        for (int i = 0; i < points; i++) {
            before[i][lane] = other.before[i][otherLane];
            here[i][lane] = other.here[i][otherLane];
            after[i][lane] = other.after[i][otherLane];
        }
        for (int i = 0; i < conductance.length; i++) {
            conductance[i][lane] = other.conductance[i][otherLane];
        }
        exponent[lane] = other.exponent[otherLane];
        exchange[lane] = other.exchange[otherLane];
        law[lane] = other.law[otherLane];
        tolerance[lane] = other.tolerance[otherLane];
        largestChange[lane] = other.largestChange[otherLane];
        isotherm[lane] = other.isotherm[otherLane];
    }

    /** psi = (exp(a M) - 1)/a. */
    double potential(int lane, double moisture) {
        double a = exponent[lane];
        return a == 0 ? moisture : (Math.exp(a * moisture) - 1) / a;
    }

    /**
     * Activity at the surface and its slopes, from the isotherm itself.
     *
     * @param guess of the activity; any number will do
     */
    void evaluateActivity(int lane, double moisture, double temperatureCelsius, double guess, SurfaceActivity at) {
        local.set(guess, 0, 0);
        isotherm[lane].waterActivity(moisture, temperatureCelsius, local);
        at.value[lane] = local.value();
        at.slope[lane] = local.slope();
        at.curvature[lane] = local.curvature();
    }

    /** The same a small change away, by Taylor's series; from the isotherm where that would not do. */
    void extendActivity(
            int lane,
            SurfaceActivity near,
            double change,
            double moisture,
            double temperatureCelsius,
            SurfaceActivity at) {
        double bend = near.curvature[lane] * change;
        double value = near.value[lane] + (near.slope[lane] + 0.5 * bend) * change;
        if (isInside(near.value[lane]) && isInside(value) && Math.abs(bend) <= LARGEST_BEND * near.slope[lane]) {
            at.value[lane] = value;
            at.slope[lane] = near.slope[lane] + bend;
            at.curvature[lane] = near.curvature[lane];
        } else {
            evaluateActivity(lane, moisture, temperatureCelsius, near.value[lane], at);
        }
    }

    /** False where the activity may be clamped, so that its slopes tell nothing about its neighbourhood. */
    private static boolean isInside(double activity) {
        return activity > 0 && activity < 1;
    }

    /** Moisture content at rest with air. */
    double equilibrium(int lane, AirInstant air) {
        return isotherm[lane].moistureFraction(air.humidity, air.temperatureCelsius);
    }
}
