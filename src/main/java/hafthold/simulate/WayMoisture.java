package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.KnifeHistory;
import hafthold.knife.WorkState;
import hafthold.material.Material;
import hafthold.simulate.KnifeWay.Other;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import hafthold.transport.TransientMoisture;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Moisture of the parts of a knife on the days it was measured, daily means, under any doubt.
 *
 * <p>Computed are the way with everything at its value, for the few diffusivities of {@link DiffusivityNodes}, each also
 * from a wetter start, and the way in other air: drier and damper at the customer's, other habits there, a damper bench.
 * All else is read on straight lines between these.
 */
final class WayMoisture {
    /** Added to the moisture at finish to see what is left of it, kg/kg. */
    private static final double WETTER_START = 0.01;

    private static final int MONTH_HOURS = 30 * CommonYear.HOURS_A_DAY;

    private final KnifeWay way;
    private final LayerMoisture stock;
    private final WorkState made;
    private final List<LocalDate> days;
    private final Map<Other, AirSeries> airs = new EnumMap<>(Other.class);
    private final double humidityDoubt;
    private final double season;
    private final boolean checked;

    /**
     * Moisture along a way.
     *
     * @param days days that are wanted
     * @param stock what the stock held
     */
    WayMoisture(
            KnifeWay way,
            Destination destination,
            KnifeHistory history,
            List<LocalDate> days,
            LayerMoisture stock,
            WorkState made) {
        this.way = way;
        this.days = days;
        this.stock = stock;
        this.made = made;
        humidityDoubt = destination.humidityDoubtFraction();
        for (Other other : Other.values()) {
            if (way.knows(other)) {
                airs.put(other, way.air(other));
            }
        }
        season = season(destination.repeatingYear(), way.lastAtHome(days.get(0)));
        checked = history.bench().map(KnifeHistory.BenchRest::checked).orElse(false);
    }

    /** Temperature on the days, mean of each. */
    double[] celsius() {
        AirSeries air = airs.get(Other.NONE);
        double[] hourly = new double[air.size()];
        Arrays.setAll(hourly, air::temperatureCelsius);
        return daily(hourly);
    }

    /** A scale in layers, a liner in one; still for what takes up no water. */
    DoubtedMoisture of(Material material, Optional<Slab> slab, int layers) {
        return slab.map(open -> moving(material, open, layers)).orElseGet(() -> still(layers));
    }

    private DoubtedMoisture still(int layers) {
        double[] dry = new double[days.size()];
        double[][] layer = new double[layers][];
        Arrays.fill(layer, dry);
        return DoubtedMoisture.certain(new LayeredCourse(layer, new MoistureCourse(dry, dry)));
    }

    private DoubtedMoisture moving(Material material, Slab slab, int layers) {
        DiffusivityNodes nodes = new DiffusivityNodes(material.water().orElseThrow());
        double start = start(material, Doubt.NONE);
        int wetter = nodes.size();
        List<Other> others =
                airs.keySet().stream().filter(other -> other != Other.NONE).toList();
        LayeredCourse[] computed = new LayeredCourse[2 * wetter + others.size()];
        IntStream.range(0, computed.length).parallel().forEach(number -> {
            boolean otherAir = number >= 2 * wetter;
            int node = otherAir ? nodes.value() : number % wetter;
            computed[number] = course(
                    PartSlab.quicker(slab, nodes.factor(node)),
                    otherAir || number < wetter ? start : start + WETTER_START,
                    airs.get(otherAir ? others.get(number - 2 * wetter) : Other.NONE),
                    layers,
                    number == nodes.value() ? Resolution.STANDARD : Resolution.SAMPLED);
        });
        return new DoubtedMoisture(
                computed.length, nodes.value(), number -> computed[number], new DoubtedMoisture.Reading() {
                    @Override
                    public double[] weights(Doubt doubt) {
                        double[] weights = nodes.weights(doubt.diffusivityFactor(material), computed.length);
                        double startsWetter = (start(material, doubt) - start) / WETTER_START;
                        for (int node = 0; node < wetter; node++) {
                            weights[wetter + node] = weights[node] * startsWetter;
                            weights[node] *= 1 - startsWetter;
                        }
                        positions(doubt).forEach((other, position) -> {
                            if (others.contains(other)) {
                                weights[2 * wetter + others.indexOf(other)] += position;
                                weights[nodes.value()] -= position;
                            }
                        });
                        return weights;
                    }

                    @Override
                    public CourseChange change(Doubt doubt) {
                        return CourseChange.stretch(doubt.sorptionFactor(material));
                    }
                });
    }

    /** How far the air goes towards each other air. */
    private Map<Other, Double> positions(Doubt doubt) {
        Map<Other, Double> positions = new EnumMap<>(Other.class);
        double place = humidityDoubt > 0
                ? (doubt.airHumidityShift(humidityDoubt)
                                + (1 - season) * doubt.drySeasonShift()
                                + season * doubt.dampSeasonShift())
                        / humidityDoubt
                : 0;
        positions.put(place < 0 ? Other.DRIER_PLACE : Other.DAMPER_PLACE, Math.abs(place));
        double habits = doubt.habits();
        positions.put(habits < 0 ? Other.DRIER_HABITS : Other.DAMPER_HABITS, Math.abs(habits));
        if (!checked) {
            double middle = 0.5;
            positions.put(Other.DAMPER_BENCH, (doubt.madeHumidity(middle) - middle) / KnifeWay.BENCH_SHIFT);
        }
        return positions;
    }

    private LayeredCourse course(Slab slab, double start, AirSeries air, int layers, Resolution resolution) {
        LayeredCourse hourly = LayeredCourse.of(TransientMoisture.from(
                slab, new double[] {start}, air, layers, new HylandWexlerSaturationPressure(), resolution));
        return new LayeredCourse(
                Arrays.stream(hourly.layer()).map(this::daily).toArray(double[][]::new),
                new MoistureCourse(
                        daily(hourly.mean().hourly()), daily(hourly.mean().moment())));
    }

    private double[] daily(double[] hourly) {
        return days.stream()
                .mapToDouble(date -> {
                    int from = way.day(date) * CommonYear.HOURS_A_DAY;
                    return Arrays.stream(hourly, from, from + CommonYear.HOURS_A_DAY)
                            .average()
                            .orElseThrow();
                })
                .toArray();
    }

    /** Moisture content at finish before the factor on the isotherm. */
    private double start(Material material, Doubt doubt) {
        return stock.stockFraction(material, made, doubt) / doubt.sorptionFactor(material);
    }

    /** Where the month before a day lies between the driest month of the year, 0, and the dampest, 1. */
    private static double season(AirSeries year, LocalDate day) {
        int hour = (Math.min(day.getDayOfYear(), CommonYear.DAYS) - 1) * CommonYear.HOURS_A_DAY;
        List<Double> months = new ArrayList<>();
        int stride = Math.max(1, year.size() / CommonYear.HOURS);
        for (int from = 0; from < CommonYear.DAYS; from++) {
            months.add(monthBefore(year, from * CommonYear.HOURS_A_DAY, stride));
        }
        double driest = months.stream().min(Double::compare).orElseThrow();
        double dampest = months.stream().max(Double::compare).orElseThrow();
        double here = monthBefore(year, hour, stride);
        return dampest > driest ? (here - driest) / (dampest - driest) : 0.5;
    }

    private static double monthBefore(AirSeries year, int hour, int stride) {
        double sum = 0;
        for (int back = 1; back <= MONTH_HOURS; back++) {
            sum += year.relativeHumidityFraction(Math.floorMod((hour - back) * stride, year.size()));
        }
        return sum / MONTH_HOURS;
    }
}
