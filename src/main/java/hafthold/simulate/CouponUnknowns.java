package hafthold.simulate;

import hafthold.knife.Coupon;
import hafthold.material.Material;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What is not known about some coupons of one material, as a vector of standard normal numbers that were independent before
 * anything was measured: the figures of the material, shared by all of them; the error of the hygrometer, shared too; of
 * each coupon how its grain lies, how far it had settled before the first reading, and of each air how far the water it
 * holds at rest there lies from what the air as read says.
 */
final class CouponUnknowns {
    /** Figures of the material that a coupon can tell. */
    static final List<Input> OF_MATERIAL = List.of(
            Input.SWELLING_ACROSS,
            Input.SWELLING_THROUGH,
            Input.SWELLING_ALONG,
            Input.SORPTION,
            Input.DIFFUSIVITY,
            Input.THERMAL_EXPANSION);

    private static final List<Input> OF_COUPON = List.of(Input.CUT, Input.RUN_OUT, Input.STOCK);

    /** Numbers of each coupon before those of its airs: its inputs, and how water passes through it. */
    private static final int EACH = OF_COUPON.size() + 1;

    /**
     * How fast a strip takes up water in its box is the material's affair but for this factor, either way: the film of its
     * air, its edges and ends, how speed goes with moisture (assumed).
     */
    private static final double PASSAGE = 1.3;

    /** Of a normal distribution, the 95 % point over the standard deviation: ends of ranges lie there. */
    static final double END_OVER_DEVIATION = 1.645;

    /** Rings that someone looked at lie within 5 degrees, of 20 otherwise (assumed). */
    private static final double RINGS_SEEN = 0.25;

    private final Material material;
    private final List<Coupon> coupons;
    private final RealMatrix root;
    private final int[] first;
    private final int[] airs;
    private final int size;

    CouponUnknowns(Material material, List<Coupon> coupons, boolean correlated) {
        this.material = material;
        this.coupons = coupons;
        first = new int[coupons.size()];
        airs = new int[coupons.size()];
        int next = OF_MATERIAL.size() + 1;
        for (int c = 0; c < first.length; c++) {
            first[c] = next;
            airs[c] = CouponAirs.of(coupons.get(c)).size();
            next += EACH + airs[c];
        }
        size = next;
        root = new CholeskyDecomposition(correlation(correlated)).getL();
    }

    int size() {
        return size;
    }

    /** Correlations of the figures of a material as its ranges are drawn elsewhere. */
    private RealMatrix correlation(boolean correlated) {
        RealMatrix all = MatrixUtils.createRealIdentityMatrix(size);
        if (!correlated) {
            return all;
        }
        RealMatrix drawn = Draws.correlation(Input.hasGrain(material));
        for (int i = 0; i < OF_MATERIAL.size(); i++) {
            for (int j = 0; j < OF_MATERIAL.size(); j++) {
                all.setEntry(i, j, drawn.getEntry(place(i), place(j)));
            }
        }
        return all;
    }

    private static int place(int number) {
        return Input.OF_ORDER.size() + OF_MATERIAL.get(number).place();
    }

    /** The standard normal numbers, correlated as the figures are. */
    double[] correlated(double[] independent) {
        return root.operate(independent);
    }

    /** Turns a function of the correlated numbers into one of the independent ones. */
    UnaryOperator<double[]> onIndependent(UnaryOperator<double[]> ofCorrelated) {
        return independent -> ofCorrelated.apply(correlated(independent));
    }

    /** The figures of the material alone. */
    Doubt doubt(double[] correlated) {
        return doubt(ofMaterial(correlated));
    }

    /** The figures of the material and how the grain of a coupon lies. */
    Doubt doubt(double[] correlated, int coupon) {
        Map<Input, Double> positions = ofMaterial(correlated);
        for (int i = 0; i < OF_COUPON.size(); i++) {
            Input input = OF_COUPON.get(i);
            double sure = input == Input.CUT && coupons.get(coupon).endGrainSeen() ? RINGS_SEEN : 1;
            positions.put(input, sure * correlated[first[coupon] + i] / END_OVER_DEVIATION);
        }
        return doubt(positions);
    }

    private static Map<Input, Double> ofMaterial(double[] correlated) {
        Map<Input, Double> positions = new EnumMap<>(Input.class);
        for (int i = 0; i < OF_MATERIAL.size(); i++) {
            positions.put(OF_MATERIAL.get(i), correlated[i] / END_OVER_DEVIATION);
        }
        return positions;
    }

    private static Doubt doubt(Map<Input, Double> positions) {
        return new Doubt(input -> 0, (input, any) -> positions.getOrDefault(input, 0.0));
    }

    /** Position of the error of the hygrometer. */
    static double hygrometer(double[] correlated) {
        return correlated[OF_MATERIAL.size()] / END_OVER_DEVIATION;
    }

    /** Standard normal number of each air of a coupon. */
    double[] airs(double[] correlated, int coupon) {
        int from = first[coupon] + EACH;
        return Arrays.copyOfRange(correlated, from, from + airs[coupon]);
    }

    /** Factor on the speed of water in one coupon against that of its material. */
    double passage(double[] correlated, int coupon) {
        return Math.pow(PASSAGE, correlated[first[coupon] + OF_COUPON.size()] / END_OVER_DEVIATION);
    }

    /** Numbers of fewer coupons, or of the same with fewer airs, carried over to these; what is new is at its value. */
    double[] carried(CouponUnknowns fewer, double[] numbers) {
        double[] carried = new double[size];
        System.arraycopy(numbers, 0, carried, 0, OF_MATERIAL.size() + 1);
        for (int c = 0; c < fewer.first.length; c++) {
            System.arraycopy(numbers, fewer.first[c], carried, first[c], EACH + fewer.airs[c]);
        }
        return carried;
    }

    /** The coupons in their order. */
    List<Coupon> coupons() {
        return new ArrayList<>(coupons);
    }
}
