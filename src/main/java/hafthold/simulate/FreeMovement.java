package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Handle;
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
 * @param worstHour hour of the year with the largest edge offset, either way
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
        int worstHour,
        double[] dailyEdge) {
    private static final int HOURS_A_DAY = 24;

    /** Follows all parts of a scale through the year. */
    static FreeMovement of(List<PartMotion> parts, Conditions conditions) {
        Handle handle = conditions.handle();
        AirSeries air = conditions.destination().air();
        double halfWidth = handle.tangWidth().metres() / 2;
        double thickness = handle.scaleThickness().metres();
        double length = handle.length().metres();
        double clearance = handle.openClearance().metres();
        double diameter = handle.pinDiameter().metres();
        double tang = conditions.tangExpansion().value();
        double pin = conditions.pinExpansion().value();
        Extremes edge = new Extremes();
        Extremes along = new Extremes();
        Extremes hole = new Extremes();
        Extremes face = new Extremes();
        double crack = 0;
        double[] daily = new double[(air.size() + HOURS_A_DAY - 1) / HOURS_A_DAY];
        for (int hour = 0; hour < air.size(); hour++) {
            double warmer =
                    air.temperatureCelsius(hour) - conditions.madeTemperature().celsius();
            double widthStrain = 0;
            double lengthStrain = 0;
            for (PartMotion part : parts) {
                double wetter = part.moistureChange(hour);
                double across = part.width().strain(wetter, warmer);
                double lengthwise = part.length().strain(wetter, warmer);
                widthStrain += part.share() * across;
                lengthStrain += part.share() * lengthwise;
                double holeAcross = diameter * (across - pin * warmer);
                double holeAlong = diameter * (lengthwise - pin * warmer);
                hole.add(hour, holeAcross);
                hole.add(hour, holeAlong);
                double squeeze = Math.max(0, -Math.min(holeAcross, holeAlong) - clearance);
                crack = Math.max(crack, part.crackPerStrain() * squeeze / diameter);
                face.add(hour, thickness * (part.thickness().strain(wetter, warmer) - pin * warmer));
            }
            double offset = halfWidth * (widthStrain - tang * warmer);
            edge.add(hour, offset);
            along.add(hour, length * (lengthStrain - tang * warmer));
            daily[hour / HOURS_A_DAY] += offset / HOURS_A_DAY;
        }
        return new FreeMovement(
                Math.max(0, -edge.least),
                Math.max(0, edge.most),
                Math.max(along.most, -along.least),
                Math.max(0, -along.least) / 2,
                Math.max(0, along.most) / 2,
                Math.max(0, hole.most + clearance),
                Math.max(0, -hole.least - clearance),
                crack,
                Math.max(0, -face.least),
                Math.max(0, face.most),
                -edge.least > edge.most ? edge.leastHour : edge.mostHour,
                daily);
    }

    /** Least and most of a series, and when. */
    private static final class Extremes {
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;
        private int leastHour;
        private int mostHour;

        void add(int hour, double value) {
            if (value < least) {
                least = value;
                leastHour = hour;
            }
            if (value > most) {
                most = value;
                mostHour = hour;
            }
        }
    }
}
