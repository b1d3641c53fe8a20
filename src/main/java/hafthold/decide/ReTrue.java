package hafthold.decide;

import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * How to true a knife up again so that it stays so: in which air, after how long, or in which month at the customer's.
 *
 * @param humidityPercent humidity the knife must have come to rest in when it is sanded, of air of the workshop's warmth;
 *     empty where no water moves the scale
 * @param celsius that warmth
 * @param moisturePercent moisture content it holds then
 * @param months months, 1 to 12, in which it stands there by itself where the customer lives
 * @param restDays days it must lie in that air first
 * @param shyAfter how far the edge then falls shy in his year, m, zero or more
 * @param proudAfter how far it then stands proud
 */
public record ReTrue(
        Optional<Band> humidityPercent,
        double celsius,
        Band moisturePercent,
        List<Integer> months,
        Optional<Band> restDays,
        Band shyAfter,
        Band proudAfter) {

    /** Keeps its own copy. */
    public ReTrue {
        months = List.copyOf(months);
    }
}
