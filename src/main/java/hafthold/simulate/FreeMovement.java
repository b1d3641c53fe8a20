package hafthold.simulate;

import hafthold.air.AirSeries;
import java.util.List;

/**
 * The year of an unglued scale against steel, metres: the worst of each kind.
 *
 * <p>Edge offset is half the width times the difference of the scale's and the tang's strain since finish; a hole grows
 * as if it were filled, so its gap per axis is the diameter times the difference of the scale's and the pin's strain,
 * plus the clearance that is open (superposition: a uniform strain scales every length of a body).
 *
 * @param edgeShy steel proud of the scale, a side
 * @param edgeProud scale proud of the steel, a side
 * @param lengthMismatch scale against steel over the length, either way
 * @param endShort scale short of the steel at each end, half of the shortening
 * @param endLong scale beyond the steel at each end, half of the growth
 * @param pinGap widest opening beside a pin, along or across
 * @param pinSqueeze largest overlap of pin and hole, along or across
 * @param pinCrackUse tension across the grain beside the pin over the strength, 0 without squeeze
 * @param pinHeadProud pin head above the face
 * @param pinHeadSunk pin head below the face
 * @param joint worst differences between the parts of a hybrid
 * @param worstSample sample with the largest edge offset, either way
 */
record FreeMovement(
        double edgeShy,
        double edgeProud,
        double lengthMismatch,
        double endShort,
        double endLong,
        double pinGap,
        double pinSqueeze,
        double pinCrackUse,
        double pinHeadProud,
        double pinHeadSunk,
        JointExtremes joint,
        int worstSample) {
    private static final double DAY_SECONDS = 86400;

    /**
     * Follows all parts of a scale.
     *
     * @param warmer temperature above that at finish, K, one a sample of the courses of the parts
     */
    static FreeMovement of(List<PartMotion> parts, Conditions conditions, double[] warmer) {
        double[] widthStrain = new double[warmer.length];
        double[] lengthStrain = new double[warmer.length];
        PartExtremes extremes = new PartExtremes(conditions);
        for (PartMotion part : parts) {
            extremes.follow(part, warmer, widthStrain, lengthStrain);
        }
        double tang = conditions.tangExpansion().value();
        double[] edge = edge(widthStrain, conditions, warmer);
        Swing edges = Swing.of(edge);
        double shorter = 0;
        double longer = 0;
        for (int i = 0; i < warmer.length; i++) {
            double over = lengthStrain[i] - tang * warmer[i];
            shorter = -over > shorter ? -over : shorter;
            longer = over > longer ? over : longer;
        }
        double length = conditions.handle().length().metres();
        return new FreeMovement(
                edges.below(),
                edges.above(),
                length * Math.max(shorter, longer),
                length * shorter / 2,
                length * longer / 2,
                extremes.pinGap(),
                extremes.pinSqueeze(),
                extremes.crackUse(),
                extremes.headProud(),
                extremes.headSunk(),
                JointExtremes.of(parts, warmer),
                edges.worstHour());
    }

    /** Edge offset at each sample, positive proud. */
    static double[] edge(List<PartMotion> parts, Conditions conditions, double[] warmer) {
        double[] widthStrain = new double[warmer.length];
        for (PartMotion part : parts) {
            for (int i = 0; i < warmer.length; i++) {
                widthStrain[i] += part.share() * part.width().strain(part.moistureChange(i), warmer[i]);
            }
        }
        return edge(widthStrain, conditions, warmer);
    }

    private static double[] edge(double[] widthStrain, Conditions conditions, double[] warmer) {
        double halfWidth = conditions.handle().tangWidth().metres() / 2;
        double tang = conditions.tangExpansion().value();
        double[] edge = new double[warmer.length];
        for (int i = 0; i < edge.length; i++) {
            edge[i] = halfWidth * (widthStrain[i] - tang * warmer[i]);
        }
        return edge;
    }

    /** The same with its sample numbered as in the year it was taken from. */
    FreeMovement at(int[] numbers) {
        return new FreeMovement(
                edgeShy,
                edgeProud,
                lengthMismatch,
                endShort,
                endLong,
                pinGap,
                pinSqueeze,
                pinCrackUse,
                pinHeadProud,
                pinHeadSunk,
                joint,
                numbers[worstSample]);
    }

    /** Largest edge offset, either way. */
    double edgeEither() {
        return Math.max(edgeShy, edgeProud);
    }

    /**
     * Samples of a series in a day.
     *
     * @throws IllegalArgumentException where days do not hold a whole number of them
     */
    static int samplesADay(AirSeries air) {
        double samples = DAY_SECONDS / air.stepSeconds();
        if (samples < 1 || samples != Math.rint(samples)) {
            throw new IllegalArgumentException(
                    "a day holds a whole number of samples, not " + samples + " of " + air.stepSeconds() + " s");
        }
        return (int) samples;
    }
}
