package hafthold.transport.coupled;

import hafthold.numeric.GradedGrid;

/** A slab led through time, its steps chosen so that each keeps its local error below what is allowed. */
final class CoupledRun {
    private static final double SAFETY = 0.9;
    private static final double SHORTEST_FACTOR = 0.2;
    private static final double LONGEST_FACTOR = 4;
    private static final double ORDER = 3;
    /** First step tried, as a share of the time to pass. */
    private static final double FIRST_SHARE = 1e-6;
    /** So many refusals in a row, each at least a tenth shorter, mean that no step is short enough. */
    private static final int MOST_REFUSALS = 100;

    private final CoupledEquations equations;
    private final CoupledRosenbrockStep step;
    private final Accuracy accuracy;
    private double[] y;
    private double[] next;
    private double seconds;
    private double length;
    private double waterIn;
    private double grossWater;
    private double heatIn;
    private double grossHeat;
    private double heatWithWater;
    private int steps;

    CoupledRun(CoupledSlab slab, GradedGrid grid, Accuracy accuracy, double[] water, double[] temperature) {
        equations = new CoupledEquations(slab, grid);
        step = new CoupledRosenbrockStep(equations);
        this.accuracy = accuracy;
        y = new double[2 * grid.size()];
        next = new double[y.length];
        equations.store(water, temperature, y);
    }

    /** Leads the slab on to a time. */
    void passTo(double end) {
        if (length == 0) {
            length = FIRST_SHARE * (end - seconds);
        }
        while (seconds < end) {
            double stop = Math.min(end, equations.nextBendSeconds(seconds));
            passStraightTo(stop);
        }
    }

    /** In equal steps and without error control: for finding orders. */
    void passEvenly(double end, int count) {
        double begin = seconds;
        double even = (end - begin) / count;
        for (int i = 0; i < count; i++) {
            step.take(y, seconds, even, next);
            accept(begin + even * (i + 1));
        }
    }

    private void passStraightTo(double stop) {
        int refusals = 0;
        while (seconds < stop) {
            double left = stop - seconds;
            // The last two steps are evened out, so that none is a splinter.
            double tried = length >= left ? left : Math.min(length, 0.5 * left);
            if (refusals > MOST_REFUSALS) {
                throw new ArithmeticException("heat and moisture found no step short enough at " + seconds
                        + " s: material functions or surroundings may be unsound");
            }
            step.take(y, seconds, tried, next);
            double error = step.error(accuracy);
            double factor = SAFETY * Math.pow(Math.max(error, 1e-10), -1 / ORDER);
            factor = Math.max(SHORTEST_FACTOR, Math.min(LONGEST_FACTOR, factor));
            if (error <= 1) {
                accept(tried == left ? stop : seconds + tried);
                refusals = 0;
                length = tried < length ? Math.max(length, tried * factor) : tried * factor;
            } else {
                steps++;
                refusals++;
                length = tried * Math.min(factor, SAFETY);
            }
        }
    }

    private void accept(double time) {
        double[] passed = y;
        y = next;
        next = passed;
        seconds = time;
        steps++;
        waterIn += step.waterIn();
        grossWater += Math.abs(step.waterIn());
        heatIn += step.heatIn();
        grossHeat += Math.abs(step.heatIn());
        heatWithWater += step.heatWithWater();
    }

    void read(double[] water, double[] temperature) {
        equations.read(y, water, temperature);
    }

    double waterHeld() {
        return held(0);
    }

    double heatHeld() {
        return held(1);
    }

    private double held(int first) {
        double sum = 0;
        for (int i = first; i < y.length; i += 2) {
            sum += y[i];
        }
        return sum;
    }

    double waterIn() {
        return waterIn;
    }

    double grossWater() {
        return grossWater;
    }

    double heatIn() {
        return heatIn;
    }

    double grossHeat() {
        return grossHeat;
    }

    double heatWithWater() {
        return heatWithWater;
    }

    int steps() {
        return steps;
    }
}
