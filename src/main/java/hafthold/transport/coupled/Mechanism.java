package hafthold.transport.coupled;

/**
 * One way to move water or heat: a flow a (P - P') / gap from point to point, a the mean of a coefficient at both and P a
 * potential. A unit of flow takes {@code water} kilograms and {@code heat} joules along.
 */
final class Mechanism {
    private final PointFunction coefficient;
    private final PointFunction potential;
    private final double water;
    private final double heat;
    private final double[] inverseGap;
    private final double[] a;
    private final double[] p;
    private final double[] aWater;
    private final double[] aTemperature;
    private final double[] pWater;
    private final double[] pTemperature;

    Mechanism(PointFunction coefficient, PointFunction potential, double water, double heat, double[] inverseGap) {
        this.coefficient = coefficient;
        this.potential = potential;
        this.water = water;
        this.heat = heat;
        this.inverseGap = inverseGap;
        int points = inverseGap.length + 1;
        a = new double[points];
        p = new double[points];
        aWater = new double[points];
        aTemperature = new double[points];
        pWater = new double[points];
        pTemperature = new double[points];
    }

    /** Adds what each point gains from its neighbours; water and heat alternate in {@code gain}. */
    void addGains(double[] w, double[] t, double[] gain) {
        for (int i = 0; i < a.length; i++) {
            a[i] = coefficient.at(w[i], t[i]);
            p[i] = potential.at(w[i], t[i]);
        }
        for (int i = 0; i < inverseGap.length; i++) {
            double flow = 0.5 * (a[i] + a[i + 1]) * inverseGap[i] * (p[i] - p[i + 1]);
            gain[2 * i] -= water * flow;
            gain[2 * i + 1] -= heat * flow;
            gain[2 * i + 2] += water * flow;
            gain[2 * i + 3] += heat * flow;
        }
    }

    /** Takes the slopes of all gains, scaled, off the blocks of a matrix; the values must be those of the last gains. */
    void takeSlopes(double[] w, double[] t, double scale, double[] lower, double[] diagonal, double[] upper) {
        for (int i = 0; i < a.length; i++) {
            aWater[i] = coefficient.slopeWithWater(w[i], t[i]);
            aTemperature[i] = coefficient.slopeWithTemperature(w[i], t[i]);
            pWater[i] = potential.slopeWithWater(w[i], t[i]);
            pTemperature[i] = potential.slopeWithTemperature(w[i], t[i]);
        }
        for (int i = 0; i < inverseGap.length; i++) {
            double half = 0.5 * scale * inverseGap[i];
            double drop = p[i] - p[i + 1];
            double sum = a[i] + a[i + 1];
            double hereWater = half * (aWater[i] * drop + sum * pWater[i]);
            double hereTemperature = half * (aTemperature[i] * drop + sum * pTemperature[i]);
            double nextWater = half * (aWater[i + 1] * drop - sum * pWater[i + 1]);
            double nextTemperature = half * (aTemperature[i + 1] * drop - sum * pTemperature[i + 1]);
            add(diagonal, 4 * i, hereWater, hereTemperature);
            add(upper, 4 * i, nextWater, nextTemperature);
            add(lower, 4 * i, -hereWater, -hereTemperature);
            add(diagonal, 4 * i + 4, -nextWater, -nextTemperature);
        }
    }

    private void add(double[] blocks, int at, double byWater, double byTemperature) {
        blocks[at] += water * byWater;
        blocks[at + 1] += water * byTemperature;
        blocks[at + 2] += heat * byWater;
        blocks[at + 3] += heat * byTemperature;
    }
}
