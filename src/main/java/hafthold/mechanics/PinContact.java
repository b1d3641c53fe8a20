package hafthold.mechanics;

import org.apache.commons.math3.complex.Complex;

/** Stress around a pin that its hole has closed upon. Angles count from axis 1, the grain; every quarter is alike. */
public final class PinContact {
    private static final int STEPS = 180;

    private final double[] pressure;
    private final Complex[] mu;

    /** Coefficients of zeta^-(2 i + 1) of both potentials. */
    private final Complex[][] potential;

    PinContact(LekhnitskiiHole hole, double[] pressureHarmonics) {
        this.pressure = pressureHarmonics.clone();
        this.mu = hole.roots();
        double[] f1 = new double[pressure.length + 1];
        double[] f2 = new double[pressure.length + 1];
        for (int m = 0; m < pressure.length; m++) {
            for (int side = -1; side <= 1; side += 2) {
                int i = (Math.abs(2 * m + side) - 1) / 2;
                f1[i] += pressure[m] * LekhnitskiiHole.share1(m, side);
                f2[i] += pressure[m] * LekhnitskiiHole.share2(m, side);
            }
        }
        this.potential = new Complex[f1.length][];
        for (int i = 0; i < f1.length; i++) {
            potential[i] = LekhnitskiiHole.potentials(mu, f1[i], f2[i]);
        }
    }

    /** Pressure of the pin on the wall at an angle from the grain, Pa; zero where they do not touch. */
    public double pressurePascals(double angleRadians) {
        double sum = 0;
        for (int m = 0; m < pressure.length; m++) {
            sum += pressure[m] * Math.cos(2 * m * angleRadians);
        }
        return sum;
    }

    /** Stress in the wall around the hole at an angle from the grain, Pa; tension positive. */
    public double hoopPascals(double angleRadians) {
        double sine = Math.sin(angleRadians);
        double cosine = Math.cos(angleRadians);
        double hoop = 0;
        for (int k = 0; k < 2; k++) {
            Complex slope = Complex.ZERO;
            for (int i = 0; i < potential.length; i++) {
                int n = 2 * i + 1;
                Complex turn = new Complex(Math.cos(n * angleRadians), -Math.sin(n * angleRadians));
                slope = slope.add(potential[i][k].multiply(turn).multiply(-n));
            }
            // dz/dzeta on the unit circle, times zeta: i (sin theta - mu cos theta)
            Complex stretch = mu[k].multiply(-cosine).add(sine).multiply(Complex.I);
            Complex stress = slope.divide(stretch);
            // sigma1 sin^2 + sigma2 cos^2 - 2 tau sin cos with sigma1 = mu^2 f, sigma2 = f, tau = -mu f
            Complex direction = mu[k].multiply(sine).add(cosine);
            hoop += 2 * stress.multiply(direction).multiply(direction).getReal();
        }
        return hoop;
    }

    /** Tension across the grain in the wall at an angle from the grain, Pa: what splits the scale. */
    public double tensionAcrossPascals(double angleRadians) {
        double cosine = Math.cos(angleRadians);
        double sine = Math.sin(angleRadians);
        return hoopPascals(angleRadians) * cosine * cosine - pressurePascals(angleRadians) * sine * sine;
    }

    /** Largest {@link #tensionAcrossPascals} around the hole, Pa; zero where nothing is in tension. */
    public double largestTensionAcrossPascals() {
        double largest = 0;
        for (int i = 0; i <= STEPS; i++) {
            largest = Math.max(largest, tensionAcrossPascals(i * Math.PI / 2 / STEPS));
        }
        return largest;
    }

    /** Largest pressure on the wall, Pa. */
    public double largestPressurePascals() {
        double largest = 0;
        for (int i = 0; i <= STEPS; i++) {
            largest = Math.max(largest, pressurePascals(i * Math.PI / 2 / STEPS));
        }
        return largest;
    }
}
