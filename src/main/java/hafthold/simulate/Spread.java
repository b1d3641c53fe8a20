package hafthold.simulate;

import hafthold.quantity.Band;
import hafthold.source.PublishedModel;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Builds the band of an answer from one-at-a-time changes of its inputs: independent doubts add as the root of the sum
 * of squares, upward and downward apart.
 *
 * @param <T> what one run of the engine answers
 * @param value everything at its value
 * @param doubts the same with one input at one end each
 */
@PublishedModel(
        source = "jcgm-100-2008",
        locator = "section 5.1, first-order propagation of uncorrelated inputs",
        validity = "answers that change about in proportion to each input over its range")
record Spread<T>(T value, List<T> doubts) {

    /** The same of a part of each answer. */
    <S> Spread<S> map(Function<T, S> part) {
        return new Spread<>(part.apply(value), doubts.stream().map(part).toList());
    }

    /** Band of a quantity that is zero or more. */
    Band of(ToDoubleFunction<T> quantity) {
        Band band = signed(quantity);
        return new Band(Math.max(0, band.low()), band.value(), band.high());
    }

    /** Band of a quantity of either sign. */
    Band signed(ToDoubleFunction<T> quantity) {
        double middle = quantity.applyAsDouble(value);
        double up = 0;
        double down = 0;
        for (T doubt : doubts) {
            double change = quantity.applyAsDouble(doubt) - middle;
            if (change > 0) {
                up += change * change;
            } else {
                down += change * change;
            }
        }
        return new Band(middle - Math.sqrt(down), middle, middle + Math.sqrt(up));
    }
}
