package hafthold.mechanics;

/**
 * The eight-node serendipity element on a rectangle (Zienkiewicz and Taylor, The finite element method, shape functions
 * of the quadratic serendipity family): corners first, then mid-sides, both counter-clockwise from the lower left.
 *
 * <p>All elements of a {@link SectionGrid} are rectangles, so every integral is a reference integral times a ratio of
 * side lengths: the reference integrals are taken once, exactly, by the 3 x 3 Gauss rule.
 */
final class SerendipityRectangle {
    static final int NODES = 8;

    /** Position of each node in half sides from the lower left corner. */
    static final int[] COLUMN = {0, 2, 2, 0, 1, 2, 1, 0};

    static final int[] ROW = {0, 0, 2, 2, 0, 1, 2, 1};

    /** Integrals of N_a,xi N_b,xi, of N_a,eta N_b,eta and of N_a,xi N_b,eta over the square -1..1. */
    private static final double[] XX = new double[NODES * NODES];

    private static final double[] YY = new double[NODES * NODES];
    private static final double[] XY = new double[NODES * NODES];

    /** Integrals of N_a,xi and N_a,eta over the square. */
    private static final double[] X = new double[NODES];

    private static final double[] Y = new double[NODES];

    static {
        double[] point = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
        double[] weight = {5 / 9.0, 8 / 9.0, 5 / 9.0};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double w = weight[i] * weight[j];
                double[] slopeXi = new double[NODES];
                double[] slopeEta = new double[NODES];
                for (int a = 0; a < NODES; a++) {
                    slopeXi[a] = slope(point[i], point[j], COLUMN[a] - 1, ROW[a] - 1);
                    slopeEta[a] = slope(point[j], point[i], ROW[a] - 1, COLUMN[a] - 1);
                    X[a] += w * slopeXi[a];
                    Y[a] += w * slopeEta[a];
                }
                for (int a = 0; a < NODES; a++) {
                    for (int b = 0; b < NODES; b++) {
                        XX[a * NODES + b] += w * slopeXi[a] * slopeXi[b];
                        YY[a * NODES + b] += w * slopeEta[a] * slopeEta[b];
                        XY[a * NODES + b] += w * slopeXi[a] * slopeEta[b];
                    }
                }
            }
        }
    }

    private SerendipityRectangle() {}

    /** Derivative along the first direction of the shape function whose node sits at (node, otherNode). */
    private static double slope(double s, double t, int node, int otherNode) {
        if (node == 0) {
            return -s * (1 + t * otherNode);
        }
        if (otherNode == 0) {
            return 0.5 * node * (1 - t * t);
        }
        return 0.25 * node * (1 + t * otherNode) * (2 * s * node + t * otherNode);
    }

    /**
     * Stiffness of one rectangle of unit depth.
     *
     * @param material stiffness, Pa
     * @param width along axis 1, m
     * @param height along axis 2, m
     * @param target receives 16 x 16 numbers, Pa, unknowns in the order u1, u2 of node 0, u1, u2 of node 1, ...
     */
    static void stiffness(PlaneStiffness material, double width, double height, double[] target) {
        double slim = height / width;
        double stout = width / height;
        for (int a = 0; a < NODES; a++) {
            for (int b = 0; b < NODES; b++) {
                int ab = a * NODES + b;
                int ba = b * NODES + a;
                int at = 2 * a * 2 * NODES + 2 * b;
                target[at] = material.c11() * slim * XX[ab] + material.c66() * stout * YY[ab];
                target[at + 1] = material.c12() * XY[ab] + material.c66() * XY[ba];
                target[at + 2 * NODES] = material.c12() * XY[ba] + material.c66() * XY[ab];
                target[at + 2 * NODES + 1] = material.c22() * stout * YY[ab] + material.c66() * slim * XX[ab];
            }
        }
    }

    /** Integral of dN_a/dx1 over a rectangle of this height, m. */
    static double slope1(int a, double height) {
        return 0.5 * height * X[a];
    }

    /** Integral of dN_a/dx2 over a rectangle of this width, m. */
    static double slope2(int a, double width) {
        return 0.5 * width * Y[a];
    }

    /**
     * Integral of the shape function of one of three nodes along an edge, from the edge's start to a share of it.
     *
     * @param place 0 start, 1 middle, 2 end
     * @param share 0 to 1
     * @return metres per metre of edge
     */
    static double edgeIntegral(int place, double share) {
        double s = share;
        return switch (place) {
            case 0 -> s - 1.5 * s * s + 2 * s * s * s / 3;
            case 1 -> 2 * s * s - 4 * s * s * s / 3;
            default -> -0.5 * s * s + 2 * s * s * s / 3;
        };
    }
}
