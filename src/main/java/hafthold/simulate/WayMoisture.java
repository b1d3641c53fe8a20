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
 * All else is read on straight lines between these, for each day by the season that it had behind it.
 */
final class WayMoisture {
    /** Added to the moisture at finish to see what is left of it, kg/kg. */
    private static final double WETTER_START = 0.01;

    private final KnifeWay way;
    private final LayerMoisture stock;
    private final WorkState made;
    private final List<LocalDate> days;
    private final Map<Other, AirSeries> airs = new EnumMap<>(Other.class);
    private final double humidityDoubt;
    private final SeasonStrays seasons;
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
        seasons = new SeasonStrays(
                destination.repeatingYear(), days.stream().map(way::lastAtHome).toList());
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
    DatedMoisture of(Material material, Optional<Slab> slab, int layers) {
        return slab.map(open -> moving(material, open, layers)).orElseGet(() -> still(layers));
    }

    private DatedMoisture still(int layers) {
        double[] dry = new double[days.size()];
        double[][] layer = new double[layers][];
        Arrays.fill(layer, dry);
        return DatedMoisture.certain(new LayeredCourse(layer, new MoistureCourse(dry, dry)));
    }

    private DatedMoisture moving(Material material, Slab slab, int layers) {
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
        return new DatedMoisture(IntStream.range(0, days.size())
                .mapToObj(day -> {
                    List<LayeredCourse> then = Arrays.stream(computed)
                            .map(course -> DatedMoisture.day(course, day))
                            .toList();
                    return new DoubtedMoisture(
                            computed.length,
                            nodes.value(),
                            then::get,
                            new OnDay(material, nodes, others, start, way.lastAtHome(days.get(day))));
                })
                .toList());
    }

    /**
     * How the moisture of a day is put together from what was computed: the ways of all nodes, the same from a wetter start,
     * the ways in other air.
     */
    private final class OnDay implements DoubtedMoisture.Reading {
        private final Material material;
        private final DiffusivityNodes nodes;
        private final List<Other> others;
        private final double start;
        private final LocalDate atHome;

        OnDay(Material material, DiffusivityNodes nodes, List<Other> others, double start, LocalDate atHome) {
            this.material = material;
            this.nodes = nodes;
            this.others = others;
            this.start = start;
            this.atHome = atHome;
        }

        @Override
        public double[] weights(Doubt doubt) {
            int wetter = nodes.size();
            double[] weights = nodes.weights(doubt.diffusivityFactor(material), 2 * wetter + others.size());
            double startsWetter = (start(material, doubt) - start) / WETTER_START;
            for (int node = 0; node < wetter; node++) {
                weights[wetter + node] = weights[node] * startsWetter;
                weights[node] *= 1 - startsWetter;
            }
            positions(doubt, atHome).forEach((other, position) -> {
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
    }

    /** How far the air goes towards each other air. */
    private Map<Other, Double> positions(Doubt doubt, LocalDate atHome) {
        Map<Other, Double> positions = new EnumMap<>(Other.class);
        double place = humidityDoubt > 0
                ? (doubt.airHumidityShift(humidityDoubt) + seasons.shiftFraction(doubt, atHome)) / humidityDoubt
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
}
