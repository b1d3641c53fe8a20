package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What one material does on one handle over the customer's year. Movements are the year's worst, zero or more, in
 * metres; moisture contents are fractions of dry mass.
 *
 * @param materialId id
 * @param materialName name for people
 * @param family family
 * @param cut how the scale lies
 * @param moistureFinish moisture content at final sanding
 * @param moistureLowest lowest mean moisture content of the year
 * @param moistureHighest highest mean moisture content of the year
 * @param edgeShy steel proud of the scale, a side, at mid-thickness of the bonded scale
 * @param edgeProud scale proud of the steel, a side, likewise
 * @param freeShy as {@code edgeShy}, the scale unglued
 * @param freeProud as {@code edgeProud}, the scale unglued
 * @param tangLineShy as {@code edgeShy}, over the 2 mm next to the tang
 * @param tangLineProud as {@code edgeProud}, likewise
 * @param lengthMismatch unglued scale longer or shorter than the steel over the handle's length, either way
 * @param endShort scale short of the steel at bolster and butt, each end, at mid-thickness of the bonded scale
 * @param endLong scale beyond the steel at bolster and butt, each end, likewise
 * @param pinGap widest opening between pin and hole
 * @param pinSqueeze largest overlap of pin and hole
 * @param pinCrackUse tension that the squeeze puts across the grain over the strength; 1 splits, 0 without squeeze
 * @param pinHeadProud pin head above the face
 * @param pinHeadSunk pin head below the face
 * @param joint line between the parts of a hybrid
 * @param load what glue and scale bear; empty where it is not glued or told elsewhere
 * @param worstMonth 1 to 12: when the largest edge step falls
 * @param restsOn weakest figure that the answer hangs on
 * @param findings choices made for the user
 * @param dailyEdgeOffset mean edge offset of each day, metres, positive proud, as (low, value, high)
 * @param dailyMoisture mean moisture content of each day, fraction
 * @param stays what it does stay by stay, where it moves from place to place; then the days are those of the year that
 *     repeats, and the worst is that of all stays
 * @param drivers inputs by their part in the doubt about the edge, largest first
 * @param samples the same year with every input drawn from its range, without days, one a sample; empty where only
 *     values were asked for
 */
public record HandleYear(
        String materialId,
        String materialName,
        Family family,
        Cut cut,
        double moistureFinish,
        double moistureLowest,
        double moistureHighest,
        Band edgeShy,
        Band edgeProud,
        Band freeShy,
        Band freeProud,
        Band tangLineShy,
        Band tangLineProud,
        Band lengthMismatch,
        Band endShort,
        Band endLong,
        Band pinGap,
        Band pinSqueeze,
        Band pinCrackUse,
        Band pinHeadProud,
        Band pinHeadSunk,
        PartsJoint joint,
        Optional<Load> load,
        int worstMonth,
        RestsOn restsOn,
        List<Finding> findings,
        List<Band> dailyEdgeOffset,
        List<Double> dailyMoisture,
        List<StaySpan> stays,
        List<Driver> drivers,
        List<HandleYear> samples) {

    /**
     * Stress over strength of a glued scale, the year's worst. Its band is as wide as that of the edge step: what strength
     * and relaxation add to it is worked out for a whole knife only.
     *
     * @param glueUse of the glue
     * @param splitUse of the scale across its grain, held back by the glue; empty where its strength is not known
     */
    public record Load(Band glueUse, Optional<Band> splitUse) {}

    /** Keeps its own copies. */
    public HandleYear {
        findings = List.copyOf(findings);
        dailyEdgeOffset = List.copyOf(dailyEdgeOffset);
        dailyMoisture = List.copyOf(dailyMoisture);
        stays = List.copyOf(stays);
        drivers = List.copyOf(drivers);
        samples = List.copyOf(samples);
    }

    /** A year in one place without samples. */
    public HandleYear(
            String materialId,
            String materialName,
            Family family,
            Cut cut,
            double moistureFinish,
            double moistureLowest,
            double moistureHighest,
            Band edgeShy,
            Band edgeProud,
            Band freeShy,
            Band freeProud,
            Band tangLineShy,
            Band tangLineProud,
            Band lengthMismatch,
            Band endShort,
            Band endLong,
            Band pinGap,
            Band pinSqueeze,
            Band pinCrackUse,
            Band pinHeadProud,
            Band pinHeadSunk,
            PartsJoint joint,
            Optional<Load> load,
            int worstMonth,
            RestsOn restsOn,
            List<Finding> findings,
            List<Band> dailyEdgeOffset,
            List<Double> dailyMoisture) {
        this(
                materialId,
                materialName,
                family,
                cut,
                moistureFinish,
                moistureLowest,
                moistureHighest,
                edgeShy,
                edgeProud,
                freeShy,
                freeProud,
                tangLineShy,
                tangLineProud,
                lengthMismatch,
                endShort,
                endLong,
                pinGap,
                pinSqueeze,
                pinCrackUse,
                pinHeadProud,
                pinHeadSunk,
                joint,
                load,
                worstMonth,
                restsOn,
                findings,
                dailyEdgeOffset,
                dailyMoisture,
                List.of(),
                List.of(),
                List.of());
    }

    /** The same with what it does stay by stay. */
    HandleYear through(List<StaySpan> spans) {
        return rebuilt(findings, dailyEdgeOffset, dailyMoisture, spans, drivers, samples);
    }

    /** The same with what is told and drawn about it. */
    HandleYear with(List<Finding> told, List<Band> edgeOfDays, List<Double> moistureOfDays) {
        return rebuilt(told, edgeOfDays, moistureOfDays, stays, drivers, samples);
    }

    /** The same with the samples its bands were read from. */
    public HandleYear with(List<Driver> inputs, List<HandleYear> years) {
        return rebuilt(findings, dailyEdgeOffset, dailyMoisture, stays, inputs, years);
    }

    /** What a quantity of the year does not exceed with this probability; its value where there are no samples. */
    public double quantile(double probability, ToDoubleFunction<HandleYear> quantity) {
        return samples.isEmpty()
                ? quantity.applyAsDouble(this)
                : new SampleQuantile(samples.stream().mapToDouble(quantity).toArray()).at(probability);
    }

    private HandleYear rebuilt(
            List<Finding> told,
            List<Band> edgeOfDays,
            List<Double> moistureOfDays,
            List<StaySpan> spans,
            List<Driver> inputs,
            List<HandleYear> years) {
        return new HandleYear(
                materialId,
                materialName,
                family,
                cut,
                moistureFinish,
                moistureLowest,
                moistureHighest,
                edgeShy,
                edgeProud,
                freeShy,
                freeProud,
                tangLineShy,
                tangLineProud,
                lengthMismatch,
                endShort,
                endLong,
                pinGap,
                pinSqueeze,
                pinCrackUse,
                pinHeadProud,
                pinHeadSunk,
                joint,
                load,
                worstMonth,
                restsOn,
                told,
                edgeOfDays,
                moistureOfDays,
                spans,
                inputs,
                years);
    }

    /** How well the weakest figure that the answer hangs on is founded. */
    public Evidence evidence() {
        return restsOn.evidence();
    }

    /** The same without what fills memory: days and findings. */
    public HandleYear brief() {
        return new HandleYear(
                materialId,
                materialName,
                family,
                cut,
                moistureFinish,
                moistureLowest,
                moistureHighest,
                edgeShy,
                edgeProud,
                freeShy,
                freeProud,
                tangLineShy,
                tangLineProud,
                lengthMismatch,
                endShort,
                endLong,
                pinGap,
                pinSqueeze,
                pinCrackUse,
                pinHeadProud,
                pinHeadSunk,
                joint,
                load,
                worstMonth,
                restsOn,
                List.of(),
                List.of(),
                List.of());
    }
}
