package hafthold.simulate;

import hafthold.material.Cut;
import java.util.List;
import java.util.Optional;

/**
 * A material through the year with events.
 *
 * @param year the year without and with events: the worse of both in every movement
 * @param answers one a distinct event, in the order asked for
 * @param softening what softens first in the hottest event, the scale or what glues it; empty where neither states when
 * @param scaleSoftening the same for the scale alone, whose glue is the same under every other
 * @param leftAtEnd how much wetter the scale is at the end of the last year than without events, kg/kg
 * @param meanAbove how much wetter it is on the mean of all hours than without events, kg/kg
 */
public record EventYear(
        HandleYear year,
        List<EventAnswer> answers,
        Optional<SofteningMargin> softening,
        Optional<SofteningMargin> scaleSoftening,
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
