package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The length section against published theories of bonded joints, all for plane stress: that is what a section becomes
 * once no part contracts out of it.
 */
class ShearLagTheoryTest {
    private static final double HALF_LENGTH = 55e-3;
    private static final double MISMATCH = 0.00236;
    private static final double STEEL = 200e9;
    private static final double ACRYLIC = 3.2e9;

    private static OrthotropicElasticity planeStress(double young, double poisson) {
        double shear = young / (2 * (1 + poisson));
        return new OrthotropicElasticity(young, young, young, shear, shear, shear, 0, poisson, 0);
    }

    private static SectionInfluence section(double scaleThickness, double glueThickness, OrthotropicElasticity glue) {
        Layup layup = new Layup(
                new SectionLayer(4e-3, planeStress(STEEL, 0.29)),
                new SectionLayer(glueThickness, glue),
                new SectionLayer(scaleThickness, planeStress(ACRYLIC, 0.37)));
        return BondedSection.alongLength(HALF_LENGTH, layup).influence(OutOfSection.FREE, 1);
    }

    /** Mean over the last part of tau = mismatch / (kappa k) sinh(k x) / cosh(k l). */
    private static double meanShear(double kappa, double k, double part) {
        return MISMATCH
                / (kappa * k * k * part)
                * (Math.cosh(k * HALF_LENGTH) - Math.cosh(k * (HALF_LENGTH - part)))
                / Math.cosh(k * HALF_LENGTH);
    }

    /**
     * Suhir 1986, Stresses in bi-metal thermostats (interfacial compliance t/G + h1/3G1 + h2/3G2): mean over the last 2
     * mm within the 8 % that the theory is good for.
     */
    @Test
    void acrylicInFrostAgreesWithSuhir() {
        double kappa = 0.1e-3 / (2e9 / 2.76) + 7e-3 / (3 * ACRYLIC / 2.74) + 2e-3 / (3 * STEEL / 2.58);
        double k = Math.sqrt((1 / (ACRYLIC * 7e-3) + 1 / (STEEL * 2e-3)) / kappa);
        SectionInfluence influence = section(7e-3, 0.1e-3, planeStress(2e9, 0.38));
        double[] frost = influence.evenScaleStrain(MISMATCH, MISMATCH, MISMATCH);
        double suhir = meanShear(kappa, k, 2e-3);
        assertEquals(6.4229999e6, suhir, 1);
        assertEquals(suhir, influence.value(SectionOutput.GLUE_SHEAR_2_MM, frost), 0.08 * suhir);
    }

    /** Reference finite elements of the project, plane stress: 7.49 and 6.49 MPa over 1 and 2 mm. */
    @Test
    void acrylicInFrostAgreesWithPlaneStressElements() {
        SectionInfluence influence = section(7e-3, 0.1e-3, planeStress(2e9, 0.38));
        double[] frost = influence.evenScaleStrain(0.0028, 0.0028, 0.0028);
        frost[influence.tangColumn()] = 40 * 11e-6;
        frost[influence.glueColumn()] = 40 * 60e-6;
        assertEquals(7.49e6, influence.value(SectionOutput.GLUE_SHEAR_1_MM, frost), 0.005e6);
        assertEquals(6.49e6, influence.value(SectionOutput.GLUE_SHEAR_2_MM, frost), 0.005e6);
    }

    /**
     * Chen and Nelson 1979, Thermal stress in bonded joints: only the glue gives in shear. True as the parts become thin
     * against the length over which the load passes and the glue thin against the millimetre it is averaged over.
     */
    @Test
    void thinPartsAgreeWithChenAndNelson() {
        double lastError = 0.1;
        for (double scale : new double[] {1e-3, 0.5e-3, 0.25e-3}) {
            double glueThickness = 0.01e-3;
            double kappa = 1e-10;
            double young = 2 * glueThickness / kappa;
            double k = Math.sqrt((1 / (ACRYLIC * scale) + 1 / (STEEL * 2e-3)) / kappa);
            SectionInfluence influence = section(scale, glueThickness, planeStress(young, 0));
            double[] mismatch = influence.evenScaleStrain(MISMATCH, MISMATCH, MISMATCH);
            double theory = meanShear(kappa, k, 2e-3);
            double error = Math.abs(influence.value(SectionOutput.GLUE_SHEAR_2_MM, mismatch) / theory - 1);
            assertTrue(error < 0.7 * lastError, scale + " m: " + error);
            lastError = error;
        }
        assertTrue(lastError < 0.01);
    }

    /** A wide handle cannot contract sideways either: plane stress would understate its glue shear by 38 %. */
    @Test
    void wideHandleCarriesMoreShearThanAStrip() {
        SectionInfluence wide = BondedSection.alongLength(HALF_LENGTH, Handles.layup(Handles.ACRYLIC))
                .influence();
        double[] frost = wide.evenScaleStrain(MISMATCH, MISMATCH, MISMATCH);
        double strip = section(7e-3, 0.1e-3, planeStress(2e9, 0.38)).value(SectionOutput.GLUE_SHEAR_1_MM, frost);
        assertEquals(0.38, 1 - strip / wide.value(SectionOutput.GLUE_SHEAR_1_MM, frost), 0.005);
    }
}
