package hafthold.transport;

/**
 * Arithmetic on rows of a bundle, one short loop each: short enough that the compiler turns it into vector instructions,
 * which it does not do for long ones.
 */
final class Lanes {
    private Lanes() {}

    /** conductance (left - right). */
    static void flow(double[] conductance, double[] left, double[] right, double[] flow, int lanes) {
        for (int s = 0; s < lanes; s++) {
            flow[s] = conductance[s] * (left[s] - right[s]);
        }
    }

    /** conductance speed (left - right). */
    static void flow(double[] conductance, double[] speed, double[] left, double[] right, double[] flow, int lanes) {
        for (int s = 0; s < lanes; s++) {
            flow[s] = conductance[s] * speed[s] * (left[s] - right[s]);
        }
    }

    /** sign a b. */
    static void product(double sign, double[] a, double[] b, double[] product, int lanes) {
        for (int s = 0; s < lanes; s++) {
            product[s] = sign * a[s] * b[s];
        }
    }

    /** factor (a - b). */
    static void difference(double[] factor, double[] a, double[] b, double[] difference, int lanes) {
        for (int s = 0; s < lanes; s++) {
            difference[s] = factor[s] * (a[s] - b[s]);
        }
    }

    /** p a + q b. */
    static void combine(double p, double[] a, double q, double[] b, double[] sum, int lanes) {
        for (int s = 0; s < lanes; s++) {
            sum[s] = p * a[s] + q * b[s];
        }
    }

    /** Adds p a. */
    static void addMultiple(double p, double[] a, double[] sum, int lanes) {
        for (int s = 0; s < lanes; s++) {
            sum[s] += p * a[s];
        }
    }

    /** Adds w a, lane by lane. */
    static void addProduct(double[] weight, double[] a, double[] sum, int lanes) {
        for (int s = 0; s < lanes; s++) {
            sum[s] += weight[s] * a[s];
        }
    }

    /** Adds u a + v b + w c. */
    static void addWeighted(
            double[] u, double[] a, double[] v, double[] b, double[] w, double[] c, double[] sum, int lanes) {
        for (int s = 0; s < lanes; s++) {
            sum[s] += u[s] * a[s] + v[s] * b[s] + w[s] * c[s];
        }
    }

    /** arriving - leaving + u a + v b + w c. */
    static void gainAndWeighted(
            double[] arriving,
            double[] leaving,
            double[] u,
            double[] a,
            double[] v,
            double[] b,
            double[] w,
            double[] c,
            double[] sum,
            int lanes) {
        for (int s = 0; s < lanes; s++) {
            sum[s] = arriving[s] - leaving[s] + (u[s] * a[s] + v[s] * b[s] + w[s] * c[s]);
        }
    }

    /** What a change a + b + c makes of a start; raises the largest change to its size. */
    static void change(double[] start, double[] a, double[] b, double[] c, double[] largest, double[] end, int lanes) {
        for (int s = 0; s < lanes; s++) {
            double sum = a[s] + b[s] + c[s];
            largest[s] = Math.max(largest[s], Math.abs(sum));
            end[s] = start[s] + sum;
        }
    }

    /** psi at M + change by its series in z = a change, fifth order: cheaper than exp, and steps are short. */
    static void potentialAfter(double[] psi, double[] exponent, double[] change, double[] changedPsi, int lanes) {
        for (int s = 0; s < lanes; s++) {
            double z = exponent[s] * change[s];
            double series = 1 + z * (1 / 2.0 + z * (1 / 6.0 + z * (1 / 24.0 + z * (1 / 120.0))));
            changedPsi[s] = psi[s] + (1 + exponent[s] * psi[s]) * change[s] * series;
        }
    }

    /** Raises the largest to the size of a. */
    static void largest(double[] a, double[] largest, int lanes) {
        for (int s = 0; s < lanes; s++) {
            largest[s] = Math.max(largest[s], Math.abs(a[s]));
        }
    }

    /** Widens a range to hold a. */
    static void range(double[] a, double[] low, double[] high, int lanes) {
        for (int s = 0; s < lanes; s++) {
            low[s] = Math.min(low[s], a[s]);
            high[s] = Math.max(high[s], a[s]);
        }
    }
}
