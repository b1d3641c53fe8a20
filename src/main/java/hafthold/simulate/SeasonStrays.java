package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.SeasonalWeather;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How much drier or damper than the normal one the season was that a knife had behind it, on each of the days it was
 * measured.
 *
 * <p>Two readings of one winter met the same stray, readings a season or more apart strays that have nothing to do with
 * each other: the seasons before them go together by the share of their days that they have in common, which is the
 * correlation of means over two stretches of days that are drawn by themselves.
 */
final class SeasonStrays {
    private static final int MONTH_HOURS = 30 * CommonYear.HOURS_A_DAY;

    private final List<LocalDate> days;
    private final List<Double> damp = new ArrayList<>();
    private final RealMatrix shared;

    /**
     * Strays of the seasons before some days.
     *
     * @param year the normal year of the place
     * @param days days in any order, such as the last ones at the customer's before each reading; equal days meet one stray
     */
    SeasonStrays(AirSeries year, List<LocalDate> days) {
        this.days = days.stream().distinct().sorted().toList();
        List<Double> months = months(year);
        this.days.forEach(day -> damp.add(dampness(months, day)));
        int count = this.days.size();
        double[][] together = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                double apart = Math.abs(ChronoUnit.DAYS.between(this.days.get(i), this.days.get(j)));
                together[i][j] = Math.max(0, 1 - apart / SeasonalWeather.SEASON_DAYS);
            }
        }
        shared = new CholeskyDecomposition(new Array2DRowRealMatrix(together)).getL();
    }

    /**
     * Shift of the relative humidity in the season before a day, fraction: that of the driest season, of the dampest, or in
     * between as the month before the day is.
     *
     * @param day one of those that were given
     */
    double shiftFraction(Doubt doubt, LocalDate day) {
        int at = days.indexOf(day);
        double shift = 0;
        for (int year = 0; year <= at; year++) {
            shift += shared.getEntry(at, year)
                    * ((1 - damp.get(at)) * doubt.drySeasonShift(year) + damp.get(at) * doubt.dampSeasonShift(year));
        }
        return shift;
    }

    /** Where the month before a day lies between the driest month of the year, 0, and the dampest, 1. */
    private static double dampness(List<Double> months, LocalDate day) {
        double driest = months.stream().min(Double::compare).orElseThrow();
        double dampest = months.stream().max(Double::compare).orElseThrow();
        double here = months.get(Math.min(day.getDayOfYear(), CommonYear.DAYS) - 1);
        return dampest > driest ? (here - driest) / (dampest - driest) : 0.5;
    }

    /** Mean humidity of the month before each day of the year. */
    private static List<Double> months(AirSeries year) {
        int stride = Math.max(1, year.size() / CommonYear.HOURS);
        List<Double> months = new ArrayList<>();
        for (int day = 0; day < CommonYear.DAYS; day++) {
            double sum = 0;
            for (int back = 1; back <= MONTH_HOURS; back++) {
                int hour = (day * CommonYear.HOURS_A_DAY - back) * stride;
                sum += year.relativeHumidityFraction(Math.floorMod(hour, year.size()));
            }
            months.add(sum / MONTH_HOURS);
        }
        return months;
    }
}
