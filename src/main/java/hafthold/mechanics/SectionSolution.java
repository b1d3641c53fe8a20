package hafthold.mechanics;

import hafthold.numeric.SymmetricBandMatrix;
import java.util.List;

/**
 * Displacements of a section under each of several free strains, the extension out of the section held at zero (plane
 * strain); linear elasticity by the displacement method.
 */
final class SectionSolution {
    private static final int N = SerendipityRectangle.NODES;

    private final SectionGrid grid;
    private final PlaneStiffness[] material;
    private final int modes;
    private final double[] displacement;

    /** Stress that would block each mode, by row and mode: along, through, out. */
    private final double[] blocked1;

    private final double[] blocked2;
    private final double[] blocked3;

    /**
     * Assembles, factors once and solves for all modes.
     *
     * @param grid elements
     * @param material stiffness of each layer
     * @param freeStrains the modes, at least one
     */
    SectionSolution(SectionGrid grid, PlaneStiffness[] material, List<FreeStrain> freeStrains) {
        this.grid = grid;
        this.material = material.clone();
        this.modes = freeStrains.size();
        this.blocked1 = new double[grid.rows() * modes];
        this.blocked2 = new double[grid.rows() * modes];
        this.blocked3 = new double[grid.rows() * modes];
        for (int row = 0; row < grid.rows(); row++) {
            PlaneStiffness c = material[grid.layerOfRow(row)];
            for (int m = 0; m < modes; m++) {
                FreeStrain free = freeStrains.get(m);
                if (free.covers(row)) {
                    blocked1[row * modes + m] = c.stress1(free.along(), free.through(), free.out());
                    blocked2[row * modes + m] = c.stress2(free.along(), free.through(), free.out());
                    blocked3[row * modes + m] = c.stress3(free.along(), free.through(), free.out());
                }
            }
        }
        SymmetricBandMatrix matrix = new SymmetricBandMatrix(grid.unknowns(), grid.halfBandwidth());
        this.displacement = new double[grid.unknowns() * modes];
        assemble(matrix);
        matrix.factor().solve(displacement, modes);
    }

    private void assemble(SymmetricBandMatrix matrix) {
        double[] element = new double[4 * N * N];
        int[] number = new int[2 * N];
        for (int column = 0; column < grid.columns(); column++) {
            for (int row = 0; row < grid.rows(); row++) {
                number(column, row, number);
                SerendipityRectangle.stiffness(
                        material[grid.layerOfRow(row)], grid.width(column), grid.height(row), element);
                for (int i = 0; i < 2 * N; i++) {
                    for (int j = 0; j <= i; j++) {
                        if (number[i] != SectionGrid.HELD && number[j] != SectionGrid.HELD) {
                            matrix.add(number[i], number[j], element[i * 2 * N + j]);
                        }
                    }
                }
                for (int a = 0; a < N; a++) {
                    load(number[2 * a], SerendipityRectangle.slope1(a, grid.height(row)), blocked1, row);
                    load(number[2 * a + 1], SerendipityRectangle.slope2(a, grid.width(column)), blocked2, row);
                }
            }
        }
    }

    private void load(int unknown, double factor, double[] stress, int row) {
        if (unknown != SectionGrid.HELD) {
            for (int m = 0; m < modes; m++) {
                displacement[unknown * modes + m] += factor * stress[row * modes + m];
            }
        }
    }

    private void number(int column, int row, int[] target) {
        for (int a = 0; a < N; a++) {
            int node = grid.node(2 * column + SerendipityRectangle.COLUMN[a], 2 * row + SerendipityRectangle.ROW[a]);
            target[2 * a] = grid.unknown(node, 0);
            target[2 * a + 1] = grid.unknown(node, 1);
        }
    }

    int modes() {
        return modes;
    }

    SectionGrid grid() {
        return grid;
    }

    PlaneStiffness material(int row) {
        return material[grid.layerOfRow(row)];
    }

    /** Adds a displacement, times a weight, to a row of one number a mode. */
    void addDisplacement(int halfColumn, int halfRow, int direction, double weight, double[] target) {
        int unknown = grid.unknown(grid.node(halfColumn, halfRow), direction);
        if (unknown != SectionGrid.HELD) {
            for (int m = 0; m < modes; m++) {
                target[m] += weight * displacement[unknown * modes + m];
            }
        }
    }

    /**
     * Adds the integral over one element of the stresses, Pa m2.
     *
     * @param target along, through, out, shear: one row a stress, one number a mode
     */
    void addStress(int column, int row, double[][] target) {
        PlaneStiffness c = material(row);
        double width = grid.width(column);
        double height = grid.height(row);
        for (int a = 0; a < N; a++) {
            int node = grid.node(2 * column + SerendipityRectangle.COLUMN[a], 2 * row + SerendipityRectangle.ROW[a]);
            double slope1 = SerendipityRectangle.slope1(a, height);
            double slope2 = SerendipityRectangle.slope2(a, width);
            int u = grid.unknown(node, 0);
            int v = grid.unknown(node, 1);
            if (u != SectionGrid.HELD) {
                addStressOf(u, c.c11() * slope1, c.c12() * slope1, c.c13() * slope1, c.c66() * slope2, target);
            }
            if (v != SectionGrid.HELD) {
                addStressOf(v, c.c12() * slope2, c.c22() * slope2, c.c23() * slope2, c.c66() * slope1, target);
            }
        }
        double area = width * height;
        for (int m = 0; m < modes; m++) {
            target[0][m] -= area * blocked1[row * modes + m];
            target[1][m] -= area * blocked2[row * modes + m];
            target[2][m] -= area * blocked3[row * modes + m];
        }
    }

    private void addStressOf(int unknown, double along, double through, double out, double shear, double[][] target) {
        for (int m = 0; m < modes; m++) {
            double u = displacement[unknown * modes + m];
            target[0][m] += along * u;
            target[1][m] += through * u;
            target[2][m] += out * u;
            target[3][m] += shear * u;
        }
    }

    /**
     * Adds the stresses on the mid-section plane x = 0, mean over the height of one row, times a weight.
     *
     * <p>There u is odd in x, so from u = a x + b x^3 through the first two half columns a = (8 u1 - u2) / (3 h).
     */
    void addMiddleStress(int row, double weight, double[] along, double[] out) {
        double h = grid.width(0);
        double[] strain1 = new double[modes];
        double[] strain2 = new double[modes];
        double[] place = {1 / 6.0, 4 / 6.0, 1 / 6.0};
        for (int r = 0; r < 3; r++) {
            addDisplacement(2, 2 * row + r, 0, -place[r] / (3 * h), strain1);
            double first = 8 * place[r] / (3 * h);
            if (r != 1) {
                addDisplacement(1, 2 * row + r, 0, first, strain1);
            } else {
                // No node in the middle of an element: the serendipity value is half the mid-sides less a quarter of
                // the corners; those on x = 0 stand still.
                addDisplacement(2, 2 * row + 1, 0, first / 2, strain1);
                for (int side = 0; side <= 2; side += 2) {
                    addDisplacement(1, 2 * row + side, 0, first / 2, strain1);
                    addDisplacement(2, 2 * row + side, 0, -first / 4, strain1);
                }
            }
        }
        addDisplacement(0, 2 * row, 1, -1 / grid.height(row), strain2);
        addDisplacement(0, 2 * row + 2, 1, 1 / grid.height(row), strain2);
        PlaneStiffness c = material(row);
        for (int m = 0; m < modes; m++) {
            along[m] += weight * (c.stress1(strain1[m], strain2[m], 0) - blocked1[row * modes + m]);
            out[m] += weight * (c.stress3(strain1[m], strain2[m], 0) - blocked3[row * modes + m]);
        }
    }
}
