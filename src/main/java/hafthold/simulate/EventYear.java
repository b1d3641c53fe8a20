package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.quantity.Band;
import java.util.List;

/**
 * A material through the year with events.
 *
 * @param year the year without and with events: the worse of both in every movement
 * @param answers one a distinct event, in the order asked for
 * @param softeningMarginKelvin lowest service or softening temperature of the scale less the hottest event
 * @param softens name of the material that sets it
 * @param leftAtEnd how much wetter the scale is at the end of the last year than without events, kg/kg
 * @param meanAbove how much wetter it is on the mean of all hours than without events, kg/kg
 */
public record EventYear(
        HandleYear year,
        List<EventAnswer> answers,
        Band softeningMarginKelvin,
        String softens,
        double leftAtEnd,
        double meanAbove) {

    /** Keeps its own copy. */
    public EventYear {
        answers = List.copyOf(answers);
    }

    /** True for the answer to a material in a cut. */
    public boolean isOf(HandleYear other) {
        return isOf(other.scale().id(), other.scale().cut());
    }

    private boolean isOf(String material, Cut cut) {
        return year.scale().id().equals(material) && year.scale().cut() == cut;
    }
}
