package hafthold.mechanics;

import hafthold.source.PublishedModel;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A round hole in a wide orthotropic plate in plane stress, by complex potentials.
 *
 * <p>Stress function 2 Re(F1(x + mu1 y) + F2(x + mu2 y)) with the roots of a11 mu^4 + (2 a12 + a66) mu^2 + a22 = 0; on
 * the hole the potentials are power series in 1/zeta, zeta = exp(i theta), whose coefficients follow from the tractions
 * harmonic by harmonic. A rigid pin without friction prescribes the radial displacement where it touches and no
 * pressure where it does not; touching and gap are sorted out by turns (active set).
 *
 * <p>Angles count from axis 1. The plate is taken as wide: for a pin near an edge see {@link LamePressFit}. Out-of-plane
 * stress is zero, which fits the outer face; near the tang the glue adds its own restraint.
 *
 * @param modulus1Pascals E1, Young's modulus along axis 1 (the grain), Pa
 * @param modulus2Pascals E2, across it, Pa
 * @param poisson12 contraction along 2 over extension along 1 under stress along 1
 * @param shearPascals G12, Pa
 */
@PublishedModel(
        source = "lekhnitskii-1968",
        locator = "chapter 6, plate weakened by a circular opening",
        validity = "linear elasticity; hole small against the plate; pin stiff against the plate")
public record LekhnitskiiHole(double modulus1Pascals, double modulus2Pascals, double poisson12, double shearPascals) {
    /** Harmonics cos 2m theta of the contact pressure where the pin touches all round: they settle ten digits for wood. */
    private static final int ALL_ROUND_HARMONICS = 24;

    /** At the end of a partial contact the hoop stress has a narrow peak, which so many harmonics catch within about 5 %. */
    private static final int PARTIAL_HARMONICS = 64;

    /** Equal roots (isotropy) have another series; this relative change of G keeps them apart, at an error of 1e-7. */
    private static final double ROOTS_APART = 1e-7;

    /** Checks that the plate can be. */
    public LekhnitskiiHole {
        if (!(modulus1Pascals > 0)
                || !(modulus2Pascals > 0)
                || !(shearPascals > 0)
                || !(poisson12 * poisson12 * modulus2Pascals < modulus1Pascals)) {
            throw new IllegalArgumentException("no plate has E1 " + modulus1Pascals + ", E2 " + modulus2Pascals
                    + ", G12 " + shearPascals + " Pa with Poisson's ratio " + poisson12);
        }
    }

    /** A hole through the wide face of a scale: axis 1 is the handle's length, axis 2 its width. */
    public static LekhnitskiiHole throughScale(OrthotropicElasticity scale) {
        return new LekhnitskiiHole(
                scale.lengthModulusPascals(),
                scale.widthModulusPascals(),
                scale.lengthWidthPoisson(),
                scale.lengthWidthShearPascals());
    }

    /**
     * Hoop stress over far tension along axis 1, at the hole's sides (theta = 90 degrees): 1 + sqrt(2 (sqrt(E1/E2) -
     * nu12) + E1/G12).
     */
    public double concentrationBesideHole() {
        return 1
                + Math.sqrt(2 * (Math.sqrt(modulus1Pascals / modulus2Pascals) - poisson12)
                        + modulus1Pascals / shearPascals);
    }

    /** Hoop stress over far tension along axis 1, ahead of the hole (theta = 0): -sqrt(E2/E1). */
    public double concentrationAheadOfHole() {
        return -Math.sqrt(modulus2Pascals / modulus1Pascals);
    }

    /** The same plate with its axes exchanged, for tension along axis 2. */
    public LekhnitskiiHole turned() {
        return new LekhnitskiiHole(
                modulus2Pascals, modulus1Pascals, poisson12 * modulus2Pascals / modulus1Pascals, shearPascals);
    }

    /**
     * Stress around a rigid round pin without friction in a hole that wants to be smaller than the pin.
     *
     * @param squeeze1 how much smaller the hole would be than the pin along axis 1, of its diameter; negative for a gap
     * @param squeeze2 likewise along axis 2
     * @return no stress at all where the pin is loose both ways
     */
    public PinContact pinContact(double squeeze1, double squeeze2) {
        if (squeeze1 <= 0 && squeeze2 <= 0) {
            return new PinContact(this, new double[] {0});
        }
        double even = (squeeze1 + squeeze2) / 2;
        double oval = (squeeze1 - squeeze2) / 2;
        double[] pressure = new UnilateralContact(radialResponse(ALL_ROUND_HARMONICS))
                .allRound(even, oval)
                .orElseGet(() -> new UnilateralContact(radialResponse(PARTIAL_HARMONICS)).partial(even, oval));
        return new PinContact(this, pressure);
    }

    /** The two roots mu with positive imaginary part. */
    Complex[] roots() {
        double a11 = 1 / modulus1Pascals;
        double a22 = 1 / modulus2Pascals;
        double middle = 1 / shearPascals - 2 * poisson12 / modulus1Pascals;
        double discriminant = middle * middle - 4 * a11 * a22;
        if (Math.abs(discriminant) < ROOTS_APART * middle * middle) {
            discriminant = ROOTS_APART * middle * middle;
        }
        Complex difference = new Complex(discriminant).sqrt();
        Complex first = difference.add(middle).divide(-2 * a11).sqrt();
        Complex second = difference.negate().add(middle).divide(-2 * a11).sqrt();
        return new Complex[] {upward(first), upward(second)};
    }

    private static Complex upward(Complex root) {
        return root.getImaginary() < 0 ? root.negate() : root;
    }

    /**
     * Coefficients of zeta^-n of both potentials where on the hole dF/dx = f1 cos n theta and dF/dy = f2 sin n theta.
     */
    static Complex[] potentials(Complex[] mu, double f1, double f2) {
        Complex b = new Complex(f1 / 2);
        Complex c = new Complex(0, f2 / 2);
        Complex apart = mu[0].subtract(mu[1]);
        return new Complex[] {
            c.subtract(mu[1].multiply(b)).divide(apart),
            mu[0].multiply(b).subtract(c).divide(apart)
        };
    }

    /** Share of a pressure cos 2m theta in f1 of harmonic 2m + 1 (side = 1) or |2m - 1| (side = -1). */
    static double share1(int m, int side) {
        return side > 0 ? -0.5 / (2 * m + 1) : m == 0 ? -0.5 : 0.5 / (2 * m - 1);
    }

    /** Share of a pressure cos 2m theta in f2 of harmonic 2m + 1 (side = 1) or |2m - 1| (side = -1). */
    static double share2(int m, int side) {
        return side > 0 ? -0.5 / (2 * m + 1) : m == 0 ? -0.5 : -0.5 / (2 * m - 1);
    }

    /** Radial displacement over radius (rows: cos 2k theta) from pressure (columns: cos 2m theta), 1/Pa. */
    private RealMatrix radialResponse(int harmonics) {
        Complex[] mu = roots();
        double a11 = 1 / modulus1Pascals;
        double a12 = -poisson12 / modulus1Pascals;
        double a22 = 1 / modulus2Pascals;
        RealMatrix response = new Array2DRowRealMatrix(harmonics + 1, harmonics + 1);
        for (int m = 0; m <= harmonics; m++) {
            for (int side = -1; side <= 1; side += 2) {
                int n = Math.abs(2 * m + side);
                Complex[] a = potentials(mu, share1(m, side), share2(m, side));
                double u = 0;
                double v = 0;
                for (int k = 0; k < 2; k++) {
                    Complex p = mu[k].multiply(mu[k]).multiply(a11).add(a12);
                    Complex q = mu[k].multiply(a12).add(mu[k].reciprocal().multiply(a22));
                    u += 2 * p.multiply(a[k]).getReal();
                    v += 2 * q.multiply(a[k]).getImaginary();
                }
                int outer = (n + 1) / 2;
                int inner = (n - 1) / 2;
                if (outer <= harmonics) {
                    response.addToEntry(outer, m, (u - v) / 2);
                }
                response.addToEntry(inner, m, (u + v) / 2);
            }
        }
        return response;
    }
}
