package hafthold.decide;

import hafthold.knife.MeasuredStep;
import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * One measured step beside what was to be expected. Steps in metres, signed as {@link MeasuredStep}.
 *
 * @param measured what was measured
 * @param expected what would be read on such a knife on that day: the value with everything at its value, low and high
 *     so that nine of ten readings lie between, error of measuring and all
 * @param asFarOut chance of a reading as far out as the one measured, or further, with everything as usual
 * @param consistent whether the weather explains it. The more steps, the further out one may lie, so that all of a claim are
 *     consistent in nine of ten knives as usual: a step just outside {@code expected} may be
 * @param fitted the step itself, its error taken out as far as all that was measured tells; the middle nine tenths
 * @param parts the measured step shared out, in the order of {@link Part}
 * @param settled what will be left of it once the knife has come to rest in the air of final sanding; empty where that air
 *     is not known
 */
public record ClaimRow(
        MeasuredStep measured,
        Band expected,
        double asFarOut,
        boolean consistent,
        Band fitted,
        List<Share> parts,
        Optional<Band> settled) {

    /** Keeps its own copy. */
    public ClaimRow {
        parts = List.copyOf(parts);
    }

    /** Whose part of a step. */
    public enum Part {
        /** The weather of the place in a usual year, with everything as stated. */
        WEATHER,
        /** The wood not as dry or damp at final sanding as stated. */
        FINISH,
        /** The air where it lives not as in the tables, the weather of that very year included. */
        PLACE,
        /** What happened to it. */
        USE,
        /** This piece of wood not as in the book. */
        MATERIAL,
        /** What is left: error of measuring and whatever else. */
        REST
    }

    /**
     * A part of a step.
     *
     * @param part whose
     * @param metres how much, m, the mean and the middle nine tenths
     */
    public record Share(Part part, Band metres) {}

    /** The part of one. */
    public Band of(Part part) {
        return parts.get(indexOf(part)).metres();
    }

    private int indexOf(Part part) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).part() == part) {
                return i;
            }
        }
        throw new IllegalArgumentException("no share of " + part);
    }
}
