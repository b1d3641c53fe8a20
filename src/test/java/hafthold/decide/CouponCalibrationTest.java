package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.Coupon;
import hafthold.knife.CouponTools;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.simulate.CouponModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;

/**
 * Simulation-based calibration (Talts and others 2018, from memory): where the truth is drawn from the prior and readings
 * from the truth, the share of the posterior that lies below the truth is uniform, whatever is asked. Weights, proposal or
 * scaling that were wrong would pile it up in the middle or at the ends.
 */
class CouponCalibrationTest {
    private static final int BINS = 8;
    private static final CouponTools USUAL =
            new CouponTools(Length.ofMillimetres(0.01), Mass.ofGrams(0.01), new RelativeHumidity(0.05));

    private static final Map<String, ToDoubleBiFunction<CouponModel, double[]>> ASKED = Map.of(
            "movement", (model, point) -> model.figures(point).perMoisture(Axis.ACROSS),
            "water", (model, point) -> model.figures(point).sorptionFactor(),
            "speed", (model, point) -> model.figures(point).diffusivity(),
            "width", (model, point) -> model.widthStrain(0, point, 0.35, 0.65));

    @Test
    void ranksAreUniformForACouponAtRest() {
        calibrate(
                Coupons.material("walnut-black"),
                Coupons.strip(
                        Cut.FLAT,
                        60,
                        8,
                        USUAL,
                        31,
                        Coupons.reading(0, 0.33, 33, 60),
                        Coupons.reading(0, 0.75, 35, 61),
                        Coupons.reading(0, 0.55, 34, 60.5)),
                400);
    }

    @Test
    void ranksAreUniformForACouponOnItsWay() {
        calibrate(
                Coupons.material("beech-european"),
                Coupons.strip(
                        Cut.FLAT,
                        50,
                        6,
                        USUAL,
                        0,
                        Coupons.reading(0, 0.35, 30, 50),
                        Coupons.reading(0.4, 0.75, 31, 50.5),
                        Coupons.reading(1, 0.75, 32, 51)),
                160);
    }

    private static void calibrate(Material material, Coupon planned, int truths) {
        int unknowns = new CouponModel(material, List.of(planned)).unknowns();
        List<Map<String, Double>> ranks = IntStream.range(0, truths)
                .parallel()
                .mapToObj(number -> ranks(material, planned, unknowns, new SplittableRandom(1000L + number)))
                .toList();
        for (String asked : ASKED.keySet()) {
            long[] count = new long[BINS];
            ranks.forEach(rank -> count[(int) Math.min(BINS - 1.0, BINS * rank.get(asked))]++);
            double[] expected = IntStream.range(0, BINS)
                    .mapToDouble(bin -> (double) truths / BINS)
                    .toArray();
            double chance = new ChiSquareTest().chiSquareTest(expected, count);
            assertTrue(chance > 0.001, asked + ": " + Arrays.toString(count) + ", chance " + chance);
        }
    }

    private static Map<String, Double> ranks(Material material, Coupon planned, int unknowns, SplittableRandom random) {
        double[] truth = new double[unknowns];
        for (int i = 0; i < truth.length; i++) {
            truth[i] = random.nextGaussian();
        }
        CouponModel model = new CouponModel(material, List.of(Coupons.simulated(material, planned, truth, random)));
        CouponPosterior posterior = new CouponPosterior(model, 600, random.nextLong());
        Map<String, Double> ranks = new HashMap<>();
        ASKED.forEach((name, figure) -> ranks.put(
                name,
                posterior.below(point -> figure.applyAsDouble(model, point), figure.applyAsDouble(model, truth))));
        return ranks;
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** Finer tools never leave a wider band, over readings of many truths; the normal about the best point tells so too. */
    @Test
    void finerToolsNeverLeaveAWiderBandInExpectation() {
        Material material = Coupons.material("walnut-black");
        Map<String, List<Double>> spread = new TreeMap<>();
        for (String step : List.of("0.1", "0.03", "0.01")) {
            double size = Double.parseDouble(step);
            CouponTools tools = new CouponTools(
                    Length.ofMillimetres(size), Mass.ofGrams(size), new RelativeHumidity(Math.min(0.05, size)));
            List<Double> widths = new ArrayList<>();
            for (int number = 0; number < 24; number++) {
                SplittableRandom random = new SplittableRandom(number);
                Coupon planned = Coupons.strip(
                        Cut.FLAT, 40, 8, tools, 0, Coupons.reading(0, 0.33, 24, 40), Coupons.reading(0, 0.75, 26, 41));
                int unknowns = new CouponModel(material, List.of(planned)).unknowns();
                double[] truth = new double[unknowns];
                for (int i = 0; i < unknowns; i++) {
                    truth[i] = random.nextGaussian();
                }
                CouponModel model =
                        new CouponModel(material, List.of(Coupons.simulated(material, planned, truth, random)));
                CouponPosterior posterior = new CouponPosterior(model, 800, 1);
                Band band = posterior.after(point -> model.figures(point).perMoisture(Axis.ACROSS), 0.1, 0.9);
                widths.add(Math.log(band.high() / band.low()));
            }
            spread.put(step, widths);
        }
        assertTrue(mean(spread.get("0.03")) < mean(spread.get("0.1")), spread.toString());
        assertTrue(mean(spread.get("0.01")) < mean(spread.get("0.03")), spread.toString());
    }
}
