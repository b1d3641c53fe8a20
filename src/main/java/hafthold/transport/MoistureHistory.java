package hafthold.transport;

import java.util.Arrays;

/**
 * Moisture of a slab at the samples of its air: what movement and stress are worked out from. Immutable.
 *
 * <p>Moisture contents are mass of water per dry mass, kg/kg. The first moment tells how lopsided the slab is: kappa = 12
 * integral of (M - mean)(x/h - 1/2) dx/h; a straight profile from M0 at the tang to M0 + m at the air has kappa = m. It
 * is positive when the outer face is the wetter one.
 */
public final class MoistureHistory {
    private final double stepSeconds;
    private final double[] mean;
    private final double[] surface;
    private final double[] back;
    private final double[] firstMoment;
    private final double[][] layers;
    private final double waterBalanceResidual;
    private final double largestStepError;
    private final long steps;

    /** Keeps the columns, which are left alone from then on. */
    MoistureHistory(
            double stepSeconds,
            double[] mean,
            double[] surface,
            double[] back,
            double[] firstMoment,
            double[][] layers,
            double waterBalanceResidual,
            double largestStepError,
            long steps) {
        this.stepSeconds = stepSeconds;
        this.mean = mean;
        this.surface = surface;
        this.back = back;
        this.firstMoment = firstMoment;
        this.layers = layers;
        this.waterBalanceResidual = waterBalanceResidual;
        this.largestStepError = largestStepError;
        this.steps = steps;
    }

    private MoistureHistory(MoistureHistory coarse, int stride) {
        stepSeconds = coarse.stepSeconds / stride;
        mean = spread(coarse.mean, stride);
        surface = spread(coarse.surface, stride);
        back = spread(coarse.back, stride);
        firstMoment = spread(coarse.firstMoment, stride);
        layers = new double[coarse.layers.length][];
        for (int i = 0; i < layers.length; i++) {
            layers[i] = spread(coarse.layers[i], stride);
        }
        waterBalanceResidual = coarse.waterBalanceResidual;
        largestStepError = coarse.largestStepError;
        steps = coarse.steps;
    }

    /** The same closed year with straight lines between its samples, as many samples as asked for in place of each. */
    MoistureHistory spread(int stride) {
        return stride == 1 ? this : new MoistureHistory(this, stride);
    }

    private MoistureHistory(MoistureHistory first, MoistureHistory next) {
        stepSeconds = first.stepSeconds;
        mean = joined(first.mean, next.mean);
        surface = joined(first.surface, next.surface);
        back = joined(first.back, next.back);
        firstMoment = joined(first.firstMoment, next.firstMoment);
        layers = new double[first.layers.length][];
        for (int i = 0; i < layers.length; i++) {
            layers[i] = joined(first.layers[i], next.layers[i]);
        }
        waterBalanceResidual = Math.max(first.waterBalanceResidual, next.waterBalanceResidual);
        largestStepError = Math.max(first.largestStepError, next.largestStepError);
        steps = first.steps + next.steps;
    }

    /**
     * This history up to its last sample, in whose place the other one begins.
     *
     * @param next with the same step and as many layers
     */
    public MoistureHistory followedBy(MoistureHistory next) {
        if (next.stepSeconds != stepSeconds || next.layers.length != layers.length) {
            throw new IllegalArgumentException("histories that follow each other need one step and as many layers, got "
                    + stepSeconds + " s and " + next.stepSeconds + " s, " + layers.length + " and "
                    + next.layers.length + " layers");
        }
        return new MoistureHistory(this, next);
    }

    private static double[] joined(double[] first, double[] next) {
        double[] all = Arrays.copyOf(first, first.length - 1 + next.length);
        System.arraycopy(next, 0, all, first.length - 1, next.length);
        return all;
    }

    private static double[] spread(double[] coarse, int stride) {
        double[] fine = new double[coarse.length * stride];
        for (int i = 0; i < coarse.length; i++) {
            double from = coarse[i];
            double to = coarse[(i + 1) % coarse.length];
            for (int j = 0; j < stride; j++) {
                fine[i * stride + j] = from + (to - from) * j / stride;
            }
        }
        return fine;
    }

    /** Number of samples. */
    public int size() {
        return mean.length;
    }

    /** Time between samples in seconds. */
    public double stepSeconds() {
        return stepSeconds;
    }

    /** Mean over the thickness at a sample. */
    public double meanFraction(int sample) {
        return mean[sample];
    }

    /** At the face in air. */
    public double surfaceFraction(int sample) {
        return surface[sample];
    }

    /** At the sealed face on the tang. */
    public double backFraction(int sample) {
        return back[sample];
    }

    /** kappa, kg/kg. */
    public double firstMomentFraction(int sample) {
        return firstMoment[sample];
    }

    /** Number of layers asked for; may be zero. */
    public int layers() {
        return layers.length;
    }

    /** Mean over one of the equal layers, counted from the tang. */
    public double layerFraction(int layer, int sample) {
        return layers[layer][sample];
    }

    /** Change of content plus loss through the surface, over content plus all that passed: rounding, below 1e-12. */
    public double waterBalanceResidual() {
        return waterBalanceResidual;
    }

    /** Largest local error of any time step, kg/kg. */
    public double largestStepErrorFraction() {
        return largestStepError;
    }

    /** Time steps tried, refused ones included. */
    public long steps() {
        return steps;
    }
}
