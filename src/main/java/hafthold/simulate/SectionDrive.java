package hafthold.simulate;

import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.SectionInfluence;
import hafthold.mechanics.SectionOutput;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A section moved by what really varies: moisture of each layer of each part of the scale, moisture of each liner,
 * temperature. Amplitudes of unit strain modes are folded into one coefficient for each of these, so that a year of an
 * answer is a short sum of series.
 */
final class SectionDrive {
    private final StiffnessNodes section;
    private final double[][] amplitude;

    /**
     * Folds the modes.
     *
     * @param scale motion of each part of the scale
     * @param liners motion of each liner, from the tang outwards
     * @param tangPerKelvin thermal expansion of the tang, 1/K
     * @param gluePerKelvin thermal expansion of the glue, 1/K
     */
    SectionDrive(
            StiffnessNodes section,
            List<PartMotion> scale,
            List<PartMotion> liners,
            double tangPerKelvin,
            double gluePerKelvin) {
        this.section = section;
        SectionInfluence influence = section.first();
        int layers = influence.section().depthLayers();
        int count = scale.size() * layers + liners.size() + 1;
        amplitude = new double[count][influence.columns()];
        double[] warmth = amplitude[count - 1];
        warmth[influence.tangColumn()] = tangPerKelvin;
        warmth[influence.glueColumn()] = gluePerKelvin;
        for (int p = 0; p < scale.size(); p++) {
            PartMotion part = scale.get(p);
            for (int k = 0; k < layers; k++) {
                for (HandleAxis axis : HandleAxis.values()) {
                    int column = influence.scaleColumnOf(axis, k);
                    amplitude[p * layers + k][column] =
                            part.share() * rate(part, axis).perMoisture();
                    warmth[column] += part.share() * rate(part, axis).perKelvin();
                }
            }
        }
        for (int l = 0; l < liners.size(); l++) {
            for (HandleAxis axis : HandleAxis.values()) {
                int column = influence.linerColumnOf(l, axis);
                amplitude[scale.size() * layers + l][column] =
                        rate(liners.get(l), axis).perMoisture();
                warmth[column] = rate(liners.get(l), axis).perKelvin();
            }
        }
    }

    /** An answer hour by hour. */
    double[] year(SectionOutput output, double[][] series) {
        return year(series, mode -> section.value(output, mode));
    }

    /** Stress along the section in one depth layer in mid-section hour by hour, Pa. */
    double[] layerStress(int layer, double[][] series) {
        HandleAxis along = section.first().section().along();
        return year(series, mode -> section.scaleStressPascals(along, layer, mode));
    }

    private double[] year(double[][] series, ToDoubleFunction<double[]> answer) {
        double[] sum = new double[series[0].length];
        for (int d = 0; d < amplitude.length; d++) {
            double coefficient = answer.applyAsDouble(amplitude[d]);
            if (coefficient != 0) {
                double[] drive = series[d];
                for (int hour = 0; hour < sum.length; hour++) {
                    sum[hour] += coefficient * drive[hour];
                }
            }
        }
        return sum;
    }

    static PartMotion.Rate rate(PartMotion part, HandleAxis axis) {
        return switch (axis) {
            case LENGTH -> part.length();
            case WIDTH -> part.width();
            case THICKNESS -> part.thickness();
        };
    }
}
