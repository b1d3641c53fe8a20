package hafthold.simulate;

/**
 * Mean moisture content of a scale over the year, fractions of dry mass.
 *
 * @param finish at final sanding: the zero of every step and gap
 * @param lowest of the year
 * @param highest of the year
 */
public record MoistureSpan(double finish, double lowest, double highest) {

    /** The same stretched to another lowest and highest. */
    MoistureSpan stretchedTo(double otherLowest, double otherHighest) {
        return new MoistureSpan(finish, Math.min(lowest, otherLowest), Math.max(highest, otherHighest));
    }
}
