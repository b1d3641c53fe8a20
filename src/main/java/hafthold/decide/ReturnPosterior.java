package hafthold.decide;

import hafthold.knife.MeasuredStep;
import hafthold.numeric.ImportanceWeights;
import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import hafthold.simulate.Cause;
import hafthold.simulate.ReturnSample;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All draws of all causes, weighted by how well each explains what was measured and by how likely its cause was before.
 *
 * <p>Errors of measuring are taken as normal and independent. Chances of the causes after measuring are the sums of the
 * weights of their draws: Bayes' theorem, the evidence for each cause being the mean likelihood of its draws.
 */
final class ReturnPosterior {
    /** Ends of the middle nine tenths. */
    static final double LOW = 0.05;

    static final double HIGH = 0.95;

    private final List<ReturnSample> samples;
    private final ImportanceWeights weights;

    /**
     * Weighs.
     *
     * @param before chance of each cause before anything was measured; they add up to 1
     */
    ReturnPosterior(List<MeasuredStep> measured, Map<Cause, List<ReturnSample>> byCause, Map<Cause, Double> before) {
        samples = new ArrayList<>();
        List<Double> logs = new ArrayList<>();
        byCause.forEach((cause, draws) -> draws.forEach(draw -> {
            samples.add(draw);
            logs.add(Math.log(before.get(cause) / draws.size()) + logLikelihood(measured, draw.steps()));
        }));
        weights = new ImportanceWeights(
                logs.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Logarithm of the likelihood of what was measured, up to a constant. */
    private static double logLikelihood(List<MeasuredStep> measured, double[] steps) {
        double log = 0;
        for (int i = 0; i < steps.length; i++) {
            double off = (measured.get(i).step().metres() - steps[i])
                    / measured.get(i).deviationMetres();
            log -= off * off / 2;
        }
        return log;
    }

    /** Chance of each cause. */
    Map<Cause, Double> chances() {
        Map<Cause, Double> chances = new LinkedHashMap<>();
        for (int i = 0; i < samples.size(); i++) {
            chances.merge(samples.get(i).cause(), weights.of(i), Double::sum);
        }
        return chances;
    }

    /**
     * How many equally weighted draws the answer rests on: of the causes worth naming, that which rests on the fewest. All
     * draws together would hide a cause that a single lucky draw speaks for.
     */
    double effectiveSamples() {
        Map<Cause, Double> sums = chances();
        Map<Cause, Double> squares = new LinkedHashMap<>();
        for (int i = 0; i < samples.size(); i++) {
            squares.merge(samples.get(i).cause(), weights.of(i) * weights.of(i), Double::sum);
        }
        return sums.entrySet().stream()
                .filter(entry -> entry.getValue() >= Claim.WORTH_NAMING)
                .mapToDouble(entry -> entry.getValue() * entry.getValue() / squares.get(entry.getKey()))
                .min()
                .orElseGet(weights::effectiveSamples);
    }

    /** A step itself. */
    Band fitted(int step) {
        double[] values =
                samples.stream().mapToDouble(sample -> sample.steps()[step]).toArray();
        return band(weights.quantile(values, LOW), weights.mean(values), weights.quantile(values, HIGH));
    }

    /** Draws by their weight, which then count alike. */
    List<ReturnSample> drawn(int count) {
        return Arrays.stream(weights.resampled(count)).mapToObj(samples::get).toList();
    }

    /** Mean and middle nine tenths of values that count alike. */
    static Band spread(double[] values) {
        SampleQuantile quantile = new SampleQuantile(values);
        return band(quantile.at(LOW), Arrays.stream(values).average().orElseThrow(), quantile.at(HIGH));
    }

    private static Band band(double low, double mean, double high) {
        return new Band(Math.min(low, mean), mean, Math.max(high, mean));
    }
}
