package hafthold.simulate;

import hafthold.knife.Coupon;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.EdgeUptake;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
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
    private static final double WETTER = 1.05;

    /** Stock said to have come to rest is off by a twentieth of its moisture (assumed). */
    private static final double AT_REST_SHARE = 0.05;

    /** What came from an air that nobody knows is off by a quarter of it (assumed: some 15 points of humidity). */
    private static final double UNKNOWN_SHARE = 0.25;

    private final Coupon coupon;
    private final Slab slab;
    private final CouponAirs airs;
    private final CouponRest rest;
    private final List<CouponStretch> stretches;
    private final boolean isStill;
    private final Map<Integer, Node> nodes = new ConcurrentHashMap<>();

    /**
     * What was reckoned for one diffusivity.
     *
     * @param moisture by reading, kg/kg
     * @param perRest change of it per water at rest, by reading, then by air; the last is the start
     */
    private record Node(double[] moisture, double[][] perRest) {}

    CouponMoisture(Material material, Coupon coupon) {
        this.coupon = coupon;
        WaterUptake water = material.water().orElseThrow();
        slab = slab(coupon, coupon.cut().orElse(material.usualCut()), water);
        airs = CouponAirs.of(coupon);
        rest = new CouponRest(water.isotherm(), coupon, airs);
        stretches = CouponStretch.of(coupon);
        isStill = stretches.stream().allMatch(CouponStretch::isStill);
    }

    private static Slab slab(Coupon coupon, Cut cut, WaterUptake water) {
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

    /** The slab it is, at the value of every figure. */
    Slab slab() {
        return slab;
    }

    /**
     * Moisture at each reading, kg/kg, and behind it the water at rest in the air of each reading.
     *
     * @param passage factor on the speed of water in this coupon
     * @param hygrometer position of the error of the hygrometer
     * @param airNumbers standard normal number of each air
     */
    double[][] at(Material material, Doubt doubt, double passage, double hygrometer, double[] airNumbers) {
        double[] here = rest.under(hygrometer, airNumbers);
        double[] changes = new double[here.length + 1];
        for (int air = 0; air < here.length; air++) {
            changes[air] = here[air] - rest.value(air);
        }
        double unsettled = stretches.get(0).leadSeconds() > 0 ? UNKNOWN_SHARE : AT_REST_SHARE;
        changes[here.length] = here[0] * doubt.position(Input.STOCK, material) * unsettled;
        double sorption = doubt.sorptionFactor(material);
        double[] moisture = moisture(Math.log(doubt.diffusivityFactor(material) * passage) / SPACING, changes);
        double[] atRest = new double[moisture.length];
        for (int i = 0; i < moisture.length; i++) {
            moisture[i] = Math.max(0, sorption * moisture[i]);
            atRest[i] = sorption * here[airs.ofReading().get(i)];
        }
        return new double[][] {moisture, atRest};
    }

    /** Moisture at each reading for a place on the grid of diffusivities and changes of the water at rest. */
    private double[] moisture(double place, double[] changes) {
        double[] moisture = new double[coupon.readings().size()];
        double at = Math.max(-FURTHEST, Math.min(FURTHEST, place));
        int lowest = (int) Math.min(FURTHEST - CUBIC + 1.0, Math.max(-FURTHEST, Math.floor(at) - 1));
        for (int n = 0; n < (isStill ? 1 : CUBIC); n++) {
            double weight = isStill ? 1 : lagrange(at - lowest, n);
            Node node = nodes.computeIfAbsent(isStill ? 0 : lowest + n, this::node);
            for (int i = 0; i < moisture.length; i++) {
                double one = node.moisture[i];
                for (int k = 0; k < changes.length; k++) {
                    one += node.perRest[i][k] * changes[k];
                }
                moisture[i] += weight * one;
            }
        }
        return moisture;
    }

    private static double lagrange(double x, int node) {
        double weight = 1;
        for (int other = 0; other < CUBIC; other++) {
            if (other != node) {
                weight *= (x - other) / (node - other);
            }
        }
        return weight;
    }

    private Node node(int number) {
        Slab quick = PartSlab.quicker(slab, Math.exp(SPACING * number));
        int readings = coupon.readings().size();
        Node node = new Node(new double[readings], new double[readings][airs.size() + 1]);
        for (CouponStretch stretch : stretches) {
            int air = airs.ofReading().get(stretch.from());
            if (stretch.isStill()) {
                node.moisture[stretch.from()] = rest.value(air);
                node.perRest[stretch.from()][air] = 1;
                node.perRest[stretch.from()][airs.size()] = stretch.from() == 0 ? 1 : 0;
            } else {
                through(quick, stretch, node);
            }
        }
        return node;
    }

    private void through(Slab quick, CouponStretch stretch, Node node) {
        int startAir = airs.ofReading().get(stretch.from());
        double start = rest.value(startAir);
        double[] base = stretch.course(coupon, airs, rest, quick, start, -1);
        double[] wetter = stretch.course(coupon, airs, rest, quick, start * WETTER, -1);
        for (int k = 0; k < base.length; k++) {
            int i = stretch.from() + k;
            node.moisture[i] = base[k];
            double perStart = (wetter[k] - base[k]) / (start * (WETTER - 1));
            node.perRest[i][startAir] += perStart;
            node.perRest[i][airs.size()] = stretch.from() == 0 ? perStart : 0;
        }
        for (int air = startAir; air <= airs.ofReading().get(stretch.to() - 1); air++) {
            double[] near = stretch.course(coupon, airs, rest, quick, start, air);
            double change = rest.near(air) - rest.value(air);
            for (int k = 0; k < base.length; k++) {
                node.perRest[stretch.from() + k][air] += (near[k] - base[k]) / change;
            }
        }
    }
}
