package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Cut.Shares;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

/** Swelling of grain in every direction, against averages worked out another way and against an exact relation. */
class RosenHashinAggregateTest {
    /** Black walnut, ratios of Wood Handbook Table 5-1 and 5-2 (2010), E_L 12.76 GPa. */
    private static final OrthotropicElasticity WALNUT = new OrthotropicElasticity(
            12.76e9, 0.65e9, 1.23e9, 0.72e9, 0.99e9, 0.244e9, 0.632, 0.495, 0.718 * 0.65 / 1.23);

    /** A grain alike in every direction across it, for which there is an exact relation. */
    private static final OrthotropicElasticity ROUND =
            new OrthotropicElasticity(12e9, 0.9e9, 0.9e9, 0.8e9, 0.8e9, 0.9e9 / 2.8, 0.5, 0.5, 0.4);

    private static final double ALONG = 0.005;
    private static final double ACROSS = 0.078;
    private static final double THROUGH = 0.055;

    @Test
    void grainAlikeInEveryDirectionWeighsAlike() {
        RosenHashinAggregate glass = new RosenHashinAggregate(OrthotropicElasticity.isotropic(3e9, 0.35));
        assertAll(
                () -> assertEquals(1 / 3.0, glass.held().along(), 1e-12),
                () -> assertEquals(1 / 3.0, glass.embedded().along(), 1e-9),
                () -> assertEquals(3e9 / (3 * (1 - 0.7)), glass.bulkPascals(), 1),
                () -> assertEquals(3e9, glass.stiffness().widthModulusPascals(), 1),
                () -> assertEquals(1, glass.tensionAcross(), 1e-9));
    }

    /** Tensors turned through a rule of angles that is exact to fourth rank, averaged one by one. */
    @Test
    void heldGrainSwellsAsTurnedTensorsAverage() {
        double[] strain = {ALONG, ACROSS, THROUGH};
        double[][] c = normalStiffness(WALNUT);
        double stress = 0;
        double stiffness = 0;
        GaussIntegrator tilts = new GaussIntegratorFactory().legendre(5);
        int turns = 8;
        for (int t = 0; t < tilts.getNumberOfPoints(); t++) {
            double cosine = tilts.getPoint(t);
            double sine = Math.sqrt(1 - cosine * cosine);
            for (int k = 0; k < turns; k++) {
                double angle = 2 * Math.PI * k / turns;
                double[] n = {cosine, sine * Math.cos(angle), sine * Math.sin(angle)};
                for (int i = 0; i < 3; i++) {
                    for (int j = 0; j < 3; j++) {
                        double weight = tilts.getWeight(t) / turns * n[i] * n[i];
                        stress += weight * c[i][j] * strain[j];
                        stiffness += weight * c[i][j];
                    }
                }
            }
        }
        assertEquals(stress / stiffness, swelling(new RosenHashinAggregate(WALNUT).held()), 1e-9);
    }

    /**
     * Numbers of a separate script that sums 6 x 6 matrices in Mandel's notation: held 2.2017, embedded 3.8176, free 4.6
     * for strains of 0.5, 7.8 and 5.5; bulk 1.2309 and Young's modulus 1.6848 GPa; tension across 0.5557.
     */
    @Test
    void walnutGrainAgreesWithAnotherSum() {
        RosenHashinAggregate walnut = new RosenHashinAggregate(WALNUT);
        assertAll(
                () -> assertEquals(0.022017, swelling(walnut.held()), 5e-7),
                () -> assertEquals(0.038176, swelling(walnut.embedded()), 5e-7),
                () -> assertEquals(0.046, swelling(walnut.free()), 5e-7),
                () -> assertEquals(1.2309e9, walnut.bulkPascals(), 5e4),
                () -> assertEquals(1.6848e9, walnut.stiffness().widthModulusPascals(), 5e4),
                () -> assertEquals(0.55568, walnut.tensionAcross(), 5e-6));
    }

    /** Voigt and Reuss bound what any even mixture can have (Hill 1952). */
    @Test
    void theMixtureIsStifferThanAllGrainsInARowAndSofterThanAllSideBySide() {
        double[][] c = normalStiffness(WALNUT);
        double stiff = c[0][0] + c[1][1] + c[2][2];
        double pairs = c[0][1] + c[0][2] + c[1][2];
        double shears = WALNUT.lengthWidthShearPascals()
                + WALNUT.lengthThicknessShearPascals()
                + WALNUT.widthThicknessShearPascals();
        double voigt = (stiff - pairs + 3 * shears) / 15;
        double slips = 1 / WALNUT.lengthWidthShearPascals()
                + 1 / WALNUT.lengthThicknessShearPascals()
                + 1 / WALNUT.widthThicknessShearPascals();
        double soft = 0;
        double softPairs = 0;
        for (HandleAxis a : HandleAxis.values()) {
            for (HandleAxis b : HandleAxis.values()) {
                soft += a == b ? WALNUT.compliancePerPascal(a, a) : 0;
                softPairs += a == b ? 0 : WALNUT.compliancePerPascal(a, b) / 2;
            }
        }
        double reuss = 15 / (4 * (soft - softPairs) + 3 * slips);
        double shear = new RosenHashinAggregate(WALNUT).stiffness().lengthWidthShearPascals();
        assertTrue(shear > reuss && shear < voigt, reuss + " " + shear + " " + voigt);
    }

    /**
     * For grain that is round about its axis swelling and bulk modulus are bound together (Levin 1967, Hashin 1984, as
     * remembered): swelling runs on a straight line with 1/K between the bounds, whatever the shape of the grains.
     */
    @Test
    void roundGrainKeepsTheExactRelationOfSwellingAndBulkModulus() {
        RosenHashinAggregate grain = new RosenHashinAggregate(ROUND);
        double[][] c = normalStiffness(ROUND);
        double voigt = 0;
        for (double[] row : c) {
            for (double entry : row) {
                voigt += entry / 9;
            }
        }
        double reuss = 1
                / (1 / ROUND.lengthModulusPascals()
                        + 2 / ROUND.widthModulusPascals()
                        - 4 * ROUND.lengthWidthPoisson() / ROUND.lengthModulusPascals()
                        - 2 * ROUND.widthThicknessPoisson() / ROUND.widthModulusPascals());
        double share = (1 / grain.bulkPascals() - 1 / reuss) / (1 / voigt - 1 / reuss);
        double free = grain.free().along();
        assertEquals(
                free + share * (grain.held().along() - free), grain.embedded().along(), 1e-9);
        assertTrue(share > 0 && share < 1, "share " + share);
    }

    @Test
    void embeddedGrainSwellsLessThanFreeAndMoreThanHeld() {
        RosenHashinAggregate walnut = new RosenHashinAggregate(WALNUT);
        assertTrue(swelling(walnut.held()) < swelling(walnut.embedded()));
        assertTrue(swelling(walnut.embedded()) < swelling(walnut.free()));
    }

    private static double swelling(Shares shares) {
        return shares.mean(ALONG, ACROSS, THROUGH);
    }

    /** Stiffness among length, width and thickness, from the section's. */
    private static double[][] normalStiffness(OrthotropicElasticity grain) {
        PlaneStiffness c = grain.inSection(HandleAxis.WIDTH);
        return new double[][] {
            {c.c33(), c.c13(), c.c23()},
            {c.c13(), c.c11(), c.c12()},
            {c.c23(), c.c12(), c.c22()}
        };
    }
}
