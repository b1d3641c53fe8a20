package hafthold.simulate;

import hafthold.transport.MoistureHistory;

/**
 * Moisture content of a scale hour by hour in equal layers from the tang outwards.
 *
 * @param layer moisture content of each layer and hour, kg/kg; shared, never written to
 * @param mean over the thickness
 */
record LayeredCourse(double[][] layer, MoistureCourse mean) {

    /** The layers of a computed year. */
    static LayeredCourse of(MoistureHistory history) {
        double[] mean = new double[history.size()];
        double[] moment = new double[history.size()];
        double[][] layer = new double[history.layers()][history.size()];
        for (int hour = 0; hour < mean.length; hour++) {
            mean[hour] = history.meanFraction(hour);
            moment[hour] = history.firstMomentFraction(hour);
            for (int k = 0; k < layer.length; k++) {
                layer[k][hour] = history.layerFraction(k, hour);
            }
        }
        return new LayeredCourse(layer, new MoistureCourse(mean, moment));
    }

    /** Moisture content of a layer, kg/kg. */
    double fraction(int k, int hour) {
        return layer[k][hour];
    }
}
