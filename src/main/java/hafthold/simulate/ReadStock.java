package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import hafthold.transport.TransientMoisture;

/**
 * Stock that was read today, and what becomes of it in the workshop's air through the year to come. Days of the calendar
 * before today are those of next year.
 *
 * <p>It starts with the face and the middle as far apart as they would be had it lain there, all of it shifted to the mean
 * that was read. Another start is read off a second run a point wetter, on a straight line; so is damper air, which takes
 * hold as the start is forgotten.
 */
final class ReadStock implements StockDays {
    /** Added to the start to see how long it is remembered, kg/kg. */
    private static final double WETTER = 0.01;

    private static final HylandWexlerSaturationPressure SATURATION = new HylandWexlerSaturationPressure();

    private final Material material;
    private final WaterUptake water;
    private final DiffusivityNodes nodes;
    private final YearMean air;
    private final double humidityDoubt;
    private final double reading;
    private final int today;
    private final MoistureHistory history;
    private final double[][] days;
    private final double[][] remembered;

    /**
     * Stock that was read.
     *
     * @param slab it as moisture sees it, everything at its value
     * @param air a year of hours in the workshop, from 1 January
     * @param humidityDoubt how far its humidity may be off all year round, fraction of relative humidity
     * @param today day of the reading, from 0 on 1 January
     * @param reading mean moisture content, kg/kg
     * @throws OutsideModelsException when the moisture of settled stock does not come round
     */
    ReadStock(Material material, Slab slab, AirSeries air, double humidityDoubt, int today, double reading) {
        this.material = material;
        this.humidityDoubt = humidityDoubt;
        this.today = today;
        this.reading = reading;
        water = material.water().orElseThrow();
        nodes = new DiffusivityNodes(water);
        this.air = YearMean.of(air);
        AirSeries ahead = from(air, today);
        days = new double[nodes.size()][];
        remembered = new double[nodes.size()][];
        MoistureHistory ofValue = null;
        for (int node = 0; node < nodes.size(); node++) {
            Slab quicker = PartSlab.quicker(slab, nodes.factor(node));
            boolean isValue = node == nodes.value();
            Resolution resolution = isValue ? Resolution.STANDARD : Resolution.SAMPLED;
            PeriodicMoisture year = PeriodicMoisture.of(quicker, air, LayerMoisture.LAYERS, SATURATION, resolution);
            SlabYears.requireSettled(material.id(), year);
            double[] start = profile(year.history());
            MoistureHistory then = TransientMoisture.from(quicker, start, ahead, 0, SATURATION, resolution);
            MoistureHistory wetter =
                    TransientMoisture.from(quicker, added(start, WETTER), ahead, 0, SATURATION, resolution);
            days[node] = daily(then::meanFraction);
            remembered[node] =
                    YearSeries.scaled(YearSeries.difference(daily(wetter::meanFraction), days[node]), 1 / WETTER);
            if (isValue) {
                ofValue = then;
            }
        }
        history = ofValue;
    }

    /** Layers of settled stock on that day, shifted to the mean that was read. */
    private double[] profile(MoistureHistory year) {
        int hour = today * HOURS_A_DAY;
        double[] layers = new double[year.layers()];
        for (int layer = 0; layer < layers.length; layer++) {
            layers[layer] = Math.max(0, year.layerFraction(layer, hour) + reading - year.meanFraction(hour));
        }
        return layers;
    }

    private static double[] added(double[] values, double more) {
        double[] sum = values.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more;
        }
        return sum;
    }

    private static AirSeries from(AirSeries year, int day) {
        double[] celsius = new double[year.size()];
        double[] humidity = new double[year.size()];
        for (int i = 0; i < celsius.length; i++) {
            int hour = (i + day * HOURS_A_DAY) % year.size();
            celsius[i] = year.temperatureCelsius(hour);
            humidity[i] = year.relativeHumidityFraction(hour);
        }
        return new AirSeries(year.stepSeconds(), celsius, humidity);
    }

    /** What a history that begins today is asked for at one of its hours. */
    interface AtHour {
        double of(int hour);
    }

    /** Means of the days to come by the calendar; today is as it was read. */
    double[] daily(AtHour series) {
        double[] means = new double[CommonYear.DAYS];
        means[today] = series.of(0);
        for (int day = 1; day < CommonYear.DAYS; day++) {
            double sum = 0;
            for (int hour = 0; hour < HOURS_A_DAY; hour++) {
                sum += series.of(day * HOURS_A_DAY + hour);
            }
            means[(today + day) % CommonYear.DAYS] = sum / HOURS_A_DAY;
        }
        return means;
    }

    /** From today on, everything at its value. */
    MoistureHistory history() {
        return history;
    }

    @Override
    public double[] under(Doubt doubt) {
        double[] weights = nodes.weights(doubt.diffusivityFactor(material), nodes.size());
        double stretch = doubt.sorptionFactor(material);
        double start = doubt.meteredMoisture(material, reading) / stretch - reading;
        double damper = air.shiftFraction(water.isotherm(), doubt.ofShop().airHumidityShift(humidityDoubt));
        double unsettled = doubt.unsettledFactor(material) - 1;
        double[] sum = new double[CommonYear.DAYS];
        for (int day = 0; day < sum.length; day++) {
            double settled = 0;
            double left = 0;
            for (int node = 0; node < weights.length; node++) {
                settled += weights[node] * days[node][day];
                left += weights[node] * remembered[node][day];
            }
            double forgotten = 1 - left;
            double held = stretch * (settled + start * left + damper * forgotten);
            sum[day] = Math.max(0, held * (1 + unsettled * forgotten));
        }
        return sum;
    }
}
