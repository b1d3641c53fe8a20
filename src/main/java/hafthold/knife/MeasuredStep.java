package hafthold.knife;

import hafthold.quantity.Length;
import java.time.LocalDate;

/**
 * One step that was measured on a finished knife.
 *
 * @param on day of measuring
 * @param point where
 * @param step the step, positive where the scale stands proud of the steel or the pin's head of the face, negative where it
 *     is shy or sunk; a ring is zero or more
 * @param error how far the figure may be off, either way, more than 0: like every range, its 5 and 95 % points
 */
public record MeasuredStep(LocalDate on, MeasuringPoint point, Length step, Length error) {
    /** Of a normal distribution, the 95 % point over the standard deviation. */
    private static final double END_OVER_DEVIATION = 1.645;

    /** Rejects an error that is none and a ring that is less than nothing. */
    public MeasuredStep {
        if (!(error.metres() > 0)) {
            throw new IllegalArgumentException("an error of measuring is more than 0, got " + error.metres() + " m");
        }
        if (!point.isSigned() && step.metres() < 0) {
            throw new IllegalArgumentException("a ring is zero or more, got " + step.metres() + " m");
        }
    }

    /** Standard deviation of the error, m. */
    public double deviationMetres() {
        return error.metres() / END_OVER_DEVIATION;
    }
}
