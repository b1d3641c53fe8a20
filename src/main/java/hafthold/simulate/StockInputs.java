package hafthold.simulate;

import java.util.function.ToDoubleFunction;

/**
 * One draw of what is not known of a block.
 *
 * @param of position of each input in its range, or its share of the way from one end to the other
 */
record StockInputs(ToDoubleFunction<StockInput> of) {
    double of(StockInput input) {
        return of.applyAsDouble(input);
    }
}
