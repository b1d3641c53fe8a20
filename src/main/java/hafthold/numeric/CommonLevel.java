package hafthold.numeric;

import hafthold.source.PublishedModel;

/**
 * One unknown number seen several times with normal errors: what is then known of it, and how likely what was seen is when
 * all that is known beforehand is a normal distribution.
 *
 * <p>With readings y_i of deviation s_i and m, s beforehand: precision P = 1/s^2 + sum 1/s_i^2, level = (m/s^2 + sum
 * y_i/s_i^2)/P, and -2 log of the likelihood is ((m - level)/s)^2 + sum ((y_i - level)/s_i)^2 + log(P s^2) + sum log s_i^2
 * up to a constant.
 */
@PublishedModel(
        source = "gelman-2013",
        locator = "section 2.5, normal data with known variance and a normal prior",
        validity = "independent errors")
public final class CommonLevel {
    private final double level;
    private final double precision;
    private final double misfit;
    private final double logLikelihood;
    private final double offBefore;
    private final int furthest;
    private final double furthestOff;

    /**
     * From readings.
     *
     * @param before what is expected beforehand
     * @param beforeDeviation its standard deviation, positive
     * @param seen readings; may be empty
     * @param deviation standard deviation of each, positive
     */
    public CommonLevel(double before, double beforeDeviation, double[] seen, double[] deviation) {
        double p = 1 / (beforeDeviation * beforeDeviation);
        double sum = before * p;
        for (int i = 0; i < seen.length; i++) {
            double one = 1 / (deviation[i] * deviation[i]);
            p += one;
            sum += seen[i] * one;
        }
        precision = p;
        level = sum / p;
        double squares = 0;
        double logs = 0;
        int most = -1;
        double mostOff = 0;
        for (int i = 0; i < seen.length; i++) {
            double off = (seen[i] - level) / deviation[i];
            if (Math.abs(off) > mostOff) {
                most = i;
                mostOff = Math.abs(off);
            }
            squares += off * off;
            logs += 2 * Math.log(deviation[i]);
        }
        misfit = squares;
        furthest = most;
        furthestOff = mostOff;
        offBefore = (before - level) / beforeDeviation;
        logLikelihood = -(offBefore * offBefore + squares + Math.log(p * beforeDeviation * beforeDeviation) + logs) / 2;
    }

    /** The number, most likely. */
    public double level() {
        return level;
    }

    /** Its standard deviation. */
    public double deviation() {
        return Math.sqrt(1 / precision);
    }

    /** Sum of the squares of what separates readings and level, in their deviations. */
    public double misfit() {
        return misfit;
    }

    /** Which reading lies furthest from the level, in its own deviations; -1 where none lies off. */
    public int furthest() {
        return furthest;
    }

    /** How far that one lies, in its deviation, zero or more. */
    public double furthestOff() {
        return furthestOff;
    }

    /** How far the level lies from what was expected beforehand, in its deviation; signed, positive below it. */
    public double offBefore() {
        return offBefore;
    }

    /** Logarithm of the likelihood of the readings, up to a constant. */
    public double logLikelihood() {
        return logLikelihood;
    }
}
