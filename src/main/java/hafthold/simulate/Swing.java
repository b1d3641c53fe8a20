package hafthold.simulate;

/**
 * Least and most of a series through the year, and when.
 *
 * @param least lowest value
 * @param most highest value
 * @param leastHour hour of the lowest
 * @param mostHour hour of the highest
 */
record Swing(double least, double most, int leastHour, int mostHour) {

    static Swing of(double[] series) {
        int low = 0;
        int high = 0;
        for (int hour = 1; hour < series.length; hour++) {
            if (series[hour] < series[low]) {
                low = hour;
            }
            if (series[hour] > series[high]) {
                high = hour;
            }
        }
        return new Swing(series[low], series[high], low, high);
    }

    /** Of the sum of several series, each times its own number. */
    static Swing ofSum(double[] factors, double[][] series) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int low = 0;
        int high = 0;
        for (int hour = 0; hour < series[0].length; hour++) {
            double sum = 0;
            for (int s = 0; s < factors.length; s++) {
                sum += factors[s] * series[s][hour];
            }
            if (sum < least) {
                least = sum;
                low = hour;
            }
            if (sum > most) {
                most = sum;
                high = hour;
            }
        }
        return new Swing(least, most, low, high);
    }

    /** The same with its hours numbered as in the series it was taken from. */
    Swing at(int[] numbers) {
        return new Swing(least, most, numbers[leastHour], numbers[mostHour]);
    }

    /** How far below zero, not negative. */
    double below() {
        return Math.max(0, -least);
    }

    /** How far above zero, not negative. */
    double above() {
        return Math.max(0, most);
    }

    /** The larger of both. */
    double either() {
        return Math.max(below(), above());
    }

    /** The hour that lies further from zero. */
    int worstHour() {
        return below() > above() ? leastHour : mostHour;
    }

    /** What covers both. */
    Swing with(Swing other) {
        return new Swing(
                Math.min(least, other.least),
                Math.max(most, other.most),
                other.least < least ? other.leastHour : leastHour,
                other.most > most ? other.mostHour : mostHour);
    }
}
