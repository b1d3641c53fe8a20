package hafthold.mechanics;

import hafthold.material.Cut.Shares;
import hafthold.source.PublishedModel;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How far an even mixture of grain directions swells, as in burl: stiff grain that lies along holds back soft grain that
 * lies across.
 *
 * <p>The strain e of the mixture, alike in every direction, is a weighted mean of the three principal strains e_j of its
 * grain; the weights add up to 1 and follow from the grain's elastic constants:
 *
 * <ul>
 *   <li>every grain free of stress (Reuss): 1/3 each, the largest strain a mixture of wood can have;
 *   <li>every grain stretched alike (Voigt): w_j = sum_i C_ij / sum_ij C_ij, the smallest;
 *   <li>every grain a ball in the mixture itself (self-consistent; Hershey 1954, Kroener 1958): w_j = sum_i B_ij / sum_ij
 *       B_ij, with B = (C + C*)^-1 C and C* the stiffness with which the mixture holds a ball: bulk 4 G/3, shear G (9 K +
 *       8 G) / (6 (K + 2 G)); K and G of the mixture follow from the same averages.
 * </ul>
 *
 * <p>Swelling enters as thermal expansion does. The bounds hold for any elastic mixture without preferred direction;
 * grain that yields or creeps nears the free one.
 */
@PublishedModel(
        source = "rosen-hashin-1970",
        locator = "bounds on the expansion of a mixture from its stiffness (after Levin 1967), for grains of one kind",
        validity = "elastic grains in every direction alike, firmly joined; linear strains")
public final class RosenHashinAggregate {
    private static final int MOST_ROUNDS = 500;
    private static final double SETTLED = 1e-12;

    private final RealMatrix stiffness;
    private final double[] shears;
    private final double voigtBulk;
    private final double startShear;

    /** Takes the grain along its own axes: length along it, width tangential, thickness radial. */
    public RosenHashinAggregate(OrthotropicElasticity grain) {
        HandleAxis[] axes = HandleAxis.values();
        double[][] compliance = new double[axes.length][axes.length];
        for (HandleAxis a : axes) {
            for (HandleAxis b : axes) {
                compliance[a.place()][b.place()] = grain.compliancePerPascal(a, b);
            }
        }
        stiffness = inverse(new Array2DRowRealMatrix(compliance, false));
        shears = new double[] {
            grain.lengthWidthShearPascals(), grain.lengthThicknessShearPascals(), grain.widthThicknessShearPascals()
        };
        voigtBulk = sum(stiffness) / 9;
        startShear = shears[2];
    }

    /** Weights where every grain is free of stress; along, across, through. */
    public Shares free() {
        return new Shares(1 / 3.0, 1 / 3.0, 1 / 3.0);
    }

    /** Weights where every grain is stretched alike. */
    public Shares held() {
        return columns(stiffness);
    }

    /** Weights where every grain is a ball in the mixture. */
    public Shares embedded() {
        return columns(settled().yielding().multiply(stiffness));
    }

    /** Bulk modulus of the mixture where every grain is a ball in it, Pa. */
    public double bulkPascals() {
        return settled().bulk();
    }

    /** Elastic constants of the mixture where every grain is a ball in it, the same in every direction. */
    public OrthotropicElasticity stiffness() {
        Settled mixture = settled();
        double young = 9 * mixture.bulk() * mixture.shear() / (3 * mixture.bulk() + mixture.shear());
        return OrthotropicElasticity.isotropic(young, young / (2 * mixture.shear()) - 1);
    }

    /**
     * Tension in grain that lies across a pull, along the width, over the mean tension of the mixture: below 1, since soft
     * grain leaves the pull to the stiff grain beside it.
     *
     * <p>C (C + C*)^-1 (K, G mixture + C*) applied to the mean strain under one tension.
     */
    public double tensionAcross() {
        Settled mixture = settled();
        double holdingBulk = holdingBulk(mixture.shear());
        double holdingShear = holdingShear(mixture.bulk(), mixture.shear());
        RealMatrix mean = isotropic(mixture.bulk(), mixture.shear());
        RealMatrix local = mixture.yielding()
                .multiply(mean.add(isotropic(holdingBulk, holdingShear)))
                .multiply(inverse(mean));
        return stiffness.multiply(local).getEntry(HandleAxis.WIDTH.place(), HandleAxis.WIDTH.place());
    }

    /**
     * A mixture that holds its grains as stiffly as they make it.
     *
     * @param yielding (C + C*)^-1 among the three normal directions
     */
    private record Settled(double bulk, double shear, RealMatrix yielding) {}

    /** Throws IllegalStateException when the averages do not settle, which no stable grain is known to cause. */
    private Settled settled() {
        double bulk = voigtBulk;
        double shear = startShear;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double holdingBulk = holdingBulk(shear);
            double holdingShear = holdingShear(bulk, shear);
            RealMatrix yielding = inverse(stiffness.add(isotropic(holdingBulk, holdingShear)));
            double dilation = sum(yielding) / 3;
            double distortion = yielding.getTrace() - dilation;
            for (double g : shears) {
                distortion += 1 / (2 * (g + holdingShear));
            }
            double nextBulk = 1 / (3 * dilation) - holdingBulk;
            double nextShear = 5 / (2 * distortion) - holdingShear;
            if (Math.abs(nextBulk - bulk) + Math.abs(nextShear - shear) <= SETTLED * voigtBulk) {
                return new Settled(nextBulk, nextShear, yielding);
            }
            bulk = nextBulk;
            shear = nextShear;
        }
        throw new IllegalStateException("the stiffness of a mixture of grains did not settle");
    }

    private static double holdingBulk(double shear) {
        return 4 * shear / 3;
    }

    private static double holdingShear(double bulk, double shear) {
        return shear * (9 * bulk + 8 * shear) / (6 * (bulk + 2 * shear));
    }

    private static RealMatrix isotropic(double bulk, double shear) {
        double off = bulk - 2 * shear / 3;
        double on = off + 2 * shear;
        return new Array2DRowRealMatrix(new double[][] {{on, off, off}, {off, on, off}, {off, off, on}}, false);
    }

    /** Sums of the columns over the sum of all. */
    private static Shares columns(RealMatrix matrix) {
        double all = sum(matrix);
        return new Shares(columnSum(matrix, 0) / all, columnSum(matrix, 1) / all, columnSum(matrix, 2) / all);
    }

    private static double columnSum(RealMatrix matrix, int column) {
        return matrix.getEntry(0, column) + matrix.getEntry(1, column) + matrix.getEntry(2, column);
    }

    private static double sum(RealMatrix matrix) {
        return columnSum(matrix, 0) + columnSum(matrix, 1) + columnSum(matrix, 2);
    }

    private static RealMatrix inverse(RealMatrix matrix) {
        return new LUDecomposition(matrix).getSolver().getInverse();
    }
}
