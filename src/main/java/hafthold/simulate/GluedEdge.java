package hafthold.simulate;

import hafthold.air.AirSeries;
import java.util.List;

/**
 * The year of a glued scale against steel, metres, from its course of moisture and the temperature alone.
 *
 * <p>The sections of the handle are linear, so that every figure at every hour is one number a half of the scale and part
 * times its change of moisture, and one times the warming, all since finish: a dozen products an hour.
 *
 * @param tangLine edge over the 2 mm next to the tang
 * @param mid edge at half the scale's thickness
 * @param end end at bolster and butt at half the scale's thickness, each
 * @param head head of a pin on the centre line above the face
 * @param dailyMid mean of {@code mid} of each day
 */
record GluedEdge(Swing tangLine, Swing mid, Swing end, Swing head, double[] dailyMid) {

    /**
     * Follows a scale through the year.
     *
     * @param parts motion of each part of the scale
     * @param handle its sections under a scale of such parts
     */
    static GluedEdge of(List<PartMotion> parts, GluedSections.Readings handle, Conditions conditions) {
        double[] line = handle.tangLine().drive(parts, handle.tangPerKelvin(), handle.gluePerKelvin());
        double[] mid = handle.mid().drive(parts, handle.tangPerKelvin(), handle.gluePerKelvin());
        double[] end = handle.end().drive(parts, handle.tangPerKelvin(), handle.gluePerKelvin());
        double[] face = handle.face().drive(parts, handle.tangPerKelvin(), handle.gluePerKelvin());
        face[face.length - 1] -=
                handle.halfThickness() * conditions.pinExpansion().value();
        AirSeries air = conditions.destination().air();
        int samplesADay = FreeMovement.samplesADay(air);
        double[] daily = new double[(air.size() + samplesADay - 1) / samplesADay];
        Extremes lines = new Extremes();
        Extremes mids = new Extremes();
        Extremes ends = new Extremes();
        Extremes heads = new Extremes();
        double[] change = new double[mid.length];
        for (int i = 0; i < air.size(); i++) {
            change(parts, conditions, i, change);
            double edge = dot(mid, change);
            mids.take(edge, i);
            lines.take(dot(line, change), i);
            ends.take(dot(end, change), i);
            heads.take(-dot(face, change), i);
            daily[i / samplesADay] += edge / samplesADay;
        }
        return new GluedEdge(lines.swing(), mids.swing(), ends.swing(), heads.swing(), daily);
    }

    /** The edge at mid-thickness at each sample of the year. */
    static double[] offsets(List<PartMotion> parts, GluedSections.Readings handle, Conditions conditions) {
        double[] mid = handle.mid().drive(parts, handle.tangPerKelvin(), handle.gluePerKelvin());
        double[] change = new double[mid.length];
        double[] offsets = new double[conditions.destination().air().size()];
        for (int i = 0; i < offsets.length; i++) {
            change(parts, conditions, i, change);
            offsets[i] = dot(mid, change);
        }
        return offsets;
    }

    /** Change of moisture of the half at the tang and of that at the air of each part, then the warming, since finish. */
    static void change(List<PartMotion> parts, Conditions conditions, int sample, double[] target) {
        int at = 0;
        for (int p = 0; p < parts.size(); p++) {
            PartMotion part = parts.get(p);
            target[at++] = part.moistureChange(false, sample);
            target[at++] = part.moistureChange(true, sample);
        }
        target[at] = conditions.destination().air().temperatureCelsius(sample)
                - conditions.madeTemperature().celsius();
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    /** Least and most so far. */
    private static final class Extremes {
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;
        private int leastSample;
        private int mostSample;

        void take(double value, int sample) {
            if (value < least) {
                least = value;
                leastSample = sample;
            }
            if (value > most) {
                most = value;
                mostSample = sample;
            }
        }

        Swing swing() {
            return new Swing(least, most, leastSample, mostSample);
        }
    }
}
