package hafthold.simulate;

import hafthold.air.AirSeries;
import java.util.List;

/**
 * The year of an unglued scale against steel, metres: the worst of each kind, and the edge day by day.
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
 * @param worstSample sample of the year with the largest edge offset, either way
 * @param dailyEdge mean edge offset of each day, positive proud
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
        int worstSample,
        double[] dailyEdge) {
    private static final double DAY_SECONDS = 86400;

    /** Follows all parts of a scale through the year. */
    static FreeMovement of(List<PartMotion> parts, Conditions conditions) {
        AirSeries air = conditions.destination().air();
        double made = conditions.madeTemperature().celsius();
        double[] widthStrain = new double[air.size()];
        double[] lengthStrain = new double[air.size()];
        PartExtremes extremes = new PartExtremes(conditions);
        for (PartMotion part : parts) {
            extremes.follow(part, widthStrain, lengthStrain);
        }
        double halfWidth = conditions.handle().tangWidth().metres() / 2;
        double tang = conditions.tangExpansion().value();
        int samplesADay = samplesADay(air);
        double[] daily = new double[(air.size() + samplesADay - 1) / samplesADay];
        double shy = 0;
        double proud = 0;
        double shorter = 0;
        double longer = 0;
        int shySample = 0;
        int proudSample = 0;
        for (int i = 0; i < air.size(); i++) {
            double steel = tang * (air.temperatureCelsius(i) - made);
            double edge = halfWidth * (widthStrain[i] - steel);
            daily[i / samplesADay] += edge / samplesADay;
            if (edge < -shy) {
                shy = -edge;
                shySample = i;
            } else if (edge > proud) {
                proud = edge;
                proudSample = i;
            }
            shorter = Math.max(shorter, steel - lengthStrain[i]);
            longer = Math.max(longer, lengthStrain[i] - steel);
        }
        double length = conditions.handle().length().metres();
        return new FreeMovement(
                shy,
                proud,
                length * Math.max(shorter, longer),
                length * shorter / 2,
                length * longer / 2,
                extremes.pinGap(),
                extremes.pinSqueeze(),
                extremes.crackUse(),
                extremes.headProud(),
                extremes.headSunk(),
                JointExtremes.of(parts, air.size(), sample -> air.temperatureCelsius(sample) - made),
                shy > proud ? shySample : proudSample,
                daily);
    }

    /** Largest edge offset, either way. */
    double edgeEither() {
        return Math.max(edgeShy, edgeProud);
    }

    /** Samples of a series in a day. */
    static int samplesADay(AirSeries air) {
        return Math.max(1, (int) Math.round(DAY_SECONDS / air.stepSeconds()));
    }
}
