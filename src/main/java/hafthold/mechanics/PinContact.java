package hafthold.mechanics;

import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;

/** Stress around a pin that its hole has closed upon. Angles count from axis 1, the grain; every quarter is alike. */
public final class PinContact {
    private static final int STEPS = 180;

    /** Coefficients beyond which all others together are less than this share of the largest change nothing. */
    private static final double NEGLIGIBLE = 1e-15;

    private final double[] pressure;
    private final Complex[] mu;

    /** Slopes of both potentials: coefficients of zeta^-(2 i + 1), real and imaginary part. */
    private final double[][] slopeReal;

    private final double[][] slopeImaginary;

    PinContact(LekhnitskiiHole hole, double[] pressureHarmonics) {
        this.pressure = Arrays.copyOf(pressureHarmonics, significant(pressureHarmonics));
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
        this.slopeReal = new double[2][f1.length];
        this.slopeImaginary = new double[2][f1.length];
        for (int i = 0; i < f1.length; i++) {
            Complex[] potential = LekhnitskiiHole.potentials(mu, f1[i], f2[i]);
            for (int k = 0; k < 2; k++) {
                slopeReal[k][i] = -(2 * i + 1) * potential[k].getReal();
                slopeImaginary[k][i] = -(2 * i + 1) * potential[k].getImaginary();
            }
        }
    }

    /** How many harmonics to keep. */
    private static int significant(double[] harmonics) {
        double largest = 0;
        for (double harmonic : harmonics) {
            largest = Math.max(largest, Math.abs(harmonic));
        }
        int count = harmonics.length;
        double rest = 0;
        while (count > 1) {
            rest += Math.abs(harmonics[count - 1]);
            if (rest > NEGLIGIBLE * largest) {
                break;
            }
            count--;
        }
        return count;
    }

    /** Pressure of the pin on the wall at an angle from the grain, Pa; zero where they do not touch. */
    public double pressurePascals(double angleRadians) {
        double cosine = Math.cos(2 * angleRadians);
        double sine = Math.sin(2 * angleRadians);
        double real = 0;
        double imaginary = 0;
        for (int m = pressure.length - 1; m >= 0; m--) { // Horner in exp(2 i theta)
            double turned = real * cosine - imaginary * sine + pressure[m];
            imaginary = real * sine + imaginary * cosine;
            real = turned;
        }
        return real;
    }

    /** Stress in the wall around the hole at an angle from the grain, Pa; tension positive. */
    public double hoopPascals(double angleRadians) {
        double sine = Math.sin(angleRadians);
        double cosine = Math.cos(angleRadians);
        return hoopPascals(0, cosine, sine) + hoopPascals(1, cosine, sine);
    }

    /** Share of one potential. Complex numbers are written out: this is called for hundreds of angles a hole. */
    private double hoopPascals(int potential, double cosine, double sine) {
        double[] real = slopeReal[potential];
        double[] imaginary = slopeImaginary[potential];
        double twiceCosine = cosine * cosine - sine * sine;
        double twiceSine = 2 * sine * cosine;
        double re = 0;
        double im = 0;
        for (int i = real.length - 1; i >= 0; i--) { // Horner in exp(-2 i theta)
            double turned = re * twiceCosine + im * twiceSine + real[i];
            im = im * twiceCosine - re * twiceSine + imaginary[i];
            re = turned;
        }
        double slopeRe = re * cosine + im * sine;
        double slopeIm = im * cosine - re * sine;
        double muRe = mu[potential].getReal();
        double muIm = mu[potential].getImaginary();
        // dz/dzeta on the unit circle, times zeta: i (sin theta - mu cos theta)
        double stretchRe = muIm * cosine;
        double stretchIm = sine - muRe * cosine;
        // sigma1 sin^2 + sigma2 cos^2 - 2 tau sin cos with sigma1 = mu^2 f, sigma2 = f, tau = -mu f
        // is f times the square of mu sin + cos
        double directionRe = muRe * sine + cosine;
        double directionIm = muIm * sine;
        double squareRe = directionRe * directionRe - directionIm * directionIm;
        double squareIm = 2 * directionRe * directionIm;
        // f = slope / stretch
        double length = stretchRe * stretchRe + stretchIm * stretchIm;
        double stressRe = (slopeRe * stretchRe + slopeIm * stretchIm) / length;
        double stressIm = (slopeIm * stretchRe - slopeRe * stretchIm) / length;
        return 2 * (stressRe * squareRe - stressIm * squareIm);
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
