package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import java.util.Comparator;
import java.util.List;

/**
 * How far to leave the edges off flush so that the customer's year lies about it as it should: what then falls shy takes as
 * much of its limit as what stands proud takes of its own. As a limit for shy is the tighter one, it is nearer to the dry
 * end.
 *
 * @param proud how far to leave the scale proud of the steel, m a side; below zero: to take it down below the steel
 * @param shyAfter how far it then falls shy at the driest of the year, m, zero or more
 * @param proudAfter how far it then stands proud at the dampest
 */
public record Allowance(Band proud, double shyAfter, double proudAfter) {
    private static final Comparator<Band> LOWER = Comparator.comparingDouble(Band::value);

    /**
     * From the year of a scale that was sanded flush.
     *
     * @param edge offset of the edge on each day, m, positive proud
     */
    static Allowance of(List<Band> edge, FitLimits limits) {
        Band least = edge.stream().min(LOWER).orElseThrow();
        Band most = edge.stream().max(LOWER).orElseThrow();
        double proud = -level(least.value(), most.value(), limits);
        return new Allowance(
                new Band(
                        Math.min(proud, -level(least.high(), most.high(), limits)),
                        proud,
                        Math.max(proud, -level(least.low(), most.low(), limits))),
                Math.max(0, -(least.value() + proud)),
                Math.max(0, most.value() + proud));
    }

    /** Height that takes the same share of both limits. */
    private static double level(double least, double most, FitLimits limits) {
        double shy = limits.shy().metres();
        double proud = limits.proud().metres();
        return shy + proud == 0 ? (least + most) / 2 : (most * shy + least * proud) / (shy + proud);
    }
}
