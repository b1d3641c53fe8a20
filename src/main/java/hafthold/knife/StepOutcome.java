package hafthold.knife;

import hafthold.quantity.Band;

/**
 * What was foretold of a finished knife and what was then measured on it.
 *
 * @param name which knife, which point
 * @param predicted ends of the middle 80 % and the middle, m, positive proud
 * @param measured m, likewise
 */
public record StepOutcome(String name, Band predicted, double measured) {
    /** Whether the band held it. */
    public boolean inside() {
        return measured >= predicted.low() && measured <= predicted.high();
    }
}
