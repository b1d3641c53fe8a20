package hafthold.transport;

import hafthold.numeric.GradedGrid;
import hafthold.numeric.HatWeights;

/** Takes down what a history keeps of the moisture at the grid points. */
final class HistoryRecorder {
    private final double[] meanWeight;
    private final double[] momentWeight;
    private final double[][] layerWeight;
    private final double[] mean;
    private final double[] surface;
    private final double[] back;
    private final double[] firstMoment;
    private final double[][] layers;

    HistoryRecorder(GradedGrid grid, HatWeights storage, int layers, int samples) {
        double thickness = grid.thickness();
        double[] lever = grid.positions();
        for (int i = 0; i < lever.length; i++) {
            lever[i] = 12 * (lever[i] / thickness - 0.5);
        }
        meanWeight = scaled(storage.totals(), 1 / thickness);
        momentWeight = scaled(storage.moments(lever), 1 / thickness);
        layerWeight = new double[layers][];
        for (int i = 0; i < layers; i++) {
            layerWeight[i] = grid.meanWeights(thickness * i / layers, thickness * (i + 1) / layers);
        }
        mean = new double[samples];
        surface = new double[samples];
        back = new double[samples];
        firstMoment = new double[samples];
        this.layers = new double[layers][samples];
    }

    void take(int sample, double[] moisture) {
        mean[sample] = sum(meanWeight, moisture);
        surface[sample] = moisture[moisture.length - 1];
        back[sample] = moisture[0];
        firstMoment[sample] = sum(momentWeight, moisture);
        for (int i = 0; i < layers.length; i++) {
            layers[i][sample] = sum(layerWeight[i], moisture);
        }
    }

    double[] mean() {
        return mean;
    }

    double[] surface() {
        return surface;
    }

    double[] back() {
        return back;
    }

    double[] firstMoment() {
        return firstMoment;
    }

    double[][] layers() {
        return layers;
    }

    private static double[] scaled(double[] weights, double factor) {
        for (int i = 0; i < weights.length; i++) {
            weights[i] *= factor;
        }
        return weights;
    }

    private static double sum(double[] weight, double[] value) {
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * value[i];
        }
        return sum;
    }
}
