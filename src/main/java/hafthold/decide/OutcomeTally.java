package hafthold.decide;

import hafthold.knife.StepOutcome;
import hafthold.quantity.Band;
import hafthold.source.PublishedModel;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;

/**
 * How good predictions were: how many of the measured steps their bands held, and by what factor they were off.
 *
 * <p>The share of steps inside has the exact interval of a binomial share. The factor is the slope of measured on predicted
 * through zero, each step weighted by the width of its band; its interval is Student's.
 *
 * @param outcomes what was predicted and measured
 * @param inside how many lay inside their bands
 * @param insideShare share inside, with the ends of its 80 % interval
 * @param factor measured over predicted, likewise; empty for fewer than two, or where nothing was predicted to move
 */
@PublishedModel(
        source = "clopper-pearson-1934",
        locator = "exact interval of a binomial share",
        validity = "steps that have nothing to do with each other")
public record OutcomeTally(List<StepOutcome> outcomes, int inside, Band insideShare, Optional<Band> factor) {
    /** Bands of answers hold the middle 80 %. */
    public static final double PROMISED = 0.8;

    /** Fewer than this prove nothing, however they lie (ours: 8 of 10 inside is what a share of 60 % gives every sixth time). */
    public static final int ENOUGH = 10;

    private static final double CONFIDENCE = 0.8;

    /** Counts. */
    public static OutcomeTally of(List<StepOutcome> outcomes) {
        int inside = (int) outcomes.stream().filter(StepOutcome::inside).count();
        return new OutcomeTally(List.copyOf(outcomes), inside, share(outcomes.size(), inside), factor(outcomes));
    }

    /** With none or all inside one end is open, and the other has a closed form. */
    private static Band share(int count, int inside) {
        double tail = (1 - CONFIDENCE) / 2;
        if (inside == 0 || inside == count) {
            double end = Math.pow(tail, 1.0 / count);
            return inside == 0 ? new Band(0, 0, 1 - end) : new Band(end, 1, 1);
        }
        ConfidenceInterval interval = new ClopperPearsonInterval().createInterval(count, inside, CONFIDENCE);
        return new Band(interval.getLowerBound(), (double) inside / count, interval.getUpperBound());
    }

    private static Optional<Band> factor(List<StepOutcome> outcomes) {
        double square = 0;
        double product = 0;
        for (StepOutcome one : outcomes) {
            square += weight(one) * one.predicted().value() * one.predicted().value();
            product += weight(one) * one.predicted().value() * one.measured();
        }
        if (outcomes.size() < 2 || !(square > 0)) {
            return Optional.empty();
        }
        double factor = product / square;
        double left = 0;
        for (StepOutcome one : outcomes) {
            left += weight(one)
                    * Math.pow(one.measured() - factor * one.predicted().value(), 2);
        }
        int free = outcomes.size() - 1;
        double half = new TDistribution(null, free).inverseCumulativeProbability((1 + CONFIDENCE) / 2)
                * Math.sqrt(left / free / square);
        return Optional.of(new Band(factor - half, factor, factor + half));
    }

    private static double weight(StepOutcome outcome) {
        double width = outcome.predicted().high() - outcome.predicted().low();
        return 1 / (width * width);
    }

    /** Whether there are enough to say something. */
    public boolean says() {
        return outcomes.size() >= ENOUGH;
    }
}
