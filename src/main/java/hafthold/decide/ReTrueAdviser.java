package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.air.HeldAir;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangKnife;
import hafthold.quantity.Band;
import hafthold.simulate.Destination;
import hafthold.simulate.HomeYear;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Settling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * Looks for the state in which a returned knife is best trued up: where what it falls shy in the customer's year takes as
 * much of its limit as what it stands proud takes of its own, so that it is sanded nearer to the dry end, for sharp steel is
 * worse than a proud scale.
 */
final class ReTrueAdviser {
    /** Part of the year's travel that a month may lie off and still do (a judgement). */
    private static final double NEAR = 0.15;

    /** Below that nothing travels and any month will do, m. */
    static final double HARDLY = 0.02e-3;

    private final ReturnEngine engine;
    private final FullTangKnife knife;
    private final FitLimits limits;

    /** One draw's answer. */
    private record One(double humidity, double moisture, double shy, double proud) {}

    ReTrueAdviser(ReturnEngine engine, FullTangKnife knife, FitLimits limits) {
        this.engine = engine;
        this.knife = knife;
        this.limits = limits;
    }

    /**
     * Advice from draws that count alike.
     *
     * @param years the year of each draw where the knife lives
     */
    ReTrue of(List<ReturnSample> draws, List<HomeYear> years) {
        double celsius = knife.build().made().temperature().celsius();
        List<One> answers = new ArrayList<>();
        for (int i = 0; i < draws.size(); i++) {
            HomeYear year = years.get(i);
            double level = level(year);
            double moisture = moistureAt(year, level);
            answers.add(new One(
                    engine.humidityFor(draws.get(i), moisture, celsius),
                    moisture,
                    level - Arrays.stream(year.edge()).min().orElseThrow(),
                    Arrays.stream(year.edge()).max().orElseThrow() - level));
        }
        Band humidity = spread(answers, One::humidity).times(100);
        boolean takesWater = Settling.of(knife, engine.home()).isPresent();
        return new ReTrue(
                takesWater ? Optional.of(humidity) : Optional.empty(),
                celsius,
                spread(answers, One::moisture).times(100),
                months(mean(years)),
                takesWater ? rest(celsius, humidity.value() / 100) : Optional.empty(),
                spread(answers, One::shy),
                spread(answers, One::proud));
    }

    private Optional<Band> rest(double celsius, double humidity) {
        HeldAir air = new HeldAir(celsius, humidity);
        return Settling.of(knife, Destination.recorded("bench", "bench", air, air.year(), 0))
                .map(Settling::restDays);
    }

    /** Height of the edge that is to be flush. */
    private double level(HomeYear year) {
        double least = Arrays.stream(year.edge()).min().orElseThrow();
        double most = Arrays.stream(year.edge()).max().orElseThrow();
        return limits.between(least, most);
    }

    /** Moisture at which the edge stands there, on a line through the driest and the dampest day. */
    private static double moistureAt(HomeYear year, double level) {
        double[] edge = year.edge();
        double[] moisture = year.moistureFraction();
        int dry = 0;
        int damp = 0;
        for (int day = 1; day < edge.length; day++) {
            dry = edge[day] < edge[dry] ? day : dry;
            damp = edge[day] > edge[damp] ? day : damp;
        }
        double travel = edge[damp] - edge[dry];
        double share = travel > 0 ? (level - edge[dry]) / travel : 0;
        return (1 - share) * moisture[dry] + share * moisture[damp];
    }

    /** Months in the middle of which the edge stands near that height. */
    private List<Integer> months(HomeYear year) {
        double travel = Arrays.stream(year.edge()).max().orElseThrow()
                - Arrays.stream(year.edge()).min().orElseThrow();
        double level = level(year);
        TreeSet<Integer> months = new TreeSet<>();
        for (int day = 0; day < year.edge().length; day++) {
            int month = CommonYear.monthOfHour(day * CommonYear.HOURS_A_DAY);
            boolean isMiddle = day == CommonYear.firstDay(month) + CommonYear.daysOfMonth(month) / 2;
            if (isMiddle && Math.abs(year.edge()[day] - level) <= Math.max(NEAR * travel, HARDLY)) {
                months.add(month);
            }
        }
        return List.copyOf(months);
    }

    private static HomeYear mean(List<HomeYear> years) {
        double[] edge = new double[CommonYear.DAYS];
        double[] moisture = new double[CommonYear.DAYS];
        for (HomeYear year : years) {
            Arrays.setAll(edge, day -> edge[day] + year.edge()[day] / years.size());
            Arrays.setAll(moisture, day -> moisture[day] + year.moistureFraction()[day] / years.size());
        }
        return new HomeYear(edge, moisture);
    }

    private static Band spread(List<One> answers, ToDoubleFunction<One> of) {
        return ReturnPosterior.spread(answers.stream().mapToDouble(of).toArray());
    }
}
