package hafthold.simulate;

import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What one material does on one handle over the customer's year; every movement is the year's worst.
 *
 * @param scale what it is about
 * @param moisture how damp it was and gets
 * @param edge steps along the tang
 * @param ends length against the steel
 * @param pins fit of the pins
 * @param joint line between the parts of a hybrid
 * @param load what glue and scale bear; empty where it is not glued or told elsewhere
 * @param worstMonth 1 to 12: when the largest edge step falls
 * @param grounds what the answer rests on
 * @param days day by day
 * @param stays what it does stay by stay, where it moves from place to place; then the days are those of the year that
 *     repeats, and the worst is that of all stays
 */
public record HandleYear(
        ScaleChoice scale,
        MoistureSpan moisture,
        EdgeSteps edge,
        EndSteps ends,
        WorstPins pins,
        PartsJoint joint,
        Optional<Load> load,
        int worstMonth,
        Grounds grounds,
        HandleDays days,
        List<StaySpan> stays) {

    /**
     * Stress over strength of a glued scale, the year's worst.
     *
     * @param glueUse of the glue
     * @param splitUse of the scale across its grain, held back by the glue; empty where its strength is not known
     */
    public record Load(Band glueUse, Optional<Band> splitUse) {}

    /** Keeps its own copy. */
    public HandleYear {
        stays = List.copyOf(stays);
    }

    /** The same told on other grounds, with its days and stays. */
    public HandleYear with(Grounds told, HandleDays daily, List<StaySpan> spans) {
        return new HandleYear(scale, moisture, edge, ends, pins, joint, load, worstMonth, told, daily, spans);
    }

    /** The same with the samples its bands were read from. */
    public HandleYear with(List<Driver> drivers, List<HandleYear> samples) {
        return with(grounds.with(drivers, samples), days, stays);
    }

    /** The same without what fills memory: days and findings. */
    public HandleYear brief() {
        return with(new Grounds(grounds.restsOn(), List.of()), HandleDays.NONE, List.of());
    }

    /** What a quantity of the year does not exceed with this probability; its value where there are no samples. */
    public double quantile(double probability, ToDoubleFunction<HandleYear> quantity) {
        List<HandleYear> samples = grounds.samples();
        return samples.isEmpty()
                ? quantity.applyAsDouble(this)
                : new SampleQuantile(samples.stream().mapToDouble(quantity).toArray()).at(probability);
    }
}
