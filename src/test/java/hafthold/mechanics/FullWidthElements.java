package hafthold.mechanics;

import hafthold.numeric.SymmetricBandMatrix;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A second, plainer program for the cross-section of the walnut-like handle: both flanks, numerical integration element
 * by element, and a scale whose rings may stand at any angle. It shows what the quarter model leaves out.
 */
final class FullWidthElements {
    private static final int N = SerendipityRectangle.NODES;
    private static final double[] POINT = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
    private static final double[] WEIGHT = {5 / 9.0, 8 / 9.0, 5 / 9.0};

    private final SectionGrid quarter = SectionGrading.grid(Handles.walnut(), 0);
    private final int columns = 2 * quarter.columns();
    private final double[] x = new double[columns + 1];
    private final int[][] node = new int[2 * columns + 1][2 * quarter.rows() + 1];
    private final int[] number;
    private final double[] displacement;

    /** Solves plane strain for a ring angle and the free strains tangential and radial to the rings. */
    FullWidthElements(double ringAngle, double tangential, double radial) {
        for (int i = 0; i <= quarter.columns(); i++) {
            x[quarter.columns() + i] = quarter.columnSide(i);
            x[quarter.columns() - i] = -quarter.columnSide(i);
        }
        int nodes = 0;
        for (int c = 0; c <= 2 * columns; c++) {
            for (int r = 0; r <= 2 * quarter.rows(); r++) {
                node[c][r] = c % 2 == 1 && r % 2 == 1 ? -1 : nodes++;
            }
        }
        number = new int[2 * nodes];
        int unknowns = 0;
        for (int c = 0; c <= 2 * columns; c++) {
            for (int r = 0; r <= 2 * quarter.rows(); r++) {
                if (node[c][r] >= 0) {
                    number[2 * node[c][r]] = c == columns && r == 0 ? -1 : unknowns++;
                    number[2 * node[c][r] + 1] = r == 0 ? -1 : unknowns++;
                }
            }
        }
        double[][][] stiffness = {
            turned(Handles.STEEL, 0), turned(Handles.EPOXY, 0), turned(Handles.WALNUT_FLAT, ringAngle)
        };
        double c = Math.cos(ringAngle);
        double s = Math.sin(ringAngle);
        double[] free = {
            c * c * tangential + s * s * radial,
            s * s * tangential + c * c * radial,
            0,
            2 * s * c * (tangential - radial)
        };
        int band = 2 * (3 * quarter.rows() + 5);
        SymmetricBandMatrix matrix = new SymmetricBandMatrix(unknowns, band);
        displacement = new double[unknowns];
        for (int column = 0; column < columns; column++) {
            for (int row = 0; row < quarter.rows(); row++) {
                int layer = quarter.layerOfRow(row);
                add(column, row, stiffness[layer], layer == 2 ? free : new double[4], matrix);
            }
        }
        matrix.factor().solve(displacement, 1);
    }

    private void add(int column, int row, double[][] c, double[] free, SymmetricBandMatrix matrix) {
        double width = x[column + 1] - x[column];
        double height = quarter.height(row);
        for (double xi : POINT) {
            for (double eta : POINT) {
                double weight = WEIGHT[xi == 0 ? 1 : 0] * WEIGHT[eta == 0 ? 1 : 0] * width * height / 4;
                RealMatrix b = new Array2DRowRealMatrix(4, 2 * N);
                for (int a = 0; a < N; a++) {
                    int i = SerendipityRectangle.COLUMN[a] - 1;
                    int j = SerendipityRectangle.ROW[a] - 1;
                    double alongX = slope(xi, eta, i, j) * 2 / width;
                    double alongY = slope(eta, xi, j, i) * 2 / height;
                    b.setEntry(0, 2 * a, alongX);
                    b.setEntry(1, 2 * a + 1, alongY);
                    b.setEntry(3, 2 * a, alongY);
                    b.setEntry(3, 2 * a + 1, alongX);
                }
                RealMatrix stress = new Array2DRowRealMatrix(c).multiply(b);
                RealMatrix element = b.transpose().multiply(stress);
                double[] load = stress.preMultiply(free);
                for (int p = 0; p < 2 * N; p++) {
                    int to = number(column, row, p);
                    if (to >= 0) {
                        displacement[to] += weight * load[p];
                        for (int q = 0; q < 2 * N; q++) {
                            int from = number(column, row, q);
                            if (from >= 0 && from <= to) {
                                matrix.add(to, from, weight * element.getEntry(p, q));
                            }
                        }
                    }
                }
            }
        }
    }

    private int number(int column, int row, int unknown) {
        int a = unknown / 2;
        int at = node[2 * column + SerendipityRectangle.COLUMN[a]][2 * row + SerendipityRectangle.ROW[a]];
        return number[2 * at + unknown % 2];
    }

    private static double slope(double s, double t, int i, int j) {
        if (i == 0) {
            return -s * (1 + t * j);
        }
        return j == 0 ? 0.5 * i * (1 - t * t) : 0.25 * i * (1 + t * j) * (2 * s * i + t * j);
    }

    /** Stiffness against strains xx, yy, zz, xy after turning about z, Pa. */
    private static double[][] turned(OrthotropicElasticity e, double angle) {
        double s33 = 1 / e.lengthModulusPascals();
        double s11 = 1 / e.widthModulusPascals();
        double s12 = -e.widthThicknessPoisson() * s11;
        double s13 = -e.lengthWidthPoisson() * s33;
        double s23 = -e.lengthThicknessPoisson() * s33;
        double[][] compliance = {
            {s11, s12, s13, 0},
            {s12, 1 / e.thicknessModulusPascals(), s23, 0},
            {s13, s23, s33, 0},
            {0, 0, 0, 1 / e.widthThicknessShearPascals()}
        };
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        RealMatrix turn = new Array2DRowRealMatrix(new double[][] {
            {c * c, s * s, 0, s * c}, {s * s, c * c, 0, -s * c}, {0, 0, 1, 0}, {-2 * s * c, 2 * s * c, 0, c * c - s * s}
        });
        RealMatrix stiffness = new LUDecomposition(new Array2DRowRealMatrix(compliance), 0)
                .getSolver()
                .getInverse();
        return turn.transpose().multiply(stiffness).multiply(turn).getData();
    }

    /** Outer corner of a flank against the steel corner, m, positive proud; side 1 or -1. */
    double outerOffset(int side) {
        int c = side > 0 ? 2 * columns : 0;
        double corner = displacement[number[2 * node[c][2 * quarter.rows()]]];
        double steel = displacement[number[2 * node[c][2 * quarter.firstRow(1)]]];
        return side * (corner - steel);
    }

    /** Rise of the outer face in the middle, m. */
    double centreRise() {
        return displacement[number[2 * node[columns][2 * quarter.rows()] + 1]];
    }

    /** Rise of the outer corner of a flank, m; side 1 or -1. */
    double cornerRise(int side) {
        return displacement[number[2 * node[side > 0 ? 2 * columns : 0][2 * quarter.rows()] + 1]];
    }
}
