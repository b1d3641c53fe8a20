package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponTools;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.quantity.RelativeHumidity;
import hafthold.transport.EdgeUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import hafthold.transport.TransientMoisture;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Mean moisture of a coupon at each of its readings, under any doubt.
 *
 * <p>A strip open all round is a slab of half its thickness, sealed at the middle, its edges and ends counted in. A reading
 * of which no time is told is taken at rest. Between, the slab goes through its airs, for the diffusivities of a grid; others
 * are read by a cubic between them. What a little more water at rest in any of the airs, or at the start, would make of the
 * readings is reckoned at each of them too, and read on a straight line.
 */
final class CouponMoisture {
    /** Natural logarithm of the factor between diffusivities that are reckoned. */
    private static final double SPACING = 0.5;

    /** Furthest that is reckoned: a factor of 3000 to either side. */
    private static final int FURTHEST = 16;

    private static final int CUBIC = 4;
    private static final double FINEST_SECONDS = 360;
    private static final int SAMPLES_OF_SHORTEST = 12;
    private static final int MOST_SAMPLES = 6000;
    private static final double HUMIDITY_STEP = 0.01;
    private static final double WETTER = 1.05;

    /** Stock said to have come to rest is off by a twentieth of its moisture (assumed). */
    private static final double AT_REST_SHARE = 0.05;

    /** What came from an air that nobody knows is off by a quarter of it (assumed: some 15 points of humidity). */
    private static final double UNKNOWN_SHARE = 0.25;

    /** Of an error of a hygrometer, that part is alike in all airs; the rest is of each air alone, squares adding up. */
    private static final double ALIKE = 0.8;

    private static final double ALONE = 0.6;

    /** Water at rest depends on whether it came from damp or dry: half the width of the loop, either way (assumed). */
    private static final double LOOP = 0.04;

    private final Coupon coupon;
    private final WaterUptake water;
    private final Slab slab;
    private final CouponAirs airs;
    private final List<Stretch> stretches;
    private final double[] rest;
    private final double[] restDeviation;
    private final Map<Integer, Node> nodes = new ConcurrentHashMap<>();

    /**
     * Readings that hang together by time.
     *
     * @param from number of the first of them
     * @param to number behind the last
     * @param leadSeconds how long it lay in the first air before the first reading of all
     */
    private record Stretch(int from, int to, double leadSeconds) {
        boolean isStill() {
            return to - from == 1 && leadSeconds == 0;
        }
    }

    /**
     * What was reckoned for one diffusivity.
     *
     * @param moisture by reading, kg/kg
     * @param perRest change of it per water at rest, by reading, then by air; the last is the start
     */
    private record Node(double[] moisture, double[][] perRest) {}

    CouponMoisture(Material material, Coupon coupon) {
        this.coupon = coupon;
        water = material.water().orElseThrow();
        slab = slab(coupon, coupon.cut().orElse(material.usualCut()), water);
        airs = CouponAirs.of(coupon);
        stretches = stretches(coupon);
        rest = new double[airs.size()];
        restDeviation = new double[airs.size()];
        for (int air = 0; air < rest.length; air++) {
            CouponReading in = airs.first().get(air);
            double humidity = in.humidity().fraction();
            rest[air] = atRest(humidity, in);
            double slope = (atRest(Math.min(1, humidity + HUMIDITY_STEP), in)
                            - atRest(Math.max(0, humidity - HUMIDITY_STEP), in))
                    / (Math.min(1, humidity + HUMIDITY_STEP) - Math.max(0, humidity - HUMIDITY_STEP));
            double alone = in.ownError()
                    .map(RelativeHumidity::fraction)
                    .orElse(ALONE * coupon.tools().hygrometer().fraction());
            restDeviation[air] = Math.hypot(slope * alone, LOOP * rest[air]) / CouponUnknowns.END_OVER_DEVIATION;
        }
    }

    private static Slab slab(Coupon coupon, hafthold.material.Cut cut, WaterUptake water) {
        double half = coupon.thickness().metres() / 2;
        double width = coupon.width().metres() / 2;
        double length = coupon.length().metres() / 2;
        double along = water.alongRatio().value();
        double across = water.acrossRatio().value();
        double through = cut.thickness().mean(along, across, 1);
        double factor = through
                * EdgeUptake.factor(
                        half,
                        width,
                        length,
                        cut.width().mean(along, across, 1) / through,
                        cut.length().mean(along, across, 1) / through);
        return new Slab(
                half,
                water.dryDensity().value(),
                water.isotherm(),
                water.diffusivity().times(factor),
                StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM
                        / EdgeUptake.exposedAreaRatio(half, width, length));
    }

    private static List<Stretch> stretches(Coupon coupon) {
        List<CouponReading> readings = coupon.readings();
        List<Stretch> stretches = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= readings.size(); i++) {
            if (i == readings.size() || readings.get(i).lay().isEmpty()) {
                double lead = from == 0
                        ? readings.get(0).lay().map(lay -> lay.seconds()).orElse(0.0)
                        : 0;
                stretches.add(new Stretch(from, i, lead));
                from = i;
            }
        }
        return stretches;
    }

    /** The slab it is, at the value of every figure. */
    Slab slab() {
        return slab;
    }

    CouponAirs airs() {
        return airs;
    }

    private double atRest(double humidity, CouponReading in) {
        return water.isotherm().moistureFraction(humidity, in.temperature().celsius());
    }

    /**
     * Moisture at each reading, kg/kg, and behind it the water at rest in the air of each reading.
     *
     * @param hygrometer position of the error of the hygrometer
     * @param airNumbers standard normal number of each air
     * @param stock position of how far it had settled
     */
    double[][] at(Material material, Doubt doubt, double hygrometer, double[] airNumbers, double stock) {
        double[] changes = new double[rest.length + 1];
        double[] here = new double[rest.length];
        for (int air = 0; air < rest.length; air++) {
            here[air] = Math.max(
                    0, atRest(humidity(air, hygrometer), airs.first().get(air)) + airNumbers[air] * restDeviation[air]);
            changes[air] = here[air] - rest[air];
        }
        changes[rest.length] = here[0] * stock * (isLed() ? UNKNOWN_SHARE : AT_REST_SHARE);
        double sorption = doubt.sorptionFactor(material);
        double[][] answer = new double[2][coupon.readings().size()];
        double x = Math.log(doubt.diffusivityFactor(material)) / SPACING;
        int lowest = (int) Math.max(-FURTHEST, Math.min(FURTHEST - CUBIC + 1.0, Math.floor(x) - 1));
        double at = Math.max(-FURTHEST, Math.min(FURTHEST, x));
        boolean isStill = stretches.stream().allMatch(Stretch::isStill);
        for (int n = lowest; n < lowest + CUBIC; n++) {
            double weight = isStill ? n == lowest ? 1 : 0 : lagrange(at, n, lowest);
            if (weight != 0) {
                Node node = nodes.computeIfAbsent(isStill ? 0 : n, this::node);
                for (int i = 0; i < answer[0].length; i++) {
                    double moisture = node.moisture[i];
                    for (int k = 0; k < changes.length; k++) {
                        moisture += node.perRest[i][k] * changes[k];
                    }
                    answer[0][i] += weight * sorption * moisture;
                }
            }
        }
        for (int i = 0; i < answer[0].length; i++) {
            answer[0][i] = Math.max(0, answer[0][i]);
            answer[1][i] = sorption * here[airs.ofReading().get(i)];
        }
        return answer;
    }

    private double humidity(int air, double hygrometer) {
        CouponReading in = airs.first().get(air);
        CouponTools tools = coupon.tools();
        double shift = in.ownError().isPresent()
                ? 0
                : hygrometer * ALIKE * tools.hygrometer().fraction();
        return Math.min(1, Math.max(0, in.humidity().fraction() + shift));
    }

    private boolean isLed() {
        return stretches.get(0).leadSeconds > 0;
    }

    private static double lagrange(double x, int node, int lowest) {
        double weight = 1;
        for (int other = lowest; other < lowest + CUBIC; other++) {
            if (other != node) {
                weight *= (x - other) / (node - other);
            }
        }
        return weight;
    }

    private Node node(int number) {
        Slab quick = PartSlab.quicker(slab, Math.exp(SPACING * number));
        int readings = coupon.readings().size();
        double[] moisture = new double[readings];
        double[][] perRest = new double[readings][rest.length + 1];
        for (Stretch stretch : stretches) {
            if (stretch.isStill()) {
                int air = airs.ofReading().get(stretch.from);
                moisture[stretch.from] = rest[air];
                perRest[stretch.from][air] = 1;
                perRest[stretch.from][rest.length] = stretch.from == 0 ? 1 : 0;
            } else {
                through(quick, stretch, moisture, perRest);
            }
        }
        return new Node(moisture, perRest);
    }

    private void through(Slab quick, Stretch stretch, double[] moisture, double[][] perRest) {
        double start = rest[airs.ofReading().get(stretch.from)];
        double[] base = course(quick, stretch, start, -1);
        double[] wetter = course(quick, stretch, start * WETTER, -1);
        int startAir = airs.ofReading().get(stretch.from);
        for (int i = stretch.from; i < stretch.to; i++) {
            moisture[i] = base[i - stretch.from];
            double perStart = (wetter[i - stretch.from] - base[i - stretch.from]) / (start * (WETTER - 1));
            perRest[i][startAir] += perStart;
            perRest[i][rest.length] = stretch.from == 0 ? perStart : 0;
        }
        for (int air = startAir; air <= airs.ofReading().get(stretch.to - 1); air++) {
            double[] shifted = course(quick, stretch, start, air);
            double change = shiftedRest(air) - rest[air];
            for (int i = stretch.from; i < stretch.to; i++) {
                perRest[i][air] += (shifted[i - stretch.from] - base[i - stretch.from]) / change;
            }
        }
    }

    private double shiftedHumidity(int air) {
        double humidity = airs.first().get(air).humidity().fraction();
        return humidity + HUMIDITY_STEP <= 1 ? humidity + HUMIDITY_STEP : humidity - HUMIDITY_STEP;
    }

    private double shiftedRest(int air) {
        return atRest(shiftedHumidity(air), airs.first().get(air));
    }

    /** Moisture at the readings of a stretch, one of its airs a little damper. */
    private double[] course(Slab quick, Stretch stretch, double start, int damper) {
        double[] ends = new double[stretch.to - stretch.from];
        double shortest = stretch.leadSeconds > 0 ? stretch.leadSeconds : Double.POSITIVE_INFINITY;
        ends[0] = stretch.leadSeconds;
        for (int i = 1; i < ends.length; i++) {
            double lay =
                    coupon.readings().get(stretch.from + i).lay().orElseThrow().seconds();
            ends[i] = ends[i - 1] + lay;
            shortest = Math.min(shortest, lay);
        }
        double last = ends[ends.length - 1];
        double step =
                Math.max(Math.max(FINEST_SECONDS, last / MOST_SAMPLES), Math.min(3600, shortest / SAMPLES_OF_SHORTEST));
        int samples = (int) Math.ceil(last / step) + 2;
        double[] celsius = new double[samples];
        double[] humidity = new double[samples];
        int reading = 0;
        for (int s = 0; s < samples; s++) {
            while (reading < ends.length - 1 && (s - 0.5) * step >= ends[reading]) {
                reading++;
            }
            int air = airs.ofReading().get(stretch.from + reading);
            CouponReading in = airs.first().get(air);
            celsius[s] = in.temperature().celsius();
            humidity[s] = air == damper ? shiftedHumidity(air) : in.humidity().fraction();
        }
        MoistureHistory history = TransientMoisture.from(
                quick,
                new double[] {start},
                new AirSeries(step, celsius, humidity),
                0,
                new HylandWexlerSaturationPressure(),
                Resolution.STANDARD);
        return Arrays.stream(ends)
                .map(end -> {
                    double place = end / step;
                    int below = (int) place;
                    double share = place - below;
                    return (1 - share) * history.meanFraction(below) + share * history.meanFraction(below + 1);
                })
                .toArray();
    }
}
