package hafthold.simulate;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What lies furthest from all else that is known of a block, under the course that fits best.
 *
 * @param deviations how far, in its own deviation, zero or more
 * @param on the day it was read; empty where it is the weight for what the wood usually weighs
 */
public record StockFurthest(double deviations, Optional<LocalDate> on) {
    StockFurthest orFurther(StockFurthest other) {
        return other.deviations > deviations ? other : this;
    }
}
