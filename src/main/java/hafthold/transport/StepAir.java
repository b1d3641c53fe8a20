package hafthold.transport;

/** What the air at both ends of a step means to each slab of a bundle; rates are times half the step. */
final class StepAir {
    /** tau/2 D_T/D0 at the start. */
    final double[] startSpeed;
    /** The same at the end. */
    final double[] endSpeed;
    /** tau/2 q at the start, m. */
    final double[] startExchange;
    /** The same at the end. */
    final double[] endExchange;
    /** Twice 1 + 1/2 tau F_t/F of what flows inside: for twice K1. */
    final double[] earlyTwice;
    /** 1 + 3/2 tau F_t/F: for K2. */
    final double[] late;

    StepAir(int width) {
        startSpeed = new double[width];
        endSpeed = new double[width];
        startExchange = new double[width];
        endExchange = new double[width];
        earlyTwice = new double[width];
        late = new double[width];
    }

    void over(SlabBundle bundle, int lanes, AirInstant from, AirInstant to, double halfSeconds) {
        double startPressure = halfSeconds * from.saturationPascals;
        double endPressure = halfSeconds * to.saturationPascals;
        for (int s = 0; s < lanes; s++) {
            startExchange[s] = startPressure * bundle.exchange[s];
            endExchange[s] = endPressure * bundle.exchange[s];
        }
        for (int s = 0; s < lanes; s++) {
            double start = from.speed[bundle.law[s]];
            double end = to.speed[bundle.law[s]];
            startSpeed[s] = halfSeconds * start;
            endSpeed[s] = halfSeconds * end;
            double growth = growth(start, end);
            earlyTwice[s] = 2 + growth;
            late[s] = 1 + 1.5 * growth;
        }
    }

    /** tau/y dy/dt at the start for y that grows exponentially over the step: ln(end/start) to third order. */
    static double growth(double start, double end) {
        return 2 * (end - start) / (end + start);
    }
}
