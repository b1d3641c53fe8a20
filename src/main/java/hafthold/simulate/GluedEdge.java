package hafthold.simulate;

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
 */
record GluedEdge(Swing tangLine, Swing mid, Swing end, Swing head) {

    /**
     * Follows a scale.
     *
     * @param parts motion of each part of the scale
     * @param handle its sections under a scale of such parts
     * @param pinPerKelvin thermal expansion of the pins, 1/K
     * @param warmer temperature above that at finish, K, one a sample of the courses of the parts
     */
    static GluedEdge of(List<PartMotion> parts, GluedSections.Readings handle, double pinPerKelvin, double[] warmer) {
        double[] face = drive(handle.face(), parts, handle);
        face[face.length - 1] -= handle.halfThickness() * pinPerKelvin;
        for (int d = 0; d < face.length; d++) {
            face[d] = -face[d]; // a head stands proud where the face sinks
        }
        double[][] series = changes(parts, warmer);
        return new GluedEdge(
                Swing.ofSum(drive(handle.tangLine(), parts, handle), series),
                Swing.ofSum(drive(handle.mid(), parts, handle), series),
                Swing.ofSum(drive(handle.end(), parts, handle), series),
                Swing.ofSum(face, series));
    }

    /** The same with its samples numbered as in the year they were taken from. */
    GluedEdge at(int[] numbers) {
        return new GluedEdge(tangLine.at(numbers), mid.at(numbers), end.at(numbers), head.at(numbers));
    }

    /** The edge at mid-thickness at each sample. */
    static double[] offsets(List<PartMotion> parts, GluedSections.Readings handle, double[] warmer) {
        return sum(drive(handle.mid(), parts, handle), changes(parts, warmer));
    }

    /** Change of moisture of the half at the tang and of that at the air of each part, then the warming, since finish. */
    static double[][] changes(List<PartMotion> parts, double[] warmer) {
        double[][] series = new double[GluedReading.HALVES * parts.size() + 1][];
        for (int p = 0; p < parts.size(); p++) {
            series[GluedReading.HALVES * p] = parts.get(p).halfMoistureChanges(false);
            series[GluedReading.HALVES * p + 1] = parts.get(p).halfMoistureChanges(true);
        }
        series[series.length - 1] = warmer;
        return series;
    }

    private static double[] drive(GluedReading reading, List<PartMotion> parts, GluedSections.Readings handle) {
        return reading.drive(parts, handle.tangPerKelvin(), handle.gluePerKelvin());
    }

    /** Sample by sample the sum of all series, each times its own number. */
    static double[] sum(double[] drive, double[][] series) {
        double[] sum = new double[series[0].length];
        for (int d = 0; d < drive.length; d++) {
            double factor = drive[d];
            double[] values = series[d];
            for (int i = 0; i < sum.length; i++) {
                sum[i] += factor * values[i];
            }
        }
        return sum;
    }
}
