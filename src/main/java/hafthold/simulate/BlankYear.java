package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Outdoors;
import hafthold.knife.Blank;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Temperature;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * A blank that lies in the workshop's air until a scale is made of it: what it holds week by week, in a year that repeats.
 *
 * <p>It takes up water as a slab between its open faces, edges and ends counted in (Newman 1931, see
 * {@link hafthold.transport.EdgeUptake}), by the equations of the customer's year ({@link PeriodicMoisture}). Under a doubt
 * it is the same wood as the customer's: one factor on the isotherm and one speed of water for both.
 */
public final class BlankYear {
    /** Weeks of a year; the last one has the day that is left over. */
    public static final int WEEKS = 52;

    private static final int DAYS_A_WEEK = 7;

    private final List<Week> weeks;
    private final List<Double> dailyMean;
    private final List<Double> dailySurface;
    private final Map<Hybrid.Part, DoubtedMoisture> weekly;

    /**
     * One week of the workshop's year, means over it.
     *
     * @param firstDay first day, from 0 on 1 January
     * @param lastDay last day, it included
     * @param celsius temperature of the air
     * @param humidityFraction relative humidity of the air
     * @param meanFraction moisture content over the whole blank, kg/kg; of a hybrid that of its leading part; 0 where it
     *     takes up no water
     * @param surfaceFraction at its open faces
     * @param coreFraction in its middle, or at the closed face
     */
    public record Week(
            int firstDay,
            int lastDay,
            double celsius,
            double humidityFraction,
            double meanFraction,
            double surfaceFraction,
            double coreFraction) {}

    private BlankYear(
            List<Week> weeks,
            List<Double> dailyMean,
            List<Double> dailySurface,
            Map<Hybrid.Part, DoubtedMoisture> weekly) {
        this.weeks = List.copyOf(weeks);
        this.dailyMean = List.copyOf(dailyMean);
        this.dailySurface = List.copyOf(dailySurface);
        this.weekly = Map.copyOf(weekly);
    }

    /**
     * A blank in the air of a workshop.
     *
     * @param air a year of hours in the workshop, closed, from 1 January
     * @param humidityDoubtFraction how far its humidity may be off all year round, fraction of relative humidity
     * @throws OutsideModelsException when its moisture does not come round
     */
    public static BlankYear of(
            Blank blank, AirSeries air, double humidityDoubtFraction, ScaleMaterial material, Cut cut) {
        LayerMoisture shop =
                new LayerMoisture(Destination.recorded("shop", "shop", Outdoors.usual(), air, humidityDoubtFraction));
        Map<Hybrid.Part, DoubtedMoisture> weekly = new HashMap<>();
        List<Hybrid.Part> parts = HandleEngine.partsOf(material, cut);
        for (Hybrid.Part part : parts) {
            weekly.put(part, shop.blankMean(part.material(), part.cut(), blank).mapped(BlankYear::weekly));
        }
        Optional<MoistureHistory> leading = PartSlab.blank(
                        parts.get(0).material(), parts.get(0).cut(), blank)
                .map(slab -> history(material.id(), slab, air));
        double[] celsius = weekly(series(air.size(), air::temperatureCelsius));
        double[] humidity = weekly(series(air.size(), air::relativeHumidityFraction));
        double[] mean = of(leading, air, history -> history::meanFraction);
        double[] surface = of(leading, air, history -> history::surfaceFraction);
        double[] core = of(leading, air, history -> history::backFraction);
        double[] weeklyMean = weekly(mean);
        double[] weeklySurface = weekly(surface);
        double[] weeklyCore = weekly(core);
        List<Week> weeks = new ArrayList<>();
        for (int week = 0; week < WEEKS; week++) {
            weeks.add(new Week(
                    firstDay(week),
                    firstDay(week + 1) - 1,
                    celsius[week],
                    humidity[week],
                    weeklyMean[week],
                    weeklySurface[week],
                    weeklyCore[week]));
        }
        return new BlankYear(weeks, daily(mean), daily(surface), weekly);
    }

    /** Week, from 0, of a day counted from 0 on 1 January. */
    public static int weekOf(int day) {
        return Math.min(WEEKS - 1, day / DAYS_A_WEEK);
    }

    private static int firstDay(int week) {
        return week < WEEKS ? week * DAYS_A_WEEK : CommonYear.DAYS;
    }

    /** The weeks from 1 January on. */
    public List<Week> weeks() {
        return weeks;
    }

    /** Mean moisture content of the blank on each day from 1 January on, kg/kg. */
    public List<Double> dailyMean() {
        return dailyMean;
    }

    /** Moisture content at its open faces, likewise. */
    public List<Double> dailySurface() {
        return dailySurface;
    }

    /**
     * What the stock is like when a scale of it is sanded flush.
     *
     * @param week from 0
     * @param temperature of the room where it is sanded
     */
    public FinishState sandedIn(int week, Temperature temperature) {
        return new FinishState() {
            @Override
            public Temperature temperature() {
                return temperature;
            }

            @Override
            public double stockFraction(Hybrid.Part part, Doubt doubt) {
                double mean = weekly.get(part).course(doubt.ofShop()).mean().fraction(week);
                return part.material().water().isPresent() ? mean * doubt.unsettledFactor(part.material()) : 0;
            }
        };
    }

    private static MoistureHistory history(String material, Slab slab, AirSeries air) {
        PeriodicMoisture year = PeriodicMoisture.of(slab, air);
        SlabYears.requireSettled(material, year);
        return year.history();
    }

    /** What a history is asked for. */
    private interface Quantity {
        IntToDoubleFunction of(MoistureHistory history);
    }

    private static double[] of(Optional<MoistureHistory> history, AirSeries air, Quantity quantity) {
        return history.map(known -> series(air.size(), quantity.of(known))).orElseGet(() -> new double[air.size()]);
    }

    private static double[] series(int size, IntToDoubleFunction of) {
        double[] series = new double[size];
        Arrays.setAll(series, of);
        return series;
    }

    private static List<Double> daily(double[] series) {
        return Arrays.stream(YearSeries.dailyMean(series, series.length / CommonYear.DAYS))
                .boxed()
                .toList();
    }

    /** Mean of each week of a series over the year. */
    private static double[] weekly(double[] series) {
        double[] means = new double[WEEKS];
        for (int week = 0; week < WEEKS; week++) {
            int from = firstDay(week) * series.length / CommonYear.DAYS;
            int to = firstDay(week + 1) * series.length / CommonYear.DAYS;
            means[week] = Arrays.stream(series, from, to).average().orElseThrow();
        }
        return means;
    }
}
