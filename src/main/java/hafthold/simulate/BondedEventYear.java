package hafthold.simulate;

import java.util.List;

/**
 * A bonded knife through the year with events.
 *
 * @param year the worse of the year without and with events in every answer
 * @param answers one a distinct event, in the order asked for
 * @param leftAtEnd how much wetter the scale is at the end of the last year than without events, kg/kg
 * @param meanAbove how much wetter it is on the mean of all hours than without events, kg/kg
 */
public record BondedEventYear(FitYear year, List<BondedEventAnswer> answers, double leftAtEnd, double meanAbove) {

    /** Keeps its own copy. */
    public BondedEventYear {
        answers = List.copyOf(answers);
    }
}
