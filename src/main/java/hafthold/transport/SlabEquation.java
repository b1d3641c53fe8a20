package hafthold.transport;

import hafthold.material.SorptionIsotherm;
import hafthold.numeric.GradedGrid;
import hafthold.numeric.HatWeights;
import hafthold.numeric.TridiagonalSystem;

/**
 * One slab between grid points: what each point's stretch gains, and how that changes with moisture content.
 *
 * <pre>
 * dM/dt = d/dx (D dM/dx),  D = D_T exp(a M)      written with the potential psi = (exp(a M) - 1)/a,
 * dM/dt = D_T d2psi/dx2,   D = D_T (1 + a psi)   sealed at x = 0; at x = h it loses G = q (phi(M,T) - H)
 * </pre>
 *
 * <p>Against hat functions the right-hand side is exact for point values of psi: differences of slopes. All fluxes are
 * per dry density, so that moisture content times length is what flows: m/s.
 */
final class SlabEquation {
    private final SorptionIsotherm isotherm;
    private final double exponent;
    private final double[] inverseGap;
    private final double[] lower;
    private final double[] diagonal;
    private final double[] upper;

    SlabEquation(Slab slab, GradedGrid grid) {
        isotherm = slab.isotherm();
        exponent = slab.diffusivity().moistureExponent();
        inverseGap = grid.gaps();
        for (int i = 0; i < inverseGap.length; i++) {
            inverseGap[i] = 1 / inverseGap[i];
        }
        lower = new double[inverseGap.length];
        diagonal = new double[inverseGap.length + 1];
        upper = new double[inverseGap.length];
    }

    /** psi = (exp(a M) - 1)/a. */
    void potentials(double[] moisture, double[] psi) {
        double a = exponent;
        if (a == 0) {
            System.arraycopy(moisture, 0, psi, 0, psi.length);
            return;
        }
        for (int i = 0; i < psi.length; i++) {
            psi[i] = (Math.exp(a * moisture[i]) - 1) / a;
        }
    }

    /** dM/dpsi = 1/(1 + a psi). */
    void moistureByPotential(double[] psi, double[] slope) {
        double a = exponent;
        for (int i = 0; i < psi.length; i++) {
            slope[i] = 1 / (1 + a * psi[i]);
        }
    }

    /** What each stretch gains per second from its neighbours and, at the last point, loses to the air. */
    void gains(double[] psi, double diffusivity, double surfaceLoss, double[] gain) {
        double arriving = 0;
        int last = inverseGap.length;
        for (int i = 0; i < last; i++) {
            double leaving = diffusivity * inverseGap[i] * (psi[i] - psi[i + 1]);
            gain[i] = arriving - leaving;
            arriving = leaving;
        }
        gain[last] = arriving - surfaceLoss;
    }

    /** G = q (phi(M,T) - H). */
    double surfaceLoss(double moisture, SlabAir air) {
        return air.exchange() * (isotherm.waterActivity(moisture, air.temperatureCelsius()) - air.humidity());
    }

    /** dG/dM. */
    double surfaceLossSlope(double moisture, SlabAir air) {
        return air.exchange() * isotherm.waterActivitySlope(moisture, air.temperatureCelsius());
    }

    /**
     * Factors (B - s J) dM/dpsi, J the slope of all gains with moisture content: the matrix of implicit steps, for
     * unknown rates of psi, in which J is symmetric and free of the state but for the surface.
     */
    void factor(
            HatWeights storage,
            double[] moistureByPotential,
            double diffusivity,
            double surfaceSlope,
            double s,
            TridiagonalSystem system) {
        storage.bands(moistureByPotential, lower, diagonal, upper);
        int last = inverseGap.length;
        double fromBefore = 0;
        for (int i = 0; i < last; i++) {
            double coupling = s * diffusivity * inverseGap[i];
            lower[i] -= coupling;
            diagonal[i] += fromBefore + coupling;
            upper[i] -= coupling;
            fromBefore = coupling;
        }
        diagonal[last] += fromBefore + s * surfaceSlope * moistureByPotential[last];
        system.factor(lower, diagonal, upper);
    }
}
