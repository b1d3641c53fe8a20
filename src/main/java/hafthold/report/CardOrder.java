package hafthold.report;

import hafthold.knife.FitLimits;
import hafthold.knife.Workshop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Whom a card is for and how it is written.
 *
 * @param customer name of the customer
 * @param town what he calls his town; the place of the comparison where he says nothing
 * @param knife what the knife is called
 * @param date day of handing over, from which times are counted
 * @param shop who signs
 * @param limits classes of work, strictest first
 * @param units of movements
 * @param wording language
 */
public record CardOrder(
        Optional<String> customer,
        Optional<String> town,
        Optional<String> knife,
        Optional<LocalDate> date,
        Workshop shop,
        List<FitLimits> limits,
        LengthUnits units,
        Wording wording) {
    private static final int CLASSES = 4;

    /** Rejects other than four classes of work. */
    public CardOrder {
        limits = List.copyOf(limits);
        if (limits.size() != CLASSES) {
            throw new IllegalArgumentException("a card needs four classes of work, got " + limits.size());
        }
    }

    /** What a seasonal class of work allows. */
    FitLimits seasonal() {
        return limits.get(CLASSES - 2);
    }

    /** What the loosest class of work allows. */
    FitLimits loosest() {
        return limits.get(CLASSES - 1);
    }
}
