package hafthold.simulate;

import hafthold.quantity.Band;
import java.util.List;

/**
 * What a stack of parts on a tang does over the customer's year, metres.
 *
 * @param whole what every answer about a handle holds; a stack has no edges against steel and no pins
 * @param parts one a part, from the guard to the nut
 * @param gap widest room between guard and nut
 * @param growth most that the parts want to be longer than the steel between guard and nut
 * @param load largest load on the joints, newtons
 * @param set what the parts have lost by crushing after two years, together
 * @param gapMonth when the gap is widest, 1 to 12
 * @param firstJoint index of the part on the guard side of the joint that opens widest
 * @param drivers inputs by their share in the doubt about the gap, largest first
 * @param dailyLength parts together against the steel, each day, positive longer
 * @param dailyGap gap of each day
 * @param samples the same year with every input drawn from its range, without days, one a sample; empty where only values
 *     were asked for
 */
public record StackYear(
        HandleYear whole,
        List<PartYear> parts,
        Band gap,
        Band growth,
        Band load,
        Band set,
        int gapMonth,
        int firstJoint,
        List<Driver> drivers,
        List<Band> dailyLength,
        List<Double> dailyGap,
        List<StackYear> samples) {

    /** Keeps its own copies. */
    public StackYear {
        parts = List.copyOf(parts);
        samples = List.copyOf(samples);
        drivers = List.copyOf(drivers);
        dailyLength = List.copyOf(dailyLength);
        dailyGap = List.copyOf(dailyGap);
    }

    /**
     * One part of the stack.
     *
     * @param materialId id
     * @param name name for people
     * @param length along the tang as made, m
     * @param shrinks most it is shorter than the steel along it
     * @param grows most it is longer than the steel along it
     * @param set what it has lost by crushing
     * @param evidence weakest evidence behind its movement
     */
    public record PartYear(
            String materialId,
            String name,
            double length,
            Band shrinks,
            Band grows,
            Band set,
            hafthold.source.Evidence evidence) {}
}
