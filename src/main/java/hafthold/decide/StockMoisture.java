package hafthold.decide;

import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import hafthold.simulate.StockEngine;
import hafthold.simulate.StockOutlook;
import hafthold.simulate.StockPosterior;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Moisture of a block in bands of 10, 50 and 90 in a hundred.
 *
 * @param posterior the draws behind them
 * @param balanceKilograms smallest step that the balance shows
 * @param withinFraction how near is near enough, kg/kg
 */
public record StockMoisture(StockPosterior posterior, double balanceKilograms, double withinFraction) {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;
    /** Two readings of a balance differ by a step of it by chance: a change is seen when it is twice that. */
    private static final double STEPS_SEEN = 2;

    /** Mean today, kg/kg. */
    public Band meanNow() {
        return band(StockOutlook::meanNow);
    }

    /** Core today, kg/kg. */
    public Band coreNow() {
        return band(StockOutlook::coreNow);
    }

    /** Where it would come to rest in the storage as it is, kg/kg. */
    public Band rest() {
        return band(StockOutlook::rest);
    }

    /** Where it comes to rest in the box, kg/kg. */
    public Band goal() {
        return band(StockOutlook::goal);
    }

    /** Oven-dry mass, kg. */
    public Band dryKilograms() {
        return band(StockOutlook::dryKilograms);
    }

    /** Days until it is ready in the box; a point beyond the forecast is infinite. */
    public Days boxDays() {
        return Days.of(outlooks(), StockOutlook::inBox);
    }

    /** Likewise in the storage as it is. */
    public Days storageDays() {
        return Days.of(outlooks(), StockOutlook::asItLies);
    }

    /**
     * Days until something happens, 10, 50 and 90 in a hundred.
     *
     * @param low a point beyond the forecast is infinite, here as in the others
     * @param middle likewise
     * @param high likewise
     * @param never share of the draws that do not get there within the forecast
     */
    public record Days(double low, double middle, double high, double never) {
        static Days of(List<StockOutlook> outlooks, Function<StockOutlook, StockOutlook.Way> which) {
            double[] days = outlooks.stream()
                    .mapToDouble(outlook -> which.apply(outlook).readyDays())
                    .sorted()
                    .toArray();
            double never = (double) outlooks.stream()
                            .filter(outlook ->
                                    Double.isInfinite(which.apply(outlook).readyDays()))
                            .count()
                    / days.length;
            return new Days(at(days, LOW), at(days, 0.5), at(days, HIGH), never);
        }

        private static double at(double[] sorted, double share) {
            return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
        }
    }

    /** Change of weight in seven days below which it is ready, right nine times of ten, kg. */
    public double telltaleKilograms() {
        return new SampleQuantile(values(StockOutlook::telltaleKilograms)).at(LOW);
    }

    /** How many such blocks weighed together show that change on this balance; 1 where one does. */
    public long weighTogether() {
        return (long) Math.ceil(STEPS_SEEN * balanceKilograms / telltaleKilograms() - 1e-9);
    }

    /** What a point of moisture content weighs in it, kg. */
    public double pointKilograms() {
        return dryKilograms().value() / 100;
    }

    /** Chance that mean and core are near enough today. */
    public double chanceReady() {
        return chance(StockOutlook::isReady);
    }

    /** Chance that it is wetter than it is to be: core or mean above by more than is near enough. */
    public double chanceWet() {
        return chance(outlook -> !outlook.isReady() && outlook.coreNow() + outlook.meanNow() > 2 * outlook.goal());
    }

    private double chance(Predicate<StockOutlook> of) {
        return (double) outlooks().stream().filter(of).count() / outlooks().size();
    }

    /**
     * One day of its course.
     *
     * @param on the day
     * @param mean over the block, kg/kg
     * @param core in its middle
     */
    public record Day(LocalDate on, Band mean, Band core) {}

    /** From the day it was bought to today. */
    public List<Day> past() {
        return IntStream.range(0, posterior.pastDays().size())
                .mapToObj(i -> new Day(
                        posterior.pastDays().get(i),
                        band(outlook -> outlook.pastMean().get(i)),
                        band(outlook -> outlook.pastCore().get(i))))
                .toList();
    }

    /** From today on in the box, until it is ready nine times of ten, or as far as the forecast goes. */
    public List<Day> ahead() {
        LocalDate today = posterior.pastDays().get(posterior.pastDays().size() - 1);
        double last = Math.max(MOST_SHOWN_LEAST, 1.3 * boxDays().high());
        List<Day> days = new ArrayList<>();
        for (int i = 0; i < StockEngine.DAYS_AHEAD.size() && StockEngine.DAYS_AHEAD.get(i) <= last; i++) {
            int at = i;
            days.add(new Day(
                    today.plusDays(StockEngine.DAYS_AHEAD.get(i)),
                    band(outlook -> outlook.inBox().mean().get(at)),
                    band(outlook -> outlook.inBox().core().get(at))));
        }
        return days;
    }

    private static final double MOST_SHOWN_LEAST = 21;

    private List<StockOutlook> outlooks() {
        return posterior.outlooks();
    }

    private double[] values(ToDoubleFunction<StockOutlook> of) {
        return outlooks().stream().mapToDouble(of).toArray();
    }

    private Band band(ToDoubleFunction<StockOutlook> of) {
        SampleQuantile quantile = new SampleQuantile(values(of));
        return new Band(quantile.at(LOW), quantile.at(0.5), quantile.at(HIGH));
    }
}
