package hafthold.simulate;

import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import hafthold.source.PublishedModel;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Builds the band of an answer from runs with other figures: its value is that of the run with every input at its value,
 * its ends are the 10 and 90 % points of the samples.
 *
 * <p>The year's worst is a largest of many and may lie at its smallest where every input is at its value; then the band
 * ends at the value.
 *
 * @param <T> what one run of the engine answers
 * @param value everything at its value
 * @param samples the same with every input drawn from its range; empty for a band without width
 */
@PublishedModel(
        source = "jcgm-101-2008",
        locator =
                "sections 5 and 7, propagation of distributions by sampling; 10 and 90 % in place of its 2.5 and 97.5 %",
        validity = "any answer; the ends scatter with the number of samples")
record Spread<T>(T value, List<T> samples) {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /** Keeps its own copy. */
    Spread {
        samples = List.copyOf(samples);
    }

    /** The same of a part of each answer. */
    <S> Spread<S> map(Function<T, S> part) {
        return new Spread<>(part.apply(value), samples.stream().map(part).toList());
    }

    /** One sample alone, without a band. */
    Spread<T> sample(int number) {
        return new Spread<>(samples.get(number), List.of());
    }

    /** Band of a quantity that is zero or more. */
    Band of(ToDoubleFunction<T> quantity) {
        Band band = signed(quantity);
        return new Band(Math.max(0, band.low()), band.value(), band.high());
    }

    /** Band of a quantity of either sign. */
    Band signed(ToDoubleFunction<T> quantity) {
        double middle = quantity.applyAsDouble(value);
        if (samples.isEmpty()) {
            return Band.exact(middle);
        }
        SampleQuantile quantile = new SampleQuantile(of(samples, quantity));
        return new Band(Math.min(middle, quantile.at(LOW)), middle, Math.max(middle, quantile.at(HIGH)));
    }

    /** The quantity in every sample. */
    double[] inSamples(ToDoubleFunction<T> quantity) {
        return of(samples, quantity);
    }

    private static <T> double[] of(List<T> samples, ToDoubleFunction<T> quantity) {
        return samples.stream().mapToDouble(quantity).toArray();
    }
}
